using System.Globalization;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Values;

/// <summary>An amount as a person wrote it: SI value, the unit it was written in, and its expanded uncertainty.</summary>
/// <param name="Si">Value, SI.</param>
/// <param name="Unit">The unit it was written in.</param>
/// <param name="Uncertainty">± as written: expanded uncertainty, k = 2, SI; zero when none was given.</param>
/// <param name="Decimals">Decimals as written, so that it prints as it was read.</param>
public sealed record Amount(double Si, Unit Unit, double Uncertainty = 0, int Decimals = -1)
{
    /// <summary>Significant digits with which the ± is shown: as many as anybody writes, two where it was worked (JCGM 100:2008, 7.2.6).</summary>
    public int SpreadDigits { get; init; } = 5;

    /// <summary>Standard uncertainty (k = 1), SI.</summary>
    public double StandardUncertainty => Uncertainty / 2;

    /// <summary>
    /// Reads "34.52 mm ± 0.01 mm", "34.52 ± 0.01 mm", "1.359 in", "95 N ± 2 %".
    /// </summary>
    /// <param name="name">The name of the field, for the sentence when it cannot be read.</param>
    /// <param name="text">What was written.</param>
    /// <param name="dimension">What is wanted.</param>
    /// <param name="usual">A unit to propose in the sentence.</param>
    /// <exception cref="BadInputException">Not a number, no unit, or a unit of another dimension.</exception>
    public static Amount Parse(string name, string text, Dimension dimension, string usual)
    {
        var (value, spread) = Halves(text);
        var (digits, symbol) = Split(value);
        var (spreadDigits, spreadSymbol) = Split(spread);
        if (digits.Length == 0 || (spread.Length > 0 && spreadDigits.Length == 0))
        {
            throw new BadInputException($"{name}: given '{text}', wanted {Wanted(dimension, usual)}");
        }

        if (symbol.Length == 0 && spreadSymbol != "%")
        {
            symbol = spreadSymbol;
        }

        var unit = FindUnit(name, text, symbol, dimension, usual);
        var si = unit.ToSi(Number(name, text, digits));
        return new Amount(si, unit, spread.Length == 0 ? 0 : Spread(), DecimalsOf(digits));

        double Spread()
        {
            var half = Math.Abs(Number(name, text, spreadDigits));
            if (spreadSymbol == "%" && symbol != "%")
            {
                return Math.Abs(si) * half / 100;
            }

            return half * (spreadSymbol.Length == 0 ? unit : FindUnit(name, text, spreadSymbol, dimension, usual)).Factor;
        }
    }

    /// <summary>The same amount with a ± of two digits (JCGM 100:2008, 7.2.6).</summary>
    /// <param name="expanded">Expanded uncertainty, k = 2, SI.</param>
    public Amount Within(double expanded) => this with { Uncertainty = double.Parse(Figures.Number(expanded / Unit.Factor, 2), CultureInfo.InvariantCulture) * Unit.Factor };

    /// <summary>Value, unit and ± as they were written.</summary>
    public override string ToString()
    {
        var value = Decimals >= 0
            ? Unit.FromSi(Si).ToString("F" + Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
            : Figures.Number(Unit.FromSi(Si));
        var text = Unit.Symbol.Length == 0 ? value : $"{value} {Unit.Symbol}";
        return Uncertainty == 0 ? text : $"{text} ± {Figures.Number(Uncertainty / Unit.Factor, SpreadDigits)}{(Unit.Symbol.Length == 0 ? "" : " " + Unit.Symbol)}";
    }

    /// <summary>The amount in a unit: as written in its own, else with one digit more than was written, at least five.</summary>
    public string Print(Unit unit)
    {
        if (unit == Unit)
        {
            return ToString();
        }

        var value = Figures.Number(unit.FromSi(Si), Math.Max(5, DigitsWritten + 1));
        var symbol = unit.Symbol.Length == 0 ? "" : " " + unit.Symbol;
        return Uncertainty == 0 ? value + symbol : $"{value}{symbol} ± {Figures.Number(Uncertainty / unit.Factor, 2)}{symbol}";
    }

    /// <summary>Significant digits as written; 0 when that is not recorded.</summary>
    private int DigitsWritten => Decimals < 0 || Si == 0 ? 0 : Decimals + 1 + (int)Math.Floor(Math.Log10(Math.Abs(Unit.FromSi(Si)) + double.Epsilon));

    private static Unit FindUnit(string name, string text, string symbol, Dimension dimension, string usual)
    {
        if (Units.Find(dimension, symbol) is { } unit)
        {
            return unit;
        }

        if (symbol.Length == 0)
        {
            throw new BadInputException($"{name}: given '{text}' without a unit, wanted {Wanted(dimension, usual)}");
        }

        if (symbol.StartsWith(',') && symbol.Length > 1 && char.IsAsciiDigit(symbol[1]))
        {
            throw new BadInputException($"{name}: given '{text}' with a decimal comma, wanted a point: {Wanted(dimension, usual)}");
        }

        var others = Units.DimensionsOf(symbol).Where(d => d != Dimension.TemperatureDifference).Select(d => d.Noun()).ToList();
        throw new BadInputException(others.Count == 0
            ? $"{name}: given '{text}', and '{symbol}' is not a unit known here; wanted {Wanted(dimension, usual)}"
            : $"{name}: given '{text}', which is {others[0]}; wanted {Wanted(dimension, usual)}");
    }

    private static string Wanted(Dimension dimension, string usual) =>
        dimension == Dimension.Number ? "a plain number" : $"{dimension.Noun()} such as '12.3 {usual}'";

    private static double Number(string name, string text, string digits) =>
        double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? value
            : throw new BadInputException($"{name}: given '{text}', wanted a finite number");

    private static int DecimalsOf(string digits)
    {
        if (digits.Contains('e', StringComparison.OrdinalIgnoreCase))
        {
            return -1;
        }

        var point = digits.IndexOf('.', StringComparison.Ordinal);
        return point < 0 ? 0 : digits.Length - point - 1;
    }

    private static (string Value, string Spread) Halves(string text)
    {
        var written = text.Trim().Replace('−', '-').Replace("+/-", "±", StringComparison.Ordinal).Replace("+-", "±", StringComparison.Ordinal);
        var at = written.IndexOf('±', StringComparison.Ordinal);
        return at < 0 ? (written, "") : (written[..at].Trim(), written[(at + 1)..].Trim());
    }

    /// <summary>The digits at the start and the unit after them; no digits when it does not start with a number.</summary>
    internal static (string Digits, string Symbol) Split(string part)
    {
        var end = 0;
        while (end < part.Length && (char.IsAsciiDigit(part[end]) || part[end] == '.' || (end == 0 && part[end] is '-' or '+') || IsExponent(part, end)))
        {
            end++;
        }

        return part[..end].Any(char.IsAsciiDigit) ? (part[..end], part[end..].Trim()) : ("", "");
    }

    /// <summary>The e of 1e-6, and the sign after it; the e of "5 eV" is not one.</summary>
    private static bool IsExponent(string part, int at) => part[at] switch
    {
        'e' or 'E' => at > 0 && at + 1 < part.Length && (char.IsAsciiDigit(part[at + 1]) || (part[at + 1] is '-' or '+' && at + 2 < part.Length && char.IsAsciiDigit(part[at + 2]))),
        '-' or '+' => at > 0 && part[at - 1] is 'e' or 'E',
        _ => false,
    };
}
