using Spectre.Console.Cli;

namespace Gudgeon.Cli.Bottom;

/// <summary>gudgeon bottom: the sheets of the bottom end, under the same words as on the page.</summary>
internal static class BottomVerbs
{
    public static void Add(IConfigurator<CommandSettings> bottom)
    {
        bottom.SetDescription("Bottom end: loads over the cycle.");
        bottom.AddCommand<LoadsCommand>("loads").WithDescription("Loads on rods, pins and bearings from gas and inertia, at every speed of the engine run. Exit code 3: not known yet.").WithExample("bottom", "loads", "heron.json", "--at", "9000rpm", "--svg", "loads.svg");
    }
}
