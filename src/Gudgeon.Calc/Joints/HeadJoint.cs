using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Cylinder head joint at one cylinder pressure.</summary>
/// <param name="GasLoad">Gas force on the sealed area, N.</param>
/// <param name="LoadPerStud">Share of one stud, N.</param>
/// <param name="StudLoad">Force in a stud at that pressure, N.</param>
/// <param name="ClampPerStud">Clamp left per stud, N.</param>
/// <param name="Clamp">Clamp left on the cylinder, N.</param>
/// <param name="SeparationPressure">Pressure at which the clamp is gone, Pa.</param>
/// <param name="SeparationFactor">Separation pressure over the given pressure.</param>
public readonly record struct HeadClamp(
    [Quantity("gas load", Dimension.Force, "kN", Symbol = "FG")] double GasLoad,
    [Quantity("gas load per stud", Dimension.Force, "kN", Symbol = "FA")] double LoadPerStud,
    [Quantity("stud load", Dimension.Force, "kN", Symbol = "FS")] double StudLoad,
    [Quantity("clamp left per stud", Dimension.Force, "kN", Symbol = "FKR")] double ClampPerStud,
    [Quantity("clamp left", Dimension.Force, "kN", Symbol = "FKC")] double Clamp,
    [Quantity("separation pressure", Dimension.Pressure, "MPa", Symbol = "pS")] double SeparationPressure,
    [Quantity("separation factor", Dimension.Number, Symbol = "S")] double SeparationFactor);

/// <summary>Cylinder head joint: gas against clamp.</summary>
public static class HeadJoint
{
    /// <summary>Stud load, clamp left and separation pressure of a head joint.</summary>
    /// <param name="sealingDiameter">Diameter at which the gasket seals, m; not the bore.</param>
    /// <param name="pressure">Peak cylinder pressure, gauge, Pa.</param>
    /// <param name="studs">Studs that share the load of the cylinder.</param>
    /// <param name="preload">Preload per stud after embedding and temperature, N.</param>
    /// <param name="loadFactor">Load factor of the joint.</param>
    [Formula("head joint", "FG = π / 4 D^2 p; FA = FG / N; FS = FV + Φ FA; FKR = FV - (1 - Φ) FA; FKC = N FKR; pS = N FV / ((1 - Φ) π / 4 D^2); S = pS / p", "VDI 2230-1:2003, joint diagram, applied to a cylinder head", Validity = "while the joint is closed; past separation the studs carry all of the gas load and no clamp is left", Caution = "Take the diameter at which the gasket seals, not the bore; the outer studs of an open deck may carry less than an equal share.")]
    public static HeadClamp Clamp(
        [Quantity("sealing diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double sealingDiameter,
        [Quantity("peak cylinder pressure", Dimension.Pressure, "bar", Symbol = "p", Above = 0)] double pressure,
        [Quantity("studs per cylinder", Dimension.Number, Symbol = "N", Above = 0)] double studs,
        [Quantity("preload per stud", Dimension.Force, "kN", Symbol = "FV", Min = 0)] double preload,
        [Quantity("load factor", Dimension.Number, Symbol = "Φ", Min = 0, Below = 1)] double loadFactor)
    {
        var area = MetricThread.Circle(sealingDiameter);
        var gas = area * pressure;
        var perStud = gas / studs;
        var left = Math.Max(0, preload - ((1 - loadFactor) * perStud));
        var separation = studs * preload / ((1 - loadFactor) * area);
        return new HeadClamp(gas, perStud, perStud + left, left, studs * left, separation, separation / pressure);
    }

    /// <summary>Gas load of one cylinder shared by its bolts, N per bolt.</summary>
    /// <param name="diameter">Sealing diameter, m.</param>
    /// <param name="pressure">Pressure, gauge, Pa.</param>
    /// <param name="bolts">Bolts that share it.</param>
    [Formula("pressure load per bolt", "P = π / 4 D^2 p / N", "pressure times area", Provenance = Provenance.Definition)]
    [return: Quantity("load per bolt", Dimension.Force, "kN", Symbol = "P")]
    public static double PressureLoad(
        [Quantity("sealing diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double diameter,
        [Quantity("pressure", Dimension.Pressure, "bar", Symbol = "p", Min = 0)] double pressure,
        [Quantity("bolts", Dimension.Number, Symbol = "N", Above = 0)] double bolts) =>
        MetricThread.Circle(diameter) * pressure / bolts;

    /// <summary>Mean pressure on a fire ring or gasket bead, Pa.</summary>
    /// <param name="clamp">Clamp on the ring, N.</param>
    /// <param name="innerDiameter">Inner diameter of the ring, m.</param>
    /// <param name="outerDiameter">Outer diameter of the ring, m.</param>
    [Formula("fire-ring stress", "q = F / (π / 4 (Do^2 - Di^2))", "force over area", Provenance = Provenance.Definition, Validity = "all of the clamp rests on the ring")]
    [return: Quantity("ring stress", Dimension.Pressure, "MPa", Symbol = "q")]
    public static double RingStress(
        [Quantity("clamp", Dimension.Force, "kN", Symbol = "F", Min = 0)] double clamp,
        [Quantity("inner diameter", Dimension.Length, "mm", Symbol = "Di", Min = 0)] double innerDiameter,
        [Quantity("outer diameter", Dimension.Length, "mm", Symbol = "Do", Above = 0)] double outerDiameter)
    {
        FormulaDomainException.Unless(outerDiameter > innerDiameter, "outer diameter: must be greater than the inner diameter");
        return clamp / (MetricThread.Circle(outerDiameter) - MetricThread.Circle(innerDiameter));
    }
}
