using Spectre.Console.Cli;

namespace Gudgeon.Cli.Bottom;

/// <summary>gudgeon bottom: the sheets of the bottom end, under the same words as on the page.</summary>
internal static class BottomVerbs
{
    public static void Add(IConfigurator<CommandSettings> bottom)
    {
        bottom.SetDescription("Bottom end: loads over the cycle, rods and crank, pistons.");
        bottom.AddCommand<LoadsCommand>("loads").WithDescription("Loads on rods, pins and bearings from gas and inertia, at every speed of the engine run. Exit code 3: not known yet.").WithExample("bottom", "loads", "heron.json", "--at", "9000rpm", "--svg", "loads.svg");
        bottom.AddCommand<RodsCommand>("rods").WithDescription("Rods as struts and against fatigue, their bolts by stretch and torque, the crank's fillets.").WithExample("bottom", "rods", "heron.json", "--svg", "rods.svg");
        bottom.AddCommand<PistonsCommand>("pistons").WithDescription("Gudgeon pins, pistons and rings cold and hot, side thrust, squish at the rev limit.").WithExample("bottom", "pistons", "heron.json", "--svg", "pistons.svg");
    }
}
