using Gudgeon.Book.Measuring;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon instruments: what the shop measures with, and how well.</summary>
internal sealed class InstrumentsCommand : Command<ReadSettings>
{
    public override int Execute(CommandContext context, ReadSettings settings, CancellationToken cancellationToken)
    {
        var lines = InstrumentLine.All(settings.Open().Book, Days.Today);
        if (settings.Json)
        {
            Out.Json(lines.Select(Json));
            return 0;
        }

        foreach (var line in lines)
        {
            var i = line.Instrument;
            Out.Line($"{(line.Overdue ? "!" : " ")} {i.Name}");
            Out.Line($"    {line.Words(settings.Imperial)}");
            Out.LineIf(i.Owner.Length > 0 || i.Cost > 0, $"    {string.Join("; ", new[] { i.Owner.Length > 0 ? $"owned by {i.Owner}" : "", i.Cost > 0 ? $"cost of a use {Figures.Number(i.Cost)}" : "" }.Where(w => w.Length > 0))}");
            Out.LineIf(i.Zero is not null, $"    zero {i.PrintError(i.Zero ?? 0, settings.Imperial)} at the last of {line.ZeroChecks} checks");
        }

        Out.LineIf(lines.Count == 0, "The book has no instruments; one begins with: gudgeon set \"instrument[mic-25].kind\" micrometer");
        return 0;
    }

    private static object Json(InstrumentLine line) => new
    {
        name = line.Instrument.Name,
        line.Kind,
        measures = line.Instrument.Dimension,
        from = line.Instrument.From,
        to = line.Instrument.To,
        expandedUncertainty = line.Uncertainty,
        standard = line.Standard.Length > 0 ? line.Standard : null,
        due = line.Instrument.Due,
        overdue = line.Overdue,
        owner = line.Instrument.Owner,
        cost = line.Instrument.Cost,
        zero = line.Instrument.Zero,
        zeroChecks = line.ZeroChecks,
    };
}
