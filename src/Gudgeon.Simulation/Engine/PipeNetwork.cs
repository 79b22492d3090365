using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Simulation.Engine;

/// <summary>How a pipe ends.</summary>
internal enum EndKind
{
    /// <summary>In a plenum, a box or a junction.</summary>
    Volume,

    /// <summary>In the open air; what comes back is what left.</summary>
    OpenAir,

    InletValve,
    ExhaustValve,

    /// <summary>At the next stretch of the same pipe, which has another width: the one after it at its last end, before it at its first.</summary>
    Step,
}

/// <summary>An end of a pipe.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Node">Node beyond it.</param>
/// <param name="Loss">Loss coefficient of the entry, in dynamic heads.</param>
/// <param name="Cylinder">Cylinder of a valve, or −1.</param>
/// <param name="Recovery">Share of its head that a stream between the trunk and a branch keeps at a junction.</param>
/// <param name="Trunk">Whether it is the trunk of its junction.</param>
internal readonly record struct PipeEnding(EndKind Kind, int Node, double Loss = 0, int Cylinder = -1, double Recovery = 0, bool Trunk = false);

/// <summary>A pipe of the network; both of its ends in the direction in which the engine breathes.</summary>
/// <param name="Name">"runner 1", "primary 2", "tail".</param>
/// <param name="Spec">As described.</param>
/// <param name="BendLoss">Loss coefficient of its bends.</param>
/// <param name="Duct">Cut into cells.</param>
/// <param name="Intake">Whether it is on the inlet side.</param>
/// <param name="First">Where it begins.</param>
/// <param name="Last">Where it ends.</param>
internal sealed record PipeLine(string Name, PipeSpec Spec, double BendLoss, Duct Duct, bool Intake, PipeEnding First, PipeEnding Last)
{
    /// <summary>The pipe from whose junction it branches; empty when it goes to the air or the plenum by itself.</summary>
    public string Trunk { get; init; } = "";

    /// <summary>Cylinder whose valves are at one of its ends, or −1.</summary>
    public int Cylinder => Math.Max(First.Cylinder, Last.Cylinder);
}

/// <summary>Turns trees of pipes into pipes between nodes.</summary>
internal sealed class PipeNetwork
{
    private const int LeastCells = 3;
    private const double SameWidth = 1e-5;

    private readonly List<PipeLine> _lines = [];
    private readonly List<Range> _whole = [];
    private readonly PipeworkSpec _pipework;
    private readonly int[] _cylinders;
    private readonly Func<double, int> _addNode;

    /// <param name="spec">The engine, with pipework.</param>
    /// <param name="cylinders">Node of each cylinder.</param>
    /// <param name="plenum">Node of the plenum.</param>
    /// <param name="outside">Node that the exhaust ends in: the world behind the tail, or a turbine's volute.</param>
    /// <param name="addNode">Adds a node of a volume, m³.</param>
    public PipeNetwork(EngineSpec spec, int[] cylinders, int plenum, int outside, Func<double, int> addNode)
    {
        (_pipework, _cylinders, _addNode) = (spec.Pipework!, cylinders, addNode);
        foreach (var tree in _pipework.Inlets)
        {
            AddInlet(tree, new(EndKind.Volume, plenum), "");
        }

        foreach (var tree in _pipework.Exhausts)
        {
            AddExhaust(tree, new(outside == Network.Tailpipe ? EndKind.OpenAir : EndKind.Volume, outside, _pipework.OutletLoss), "");
        }

    }

    /// <summary>The pipes, and which of them are the stretches of one.</summary>
    public (PipeLine[] Lines, Range[] Whole) Laid() => ([.. _lines], [.. _whole]);

    private void AddInlet(PipeTree tree, PipeEnding start, string trunk)
    {
        var first = start with { Loss = tree.Pipe.EntryLoss };
        if (tree.Branches.Count == 0)
        {
            AddPipe(Named("runner", tree), trunk, tree.Pipe, true, first, new(EndKind.InletValve, _cylinders[tree.Cylinder], Cylinder: tree.Cylinder));
            return;
        }

        var junction = Junction(tree, tree.Pipe.Tapers[^1].To);
        var name = Numbered("stem");
        AddPipe(name, trunk, tree.Pipe, true, first, junction with { Trunk = true });
        foreach (var branch in tree.Branches)
        {
            AddInlet(branch, junction, name);
        }
    }

    private void AddExhaust(PipeTree tree, PipeEnding last, string trunk)
    {
        if (tree.Branches.Count == 0)
        {
            AddPipe(Named("primary", tree), trunk, tree.Pipe, false, new(EndKind.ExhaustValve, _cylinders[tree.Cylinder], Cylinder: tree.Cylinder), last);
            return;
        }

        var junction = Junction(tree, tree.Pipe.Tapers[0].From);
        var name = Numbered(trunk.Length == 0 ? "tail" : "secondary");
        AddPipe(name, trunk, tree.Pipe, false, junction with { Trunk = true, Loss = tree.Pipe.EntryLoss }, last);
        foreach (var branch in tree.Branches)
        {
            AddExhaust(branch, junction, name);
        }
    }

    /// <summary>Adds a pipe, cut where its width jumps; the bends are shared out by length.</summary>
    private void AddPipe(string name, string trunk, PipeSpec pipe, bool intake, PipeEnding first, PipeEnding last)
    {
        var stretches = Stretches(pipe.Tapers);
        _whole.Add(_lines.Count..(_lines.Count + stretches.Count));
        var whole = pipe.Tapers.Sum(t => t.Length);
        for (var k = 0; k < stretches.Count; k++)
        {
            var duct = new Duct(stretches[k], _pipework.CellLength);
            var begins = k == 0 ? first : new PipeEnding(EndKind.Step, -1);
            var ends = k == stretches.Count - 1 ? last : new PipeEnding(EndKind.Step, -1);
            var called = k == 0 ? name : FormattableString.Invariant($"{name}, stretch {k + 1}");
            _lines.Add(new(called, pipe, pipe.BendLoss * duct.Length / whole, duct, intake, begins, ends) { Trunk = trunk });
        }
    }

    private static List<List<Taper>> Stretches(IReadOnlyList<Taper> tapers)
    {
        var stretches = new List<List<Taper>>();
        foreach (var taper in tapers)
        {
            if (stretches.Count == 0 || Math.Abs(stretches[^1][^1].To - taper.From) > SameWidth)
            {
                stretches.Add([]);
            }

            stretches[^1].Add(taper);
        }

        return stretches;
    }

    /// <summary>A junction holds at least a few cells of the widest pipe at it, so that the march follows its pressure.</summary>
    private PipeEnding Junction(PipeTree tree, double trunkDiameter)
    {
        var diameter = Math.Max(trunkDiameter, tree.Branches.Max(b => b.Pipe.Tapers.Max(t => t.To)));
        var widest = Math.PI / 4 * diameter * diameter;
        return new(EndKind.Volume, _addNode(Math.Max(tree.JunctionVolume, LeastCells * _pipework.CellLength * widest)), Recovery: tree.JunctionRecovery);
    }

    private static string Named(string name, PipeTree tree) => FormattableString.Invariant($"{name} {tree.Cylinder + 1}");

    private string Numbered(string name)
    {
        var before = _lines.Count(l => l.Name.StartsWith(name, StringComparison.Ordinal));
        return before == 0 ? name : FormattableString.Invariant($"{name} {before + 1}");
    }
}
