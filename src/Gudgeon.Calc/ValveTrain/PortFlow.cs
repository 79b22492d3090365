using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>What a port passes, over a lift curve, against another port, and what its passage holds.</summary>
public static class PortFlow
{
    private const string Definition = "definition; Heywood, Internal Combustion Engine Fundamentals, 1st ed., section 6.3";

    /// <summary>Flow coefficient on an area of one's choice: throat, seat, head.</summary>
    /// <param name="effectiveArea">Effective area, m².</param>
    /// <param name="referenceArea">Area that it is referred to, of all valves of the port, m².</param>
    [Formula("flow coefficient on a reference area", "C = A / Ar", Definition, Provenance = Provenance.Definition)]
    [return: Quantity("flow coefficient", Dimension.Number, Symbol = "C")]
    public static double Coefficient(
        [Quantity("effective area", Dimension.Area, "mm²", Symbol = "A", Min = 0)] double effectiveArea,
        [Quantity("reference area", Dimension.Area, "mm²", Symbol = "Ar", Above = 0)] double referenceArea) => effectiveArea / referenceArea;

    /// <summary>Area inside the seat's inner edge, m²: the smallest circle of its cone.</summary>
    /// <param name="headDiameter">Head diameter, which is taken as the seat's outer edge, m.</param>
    /// <param name="seatWidth">Seat width along the cone, m.</param>
    /// <param name="seatAngle">Seat angle from the plane of the head, rad.</param>
    [Formula("seat inner area", "As = π / 4 (D - 2 w cos(β))^2", "geometry of a cone", Provenance = Provenance.Definition)]
    [return: Quantity("seat inner area", Dimension.Area, "mm²", Symbol = "As")]
    public static double SeatInnerArea(
        [Quantity("head diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double headDiameter,
        [Quantity("seat width", Dimension.Length, "mm", Symbol = "w", Min = 0)] double seatWidth,
        [Quantity("seat angle", Dimension.Angle, "°", Symbol = "β", Above = 0, Below = Math.PI / 2)] double seatAngle)
    {
        var inner = headDiameter - (2 * seatWidth * Math.Cos(seatAngle));
        FormulaDomainException.Unless(inner > 0, "seat width: leaves no opening inside the seat");
        return Math.PI / 4 * inner * inner;
    }

    /// <summary>Mean of an area over the crank angle at which the valve is open, m².</summary>
    /// <param name="angles">Crank angles, rising, from opening to closing, rad.</param>
    /// <param name="areas">Effective area at each, m².</param>
    [Formula("mean effective area over the lift curve", "Am = integral(A, θ) / (θc - θo)", Definition, Provenance = Provenance.Definition, Validity = "trapezoids between the points")]
    [return: Quantity("mean effective area", Dimension.Area, "mm²", Symbol = "Am")]
    public static double MeanArea(
        [Quantity("crank angles", Dimension.Angle, "°", Symbol = "θ")] double[] angles,
        [Quantity("effective areas", Dimension.Area, "mm²", Symbol = "A", Min = 0)] double[] areas)
    {
        Rising(angles, areas, "crank angles");
        return Trapezoids(angles, areas, (from, to) => (from + to) / 2) / (angles[^1] - angles[0]);
    }

    /// <summary>Mean flow coefficient on the head area, as the inlet Mach index wants it.</summary>
    /// <param name="meanArea">Mean effective area of the port, all its valves together, m².</param>
    /// <param name="count">Valves of the port.</param>
    /// <param name="headDiameter">Head diameter of one valve, m.</param>
    [Formula("mean flow coefficient on the head area", "Ci = 4 Am / (z π D^2)", "Taylor, The Internal-Combustion Engine in Theory and Practice, vol. 1, chapter 6", Provenance = Provenance.FromMemory)]
    [return: Quantity("mean flow coefficient", Dimension.Number, Symbol = "Ci")]
    public static double HeadCoefficient(
        [Quantity("mean effective area", Dimension.Area, "mm²", Symbol = "Am", Min = 0)] double meanArea,
        [Quantity("valves", Dimension.Number, Symbol = "z", Min = 1)] int count,
        [Quantity("head diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double headDiameter) =>
        4 * meanArea / (count * Math.PI * headDiameter * headDiameter);

    /// <summary>Mean speed of the gas in a port while the piston draws at its mean speed, m/s.</summary>
    /// <param name="bore">Bore, m.</param>
    /// <param name="stroke">Stroke, m.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="portArea">Area of the port at the place asked about, m².</param>
    [Formula("mean port velocity", "v = π b^2 s w / (4 π Ap)", "continuity with the gas as dense in the port as in the cylinder; Heywood, Internal Combustion Engine Fundamentals, 1st ed., section 6.3", Provenance = Provenance.Definition)]
    [return: Quantity("mean port velocity", Dimension.Speed, "m/s", Symbol = "v")]
    public static double MeanVelocity(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "b", Above = 0)] double bore,
        [Quantity("stroke", Dimension.Length, "mm", Symbol = "s", Above = 0)] double stroke,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed,
        [Quantity("port area", Dimension.Area, "mm²", Symbol = "Ap", Above = 0)] double portArea) => bore * bore * stroke * speed / (4 * portArea);

    /// <summary>Volume of a passage by its areas, m³: cones between the places.</summary>
    /// <param name="distances">Distances along the middle of the passage, rising, m.</param>
    /// <param name="areas">Area at each, m².</param>
    [Formula("port volume from its areas", "V = integral(A, x); (A1 + sqrt(A1 A2) + A2) (x2 - x1) / 3 from place to place", "volume of the frustum of a cone", Provenance = Provenance.Definition)]
    [return: Quantity("port volume", Dimension.Volume, "cm³", Symbol = "V")]
    public static double Volume(
        [Quantity("distances", Dimension.Length, "mm", Symbol = "x")] double[] distances,
        [Quantity("areas", Dimension.Area, "mm²", Symbol = "A", Min = 0)] double[] areas)
    {
        Rising(distances, areas, "distances");
        return Trapezoids(distances, areas, (from, to) => (from + Math.Sqrt(from * to) + to) / 3);
    }

    /// <summary>Flow of the exhaust port over that of the inlet port, at the same test pressure.</summary>
    /// <param name="exhaust">Mean effective area or flow of the exhaust.</param>
    /// <param name="inlet">The same of the inlet.</param>
    [Formula("exhaust to inlet flow ratio", "r = Ae / Ai", "definition", Provenance = Provenance.Definition)]
    [return: Quantity("flow ratio", Dimension.Number, Symbol = "r")]
    public static double Ratio(
        [Quantity("exhaust effective area", Dimension.Area, "mm²", Symbol = "Ae", Min = 0)] double exhaust,
        [Quantity("inlet effective area", Dimension.Area, "mm²", Symbol = "Ai", Above = 0)] double inlet) => exhaust / inlet;

    /// <summary>How far ports that ought to be alike lie apart: greatest less least, over the mean.</summary>
    /// <param name="areas">Effective areas of two ports or more, m².</param>
    [Formula("spread of port flow", "δ = (max(A) - min(A)) / mean(A)", "definition", Provenance = Provenance.Definition)]
    [return: Quantity("spread", Dimension.Number, "%", Symbol = "δ")]
    public static double Spread([Quantity("effective areas", Dimension.Area, "mm²", Symbol = "A", Above = 0)] double[] areas)
    {
        FormulaDomainException.Unless(areas.Length >= 2, "effective areas: wanted two or more");
        return (areas.Max() - areas.Min()) / areas.Average();
    }

    private static void Rising(double[] places, double[] areas, string name)
    {
        FormulaDomainException.Unless(places.Length >= 2 && places.Length == areas.Length, $"{name}: wanted two or more, as many as areas");
        for (var i = 1; i < places.Length; i++)
        {
            FormulaDomainException.Unless(places[i] > places[i - 1], $"{name}: must rise");
        }
    }

    private static double Trapezoids(double[] places, double[] areas, Func<double, double, double> mean)
    {
        var sum = 0.0;
        for (var i = 1; i < places.Length; i++)
        {
            sum += mean(areas[i - 1], areas[i]) * (places[i] - places[i - 1]);
        }

        return sum;
    }
}
