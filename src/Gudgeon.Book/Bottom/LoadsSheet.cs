using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>Greatest loads at one speed over all cylinders. N, SI.</summary>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="RodTension">Greatest pull in a rod.</param>
/// <param name="RodCompression">Greatest push in a rod.</param>
/// <param name="GudgeonPin">Greatest load of a piston on its gudgeon pin.</param>
/// <param name="SideThrust">Greatest thrust of a piston on the wall.</param>
/// <param name="BigEnd">Greatest load on a crank pin.</param>
/// <param name="Mains">Greatest load on each main bearing; not known without bob weight or places.</param>
/// <param name="Torque">Mean torque of gas and inertia on the crank, friction left out, N·m.</param>
/// <param name="PeakTorque">Greatest torque within the cycle, N·m.</param>
public sealed record LoadsRow(double Speed, double RodTension, double RodCompression, double GudgeonPin, double SideThrust, double BigEnd, IReadOnlyList<double> Mains, double Torque, double PeakTorque);

/// <summary>Loads in the bottom end.</summary>
/// <param name="Rows">One for each speed of the engine run.</param>
/// <param name="MainNames">Main bearings along the crank.</param>
/// <param name="Shown">The loads over the cycle at the speed asked for; null when there is none.</param>
/// <param name="Facts">Greatest loads at that speed and where they stand.</param>
/// <param name="Missing">What is wanted, in one sentence; empty when nothing is.</param>
public sealed record LoadsSheet(IReadOnlyList<LoadsRow> Rows, IReadOnlyList<string> MainNames, CrankLoads? Shown, IReadOnlyList<Fact> Facts, string Missing)
{
    /// <summary>What the loads leave out.</summary>
    public const string Remark = "Gas of the engine run at full load and inertia of pistons and rods, the rod counted as two masses; friction and weight left out. The crank counts as hinged at its main bearings, so that each pin loads the two beside it as a beam does (common practice, no source).";

    /// <summary>Speed of the cycle shown, to the whole turn a minute, for people.</summary>
    public string At => Shown is null ? "" : Figures.Rpm(Shown.Speed);

    /// <summary>The sheet of the values that hold.</summary>
    /// <param name="view">With a desk: it takes an engine run.</param>
    /// <param name="at">Crank speed to show whole, rad/s; the highest of the run when left out.</param>
    public static LoadsSheet Of(View view, double? at = null)
    {
        var all = CycleLoads.All(view);
        var names = CrankAssembly.Mains(view);
        var shown = at is { } speed ? all.MinBy(l => Math.Abs(l.Speed - speed)) : all.Count > 0 ? all[^1] : null;
        var missing = all.Count == 0
            ? $"Not known yet: wants {string.Join(", ", view.Trace.Missing)}."
            : names.Count == 0 ? $"Loads of the main bearings are not known: they want {Bearing.Position.Path} of each."
            : shown is not null && double.IsNaN(shown.Line.BobWeight) ? $"Loads of the main bearings are not known: they want {Crank.BobWeight.Path}." : "";
        return new LoadsSheet([.. all.Select(Row)], names, shown, shown is null ? [] : [.. Told(shown, names)], missing);
    }

    /// <summary>Load of the crank pin on the big end's shells in axes that lie with the rod, y up the rod.</summary>
    public static LoadCourse OnShell(ThrowLoads cylinder)
    {
        var onRod = cylinder.BigEnd.Turned(i => cylinder.Throw.Bank - cylinder.RodAngle[i]);
        return new LoadCourse(Array.ConvertAll(onRod.X, x => -x), Array.ConvertAll(onRod.Y, y => -y));
    }

    /// <summary>Load of the big end on the crank pin in axes that turn with the crank, y outwards along the throw, x in the direction of rotation.</summary>
    public static LoadCourse OnPin(ThrowLoads cylinder) => new(cylinder.Tangential, cylinder.Radial);

    /// <summary>Degrees of a cylinder's throw after its firing top dead centre, 0 to 720, rising, each with its place in the cycle.</summary>
    public static IReadOnlyList<(double Degrees, int At)> AfterFiring(ThrowLoads cylinder) => [.. cylinder.Angle.Select((a, i) => (CyclePlace.Degrees(a), i)).OrderBy(p => p.Item1)];

    private static LoadsRow Row(CrankLoads loads) => new(
        loads.Speed,
        -loads.Throws.Min(t => t.Rod.Min()),
        loads.Throws.Max(t => t.Rod.Max()),
        loads.Throws.Max(t => PinLoad(t).Load),
        loads.Throws.Max(t => t.Side.Max(Math.Abs)),
        loads.Throws.Max(t => t.BigEnd.Greatest.Load),
        [.. loads.Mains.Select(m => m.Greatest.Load)],
        loads.Torque.Average(),
        loads.Torque.Max());

    private static (double Load, int At) PinLoad(ThrowLoads t) => Enumerable.Range(0, t.Angle.Length).Select(i => (Load: Math.Sqrt((t.PinAlong[i] * t.PinAlong[i]) + (t.PinAcross[i] * t.PinAcross[i])), i)).MaxBy(p => p.Load);

    private static IEnumerable<Fact> Told(CrankLoads loads, IReadOnlyList<string> mains)
    {
        for (var c = 0; c < loads.Throws.Count; c++)
        {
            var t = loads.Throws[c];
            var of = loads.Throws.Count == 1 ? "" : $", cylinder {c + 1}";
            var pull = Array.IndexOf(t.Rod, t.Rod.Min());
            var push = Array.IndexOf(t.Rod, t.Rod.Max());
            var side = Array.FindIndex(t.Side, s => Math.Abs(s) == t.Side.Max(Math.Abs));
            yield return Force($"greatest pull in the rod{of}", -t.Rod[pull], t, pull);
            yield return Force($"greatest push in the rod{of}", t.Rod[push], t, push);
            yield return Force($"greatest load on the gudgeon pin{of}", PinLoad(t).Load, t, PinLoad(t).At);
            yield return Force($"greatest side thrust{of}", Math.Abs(t.Side[side]), t, side) with { Remark = $"at {Degrees(t, side)}, on the {(t.Side[side] > 0 ? "side that the throw comes up on" : "side that the throw goes down on")}" };
            yield return Force($"greatest load on the crank pin{of}", t.BigEnd.Greatest.Load, t, t.BigEnd.Greatest.At);
            yield return new Fact($"mean load on the crank pin{of}", t.BigEnd.Mean, Dimension.Force, "kN");
        }

        for (var m = 0; m < mains.Count; m++)
        {
            yield return new Fact($"greatest load on bearing {mains[m]}", loads.Mains[m].Greatest.Load, Dimension.Force, "kN") { Remark = $"at {Figures.Number(CyclePlace.Degrees(loads.Angles[loads.Mains[m].Greatest.At]), 3)}° of the first cylinder's cycle" };
        }
    }

    private static Fact Force(string name, double value, ThrowLoads t, int at) => new(name, value, Dimension.Force, "kN") { Remark = $"at {Degrees(t, at)}" };

    private static string Degrees(ThrowLoads t, int at) => $"{Figures.Number(CyclePlace.Degrees(t.Angle[at]), 3)}° after firing TDC";
}
