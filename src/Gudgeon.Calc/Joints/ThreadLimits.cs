using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Limits of a bolt thread, tolerance class 6g.</summary>
/// <param name="MajorMax">Greatest major diameter, m.</param>
/// <param name="MajorMin">Least major diameter, m.</param>
/// <param name="PitchMax">Greatest pitch diameter, m.</param>
/// <param name="PitchMin">Least pitch diameter, m.</param>
public readonly record struct BoltThreadLimits(
    [Quantity("greatest major diameter", Dimension.Length, "mm", Symbol = "dmax")] double MajorMax,
    [Quantity("least major diameter", Dimension.Length, "mm", Symbol = "dmin")] double MajorMin,
    [Quantity("greatest pitch diameter", Dimension.Length, "mm", Symbol = "d2max")] double PitchMax,
    [Quantity("least pitch diameter", Dimension.Length, "mm", Symbol = "d2min")] double PitchMin);

/// <summary>Limits of a nut thread, tolerance class 6H.</summary>
/// <param name="PitchMax">Greatest pitch diameter, m.</param>
/// <param name="PitchMin">Least pitch diameter, m.</param>
/// <param name="MinorMax">Greatest minor diameter, m.</param>
/// <param name="MinorMin">Least minor diameter, m.</param>
public readonly record struct NutThreadLimits(
    [Quantity("greatest pitch diameter", Dimension.Length, "mm", Symbol = "D2max")] double PitchMax,
    [Quantity("least pitch diameter", Dimension.Length, "mm", Symbol = "D2min")] double PitchMin,
    [Quantity("greatest minor diameter", Dimension.Length, "mm", Symbol = "D1max")] double MinorMax,
    [Quantity("least minor diameter", Dimension.Length, "mm", Symbol = "D1min")] double MinorMin);

/// <summary>Limits of size of metric threads in the classes of general use, before plating.</summary>
public static class ThreadLimits
{
    private const double Micrometre = 1e-6;

    /// <summary>Pitch in mm; upper deviation g, tolerance Td of grade 6 and TD1 of grade 6, in µm (ISO 965-1).</summary>
    private static readonly (double Pitch, double Deviation, double Major, double Minor)[] ByPitch =
    [
        (0.35, 19, 85, 100), (0.4, 19, 95, 112), (0.45, 20, 100, 125), (0.5, 20, 106, 140), (0.6, 21, 125, 160),
        (0.7, 22, 140, 180), (0.75, 22, 140, 190), (0.8, 24, 150, 200), (1, 26, 180, 236), (1.25, 28, 212, 265),
        (1.5, 32, 236, 300), (1.75, 34, 265, 335), (2, 38, 280, 375), (2.5, 42, 335, 450), (3, 48, 375, 500),
        (3.5, 53, 425, 560), (4, 60, 475, 600), (4.5, 63, 500, 670), (5, 71, 530, 710), (5.5, 75, 560, 750), (6, 80, 600, 800),
    ];

    /// <summary>Diameter ranges of the pitch-diameter tolerance, mm: over … up to and including.</summary>
    private static readonly double[] Ranges = [0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90, 180, 355];

    /// <summary>One decade of the R40 series of preferred numbers.</summary>
    private static readonly double[] R40 =
    [
        100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300,
        315, 335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950,
    ];

    /// <summary>Limits of a bolt thread in tolerance class 6g.</summary>
    /// <param name="diameter">Nominal diameter, m.</param>
    /// <param name="pitch">A standard pitch, m.</param>
    [Formula("metric thread limits 6g", "dmax = d - es; dmin = dmax - Td; d2max = d2 - es; d2min = d2max - Td2", "ISO 965-1:2013", Provenance = Provenance.FromMemory, Validity = "standard pitches from 0.35 to 6 mm, before plating; basic d2 rounded to 1 µm; Td2 = 90 P^0.4 D^0.1 µm, P and the mean D of the diameter range in mm, rounded to R40")]
    public static BoltThreadLimits Bolt(
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch)
    {
        var (_, deviation, major, _) = Row(pitch);
        var majorMax = diameter - (deviation * Micrometre);
        var pitchMax = Printed(MetricThread.Sizes(diameter, pitch).PitchDiameter) - (deviation * Micrometre);
        var pitchTolerance = Preferred(PitchStep(diameter, pitch));
        return new BoltThreadLimits(majorMax, majorMax - (major * Micrometre), pitchMax, pitchMax - (pitchTolerance * Micrometre));
    }

    /// <summary>Limits of a nut thread in tolerance class 6H.</summary>
    /// <param name="diameter">Nominal diameter, m.</param>
    /// <param name="pitch">A standard pitch, m.</param>
    [Formula("metric thread limits 6H", "D2min = d2; D2max = d2 + TD2; D1min = D1; D1max = D1 + TD1", "ISO 965-1:2013", Provenance = Provenance.FromMemory, Validity = "standard pitches from 0.35 to 6 mm, before plating; TD2 is five R40 steps (a factor of 1.32) above Td2 of the bolt")]
    public static NutThreadLimits Nut(
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch)
    {
        var minorTolerance = Row(pitch).Minor * Micrometre;
        var sizes = MetricThread.Sizes(diameter, pitch);
        var pitchMin = Printed(sizes.PitchDiameter);
        var minorMin = Printed(sizes.MinorDiameter);
        var pitchTolerance = Preferred(PitchStep(diameter, pitch) + 5);
        return new NutThreadLimits(
            pitchMin + (pitchTolerance * Micrometre),
            pitchMin,
            minorMin + minorTolerance,
            minorMin);
    }

    /// <summary>Basic sizes enter the limits as ISO 724 prints them, to the micrometre.</summary>
    private static double Printed(double size) => Math.Round(size / Micrometre) * Micrometre;

    private static (double Pitch, double Deviation, double Major, double Minor) Row(double pitch)
    {
        foreach (var row in ByPitch)
        {
            if (Math.Abs(row.Pitch - (pitch * 1e3)) < 1e-4)
            {
                return row;
            }
        }

        throw new FormulaDomainException("pitch: not a standard metric pitch from 0.35 to 6 mm");
    }

    /// <summary>Place of the bolt's pitch-diameter tolerance (grade 6) in the R40 series, counted from 1 µm.</summary>
    private static int PitchStep(double diameter, double pitch)
    {
        var millimetres = diameter * 1e3;
        var range = Array.FindIndex(Ranges, end => millimetres <= end + 1e-9);
        FormulaDomainException.Unless(range > 0, "thread diameter: outside 1 to 355 mm");

        // The standard's table prints 75 µm here, one step under its own formula.
        if (range == 3 && Math.Abs(pitch - 0.5e-3) < 1e-7)
        {
            return 75;
        }

        var mean = Math.Sqrt(Ranges[range - 1] * Ranges[range]);
        return (int)Math.Round(40 * Math.Log10(90 * Math.Pow(pitch * 1e3, 0.4) * Math.Pow(mean, 0.1)));
    }

    private static double Preferred(int step) => R40[step % 40] * Math.Pow(10, (step / 40) - 2);
}
