using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Head;

/// <summary>Room between one valve and the piston against the crank.</summary>
/// <param name="Index">"inlet.1".</param>
/// <param name="Cold">Room as built, turned over by hand, m, at each of <see cref="ClearanceSheet.Angles"/>.</param>
/// <param name="Running">Room at the rev limit with everything that takes from it, m.</param>
/// <param name="Lift">Lift of the valve, m.</param>
/// <param name="Facts">Least room, what takes from it, what was found with clay.</param>
/// <param name="Wanted">Least room wanted, cold, m.</param>
public sealed record RoomFigures(string Index, double[] Cold, double[] Running, double[] Lift, IReadOnlyList<Fact> Facts, double Wanted)
{
    /// <summary>Least room as built, m.</summary>
    public double LeastCold => Cold.Min();

    /// <summary>Least room at the rev limit, m.</summary>
    public double LeastRunning => Running.Min();
}

/// <summary>Valve to piston: the room around overlap TDC, cold and at the rev limit.</summary>
/// <param name="Valves">Valves of which the room can be worked.</param>
/// <param name="Missing">What is wanted for the others, for people.</param>
public sealed record ClearanceSheet(IReadOnlyList<RoomFigures> Valves, IReadOnlyList<string> Missing)
{
    /// <summary>Crank angles after overlap TDC, rad.</summary>
    public static double[] Angles => ValveRoom.Angles;

    /// <summary>The caution that stands beside the numbers.</summary>
    public const string Caution = "A valve that meets a piston wrecks the engine: prove the room with clay or a dial gauge on every cylinder, the gasket fitted and tightened, before it turns under its own power. Piston rock and bearing clearance come on top.";

    /// <summary>The sheet of a build.</summary>
    /// <exception cref="BadInputException">Values of which no lobe or follower can be made.</exception>
    public static ClearanceSheet Of(Snapshot now)
    {
        var (valves, missing) = (new List<RoomFigures>(), new List<string>());
        foreach (var index in Checks.Instances.Valves(new View(now), Valve.Lift.Subject, Cam.Lift.Subject))
        {
            var view = new View(now);
            if (ValveRoom.Of(view, index) is { } room)
            {
                valves.Add(Worked(view, index, room));
            }
            else
            {
                missing.Add($"{index}: not known yet: {string.Join(", ", view.Trace.Missing)}");
            }
        }

        return new ClearanceSheet(valves, missing);
    }

    private static RoomFigures Worked(View view, string index, ValveRoom room)
    {
        var taken = ValveRoom.Running(view, index, 0);
        return new RoomFigures(
            index,
            [.. Angles.Select(a => room.At(a))],
            [.. Angles.Select(a => room.At(a, taken))],
            [.. Angles.Select(a => room.Lift(a))],
            [.. Budget(view, index, room, taken)],
            Checks.ValveTrain.ValveToPistonCheck.Wanted(view, index));
    }

    private static IEnumerable<Fact> Budget(View view, string index, ValveRoom room, RoomTaken taken)
    {
        var cold = room.Least();
        yield return Length("least room, cold", cold.Room) with { Remark = Place(cold) };
        yield return Length("timing off by its tolerance takes", cold.Room - room.Least(new RoomTaken(taken.Timing, 0, 0)).Room) with { Remark = Cam.CentreTolerance.Print(taken.Timing) + " either way" };
        yield return Length("lash closed up takes", cold.Room - room.Least(new RoomTaken(0, taken.Lift, 0)).Room);
        yield return Length("rod stretch at the rev limit takes", cold.Room - room.Least(new RoomTaken(0, 0, taken.Piston)).Room);
        var running = room.Least(taken);
        yield return Length("least room, running", running.Room) with { Remark = Place(running) };
        if (view.AmountIf(Valve.ClayClearance, index) is { } clay)
        {
            yield return Length("least room by clay or dial gauge", clay) with { Remark = $"{Figures.Print(Math.Abs(clay - cold.Room), Dimension.Length, "mm", 2)} {(clay < cold.Room ? "less" : "more")} than computed" };
        }

        if (view.AmountIf(Valve.PocketDiameter, index) is { } pocket && view.AmountIf(Valve.HeadDiameter, index) is { } head)
        {
            yield return Length("room beside the valve in its pocket", (pocket - head) / 2);
        }
    }

    private static Fact Length(string name, double metres) => new(name, metres, Dimension.Length, "mm");

    private static string Place(LeastRoom least) => $"at {Figures.Print(Math.Abs(least.Angle), Dimension.Angle, "°", 3)} {(least.Angle < 0 ? "before" : "after")} overlap TDC";
}
