using System.Globalization;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Values;

/// <summary>How numbers are printed for people.</summary>
public static class Figures
{
    private static readonly Dictionary<string, string> Imperial = new(StringComparer.Ordinal)
    {
        ["mm"] = "in",
        ["m"] = "ft",
        ["mm²"] = "in²",
        ["cm²"] = "in²",
        ["cm³"] = "in³",
        ["L/s"] = "cfm",
        ["N"] = "lbf",
        ["kN"] = "lbf",
        ["N/mm"] = "lbf/in",
        ["N·m"] = "lbf·ft",
        ["bar"] = "psi",
        ["MPa"] = "psi",
        ["GPa"] = "Mpsi",
        ["kPa"] = "psi",
        ["kW"] = "hp",
        ["kg"] = "lb",
        ["g/s"] = "lb/min",
        ["kg/s"] = "lb/min",
        ["m/s"] = "ft/s",
        ["km/h"] = "mph",
        ["°C"] = "°F",
    };

    /// <summary>Units of the inch system besides the counterparts above.</summary>
    private static readonly HashSet<string> Inch = [.. Imperial.Values, "thou", "\"", "″", "yd", "mi", "cu in", "sq in", "ft²", "ft³", "lbs", "oz", "kip", "ksi", "kpsi", "inHg", "Btu/lb", "cfm", "lb/s", "lb/in", "lb/in³", "lb/ft", "oz·in", "in/lbf", "lb·ft", "ft·lb", "ft·lbf", "in·lb", "in·lbf", "lb·in", "lbf·in", "degF", "F"];

    /// <summary>The unit in which a reader of one system is shown an amount: its own where that belongs there, else the field's or its counterpart.</summary>
    /// <param name="written">Unit in which it was written.</param>
    /// <param name="usual">Display unit of the field, metric.</param>
    /// <param name="imperial">Whether the reader thinks in inches.</param>
    public static Unit UnitFor(Unit written, string usual, bool imperial) => (imperial, Inch.Contains(written.Symbol)) switch
    {
        (true, false) when Imperial.TryGetValue(usual, out var counterpart) => Units.Declared(written.Dimension, counterpart),
        (false, true) when written.Symbol != usual => Units.Declared(written.Dimension, usual),
        _ => written,
    };

    /// <summary>Five significant digits, no exponent where a person would not write one.</summary>
    public static string Number(double value, int digits = 5)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return double.IsPositiveInfinity(value) ? "without end" : value.ToString(CultureInfo.InvariantCulture);
        }

        var magnitude = (int)Math.Floor(Math.Log10(Math.Abs(value)));
        if (magnitude is < -4 or > 8)
        {
            return value.ToString("G" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        }

        var decimals = Math.Clamp(digits - 1 - magnitude, 0, 12);
        var text = Math.Round(value, decimals).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return decimals == 0 ? text : text.TrimEnd('0').TrimEnd('.');
    }

    /// <summary>The unit in which people are shown an amount.</summary>
    /// <param name="dimension">What it measures.</param>
    /// <param name="unit">Display unit, metric.</param>
    /// <param name="imperial">Whether the imperial counterpart is wanted.</param>
    public static Unit Shown(Dimension dimension, string unit, bool imperial) => Units.Declared(dimension, imperial ? Imperial.GetValueOrDefault(unit, unit) : unit);

    /// <summary>An SI value in its display unit: "27.07 N/mm".</summary>
    /// <param name="si">Value, SI.</param>
    /// <param name="dimension">What it measures.</param>
    /// <param name="unit">Display unit, metric.</param>
    /// <param name="digits">Significant digits.</param>
    /// <param name="imperial">Whether to print the imperial counterpart of the unit.</param>
    public static string Print(double si, Dimension dimension, string unit, int digits = 5, bool imperial = false)
    {
        var shown = Shown(dimension, unit, imperial);
        var number = Number(shown.FromSi(si), digits);
        return shown.Symbol.Length == 0 ? number : $"{number} {shown.Symbol}";
    }

    /// <summary>A speed to the whole revolution: "8438 rpm".</summary>
    /// <param name="speed">Speed, rad/s.</param>
    public static string Rpm(double speed) => Print(Math.Round(speed * 30 / Math.PI) * Math.PI / 30, Dimension.RotationalSpeed, "rpm");
}
