using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>How far a slotted sprocket must be moved.</summary>
/// <param name="CamAngle">Angle to turn the cam in its sprocket, rad of the cam.</param>
/// <param name="Move">Move along the slot, m.</param>
public readonly record struct SlotMove(
    [Quantity("angle of the cam in its sprocket", Dimension.Angle, "°", Symbol = "γ", Help = "cam degrees")] double CamAngle,
    [Quantity("move along the slot", Dimension.Length, "mm", Symbol = "x")] double Move);

/// <summary>The pair of holes of a vernier sprocket that comes nearest to a correction.</summary>
/// <param name="Step">Least step that the two circles of holes give, crank rad.</param>
/// <param name="Hub">Hub hole to use, counted forwards from the one that is used now.</param>
/// <param name="Sprocket">Sprocket hole to use with it, counted forwards from the one that is used now.</param>
/// <param name="Correction">Correction that it gives, crank rad.</param>
/// <param name="Left">What remains, crank rad.</param>
public readonly record struct VernierHoles(
    [Quantity("least step", Dimension.Angle, "°", Symbol = "q", Help = "crank degrees")] double Step,
    [Quantity("hub hole", Dimension.Number, Symbol = "i", Help = "counted forwards from the one used now")] double Hub,
    [Quantity("sprocket hole", Dimension.Number, Symbol = "k", Help = "counted forwards from the one used now")] double Sprocket,
    [Quantity("correction given", Dimension.Angle, "°", Symbol = "g", Help = "crank degrees")] double Correction,
    [Quantity("left over", Dimension.Angle, "°", Symbol = "e", Help = "crank degrees")] double Left);

/// <summary>Corrections of cam timing at the sprocket. A positive correction advances the cam: it opens earlier.</summary>
public static class SprocketSetting
{
    private const string Turned = "Turn the engine twice by hand afterwards, feel for valves on pistons, and read the wheel again; lock the sprocket's bolts as the maker says.";

    /// <summary>Move along the slots of a slotted sprocket.</summary>
    /// <param name="correction">Correction wanted, crank rad.</param>
    /// <param name="radius">Radius of the slots, m.</param>
    [Formula("slotted sprocket move", "γ = c / 2; x = γ r", "arc of a circle; the cam turns at half crank speed", Provenance = Provenance.Definition, Caution = Turned)]
    public static SlotMove Slot(
        [Quantity("correction wanted", Dimension.Angle, "°", Symbol = "c", Min = -Math.PI, Max = Math.PI, Help = "crank degrees, earlier positive")] double correction,
        [Quantity("radius of the slots", Dimension.Length, "mm", Symbol = "r", Above = 0)] double radius) =>
        new(correction / 2, correction / 2 * radius);

    /// <summary>Crank angle that one tooth of the cam sprocket is worth, rad.</summary>
    /// <param name="teeth">Teeth of the cam sprocket.</param>
    [Formula("one tooth of the cam sprocket", "t = 4 π / z", "one tooth in the teeth of the wheel; the cam turns at half crank speed", Provenance = Provenance.Definition)]
    [return: Quantity("crank angle of a tooth", Dimension.Angle, "°", Symbol = "t")]
    public static double Tooth([Quantity("teeth of the cam sprocket", Dimension.Number, Symbol = "z", Min = 2)] int teeth) => 4 * Math.PI / teeth;

    /// <summary>The pair of holes of hub and sprocket that comes nearest to a correction.</summary>
    /// <param name="correction">Correction wanted, crank rad.</param>
    /// <param name="hub">Holes of the hub, evenly spaced.</param>
    /// <param name="sprocket">Holes of the sprocket, evenly spaced.</param>
    [Formula("vernier sprocket", "q = 4 π / lcm(n1, n2); g = 4 π (k / n2 - i / n1); e = c - g", "two circles of evenly spaced holes; the cam turns at half crank speed", Provenance = Provenance.Definition, Validity = "one pair in line; counted forwards in the sense of rotation; the nearest of all pairs", Caution = Turned)]
    public static VernierHoles Vernier(
        [Quantity("correction wanted", Dimension.Angle, "°", Symbol = "c", Min = -Math.PI, Max = Math.PI, Help = "crank degrees, earlier positive")] double correction,
        [Quantity("holes of the hub", Dimension.Number, Symbol = "n1", Min = 2, Max = 60)] int hub,
        [Quantity("holes of the sprocket", Dimension.Number, Symbol = "n2", Min = 2, Max = 60)] int sprocket)
    {
        const double CrankTurn = 4 * Math.PI;
        var (best, bestHub, bestSprocket, given) = (double.PositiveInfinity, 0, 0, 0.0);
        for (var i = 0; i < hub; i++)
        {
            for (var k = 0; k < sprocket; k++)
            {
                // Pairs that differ by whole turns of the cam are the same setting.
                var angle = CrankTurn * Math.IEEERemainder(((double)k / sprocket) - ((double)i / hub), 1);
                if (Math.Abs(correction - angle) < best - 1e-12)
                {
                    (best, bestHub, bestSprocket, given) = (Math.Abs(correction - angle), i, k, angle);
                }
            }
        }

        var multiple = hub * sprocket / Greatest(hub, sprocket);
        return new VernierHoles(CrankTurn / multiple, bestHub, bestSprocket, given, correction - given);
    }

    private static int Greatest(int a, int b) => b == 0 ? a : Greatest(b, a % b);
}
