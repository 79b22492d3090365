using System.Globalization;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Engine;
using Gudgeon.Simulation.Pipes;

namespace Gudgeon.Book.Duty;

/// <summary>Puts the pipes of the wave depth together from a snapshot.</summary>
internal static class PipeworkAssembly
{
    /// <summary>Temperature of a runner between the head and the air, K: common practice.</summary>
    private const double RunnerTemperature = 60 + 273.15;

    private static readonly PipeSpec Usual = new() { Tapers = [] };

    /// <summary>The pipes; what is needed and not known is noted in the view's trace.</summary>
    /// <param name="view">The values.</param>
    /// <param name="angles">Firing angle of each cylinder, degrees.</param>
    /// <exception cref="BadInputException">Pairs, shared ports or a shape that cannot be.</exception>
    public static PipeworkSpec Build(View view, IReadOnlyList<double> angles) => new()
    {
        Inlets = Inlets(view, angles.Count),
        Exhausts = Exhausts(view, angles),
        CellLength = view.AmountOr(Engine.CellLength, new PipeworkSpec { Inlets = [], Exhausts = [] }.CellLength),
        HeatScale = view.AmountOr(Engine.PipeHeat, 1),
    };

    /// <summary>The stretches of a pipe from its table of diameters.</summary>
    /// <param name="path">Where it is written, for the sentence.</param>
    /// <param name="table">Distance and diameter.</param>
    /// <exception cref="BadInputException">It does not begin at 0, goes back, has no length, or a diameter of nothing.</exception>
    public static IReadOnlyList<Taper> Tapers(string path, Table table)
    {
        var (at, wide) = (table["distance"], table["diameter"]);
        if (at[0] != 0 || at[^1] <= 0 || at.Zip(at.Skip(1)).Any(p => p.Second < p.First) || wide.Any(d => d <= 0))
        {
            throw new BadInputException($"{path}: wanted distances that begin at 0 and do not fall, and diameters above zero");
        }

        return [.. Enumerable.Range(1, at.Length - 1).Where(i => at[i] > at[i - 1]).Select(i => new Taper(at[i] - at[i - 1], wide[i - 1], wide[i]))];
    }

    private static List<PipeTree> Inlets(View view, int cylinders)
    {
        var groups = CylinderGroups.Shared(view.WordOr(SharedRunner.Shared, CylinderGroups.None), cylinders);
        var alone = Enumerable.Range(1, cylinders).Except(groups.SelectMany(g => g));
        return
        [
            .. alone.Select(n => new PipeTree { Pipe = Runner(view, n, atJunction: false), Cylinder = n - 1 }),
            .. groups.Select(g => new PipeTree
            {
                Pipe = Stem(view),
                JunctionVolume = view.AmountIf(SharedRunner.JunctionVolume) ?? 0,
                Branches = [.. g.Select(n => new PipeTree { Pipe = Runner(view, n, atJunction: true), Cylinder = n - 1 })],
            }),
        ];
    }

    private static PipeSpec Stem(View view) => new()
    {
        Tapers = [Taper.Straight(view.Amount(SharedRunner.StemLength), view.Amount(SharedRunner.StemDiameter))],
        EntryLoss = view.AmountOr(InletRunner.EntryLoss, Usual.EntryLoss),
        Roughness = view.AmountOr(InletRunner.Roughness, 50e-6),
        Wall = new PipeWall { Temperature = view.AmountOr(InletRunner.WallTemperature, RunnerTemperature) },
    };

    /// <summary>A junction has its own loss, so that a runner out of one has none at its mouth.</summary>
    private static PipeSpec Runner(View view, int cylinder, bool atJunction)
    {
        var index = Index(cylinder);
        return new PipeSpec
        {
            Tapers = Shape(view, InletRunner.Shape, InletRunner.Length, InletRunner.Diameter, InletRunner.PortDiameter, index),
            BendLoss = view.AmountOr(InletRunner.BendLoss, 0, index),
            EntryLoss = atJunction ? 0 : view.AmountOr(InletRunner.EntryLoss, Usual.EntryLoss, index),
            Roughness = view.AmountOr(InletRunner.Roughness, 50e-6, index),
            Wall = new PipeWall { Temperature = view.AmountOr(InletRunner.WallTemperature, RunnerTemperature, index) },
        };
    }

    private static IReadOnlyList<PipeTree> Exhausts(View view, IReadOnlyList<double> angles)
    {
        var layout = angles.Count == 1 ? ExhaustLayouts.Separate : view.WordOr(Exhaust.Layout, ExhaustLayouts.Joined);
        var cylinders = Enumerable.Range(1, angles.Count).ToList();
        return layout switch
        {
            ExhaustLayouts.Separate => cylinders.ConvertAll(n => Silenced(view, Separate(view, n))),
            ExhaustLayouts.Joined => [Silenced(view, Merged(view, Tail(view), [.. cylinders.Select(n => Primary(view, n))]))],
            _ => [Silenced(view, Merged(view, Tail(view), Paired(view, angles)))],
        };
    }

