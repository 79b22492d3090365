using Spectre.Console.Cli;

namespace Gudgeon.Cli.Head;

/// <summary>gudgeon head: the sheets of head and valve train, under the same words as on the page.</summary>
internal static class HeadVerbs
{
    public static void Add(IConfigurator<CommandSettings> head)
    {
        head.SetDescription("Head and valve train: flow, cams, valve to piston, springs, motion, lash and shims, seats.");
        head.AddCommand<FlowCommand>("flow").WithDescription("What the ports pass: flow by lift, coefficients, mean area, inlet Mach index, now and before the changes.").WithExample("head", "flow", "heron.json", "--svg", "flow.svg");
    }
}
