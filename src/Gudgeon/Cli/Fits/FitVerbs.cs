using Spectre.Console.Cli;

namespace Gudgeon.Cli.Fits;

/// <summary>gudgeon fits: the sheets of fits, under the same words as on the page.</summary>
internal static class FitVerbs
{
    public static void Add(IConfigurator<CommandSettings> fits)
    {
        fits.SetDescription("Fits: shafts in holes as measured, cold, hot and going together; limits of size.");
        fits.AddCommand<PairsCommand>("pairs").WithDescription("Every fit of a build: limits, measured parts, interference cold and hot, slip torque, how hot the hub must be.").WithExample("fits", "pairs", "heron.json", "--svg", "fits.svg");
        fits.AddCommand<LimitsCommand>("limits").WithDescription("Limits of hole and shaft by ISO 286, and the fit between them.").WithExample("fits", "limits", "25mm", "H7", "p6");
    }
}
