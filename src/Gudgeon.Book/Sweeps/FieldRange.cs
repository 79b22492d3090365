using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Sweeps;

/// <summary>A field and the two ends between which it is tried: intake.runnerArea=1000..2200mm².</summary>
/// <param name="Address">The field, of an instance or of a group.</param>
/// <param name="From">The lower end.</param>
/// <param name="To">The upper end; values are written in its unit.</param>
public sealed record FieldRange(FieldAddress Address, Amount From, Amount To)
{
    /// <summary>Digits to which the ends are written.</summary>
    private const int Digits = 10;

    /// <summary>Share of the range to which a value between the ends is written, and therefore tried.</summary>
    private const double Fineness = 1e-4;

    /// <summary>Reads FIELD=FROM..TO; a unit after the second number holds for both.</summary>
    /// <param name="option">The option, for the sentence when it cannot be read.</param>
    /// <param name="text">What was written.</param>
    /// <exception cref="BadInputException">Another form, no such field, no amount, a wrong unit, a range that does not rise or reaches what cannot be.</exception>
    public static FieldRange Parse(string option, string text)
    {
        var written = text.Replace('−', '-');
        var equals = written.IndexOf('=', StringComparison.Ordinal);
        var dots = written.IndexOf("..", Math.Max(equals, 0), StringComparison.Ordinal);
        if (equals <= 0 || dots < 0)
        {
            throw new BadInputException($"{option}: given '{text}', wanted FIELD=FROM..TO, such as intake.runnerArea=1000..2200mm²");
        }

        var address = FieldCatalogue.Address(written[..equals].Trim());
        if (address.Field.Kind != FieldKind.Amount)
        {
            throw new BadInputException($"{option}: {address.Path} is no amount but a {address.Field.Kind.ToString().ToLowerInvariant()}, and only an amount can be varied");
        }

        var (low, high) = (written[(equals + 1)..dots].Trim(), written[(dots + 2)..].Trim());
        var to = End(address, option, high);
        var from = End(address, option, Amount.Split(low).Symbol.Length == 0 ? low + Amount.Split(high).Symbol : low);
        return from.Si < to.Si
            ? new FieldRange(address, from, to)
            : throw new BadInputException($"{option}: {address.Path} runs from {from} to {to}, wanted a range that rises");
    }

    /// <summary>The value at a share of the way, as a person writes it: it is tried as it would stand in the book.</summary>
    /// <param name="share">0 at the lower end, 1 at the upper.</param>
    public KnownValue At(double share)
    {
        var value = To.Unit.FromSi(From.Si + (share * (To.Si - From.Si)));
        var width = (To.Si - From.Si) / Math.Abs(To.Unit.Factor);
        var rounded = share is > 0 and < 1 ? Math.Round(value, Math.Clamp((int)Math.Ceiling(-Math.Log10(width * Fineness)), 0, 12)) : value;
        return KnownValue.Read(Address.Field, $"{Figures.Number(rounded, Digits)} {To.Unit.Symbol}".TrimEnd());
    }

    /// <summary>How far along a value lies, 0 to 1 inside the range.</summary>
    /// <param name="si">The value, SI.</param>
    public double ShareOf(double si) => (si - From.Si) / (To.Si - From.Si);

    public override string ToString() => $"{Address.Path}={From}..{To}";

    private static Amount End(FieldAddress address, string option, string text)
    {
        var end = Amount.Parse($"{option}: {address.Path}", text, address.Field.Dimension, address.Field.Unit);
        KnownValue.Of(address.Field, end);
        return end.Uncertainty == 0 ? end : throw new BadInputException($"{option}: {address.Path}: given '{text}', wanted the end of a range without a ±");
    }
}

/// <summary>A field over evenly spaced values of a range, both ends among them: intake.runnerArea=1000..2200mm²/7.</summary>
/// <param name="Range">The field and its ends.</param>
/// <param name="Count">How many values, 2 to 101.</param>
public sealed record Variation(FieldRange Range, int Count)
{
    private const int Most = 101;

    /// <summary>The field.</summary>
    public FieldAddress Address => Range.Address;

    /// <summary>The values, rising.</summary>
    public IReadOnlyList<KnownValue> Values => [.. Enumerable.Range(0, Count).Select(i => Range.At((double)i / (Count - 1)))];

    /// <summary>Reads FIELD=FROM..TO/COUNT.</summary>
    /// <param name="option">The option, for the sentence when it cannot be read.</param>
    /// <param name="text">What was written.</param>
    /// <exception cref="BadInputException">No count, or one outside 2 to 101, or what a range refuses.</exception>
    public static Variation Parse(string option, string text)
    {
        // A unit may have a stroke of its own: 20..30N/mm/5.
        var stroke = text.LastIndexOf('/');
        if (stroke < 0 || !int.TryParse(text[(stroke + 1)..], System.Globalization.NumberStyles.AllowLeadingSign | System.Globalization.NumberStyles.AllowLeadingWhite | System.Globalization.NumberStyles.AllowTrailingWhite, System.Globalization.CultureInfo.InvariantCulture, out var count))
        {
            throw new BadInputException($"{option}: given '{text}', wanted FIELD=FROM..TO/COUNT with how many values after the stroke, such as intake.runnerArea=1000..2200mm²/7");
        }

        var range = FieldRange.Parse(option, text[..stroke]);
        return count is >= 2 and <= Most
            ? new Variation(range, count)
            : throw new BadInputException($"{option}: {range.Address.Path}: given {count} values, wanted 2 to {Most}");
    }

    public override string ToString() => $"{Range}/{Count}";
}
