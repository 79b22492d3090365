using Gudgeon.Book.Checks;
using Gudgeon.Book.Checks.Chamber;
using Gudgeon.Book.Checks.Motion;
using Gudgeon.Book.Checks.Rods;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Chamber;
using Gudgeon.Calc.Crank;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>What the squish clearance comes down to at the rev limit. SI; null where it is not known.</summary>
/// <param name="Cold">As built, m.</param>
/// <param name="Takes">What each thing takes from it, m; negative where it gives.</param>
/// <param name="Left">What is left, m.</param>
public sealed record SquishAtSpeed(double? Cold, IReadOnlyList<(string Name, double? Takes)> Takes, double? Left)
{
    /// <summary>The same as numbers of a sheet.</summary>
    public IReadOnlyList<Fact> Facts =>
    [
        RodSheet.Length("clearance, cold", Cold),
        .. Takes.Select(t => RodSheet.Length($"taken: {t.Name}", t.Takes)),
        RodSheet.Length("clearance at the rev limit", Left),
    ];
}

/// <summary>One piston with pin and rings.</summary>
/// <param name="Cylinder">Whose.</param>
/// <param name="Pin">Numbers of the gudgeon pin.</param>
/// <param name="Piston">Numbers of the piston in its bore.</param>
/// <param name="Rings">Numbers of the rings.</param>
/// <param name="Squish">The squish clearance at speed.</param>
/// <param name="Hardest">Its cylinder at the hardest speeds of the run.</param>
public sealed record PistonFigures(string Cylinder, IReadOnlyList<Fact> Pin, IReadOnlyList<Fact> Piston, IReadOnlyList<Fact> Rings, SquishAtSpeed Squish, IReadOnlyList<(double Speed, ThrowLoads Loads)> Hardest);

/// <summary>Gudgeon pins, pistons, rings and the clearances that move.</summary>
/// <param name="Pistons">One for each cylinder.</param>
/// <param name="Missing">What is wanted for the rest, in one sentence; empty when nothing is.</param>
public sealed record PistonSheet(IReadOnlyList<PistonFigures> Pistons, string Missing)
{
    /// <summary>What the numbers are and are not.</summary>
    public const string Remark = "Hot clearances rest on the temperatures that are given, mostly assumed, and on round parts that grow freely; cam and barrel of the skirt are in the maker's cold clearance. Pin stresses are a textbook's, for a short beam and a ring.";

    /// <summary>What can hurt.</summary>
    public const string Caution = "Circlips fly: cover them when they come out, eyes behind glasses, and fit new ones, open side up or down. A piston that seizes locks the rear wheel.";

    /// <summary>What stands beside the step.</summary>
    public static readonly IReadOnlyList<string> Remarks =
    [
        "Ring gaps with the ring squared in its own bore, below the wear step; file towards the inside and break the edges (common practice, no source).",
        "Piston and bore are measured at the same temperature, the piston at its maker's height across the thrust faces.",
        "The gudgeon pin goes in by thumb when the piston is hand-warm: a pin that wants a hammer wants measuring (common practice, no source).",
    ];

    /// <summary>All its numbers, each group with its title.</summary>
    public IEnumerable<(string Title, IReadOnlyList<Fact> Facts)> Groups => Pistons.SelectMany(p => new[]
    {
        (RodSheet.Named("gudgeon pin", p.Cylinder), p.Pin),
        (RodSheet.Named("piston", p.Cylinder), p.Piston),
        (RodSheet.Named("rings of piston", p.Cylinder), p.Rings),
        (RodSheet.Named("squish of cylinder", p.Cylinder), p.Squish.Facts),
    });

    /// <summary>The sheet of the values that hold.</summary>
    /// <param name="view">With a desk: pin loads and side thrust take an engine run.</param>
    public static PistonSheet Of(View view)
    {
        var pistons = Sketch.Keys(Instances.Cylinders(view)).Select(c => Of(view, c)).ToList();
        return new PistonSheet(pistons, view.Trace.Missing.Any() ? $"Not known yet; wanted: {Wanted.Words(view.Trace.Missing)}." : "");
    }

    private static PistonFigures Of(View view, string cylinder)
    {
        var duty = new RodDuty(view, cylinder);
        return new PistonFigures(cylinder, [.. PinFacts(new LoadedPin(view, cylinder))], [.. PistonFacts(view, cylinder, duty)], [.. RingFacts(view, cylinder)], Stack(view, cylinder), duty.Hardest);
    }

