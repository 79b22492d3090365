using System.ComponentModel;
using Gudgeon.Book.Fits;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Fits;

/// <summary>gudgeon fits limits 25mm H7 p6, or "25mm H7/p6": limits of size, without a book.</summary>
internal sealed class LimitsCommand : Command<LimitsCommand.Settings>
{
    internal sealed class Settings : BookSettings
    {
        [CommandArgument(0, "<SIZE>")]
        [Description("Basic size, such as 25mm; or all of it, such as \"25mm H7/p6\".")]
        public string Size { get; init; } = "";

        [CommandArgument(1, "[HOLE]")]
        [Description("Letter and grade of the hole, such as H7.")]
        public string? Hole { get; init; }

        [CommandArgument(2, "[SHAFT]")]
        [Description("Letter and grade of the shaft, such as p6.")]
        public string? Shaft { get; init; }

        [CommandOption("--svg <FILE>")]
        [Description("Draw it.")]
        public string? Svg { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var limits = settings.Shaft is { } shaft ? LimitsOfSize.Of(settings.Size, settings.Hole!, shaft) : LimitsOfSize.Of($"{settings.Size} {settings.Hole}".TrimEnd());
        if (settings.Svg is not null)
        {
            FitPictures.Draw(limits, settings.Svg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(new { limits.Size, limits.HoleClass, limits.ShaftClass, limits.Kind, limits.Zones, facts = FactLines.Json(limits.Facts) });
        }
        else
        {
            Out.Line($"{Figures.Print(limits.Size, Dimension.Length, "mm", 5, settings.Imperial)} {limits.HoleClass}/{limits.ShaftClass}: {limits.Kind}");
            FactLines.Print(limits.Facts, settings.Imperial);
        }

        return 0;
    }
}
