using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>Areas about an open valve.</summary>
/// <param name="Curtain">Curtain area π D L, m².</param>
/// <param name="Head">Area of the head, m².</param>
/// <param name="Throat">Throat area less the stem, m².</param>
/// <param name="ThroatLift">Lift at which the curtain equals the throat, m.</param>
public readonly record struct CurtainAreas(
    [Quantity("curtain area", Dimension.Area, "mm²", Symbol = "Ac")] double Curtain,
    [Quantity("head area", Dimension.Area, "mm²", Symbol = "Ah")] double Head,
    [Quantity("throat area", Dimension.Area, "mm²", Symbol = "At")] double Throat,
    [Quantity("lift at which the curtain equals the throat", Dimension.Length, "mm", Symbol = "Lt")] double ThroatLift);

/// <summary>Least geometric area at a lift, and the lifts at which its place changes.</summary>
/// <param name="Area">Least flow area, m².</param>
/// <param name="FirstLimit">Lift up to which the frustum stands square on the seat, m.</param>
/// <param name="SecondLimit">Lift from which the port less the stem is least, m.</param>
/// <param name="Stage">Which of the three stages this lift is in.</param>
public readonly record struct StageArea(
    [Quantity("least flow area", Dimension.Area, "mm²", Symbol = "A")] double Area,
    [Quantity("end of the first stage", Dimension.Length, "mm", Symbol = "L1")] double FirstLimit,
    [Quantity("end of the second stage", Dimension.Length, "mm", Symbol = "L2")] double SecondLimit,
    [Quantity("stage", Dimension.Number, Symbol = "i")] double Stage);

/// <summary>Geometric areas through which a poppet valve breathes.</summary>
public static class ValveAreas
{
    /// <summary>Curtain, head and throat area of a valve.</summary>
    /// <param name="headDiameter">Head diameter, m.</param>
    /// <param name="lift">Lift, m.</param>
    /// <param name="throatDiameter">Throat diameter, m.</param>
    /// <param name="stemDiameter">Stem diameter, m.</param>
    [Formula("valve curtain and throat", "Ac = π D L; Ah = π D^2 / 4; At = π (Dt^2 - Ds^2) / 4; Lt = At / (π D)", "geometry; curtain equals head area at a quarter of the diameter", Provenance = Provenance.Definition)]
    public static CurtainAreas Curtain(
        [Quantity("head diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double headDiameter,
        [Quantity("lift", Dimension.Length, "mm", Symbol = "L", Min = 0)] double lift,
        [Quantity("throat diameter", Dimension.Length, "mm", Symbol = "Dt", Above = 0)] double throatDiameter,
        [Quantity("stem diameter", Dimension.Length, "mm", Symbol = "Ds", Min = 0)] double stemDiameter = 0)
    {
        FormulaDomainException.Unless(stemDiameter < throatDiameter, "stem diameter: must be less than the throat diameter");
        var throat = Math.PI / 4 * (throatDiameter - stemDiameter) * (throatDiameter + stemDiameter);
        return new CurtainAreas(Math.PI * headDiameter * lift, Math.PI / 4 * headDiameter * headDiameter, throat, throat / (Math.PI * headDiameter));
    }

    /// <summary>Least geometric flow area of a valve with a conical seat.</summary>
    /// <param name="headDiameter">Head diameter, m.</param>
    /// <param name="seatWidth">Seat width projected on the radius, m.</param>
    /// <param name="seatAngle">Seat angle from the plane of the head, rad.</param>
    /// <param name="portDiameter">Port diameter, m.</param>
    /// <param name="stemDiameter">Stem diameter, m.</param>
    /// <param name="lift">Lift, m.</param>
    [Formula("valve flow area by lift", "L1 = b / (sin(β) cos(β)); L2 = sqrt(((Dp^2 - Ds^2) / (4 (D - b)))^2 - b^2) + b tan(β); A = π L cos(β) (D - 2 b + L / 2 sin(2 β)), or π (D - b) sqrt((L - b tan(β))^2 + b^2), or π / 4 (Dp^2 - Ds^2)", "Heywood, Internal Combustion Engine Fundamentals, 1st ed., eq. 6.10 to 6.12", Provenance = Provenance.FromMemory, Validity = "the first form up to L1, the second up to L2, then the third; with a port too small for the second form, the third follows the first where both are equal")]
    public static StageArea Least(
        [Quantity("head diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double headDiameter,
        [Quantity("seat width", Dimension.Length, "mm", Symbol = "b", Above = 0)] double seatWidth,
        [Quantity("seat angle", Dimension.Angle, "°", Symbol = "β", Above = 0, Below = Math.PI / 2)] double seatAngle,
        [Quantity("port diameter", Dimension.Length, "mm", Symbol = "Dp", Above = 0)] double portDiameter,
        [Quantity("stem diameter", Dimension.Length, "mm", Symbol = "Ds", Min = 0)] double stemDiameter,
        [Quantity("lift", Dimension.Length, "mm", Symbol = "L", Min = 0)] double lift)
    {
        FormulaDomainException.Unless(2 * seatWidth < headDiameter, "seat width: must be less than half the head diameter");
        FormulaDomainException.Unless(stemDiameter < portDiameter, "stem diameter: must be less than the port diameter");
        var (sine, cosine) = Math.SinCos(seatAngle);
        var seatDiameter = headDiameter - seatWidth;
        var rise = seatWidth * sine / cosine;
        var first = seatWidth / (sine * cosine);
        var inner = headDiameter - (2 * seatWidth);
        var port = Math.PI / 4 * (portDiameter - stemDiameter) * (portDiameter + stemDiameter);
        var second = PortLimit(port, seatDiameter, seatWidth, rise, first, inner, sine, cosine);
        if (lift >= second)
        {
            return new StageArea(port, first, second, 3);
        }

        return lift <= first
            ? new StageArea(Math.PI * lift * cosine * (inner + (lift * sine * cosine)), first, second, 1)
            : new StageArea(Math.PI * seatDiameter * Math.Sqrt(((lift - rise) * (lift - rise)) + (seatWidth * seatWidth)), first, second, 2);
    }

    /// <summary>Lift from which the port is least: in the second stage, or already in the first when the port is small.</summary>
    private static double PortLimit(double port, double seatDiameter, double seatWidth, double rise, double first, double inner, double sine, double cosine)
    {
        var slant = port / (Math.PI * seatDiameter);
        var second = slant > seatWidth ? Math.Sqrt((slant - seatWidth) * (slant + seatWidth)) + rise : 0;
        if (second >= first)
        {
            return second;
        }

        var needed = port / (Math.PI * cosine);
        return 2 * needed / (inner + Math.Sqrt((inner * inner) + (4 * sine * cosine * needed)));
    }
}
