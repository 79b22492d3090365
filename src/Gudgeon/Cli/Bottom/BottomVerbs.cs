using Spectre.Console.Cli;

namespace Gudgeon.Cli.Bottom;

/// <summary>gudgeon bottom: the sheets of the bottom end, under the same words as on the page.</summary>
internal static class BottomVerbs
{
    public static void Add(IConfigurator<CommandSettings> bottom)
    {
        bottom.SetDescription("Bottom end: loads over the cycle, balance, torsional vibration.");
        bottom.AddCommand<LoadsCommand>("loads").WithDescription("Loads on rods, pins and bearings from gas and inertia, at every speed of the engine run. Exit code 3: not known yet.").WithExample("bottom", "loads", "heron.json", "--at", "9000rpm", "--svg", "loads.svg");
        bottom.AddCommand<BalanceCommand>("balance").WithDescription("Rods weighed, balance factor and what to drill or add, shaking forces and couples, balance shafts in time and a tooth out, loads on the mounts. Exit code 3: not known yet.").WithExample("bottom", "balance", "heron.json", "--svg", "balance.svg");
        bottom.AddCommand<TorsionCommand>("torsion").WithDescription("Torsional vibration: natural frequencies, critical speeds, torque and stress in the joints, with and without what hangs on the nose. Exit code 3: not known yet.").WithExample("bottom", "torsion", "heron.json", "--without", "nose", "--svg", "torsion.svg");
    }
}
