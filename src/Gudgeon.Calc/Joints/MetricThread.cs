using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Basic sizes of an ISO metric thread.</summary>
/// <param name="PitchDiameter">d2, m.</param>
/// <param name="CoreDiameter">d3, root of the bolt thread, m.</param>
/// <param name="MinorDiameter">D1, minor diameter of the nut thread, m.</param>
/// <param name="StressDiameter">d0, diameter of the stress area, m.</param>
/// <param name="StressArea">As, m².</param>
/// <param name="CoreArea">A3, m².</param>
/// <param name="LeadAngle">Lead angle at the pitch diameter, rad.</param>
public readonly record struct ThreadSizes(
    [Quantity("pitch diameter", Dimension.Length, "mm", Symbol = "d2")] double PitchDiameter,
    [Quantity("core diameter", Dimension.Length, "mm", Symbol = "d3")] double CoreDiameter,
    [Quantity("minor diameter of the nut thread", Dimension.Length, "mm", Symbol = "D1")] double MinorDiameter,
    [Quantity("stress diameter", Dimension.Length, "mm", Symbol = "d0")] double StressDiameter,
    [Quantity("stress area", Dimension.Area, "mm²", Symbol = "As")] double StressArea,
    [Quantity("core area", Dimension.Area, "mm²", Symbol = "A3")] double CoreArea,
    [Quantity("lead angle", Dimension.Angle, "°", Symbol = "φ")] double LeadAngle);

/// <summary>Geometry of ISO metric threads (60° flanks).</summary>
public static class MetricThread
{
    /// <summary>Cosine of the flank half angle, 30°.</summary>
    internal static readonly double CosFlank = Math.Sqrt(3) / 2;

    /// <summary>Basic sizes, stress area and lead angle of an ISO metric thread.</summary>
    /// <param name="diameter">Nominal diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    [Formula("metric thread sizes", "d2 = d - 0.649519 P; d3 = d - 1.226869 P; D1 = d - 1.082532 P; d0 = (d2 + d3) / 2; As = π / 4 d0^2; A3 = π / 4 d3^2; φ = atan(P / (π d2))", "ISO 724; stress area ISO 898-1:2013, 9.1.6.1")]
    public static ThreadSizes Sizes(
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch)
    {
        FormulaDomainException.Unless(pitch < diameter / 2, "pitch: must be less than half the thread diameter");
        var height = CosFlank * pitch;
        var pitchDiameter = diameter - (0.75 * height);
        var core = diameter - (17.0 / 12 * height);
        var stress = (pitchDiameter + core) / 2;
        return new ThreadSizes(
            pitchDiameter,
            core,
            diameter - (1.25 * height),
            stress,
            Circle(stress),
            Circle(core),
            LeadAngle(pitchDiameter, pitch));
    }

    /// <summary>Lead angle of a thread at its pitch diameter, rad.</summary>
    /// <param name="pitchDiameter">Pitch diameter, m.</param>
    /// <param name="lead">Lead, m; the pitch of a single-start thread.</param>
    [Formula("thread lead angle", "φ = atan(P / (π d2))", "development of the helix", Provenance = Provenance.Definition)]
    [return: Quantity("lead angle", Dimension.Angle, "°", Symbol = "φ")]
    public static double LeadAngle(
        [Quantity("pitch diameter", Dimension.Length, "mm", Symbol = "d2", Above = 0)] double pitchDiameter,
        [Quantity("lead", Dimension.Length, "mm", Symbol = "P", Above = 0)] double lead) =>
        Math.Atan(lead / (Math.PI * pitchDiameter));

    internal static double Circle(double diameter) => Math.PI / 4 * diameter * diameter;
}
