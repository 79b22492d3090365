namespace Gudgeon.Simulation.Engine;

/// <summary>Refuses pipework that cannot be simulated, in one sentence that names the pipe.</summary>
internal static class PipeworkCheck
{
    public static void Check(EngineSpec spec)
    {
        if (spec.Pipework is not { } pipework)
        {
            return;
        }

        EngineSpecException.Unless(spec.ImposedPorts is null, $"pipework: port pressures are imposed too, but a pipe cannot lead to a measured pressure");
        SpecCheck.Within(pipework.CellLength, 0.002, 0.1, "pipework: cell length", "m");
        SpecCheck.Within(pipework.HeatScale, 0, 10, "pipework: heat scale", "");
        if (pipework.OutletArea is { } outlet)
        {
            SpecCheck.Within(outlet, 1e-5, 0.1, "pipework: outlet area", "m²");
        }

        SpecCheck.Within(pipework.OutletLoss, 0, 5, "pipework: outlet loss", "");
        CheckSide(pipework.Inlets, "inlet", spec.Cylinders.Count);
        CheckSide(pipework.Exhausts, "exhaust", spec.Cylinders.Count);
    }

    private static void CheckSide(IReadOnlyList<PipeTree> trees, string side, int cylinders)
    {
        var reached = new List<int>();
        foreach (var tree in trees)
        {
            CheckTree(tree, side, reached);
        }

        for (var c = 0; c < cylinders; c++)
        {
            var times = reached.Count(r => r == c);
            EngineSpecException.Unless(times == 1, $"{side} pipes: {times} lead to cylinder {c + 1}, which must be one");
        }

        var stray = reached.Find(r => r < 0 || r >= cylinders);
        EngineSpecException.Unless(reached.Count == cylinders, $"{side} pipes: one leads to cylinder {stray + 1}, which the engine does not have");
    }

    private static void CheckTree(PipeTree tree, string side, List<int> reached)
    {
        var name = tree.Branches.Count == 0 ? FormattableString.Invariant($"{side} pipe of cylinder {tree.Cylinder + 1}") : $"{side} pipe before a junction";
        CheckPipe(tree.Pipe, name);
        if (tree.Branches.Count == 0)
        {
            reached.Add(tree.Cylinder);
            return;
        }

        EngineSpecException.Unless(tree.Cylinder < 0, $"{name}: leads both to cylinder {tree.Cylinder + 1} and to a junction, which must be one of them");
        SpecCheck.Within(tree.JunctionVolume, 0, 0.1, name + ": junction volume", "m³");
        SpecCheck.Within(tree.JunctionRecovery, 0, 1, name + ": junction recovery", "");
        foreach (var branch in tree.Branches)
        {
            CheckTree(branch, side, reached);
        }
    }

    private static void CheckPipe(PipeSpec pipe, string name)
    {
        EngineSpecException.Unless(pipe.Tapers.Count > 0, $"{name}: no stretch given, at least one is wanted");
        foreach (var taper in pipe.Tapers)
        {
            SpecCheck.Within(taper.Length, 0.005, 20, name + ": length", "m");
            SpecCheck.Within(taper.From, 0.005, 0.5, name + ": diameter", "m");
            SpecCheck.Within(taper.To, 0.005, 0.5, name + ": diameter", "m");
        }

        SpecCheck.Within(pipe.Roughness, 0, 2e-3, name + ": roughness", "m");
        SpecCheck.Within(pipe.BendLoss, 0, 20, name + ": bend loss", "");
        SpecCheck.Within(pipe.EntryLoss, 0, 5, name + ": entry loss", "");
        SpecCheck.Within(pipe.Wall.OutsideCoefficient, 0, 1000, name + ": heat transfer coefficient outside", "W/(m²·K)");
        SpecCheck.Within(pipe.Wall.Emissivity, 0, 1, name + ": emissivity", "");
        if (pipe.Wall.Temperature is { } wall)
        {
            SpecCheck.Within(wall, 230, 1300, name + ": wall temperature", "K");
        }
    }
}
