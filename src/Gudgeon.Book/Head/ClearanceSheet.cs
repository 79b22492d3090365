using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Head;

/// <summary>Room between one valve and the piston against the crank.</summary>
/// <param name="Index">"inlet.1".</param>
/// <param name="Cold">Room as built, turned over by hand, m, at each of <see cref="ClearanceSheet.Angles"/>.</param>
/// <param name="Running">Room at the rev limit with everything that takes from it, m.</param>
/// <param name="Lift">Lift of the valve, m.</param>
/// <param name="Wanted">Least room wanted, cold, m.</param>
public sealed record RoomFigures(string Index, double[] Cold, double[] Running, double[] Lift, double Wanted)
{
    /// <summary>Least room as built.</summary>
    public required LeastRoom LeastCold { get; init; }

    /// <summary>Least room at the rev limit.</summary>
    public required LeastRoom LeastRunning { get; init; }

    /// <summary>What each thing takes from the least room by itself, m: timing off by its tolerance, lash closed up, valve thrown above its curve, rod stretched; no stretch, and none counted, when it is not known.</summary>
    public required (double Timing, double Lash, double Thrown, double? Stretch) Takes { get; init; }

    /// <summary>Least room by clay or dial gauge, m; null when it was not read.</summary>
    public double? Clay { get; init; }

    /// <summary>Room beside the valve in its pocket, m; null when it is not known.</summary>
    public double? Beside { get; init; }
}

/// <summary>Valve to piston: the room around overlap TDC, cold and at the rev limit.</summary>
/// <param name="Valves">Valves of which the room can be worked.</param>
/// <param name="Missing">What is wanted for the others, for people.</param>
public sealed record ClearanceSheet(IReadOnlyList<RoomFigures> Valves, IReadOnlyList<string> Missing)
{
    /// <summary>Crank angles after overlap TDC, rad.</summary>
    public static double[] Angles => ValveRoom.Angles;

    /// <summary>Of each side the valve with the least room, running.</summary>
    public IReadOnlyList<RoomFigures> Tightest => [.. Valves.GroupBy(v => v.Index.Split('.')[0]).Select(side => side.MinBy(v => v.LeastRunning.Room)!)];

    /// <summary>The caution that stands beside the numbers.</summary>
    public const string Caution = "A valve that meets a piston wrecks the engine: prove the room with clay or a dial gauge on every cylinder, the gasket fitted and tightened, before it turns under its own power. Piston rock and bearing clearance come on top.";

    /// <summary>The sheet of a build.</summary>
    /// <param name="now">The values that hold.</param>
    /// <param name="desk">Where an engine run is had, whose gas acts on the valves; null for none.</param>
    /// <exception cref="Values.BadInputException">Values of which no lobe or follower can be made.</exception>
    public static ClearanceSheet Of(Snapshot now, Duty.DutyDesk? desk = null)
    {
        var (valves, missing) = (new List<RoomFigures>(), new List<string>());
        foreach (var index in Checks.Instances.Valves(new View(now), Valve.Lift.Subject, Cam.Lift.Subject))
        {
            var view = new View(now, desk);
            if (ValveRoom.Of(view, index) is { } room)
            {
                valves.Add(Worked(view, index, room));
                if (ValveRoom.Caveat(view, index) is { Length: > 0 } caveat)
                {
                    missing.Add($"{index}: {caveat}");
                }

                if (view.Trace.Missing.Any())
                {
                    missing.Add($"{index}: the stretch of the rod is not counted yet; wanted: {Checks.Wanted.Words(view.Trace.Missing)}");
                }
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
        var taken = ValveRoom.Running(view, index);
        var cold = room.Least();
        double Takes(RoomTaken one) => cold.Room - room.Least(one).Room;
        return new RoomFigures(index, [.. Angles.Select(a => room.At(a))], [.. Angles.Select(a => room.At(a, taken))], [.. Angles.Select(a => room.Lift(a))], Checks.ValveTrain.ValveToPistonCheck.Wanted(view, index))
        {
            LeastCold = cold,
            LeastRunning = room.Least(taken),
            Takes = (Takes(new RoomTaken(Timing: taken.Timing)), Takes(new RoomTaken(Lash: taken.Lash)), Takes(new RoomTaken(Thrown: taken.Thrown)), view.Trace.Missing.Any() ? null : Takes(new RoomTaken(Piston: taken.Piston))),
            Clay = view.AmountIf(Valve.ClayClearance, index),
            Beside = (view.AmountIf(Valve.PocketDiameter, index) - view.AmountIf(Valve.HeadDiameter, index)) / 2,
        };
    }
}