    private static IEnumerable<Fact> PinFacts(LoadedPin pin)
    {
        var (push, pull) = (pin.Push, pin.Pull);
        var (stress, oval) = (Sketch.Known<PinStresses>(() => pin.Stress(push.Load)), Sketch.Known<PinOvality>(() => pin.Ovality(push.Load)));
        return
        [
            RodSheet.Force("greatest push on the pin", Sketch.Known(() => push.Load)) with { Remark = RodSheet.At(push.Speed) },
            RodSheet.Force("pull on the pin at overlap", Sketch.Known(() => pull)),
            RodSheet.Stress("bending", stress?.Bending),
            new Fact("safety of bending against fatigue", Sketch.Known(() => pin.Swing(pin.Stress(push.Load).Bending, pin.Stress(pull).Bending).Safety), Dimension.Number, ""),
            RodSheet.Stress("shear", stress?.Shear),
            RodSheet.Length("goes oval by", oval?.Growth),
            RodSheet.Stress("stress of that in the bore", oval?.Bore),
            new Fact("safety of the bore against fatigue", Sketch.Known(() => pin.Swing(pin.Ovality(push.Load).Bore, pin.Ovality(pull).Bore).Safety), Dimension.Number, ""),
            RodSheet.Stress("pressure in the small end", stress?.RodPressure),
            RodSheet.Stress("pressure in the bosses", stress?.BossPressure),
        ];
    }

    private static IEnumerable<Fact> PistonFacts(View view, string cylinder, RodDuty duty)
    {
        var (side, speed) = duty.Side;
        return
        [
            new Fact("mean speed at the rev limit", Sketch.Known(() => view.Work(PistonSpeed.Mean, view.Amount(Crank.Stroke), view.Amount(Engine.RevLimit))), Dimension.Speed, "m/s"),
            new Fact("acceleration at TDC, rev limit", Sketch.Known(() => Acceleration(view, cylinder)), Dimension.Acceleration, "m/s²"),
            RodSheet.Length("clearance in the bore, cold", Sketch.Known(() => view.Amount(Cylinder.Bore, cylinder) - view.Amount(Piston.Diameter, cylinder))),
            RodSheet.Length("clearance in the bore, hot", Sketch.Known(() => PistonClearanceHotCheck.Left(view, cylinder))),
            RodSheet.Force("greatest side thrust", Sketch.Known(() => side)) with { Remark = RodSheet.At(speed) },
            RodSheet.Stress("pressure on the skirt", Sketch.Known(() => view.Work(PistonClearance.SkirtPressure, side, view.Amount(Piston.Diameter, cylinder), view.Amount(Piston.SkirtLength, cylinder)))),
        ];
    }

    private static IEnumerable<Fact> RingFacts(View view, string cylinder) =>
    [
        RodSheet.Length("top ring gap, cold", view.AmountIf(Piston.TopRingGap, cylinder)),
        RodSheet.Length("top ring gap, hot", Sketch.Known(() => TopRingGapHotCheck.Left(view, cylinder))),
        RodSheet.Length("second ring gap, cold", view.AmountIf(Piston.SecondRingGap, cylinder)),
        RodSheet.Length("side clearance, top ring", Sketch.Known(() => view.Amount(Piston.TopGroove, cylinder) - view.Amount(Piston.TopRingHeight, cylinder))),
        RodSheet.Length("side clearance, second ring", Sketch.Known(() => view.Amount(Piston.SecondGroove, cylinder) - view.Amount(Piston.SecondRingHeight, cylinder))),
        RodSheet.Length("room behind the top ring", Sketch.Known(() => TopRingBackCheck.Room(view, cylinder))),
    ];

    private static SquishAtSpeed Stack(View view, string cylinder)
    {
        double? cold = Sketch.Known(() => SquishCheck.Cold(view, cylinder)), stretch = Sketch.Known(() => RunningSquishCheck.Stretch(view, cylinder));
        var (rock, clearances, growth) = (view.AmountIf(Piston.Rock, cylinder), RunningSquishCheck.Clearances(view, cylinder), RunningSquishCheck.Growth(view, cylinder));
        return new SquishAtSpeed(
            cold,
            [("rod stretches", stretch), ("bearing clearances taken up", clearances), ("piston tips", rock), ("heat", growth)],
            cold - stretch - (rock ?? 0) - clearances - (growth ?? 0));
    }

    private static double Acceleration(View view, string cylinder) =>
        view.Work(SliderCrank.Motion, view.Amount(Crank.Stroke) / 2, view.Amount(Rod.Length, cylinder), 0.0, view.Amount(Engine.RevLimit), 0.0).Acceleration;
}
