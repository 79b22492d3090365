using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Bolts as they are bought: lengths and mass.</summary>
public static class BoltBlank
{
    /// <summary>Nominal lengths of ISO 4014, ISO 4017 and ISO 4762, mm.</summary>
    private static readonly double[] Lengths = [6, 8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 100, 110, 120, 130, 140, 150, 160, 180, 200, 220, 240, 260, 280, 300];

    /// <summary>Standard length next above what is wanted, m.</summary>
    /// <param name="wanted">Length wanted from under the head: grip, washers and engagement, m.</param>
    [Formula("standard bolt length", "l = next of 6, 8, 10, 12, 16, 20, 25 … 70, 80 … 160, 180 … 300 mm from L up", "nominal lengths of ISO 4014, ISO 4017 and ISO 4762", Provenance = Provenance.FromMemory, Validity = "no standard makes every length in every thread")]
    [return: Quantity("standard length", Dimension.Length, "mm", Symbol = "l")]
    public static double StandardLength(
        [Quantity("length wanted", Dimension.Length, "mm", Symbol = "L", Above = 0)] double wanted)
    {
        foreach (var length in Lengths)
        {
            if (wanted <= (length * 1e-3) + 1e-7)
            {
                return length * 1e-3;
            }
        }

        throw new FormulaDomainException("length wanted: longer than any standard length");
    }

    /// <summary>Mass of a bolt, kg.</summary>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="length">Length from under the head, m.</param>
    /// <param name="threaded">Length of it that is threaded, m.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="head">Head form.</param>
    [Formula("bolt mass", "m = ρ (π / 4 d^2 (l - lt) + π / 4 (d - 0.649519 P)^2 lt + VK)", "volumes; the thread counts as a rod of its pitch diameter; heads VK of ISO 4014 (0.64 d high, 1.6 d across flats) and ISO 4762 (d high, 1.5 d wide less a socket 0.8 d wide and 0.5 d deep) with usual proportions", Provenance = Provenance.FromMemory, Validity = "within some percent; flanges and collars come on top")]
    [return: Quantity("mass", Dimension.Mass, "g", Symbol = "m")]
    public static double Mass(
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch,
        [Quantity("length", Dimension.Length, "mm", Symbol = "l", Above = 0)] double length,
        [Quantity("threaded length", Dimension.Length, "mm", Symbol = "lt", Min = 0)] double threaded,
        [Quantity("density", Dimension.Density, "kg/m³", Symbol = "ρ", Above = 0)] double density,
        [Quantity("head form", Dimension.Number)] BoltHead head = BoltHead.Hexagon)
    {
        FormulaDomainException.Unless(threaded <= length, "threaded length: must not be greater than the length");
        var cube = diameter * diameter * diameter;
        var headVolume = head switch
        {
            BoltHead.Hexagon => Math.Sqrt(3) / 2 * 1.6 * 1.6 * 0.64 * cube,
            BoltHead.Socket => ((Math.PI / 4 * 1.5 * 1.5) - (Math.Sqrt(3) / 2 * 0.8 * 0.8 * 0.5)) * cube,
            _ => 0,
        };
        var pitchDiameter = MetricThread.Sizes(diameter, pitch).PitchDiameter;
        return density * ((MetricThread.Circle(diameter) * (length - threaded)) + (MetricThread.Circle(pitchDiameter) * threaded) + headVolume);
    }
}