    private static List<PipeTree> Paired(View view, IReadOnlyList<double> angles)
    {
        var usual = CylinderGroups.UsualPairs(angles);
        return [.. CylinderGroups.Pairs(view.WordOr(Exhaust.Pairs, usual), angles.Count).Select(p => Merged(view, Secondary(view), [.. p.Select(n => Primary(view, n))]))];
    }

    private static PipeTree Merged(View view, PipeSpec after, IReadOnlyList<PipeTree> before) => new()
    {
        Pipe = after,
        JunctionVolume = view.AmountIf(ExhaustMerge.Volume) ?? 0,
        Branches = before,
    };

    private static PipeTree Primary(View view, int cylinder) => new() { Pipe = PrimaryPipe(view, cylinder) with { EntryLoss = 0 }, Cylinder = cylinder - 1 };

    /// <summary>A primary into the open, with the tail pipe behind it when there is one.</summary>
    private static PipeTree Separate(View view, int cylinder)
    {
        var pipe = PrimaryPipe(view, cylinder);
        if (view.Knows(ExhaustTail.Shape) || view.Knows(ExhaustTail.Length))
        {
            var tail = Tail(view);
            pipe = pipe with { Tapers = [.. pipe.Tapers, .. tail.Tapers], BendLoss = pipe.BendLoss + tail.BendLoss };
        }

        return new PipeTree { Pipe = pipe, Cylinder = cylinder - 1 };
    }

    /// <summary>What leads to a box, and the pipe out of it; as it is when there is no box, or when it stands behind a turbine, where the model ends.</summary>
    private static PipeTree Silenced(View view, PipeTree before) => InductionAssembly.IsTurbocharged(view) || !(view.AmountIf(Silencer.Volume) is { } volume and > 0) ? before : new PipeTree
    {
        Pipe = new PipeSpec
        {
            Tapers = [Taper.Straight(view.Amount(Silencer.TailLength), view.Amount(Silencer.TailDiameter))],
            EntryLoss = 0.5,
            Wall = ExhaustWall(view),
        },
        JunctionVolume = volume,
        JunctionRecovery = 0,
        Branches = [before],
    };

    private static PipeSpec PrimaryPipe(View view, int cylinder)
    {
        var index = Index(cylinder);
        return new PipeSpec
        {
            Tapers = Shape(view, ExhaustPrimary.Shape, ExhaustPrimary.Length, ExhaustPrimary.Diameter, ExhaustPrimary.EndDiameter, index),
            BendLoss = view.AmountOr(ExhaustPrimary.BendLoss, 0.3, index),
            Roughness = view.AmountOr(ExhaustPrimary.Roughness, Usual.Roughness, index),
            Wall = ExhaustWall(view),
        };
    }

    private static PipeSpec Secondary(View view) => new()
    {
        Tapers = [Taper.Straight(view.Amount(ExhaustSecondary.Length), view.Amount(ExhaustSecondary.Diameter))],
        BendLoss = view.AmountOr(ExhaustSecondary.BendLoss, 0),
        EntryLoss = 0,
        Roughness = view.AmountOr(ExhaustSecondary.Roughness, Usual.Roughness),
        Wall = ExhaustWall(view),
    };

    private static PipeSpec Tail(View view) => new()
    {
        Tapers = Shape(view, ExhaustTail.Shape, ExhaustTail.Length, ExhaustTail.Diameter, ExhaustTail.EndDiameter),
        BendLoss = view.AmountOr(ExhaustTail.BendLoss, 0),
        Roughness = view.AmountOr(ExhaustTail.Roughness, Usual.Roughness),
        Wall = ExhaustWall(view),
    };

    private static PipeWall ExhaustWall(View view) => new()
    {
        OutsideCoefficient = view.AmountOr(Exhaust.WallCoefficient, Usual.Wall.OutsideCoefficient),
        Emissivity = view.AmountOr(Exhaust.Emissivity, Usual.Wall.Emissivity),
    };

    /// <summary>By its table when there is one, else one taper from end to end.</summary>
    private static IReadOnlyList<Taper> Shape(View view, Field shape, Field length, Field from, Field to, string index = "")
    {
        if (view.TableIf(shape, index) is { } table)
        {
            return Tapers(shape.At(index), table);
        }

        var (along, begins) = (view.Amount(length, index), view.Amount(from, index));
        return [new Taper(along, begins, double.IsNaN(begins) ? begins : view.AmountOr(to, begins, index))];
    }

    private static string Index(int cylinder) => cylinder.ToString(CultureInfo.InvariantCulture);
}
