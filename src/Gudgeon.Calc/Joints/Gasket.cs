using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Gasket types of the vessel-flange table.</summary>
public enum GasketType
{
    /// <summary>O-ring, self-energising.</summary>
    ORing,

    /// <summary>Flat soft aluminium.</summary>
    SoftAluminium,

    /// <summary>Flat soft copper or brass.</summary>
    SoftCopper,

    /// <summary>Flat jacketed, soft aluminium over filler.</summary>
    JacketedAluminium,

    /// <summary>Spiral wound, stainless.</summary>
    SpiralWound,
}

/// <summary>Gasket factors.</summary>
/// <param name="Factor">m: gasket pressure over fluid pressure in service.</param>
/// <param name="SeatingStress">y: pressure that seats the gasket, Pa.</param>
public readonly record struct GasketFactors(
    [Quantity("gasket factor", Dimension.Number, Symbol = "m")] double Factor,
    [Quantity("seating stress", Dimension.Pressure, "MPa", Symbol = "y")] double SeatingStress);

/// <summary>Bolt loads that a gasket asks for.</summary>
/// <param name="Operating">Wm1, under pressure, N.</param>
/// <param name="Seating">Wm2, to seat it, N.</param>
public readonly record struct GasketLoads(
    [Quantity("operating bolt load", Dimension.Force, "kN", Symbol = "W1")] double Operating,
    [Quantity("seating bolt load", Dimension.Force, "kN", Symbol = "W2")] double Seating);

/// <summary>Squeeze of an O-ring in its groove.</summary>
/// <param name="Squeeze">Compression, m.</param>
/// <param name="Ratio">Compression over cord.</param>
public readonly record struct ORingSqueeze(
    [Quantity("squeeze", Dimension.Length, "mm", Symbol = "s")] double Squeeze,
    [Quantity("squeeze ratio", Dimension.Number, "%", Symbol = "c")] double Ratio);

/// <summary>What a gasket or a seal asks of its joint.</summary>
public static class Gasket
{
    private const double Psi = 6894.757293168361;

    /// <summary>Gasket factors m and y, suggested values.</summary>
    /// <param name="gasket">Type of gasket.</param>
    [Formula("gasket factors", "m, y", "ASME BPVC VIII-1, appendix 2, table 2-5.1 (non-mandatory)", Caution = "Vessel-flange values, not an engine standard: compare gaskets with them, do not size an engine by them alone.")]
    public static GasketFactors Factors(
        [Quantity("gasket type", Dimension.Number)] GasketType gasket) => gasket switch
        {
            GasketType.ORing => new GasketFactors(0, 0),
            GasketType.SoftAluminium => new GasketFactors(4.00, 8800 * Psi),
            GasketType.SoftCopper => new GasketFactors(4.75, 13000 * Psi),
            GasketType.JacketedAluminium => new GasketFactors(3.25, 5500 * Psi),
            _ => new GasketFactors(3.00, 10000 * Psi),
        };

    /// <summary>Bolt loads for a ring gasket under pressure and at seating.</summary>
    /// <param name="gasketDiameter">Diameter at the gasket reaction, m.</param>
    /// <param name="seatingWidth">Effective seating width b, m.</param>
    /// <param name="pressure">Fluid pressure, Pa.</param>
    /// <param name="factor">Gasket factor m.</param>
    /// <param name="seatingStress">Seating stress y, Pa.</param>
    [Formula("gasket bolt loads", "W1 = π / 4 G^2 p + 2 π b G m p; W2 = π b G y", "ASME BPVC VIII-1, appendix 2, 2-5(c)", Provenance = Provenance.FromMemory)]
    public static GasketLoads BoltLoads(
        [Quantity("gasket diameter", Dimension.Length, "mm", Symbol = "G", Above = 0)] double gasketDiameter,
        [Quantity("effective seating width", Dimension.Length, "mm", Symbol = "b", Above = 0)] double seatingWidth,
        [Quantity("pressure", Dimension.Pressure, "bar", Symbol = "p", Min = 0)] double pressure,
        [Quantity("gasket factor", Dimension.Number, Symbol = "m", Min = 0)] double factor,
        [Quantity("seating stress", Dimension.Pressure, "MPa", Symbol = "y", Min = 0)] double seatingStress)
    {
        var around = Math.PI * gasketDiameter * seatingWidth;
        return new GasketLoads((MetricThread.Circle(gasketDiameter) * pressure) + (2 * around * factor * pressure), around * seatingStress);
    }

    /// <summary>Squeeze of an O-ring.</summary>
    /// <param name="cord">Cord diameter, m.</param>
    /// <param name="groove">Depth of the groove with the gap, m.</param>
    [Formula("O-ring squeeze", "s = d - t; c = s / d", "definition", Provenance = Provenance.Definition, Caution = "Static seals are commonly squeezed by 15 to 30 %, moving ones by 8 to 20 %; leave room for swelling.")]
    public static ORingSqueeze Squeeze(
        [Quantity("cord diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double cord,
        [Quantity("groove depth", Dimension.Length, "mm", Symbol = "t", Above = 0)] double groove)
    {
        FormulaDomainException.Unless(groove <= cord, "groove depth: greater than the cord, the ring is not squeezed");
        return new ORingSqueeze(cord - groove, (cord - groove) / cord);
    }

    /// <summary>Share of the groove that the O-ring fills.</summary>
    /// <param name="cord">Cord diameter, m.</param>
    /// <param name="groove">Depth of the groove with the gap, m.</param>
    /// <param name="width">Width of the groove, m.</param>
    [Formula("O-ring groove fill", "q = π d^2 / (4 t b)", "definition", Provenance = Provenance.Definition, Caution = "Over about 85 % the ring has no room to swell.")]
    [return: Quantity("groove fill", Dimension.Number, "%", Symbol = "q")]
    public static double Fill(
        [Quantity("cord diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double cord,
        [Quantity("groove depth", Dimension.Length, "mm", Symbol = "t", Above = 0)] double groove,
        [Quantity("groove width", Dimension.Length, "mm", Symbol = "b", Above = 0)] double width) =>
        MetricThread.Circle(cord) / (groove * width);

    /// <summary>Clamp per length of a seal's circle, N/m.</summary>
    /// <param name="clamp">Clamp of all bolts, N.</param>
    /// <param name="diameter">Diameter of the seal, m.</param>
    [Formula("gasket line load", "q = F / (π D)", "force over length", Provenance = Provenance.Definition, Validity = "all of the clamp rests on the seal")]
    [return: Quantity("line load", Dimension.ForcePerLength, "N/mm", Symbol = "q")]
    public static double LineLoad(
        [Quantity("clamp", Dimension.Force, "kN", Symbol = "F", Min = 0)] double clamp,
        [Quantity("diameter of the seal", Dimension.Length, "mm", Symbol = "D", Above = 0)] double diameter) =>
        clamp / (Math.PI * diameter);
}
