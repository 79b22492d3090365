using System.ComponentModel;
using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Sprint;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon sprint: the standing-start run.</summary>
internal sealed class SprintCommand : Command<SprintCommand.Settings>
{
    /// <summary>What stands under every run.</summary>
    internal const string Advice = "The clock starts one foot after the stage. Advice to a competent rider: the strip's marshals and scrutineers have the last word.";

    internal sealed class Settings : KeepSettings
    {
        [CommandOption("--weather <VALUES>")]
        [Description("The air of the day for this run only: temperature=30°C;pressure=990hPa;humidity=60%;headWind=2m/s.")]
        public string[] Weather { get; init; } = [];

        [CommandOption("--svg <FILE>")]
        [Description("Draw speed over distance with what holds it back.")]
        public string? Svg { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var file = settings.Open();
        var book = file.Book;
        var given = Books.Given(settings.Weather, "weather.");
        var view = new View(book.Supposing(given).Now(), Books.Desk(file, cancellationToken));
        var result = Demand.Sprint(view);
        if (settings.Svg is not null)
        {
            Pictures.Sprint(result, settings.Svg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(new { result.Splits, result.Shifts, result.Energy });
        }
        else
        {
            Table(result, settings.Imperial);
        }

        settings.KeepRun(book, () => RunFigures.Of(result), view.Trace, given, settings.Json);
        return 0;
    }

    internal static void Table(SprintResult result, bool imperial)
    {
        var unit = imperial ? "mph" : "km/h";
        string Speed(double si) => double.IsNaN(si) ? "" : Figures.Print(si, Dimension.Speed, unit, 4);
        Out.Line($"{"",-12} {"time s",9} {"speed",12} {"trap speed",12}");
        foreach (var split in result.Splits)
        {
            Out.Line($"{split.Name,-12} {split.Time.ToString("F3", CultureInfo.InvariantCulture),9} {Speed(split.Speed),12} {Speed(split.TrapSpeed),12}");
        }

        foreach (var shift in result.Shifts)
        {
            Out.Line(string.Create(CultureInfo.InvariantCulture, $"shift {shift.From} to {shift.From + 1} at {shift.Time:F2} s, {Speed(shift.Speed)}, {Figures.Rpm(shift.EngineSpeedBefore)}"));
        }

        foreach (var (limit, seconds) in result.TimeUnder(StripLength.QuarterMile).OrderByDescending(p => p.Seconds))
        {
            Out.Line(string.Create(CultureInfo.InvariantCulture, $"held back by {EnumWords.Of(limit.ToString())} for {seconds:F2} s of the quarter mile"));
        }

        Out.Line(Advice);
    }
}
