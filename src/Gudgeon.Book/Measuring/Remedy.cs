using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Measuring;

/// <summary>What would decide a finding that is too close to tell, if what is read again reads the same.</summary>
/// <param name="Source">Path of the value to read again; empty when nothing would decide it.</param>
/// <param name="Instrument">Key of a better instrument of the book; empty when the same is used more often.</param>
/// <param name="Cost">Cost of its use, in the shop's own money.</param>
/// <param name="Readings">How many readings in all, with that instrument.</param>
/// <param name="Words">The proposal in one sentence.</param>
public sealed record Remedy(string Source, string Instrument, double Cost, int Readings, string Words)
{
    /// <summary>More repeats than anybody has patience for.</summary>
    public const int MostReadings = 30;

    /// <summary>
    /// The cheapest instrument of the book that would decide it, and the fewest repeats that would; when neither would, one
    /// sentence that says how close a reading would have to be. Nothing for a finding that is decided.
    /// </summary>
    /// <param name="finding">The finding.</param>
    /// <param name="now">The values that hold.</param>
    /// <param name="today">The day on which an instrument must not be overdue.</param>
    public static IReadOnlyList<Remedy> For(Finding finding, Snapshot now, DateOnly today)
    {
        if (finding.Verdict != Verdict.TooCloseToTell)
        {
            return [];
        }

        var read = finding.Contributions.Where(c => c.Found.Value is { Field.Measured.Length: > 0, Content: Amount }).ToList();
        var better = read.SelectMany(c => ByInstrument(finding, c, [.. Others(c, now).Where(i => !i.Overdue(today))])).MinBy(r => r.Cost);
        var oftener = read.Select(c => ByRepeats(finding, c)).OfType<Remedy>().MinBy(r => r.Readings);
        Remedy[] found = [.. new[] { better, oftener }.OfType<Remedy>()];
        return found.Length > 0 ? found : [Neither(finding, read)];
    }

    /// <summary>The instruments of the book but for the one with which a value was read: it would read the same again.</summary>
    private static IEnumerable<ShopInstrument> Others(Contribution c, Snapshot now)
    {
        var used = ShopInstrument.Find(now, c.Found.Value.With)?.Name;
        return ShopInstrument.All(now).Where(i => i.Name != used);
    }

    /// <summary>
    /// Every instrument that would decide it by itself, the closest first. Repeats that scattered are taken to scatter as much
    /// with another instrument: feel and form of the part stay.
    /// </summary>
    private static IEnumerable<Remedy> ByInstrument(Finding finding, Contribution c, List<ShopInstrument> instruments) =>
        from instrument in instruments
        where instrument.Suits(c.Found.Value.Field) && instrument.Reaches(c.Found.Value.Si)
        let own = instrument.At(c.Found.Value.Si)
        where own is not null
        let u = Expected(c, own.Value.Standard)
        where u < c.Found.Value.StandardUncertainty && Decides(finding, c, u)
        orderby u
        select new Remedy(c.Found.Source, instrument.Name, instrument.Cost, c.Found.Repeats, string.Create(
            CultureInfo.InvariantCulture,
            $"read {c.Found.Source}{(c.Found.Repeats > 1 ? $" {c.Found.Repeats} times" : "")} with {instrument.Path} (± {instrument.PrintError(2 * u, digits: 2)}{(instrument.Cost > 0 ? $", cost of a use {Figures.Number(instrument.Cost)}" : "")}): decided if it reads the same"));

    /// <summary>Standard uncertainty to be expected with an instrument of such a one, SI, read as often as before.</summary>
    private static double Expected(Contribution c, double instrument) => c.Found.Repeats < 2
        ? instrument
        : Repeats.OfMean(instrument, Repeats.Parts(c.Found.Repeated).Scatter, c.Found.Repeats).Standard;

    /// <summary>The fewest readings in all that would decide it; null when no number would, or one reading shows no scatter.</summary>
    private static Remedy? ByRepeats(Finding finding, Contribution c)
    {
        if (c.Found.Repeats < 2)
        {
            return null;
        }

        var (instrument, scatter) = Repeats.Parts(c.Found.Repeated);
        var wanted = Enumerable.Range(c.Found.Repeats + 1, MostReadings - Math.Min(c.Found.Repeats, MostReadings)).FirstOrDefault(n => Decides(finding, c, Repeats.OfMean(instrument, scatter, n).Standard));
        return wanted == 0 ? null : new Remedy(c.Found.Source, "", 0, wanted, string.Create(
            CultureInfo.InvariantCulture,
            $"read {c.Found.Source} {wanted} times in all instead of {c.Found.Repeats}, on the same day with the same instrument: decided if mean and scatter stay"));
    }

    private static Remedy Neither(Finding finding, List<Contribution> read)
    {
        if (read.Count == 0)
        {
            return new Remedy("", "", 0, 0, "no reading would decide it: its ± comes from values that are not read off a part");
        }

        if (!read.Contains(finding.Contributions[0]))
        {
            return new Remedy("", "", 0, 0, $"no reading of a part would decide it: most of its ± comes from {finding.Contributions[0].Found.Source}, which is not read off one");
        }

        var most = read.MaxBy(c => Math.Abs(c.Effect))!;
        var field = most.Found.Value.Field;
        var wanted = Decides(finding, most, 0)
            ? $"{most.Found.Source} would have to be known to ± {field.Print(2 * Closest(finding, most))}"
            : $"not even an exact {most.Found.Source} would decide it by itself";
        return new Remedy("", "", 0, 0, $"neither an instrument of the book nor up to {MostReadings} repeats of one reading would decide it: {wanted}");
    }

    /// <summary>The largest standard uncertainty of one value with which the finding is decided, by halving.</summary>
    private static double Closest(Finding finding, Contribution c)
    {
        var (good, bad) = (0.0, c.Found.Value.StandardUncertainty);
        for (var i = 0; i < 40; i++)
        {
            var middle = (good + bad) / 2;
            (good, bad) = Decides(finding, c, middle) ? (middle, bad) : (good, middle);
        }

        return good;
    }

    /// <summary>Whether the finding is decided when one of its values is known to another standard uncertainty, all else the same.</summary>
    private static bool Decides(Finding finding, Contribution c, double uncertainty)
    {
        var share = uncertainty / c.Found.Value.StandardUncertainty;
        Margin With(Margin margin, double effect) => margin with { Uncertainty = Math.Sqrt(Math.Max(0, (margin.Uncertainty * margin.Uncertainty) - (effect * effect * (1 - (share * share))))) };
        return finding.Rule.Decide(With(finding.Lower, c.OnLower), With(finding.Upper, c.OnUpper)) is Verdict.Holds or Verdict.FallsShort;
    }
}
