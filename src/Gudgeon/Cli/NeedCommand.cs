using System.ComponentModel;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Limits;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon need: from a goal to what the engine needs.</summary>
internal sealed class NeedCommand : Command<NeedCommand.Settings>
{
    internal sealed class Settings : ReadSettings
    {
        [CommandOption("--power <POWER>")]
        [Description("The power wanted, such as 165kW or 220hp; the book's target when neither is given.")]
        public string? Power { get; init; }

        [CommandOption("--quarter <TIME>")]
        [Description("The quarter-mile time wanted, such as 9.9s.")]
        public string? Quarter { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (settings.Power is not null && settings.Quarter is not null)
        {
            throw new BadInputException("--power and --quarter: give one of the two");
        }

        var file = settings.Open();
        var snapshot = file.Book.Now();
        var solver = new NeedSolver(snapshot, new() { Cancellation = cancellationToken, Shelf = file.Shelf });
        var need = settings.Quarter is { } quarter
            ? solver.ForQuarter(KnownValue.Read(Target.QuarterTime, quarter).Si)
            : solver.ForPower(Wanted(settings, snapshot));
        if (settings.Json)
        {
            Out.Json(new { need.Power, need.Reached, need.Note, lines = need.Lines.Select(l => new { l.Name, now = Finite(l.Now), needed = Finite(l.Needed), ruleOfThumb = Finite(l.Rule), unit = Calc.Catalogue.Dimensions.SiUnit(l.Dimension) }) });
            return need.Reached ? 0 : 3;
        }

        Print(need, settings.Imperial);
        return need.Reached ? 0 : 3;
    }

    internal static void Print(Need need, bool imperial)
    {
        Out.Line($"For {Target.Power.Print(need.Power, imperial)} at the crank: {need.Note}");
        Out.Line($"  {"",-44} {"as it stands",16} {"needed",16} {"rule of thumb*",16}");
        foreach (var line in need.Lines)
        {
            string Shown(double si) => double.IsNaN(si) ? "-" : Figures.Print(si, line.Dimension, line.Unit, 4, imperial);
            Out.Line($"  {line.Name,-44} {Shown(line.Now),16} {Shown(line.Needed),16} {Shown(line.Rule),16}");
        }

        Out.LineIf(need.Lines.Any(l => !double.IsNaN(l.Rule)), $"  * 300 g/kWh of petrol or its heat in another fuel, full cylinders at the charge temperature{(need.Lines.Any(l => l.Name == "drive ratio") ? ", boost with the square of the drive ratio" : "")}: common practice, no source");
    }

    private static double Wanted(Settings settings, Book.Build.Snapshot snapshot)
    {
        return settings.Power is { } power
            ? KnownValue.Read(Target.Power, power).Si
            : snapshot.Find(new FieldAddress(Target.Power, ""))?.Value.Si ?? throw new BadInputException("give --power or --quarter, or set target.power in the book");
    }

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
