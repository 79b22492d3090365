using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Shear area of each thread per length of engagement.</summary>
/// <param name="Internal">Nut thread, m²/m.</param>
/// <param name="External">Bolt thread, m²/m.</param>
public readonly record struct ThreadShear(
    [Quantity("internal shear area per length", Dimension.Length, "mm", Symbol = "An", Help = "mm² per mm of engagement")] double Internal,
    [Quantity("external shear area per length", Dimension.Length, "mm", Symbol = "Ab", Help = "mm² per mm of engagement")] double External);

/// <summary>Stripping of threads: shear areas and the engagement that a joint needs.</summary>
public static class ThreadStripping
{
    private const string Source = "FED-STD-H28/2B and Machinery's Handbook, 24th ed., length of engagement";

    /// <summary>Shear areas of a thread pair at its worst limits, per length of engagement.</summary>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="majorMin">Least major diameter of the bolt thread, m.</param>
    /// <param name="pitchMin">Least pitch diameter of the bolt thread, m.</param>
    /// <param name="nutPitchMax">Greatest pitch diameter of the nut thread, m.</param>
    /// <param name="nutMinorMax">Greatest minor diameter of the nut thread, m.</param>
    [Formula("thread shear areas", "An = π / P dmin (P / 2 + 0.57735 (dmin - D2max)); Ab = π / P D1max (P / 2 + 0.57735 (d2min - D1max))", Source, Validity = "60° threads")]
    public static ThreadShear ShearAreas(
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch,
        [Quantity("least major diameter of the bolt", Dimension.Length, "mm", Symbol = "dmin", Above = 0)] double majorMin,
        [Quantity("least pitch diameter of the bolt", Dimension.Length, "mm", Symbol = "d2min", Above = 0)] double pitchMin,
        [Quantity("greatest pitch diameter of the nut", Dimension.Length, "mm", Symbol = "D2max", Above = 0)] double nutPitchMax,
        [Quantity("greatest minor diameter of the nut", Dimension.Length, "mm", Symbol = "D1max", Above = 0)] double nutMinorMax)
    {
        var tangent = 1 / Math.Sqrt(3);
        var nut = Math.PI / pitch * majorMin * ((pitch / 2) + (tangent * (majorMin - nutPitchMax)));
        var bolt = Math.PI / pitch * nutMinorMax * ((pitch / 2) + (tangent * (pitchMin - nutMinorMax)));
        FormulaDomainException.Unless(nut > 0 && bolt > 0, "least major diameter of the bolt: the threads do not overlap at these limits");
        return new ThreadShear(nut, bolt);
    }

    /// <summary>Shear areas of a metric thread 6g in 6H at the worst limits, per length of engagement.</summary>
    /// <param name="diameter">Nominal diameter, m.</param>
    /// <param name="pitch">Standard pitch, m.</param>
    [Formula("thread shear areas 6g/6H", "An = π / P dmin (P / 2 + 0.57735 (dmin - D2max)); Ab = π / P D1max (P / 2 + 0.57735 (d2min - D1max))", Source + "; limits ISO 965-1:2013", Validity = "limits dmin, d2min of class 6g and D2max, D1max of class 6H for the diameter d and the pitch P")]
    public static ThreadShear ShearAreas(
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch)
    {
        var bolt = ThreadLimits.Bolt(diameter, pitch);
        var nut = ThreadLimits.Nut(diameter, pitch);
        return ShearAreas(pitch, bolt.MajorMin, bolt.PitchMin, nut.PitchMax, nut.MinorMax);
    }

    /// <summary>Engagement at which the bolt breaks before its own thread strips, both of equal strength, m.</summary>
    /// <param name="stressArea">Stress area of the bolt, m².</param>
    /// <param name="externalShear">Shear area of the bolt thread per length, m.</param>
    [Formula("engagement length for equal strength", "Le = 2 At / Ab", Source + ", formula 1", Validity = "bolt and nut of one material; shear strength taken as half of the tensile strength")]
    [return: Quantity("engagement", Dimension.Length, "mm", Symbol = "Le")]
    public static double EqualStrength(
        [Quantity("stress area", Dimension.Area, "mm²", Symbol = "At", Above = 0)] double stressArea,
        [Quantity("external shear area per length", Dimension.Length, "mm", Symbol = "Ab", Above = 0)] double externalShear) =>
        2 * stressArea / externalShear;

