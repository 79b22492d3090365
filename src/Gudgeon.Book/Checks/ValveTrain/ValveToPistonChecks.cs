using Gudgeon.Book.Fields;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.ValveTrain;

/// <summary>What the checks of the room between valve and piston share.</summary>
public abstract class ValveRoomCheck : Check
{
    public override string Family => "valve train";

    public override string Caution => ClearanceSheet.Caution;

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Valves(view, Valve.Lift.Subject, Cam.Lift.Subject);

    private protected static string Place(View view, string index, LeastRoom least) => string.Join("; ", new[] { Place(least), ValveRoom.Caveat(view, index) }.Where(w => w.Length > 0));

    private static string Place(LeastRoom least) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"at {Math.Abs(least.Angle) * 180 / Math.PI:F0}° {(least.Angle < 0 ? "before" : "after")} overlap TDC");
}

/// <summary>Room between valve and piston as built, turned over by hand.</summary>
public sealed class ValveToPistonCheck : ValveRoomCheck
{
    public override string Id => "valve-piston";

    public override string Title => "Valve to piston, cold";

    public override string Source => "exact slider-crank travel along the stem less the lift curve; 2.0 mm on the inlet and 2.5 mm on the exhaust: common practice, no source";

    public override Judgement Examine(View view, string index)
    {
        var room = ValveRoom.Of(view, index);
        var least = room?.Least() ?? new LeastRoom(double.NaN, 0);
        return Judgement.AtLeast("least room", room?.Worked(view, least) ?? double.NaN, Wanted(view, index), Dimension.Length, "mm", "common practice, no source") with { Remark = room is null ? "" : Place(view, index, least) };
    }

    internal static double Wanted(View view, string index) => index.StartsWith("inlet", StringComparison.Ordinal)
        ? view.Limit("valve-piston.inlet", Dimension.Length, "mm", 2.0e-3)
        : view.Limit("valve-piston.exhaust", Dimension.Length, "mm", 2.5e-3);
}

/// <summary>Room left at the rev limit with timing off, lash closed up, the valve thrown and the rod stretched.</summary>
public sealed class RunningValveToPistonCheck : ValveRoomCheck
{
    public override string Id => "valve-piston-running";

    public override string Title => "Valve to piston at the rev limit";

    public override string Source => "the cold room less timing tolerance, lash, what the marched valve runs above its curve, and rod stretch (Hooke's law on the reciprocating pull at TDC), all at their worst together; 0.7 mm left: common practice, no source";

    public override Judgement Examine(View view, string index)
    {
        var room = ValveRoom.Of(view, index);
        var taken = ValveRoom.Running(view, index);
        var least = room?.Least(taken) ?? new LeastRoom(double.NaN, 0);
        return Judgement.AtLeast("least room", room?.Worked(view, least, taken) ?? double.NaN, view.Limit("valve-piston-running.min", Dimension.Length, "mm", 0.7e-3), Dimension.Length, "mm", "common practice, no source") with { Remark = room is null ? "" : Place(view, index, least) };
    }
}

/// <summary>Room beside the valve in its pocket.</summary>
public sealed class PocketCheck : ValveRoomCheck
{
    public override string Id => "valve-pocket";

    public override string Title => "Room beside the valve in its pocket";

    public override string Source => "half of pocket less valve head; 1.3 mm: common practice, no source";

    public override IEnumerable<string> Instances(View view) => base.Instances(view).Where(i => view.Knows(Valve.PocketDiameter, i));

    public override Judgement Examine(View view, string index) => Judgement.AtLeast(
        "room beside the valve",
        (view.Amount(Valve.PocketDiameter, index) - view.Amount(Valve.HeadDiameter, index)) / 2,
        view.Limit("valve-pocket.min", Dimension.Length, "mm", 1.3e-3),
        Dimension.Length,
        "mm",
        "common practice, no source");
}

/// <summary>The room found with clay or dial gauge against the room computed: they must tell the same story.</summary>
public sealed class ClayCheck : ValveRoomCheck
{
    public override string Id => "clay";

    public override string Title => "Valve to piston: clay against computed";

    public override string Source => "difference of the two; 0.3 mm, about what clay can be read to: common practice, no source";

    public override IEnumerable<string> Instances(View view) => base.Instances(view).Where(i => view.Knows(Valve.ClayClearance, i));

    public override Judgement Examine(View view, string index)
    {
        var computed = ValveRoom.Of(view, index)?.Least().Room ?? double.NaN;
        var clay = view.Amount(Valve.ClayClearance, index);
        return Judgement.AtMost("difference", Math.Abs(clay - computed), view.Limit("clay.max", Dimension.Length, "mm", 0.3e-3), Dimension.Length, "mm", "common practice, no source") with { Remark = $"{Valve.ClayClearance.Print(clay)} found, {Valve.ClayClearance.Print(computed)} computed" };
    }
}
