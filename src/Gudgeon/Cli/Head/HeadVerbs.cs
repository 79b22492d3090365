using Spectre.Console.Cli;

namespace Gudgeon.Cli.Head;

/// <summary>gudgeon head: the sheets of head and valve train, under the same words as on the page.</summary>
internal static class HeadVerbs
{
    public static void Add(IConfigurator<CommandSettings> head)
    {
        head.SetDescription("Head and valve train: flow, cams, valve to piston, springs, motion, lash and shims, seats.");
    }
}