    /// <summary>Engagement at which the bolt breaks before the softer nut thread strips, m.</summary>
    /// <param name="stressArea">Stress area of the bolt, m².</param>
    /// <param name="boltStrength">Tensile strength of the bolt, Pa.</param>
    /// <param name="internalShear">Shear area of the nut thread per length, m.</param>
    /// <param name="shearStrength">Shear strength of the nut material, Pa.</param>
    [Formula("engagement length for a soft nut thread", "Le = At Rm / (An τB)", "equilibrium of breaking and stripping force; " + Source, Provenance = Provenance.Definition, Caution = "Shear strength of cast aluminium is commonly taken as 0.6 of its tensile strength; add the runout and the chamfer.")]
    [return: Quantity("engagement", Dimension.Length, "mm", Symbol = "Le")]
    public static double SoftNut(
        [Quantity("stress area", Dimension.Area, "mm²", Symbol = "At", Above = 0)] double stressArea,
        [Quantity("tensile strength of the bolt", Dimension.Pressure, "MPa", Symbol = "Rm", Above = 0)] double boltStrength,
        [Quantity("internal shear area per length", Dimension.Length, "mm", Symbol = "An", Above = 0)] double internalShear,
        [Quantity("shear strength of the nut material", Dimension.Pressure, "MPa", Symbol = "τB", Above = 0)] double shearStrength) =>
        stressArea * boltStrength / (internalShear * shearStrength);

    /// <summary>Axial force that strips a thread, N.</summary>
    /// <param name="shearAreaPerLength">Shear area per length of the thread that strips, m.</param>
    /// <param name="engagement">Engaged length of full thread, m.</param>
    /// <param name="shearStrength">Shear strength of that thread's material, Pa.</param>
    [Formula("thread stripping force", "F = A Le τB", "shear area times shear strength; " + Source, Provenance = Provenance.Definition)]
    [return: Quantity("stripping force", Dimension.Force, "kN", Symbol = "F")]
    public static double StrippingForce(
        [Quantity("shear area per length", Dimension.Length, "mm", Symbol = "A", Above = 0)] double shearAreaPerLength,
        [Quantity("engagement", Dimension.Length, "mm", Symbol = "Le", Above = 0)] double engagement,
        [Quantity("shear strength", Dimension.Pressure, "MPa", Symbol = "τB", Above = 0)] double shearStrength) =>
        shearAreaPerLength * engagement * shearStrength;

    /// <summary>Diameter of the thread that a wire insert needs in the part, m.</summary>
    /// <param name="diameter">Thread diameter of the bolt, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    [Formula("wire insert thread", "D = d + 1.299038 P", "tapped thread for helical wire inserts: basic major diameter by two thread heights of 0.75 H", Provenance = Provenance.FromMemory)]
    [return: Quantity("thread diameter of the part", Dimension.Length, "mm", Symbol = "D")]
    public static double WireInsertThread(
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch) =>
        diameter + (1.5 * MetricThread.CosFlank * pitch);

    /// <summary>Greatest tensile strength that a bolt of a specified least strength may have, Pa.</summary>
    /// <param name="least">Specified tensile strength, Pa.</param>
    [Formula("greatest tensile strength of a bolt", "Rmax = 1.2 Rm", "VDI 2230-1:2003, R11", Provenance = Provenance.FromMemory, Validity = "where the bolts of the batch were not pulled; classes 8.8 to 12.9, for other metals common practice without a source")]
    [return: Quantity("greatest tensile strength", Dimension.Pressure, "MPa", Symbol = "Rmax")]
    public static double GreatestStrength(
        [Quantity("tensile strength of the bolt", Dimension.Pressure, "MPa", Symbol = "Rm", Above = 0)] double least) =>
        1.2 * least;

    /// <summary>Engagement of two threads of different strength at which the bolt breaks before either strips, m.</summary>
    /// <param name="boltStrength">Greatest tensile strength of the bolt, Pa.</param>
    /// <param name="stressArea">Stress area, m².</param>
    /// <param name="internalShear">Internal shear area per length, m.</param>
    /// <param name="externalShear">External shear area per length, m.</param>
    /// <param name="nutShear">Shear strength of the tapped part, Pa.</param>
    [Formula("engagement length wanted", "Le = max(At Rm / (An τB), At / (0.6 Ab))", "equilibrium of breaking and stripping force; shear strength of a bolt taken as 0.6 of its tensile strength; " + Source, Provenance = Provenance.Definition, Caution = "Full thread only: add the chamfer of the bolt's end and of the hole.")]
    [return: Quantity("engagement", Dimension.Length, "mm", Symbol = "Le")]
    public static double Wanted(
        [Quantity("tensile strength of the bolt", Dimension.Pressure, "MPa", Symbol = "Rm", Above = 0)] double boltStrength,
        [Quantity("stress area", Dimension.Area, "mm²", Symbol = "At", Above = 0)] double stressArea,
        [Quantity("internal shear area per length", Dimension.Length, "mm", Symbol = "An", Above = 0)] double internalShear,
        [Quantity("external shear area per length", Dimension.Length, "mm", Symbol = "Ab", Above = 0)] double externalShear,
        [Quantity("shear strength of the tapped part", Dimension.Pressure, "MPa", Symbol = "τB", Above = 0)] double nutShear) =>
        stressArea * Math.Max(boltStrength / (internalShear * nutShear), 1 / (0.6 * externalShear));
}
