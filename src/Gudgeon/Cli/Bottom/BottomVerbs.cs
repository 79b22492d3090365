using Spectre.Console.Cli;

namespace Gudgeon.Cli.Bottom;

/// <summary>gudgeon bottom: the sheets of the bottom end, under the same words as on the page.</summary>
internal static class BottomVerbs
{
    public static void Add(IConfigurator<CommandSettings> bottom)
    {
        bottom.SetDescription("Bottom end: loads, bearings and their oil, shells, rods, pistons, balance, torsional vibration.");
        bottom.AddCommand<LoadsCommand>("loads").WithDescription("Loads on rods, pins and bearings from gas and inertia, at every speed of the engine run. Exit code 3: not known yet.").WithExample("bottom", "loads", "heron.json", "--at", "9000rpm", "--svg", "loads.svg");
        bottom.AddCommand<BearingsCommand>("bearings").WithDescription("Clearances, oil films, pressures, oil flow and warmth of every shell bearing. Exit code 3: no film known yet.").WithExample("bottom", "bearings", "heron.json", "--at", "9000rpm", "--svg", "bearings.svg");
        bottom.AddCommand<ShellsCommand>("shells").WithDescription("Which grades of shells go where, from those at hand, with as few bought as can be. Exit code 3: a bearing stays without.").WithExample("bottom", "shells", "heron.json", "--svg", "shells.svg");
        bottom.AddCommand<RodsCommand>("rods").WithDescription("Rods as struts and against fatigue, their bolts by stretch and torque, the crank's fillets.").WithExample("bottom", "rods", "heron.json", "--svg", "rods.svg");
        bottom.AddCommand<PistonsCommand>("pistons").WithDescription("Gudgeon pins, pistons and rings cold and hot, side thrust, squish at the rev limit.").WithExample("bottom", "pistons", "heron.json", "--svg", "pistons.svg");
        bottom.AddCommand<BalanceCommand>("balance").WithDescription("Rods weighed, balance factor and what to drill or add, shaking forces and couples, balance shafts in time and a tooth out, loads on the mounts. Exit code 3: not known yet.").WithExample("bottom", "balance", "heron.json", "--svg", "balance.svg");
        bottom.AddCommand<TorsionCommand>("torsion").WithDescription("Torsional vibration: natural frequencies, critical speeds, torque and stress in the joints, with and without what hangs on the nose. Exit code 3: not known yet.").WithExample("bottom", "torsion", "heron.json", "--without", "nose", "--svg", "torsion.svg");
    }
}
