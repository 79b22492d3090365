using Spectre.Console.Cli;

namespace Gudgeon.Cli.Head;

/// <summary>gudgeon head: the sheets of head and valve train, under the same words as on the page.</summary>
internal static class HeadVerbs
{
    public static void Add(IConfigurator<CommandSettings> head)
    {
        head.SetDescription("Head and valve train: flow, cams, valve to piston, springs, motion, lash and shims, seats.");
        head.AddCommand<SpringsCommand>("springs").WithDescription("Valve springs at their installed heights; spacers off the bench; springs in matched sets.").WithExample("head", "springs", "heron.json", "--valve", "exhaust.1.2", "--svg", "spring.svg");
        head.AddCommand<LashCommand>("lash").WithDescription("Lash and shims: which shim goes where. Exit code 3: a valve is left without one that does.").WithExample("head", "lash", "heron.json", "--svg", "lash.svg");
        head.AddCommand<SeatsCommand>("seats").WithDescription("Valve seats, stems in their guides, and what the leak test says.").WithExample("head", "seats", "heron.json", "--svg", "seats.svg");
    }
}
