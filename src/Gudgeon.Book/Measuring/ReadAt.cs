using Gudgeon.Book.Bottom;
using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Materials;
using Gudgeon.Calc.Metrology;

namespace Gudgeon.Book.Measuring;

/// <summary>At which temperatures a length was read, and what the part is made of.</summary>
/// <param name="Part">Temperature of the part, "26 °C" or "26 ± 0.5 °C".</param>
/// <param name="Tool">Temperature of the instrument.</param>
/// <param name="MadeOf">A material of the handbook's table, or a thermal expansion such as "23 µm/(m·K)"; by the part's own field when empty.</param>
public sealed record ReadAt(string Part, string Tool, string MadeOf = "")
{
    /// <summary>Thermal expansion of steel, of which instruments and their setting pieces are: 11.5 µm/(m·K) (JCGM 100:2008, H.1).</summary>
    public const double Steel = 11.5e-6;

    private const string Degrees = "°C";

    // From a part left out in the frost to one out of the oven: common practice, no source.
    private const double Coldest = -60;
    private const double Hottest = 400;

    /// <summary>Temperatures where both were said; null where neither was.</summary>
    /// <param name="about">What was read, for the sentence.</param>
    /// <param name="part">Temperature of the part; empty when not said.</param>
    /// <param name="tool">Temperature of the instrument; empty when not said.</param>
    /// <param name="madeOf">What the part is made of; empty when not said.</param>
    /// <exception cref="BadInputException">Only one was said.</exception>
    public static ReadAt? Said(string about, string part, string tool, string madeOf) => (part.Length > 0, tool.Length > 0) switch
    {
        (true, true) => new ReadAt(part, tool, madeOf),
        (false, false) when madeOf.Length == 0 => null,
        _ => throw new BadInputException($"{about}: a reading is brought to 20 °C by two temperatures; wanted that of the part and that of the tool, such as --part-at 26°C --tool-at 22°C"),
    };

    /// <summary>A reading brought to 20 °C, its ± with what the temperatures leave uncertain, and its note with what was read.</summary>
    /// <param name="now">The values that hold.</param>
    /// <param name="address">What was read.</param>
    /// <param name="value">The reading as it was read.</param>
    /// <exception cref="BadInputException">It is no length, nothing says of what the part is made, or no part is so cold or hot.</exception>
    public KnownValue Corrected(Snapshot now, FieldAddress address, KnownValue value)
    {
        if (value.Content is not Amount { Unit.Dimension: Dimension.Length } amount)
        {
            throw new BadInputException($"{address.Path}: given temperatures with {address.Field.Dimension.Noun()}; only a single length is brought to 20 °C");
        }

        var at20 = Of(now, address, amount.Si);
        var uncertainty = Math.Sqrt((amount.Uncertainty * amount.Uncertainty) + (4 * at20.Uncertainty * at20.Uncertainty));
        var brought = amount with { Si = at20.Corrected, Decimals = amount.Decimals < 0 ? 6 : amount.Decimals + 1 };
        return value with { Content = brought.Within(uncertainty), Note = $"read {amount} with the part at {Part} and the tool at {Tool}, brought to 20 °C" };
    }

    /// <summary>A length of the part brought to 20 °C.</summary>
    /// <param name="now">The values that hold.</param>
    /// <param name="address">What was read.</param>
    /// <param name="length">As read, m.</param>
    public CorrectedLength Of(Snapshot now, FieldAddress address, double length)
    {
        var (part, tool) = (Temperature(address, "the part", Part), Temperature(address, "the tool", Tool));
        var view = new View(now);
        if (length == 0)
        {
            return default;
        }

        var at20 = view.Work(ThermalLength.Corrected, Math.Abs(length), Expansion(view, address), part.Si, Steel, tool.Si, ThermalLength.UsualExpansionUncertainty, Spread(part), Spread(tool));
        return length > 0 ? at20 : at20 with { Corrected = -at20.Corrected, Error = -at20.Error };
    }

    private static double Spread(Amount temperature) => temperature.Uncertainty > 0 ? temperature.StandardUncertainty : ThermalLength.UsualTemperatureUncertainty;

    private static Amount Temperature(FieldAddress address, string of, string text)
    {
        var given = Amount.Parse($"{address.Path}, temperature of {of}", text, Dimension.Temperature, Degrees);
        return Units.Declared(Dimension.Temperature, Degrees).FromSi(given.Si) is >= Coldest and <= Hottest
            ? given
            : throw new BadInputException(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{address.Path}, temperature of {of}: given '{text}', wanted {Coldest} {Degrees} to {Hottest} {Degrees}"));
    }

    private double Expansion(View view, FieldAddress address)
    {
        if (MadeOf.Length == 0)
        {
            return OfPart(view, address) ?? throw new BadInputException($"{address.Path}: nothing says how the part grows; wanted --made-of with {Wanted}");
        }

        return Enum.GetValues<MaterialGrade>().Where(g => string.Equals(EnumWords.Of(g.ToString()), MadeOf, StringComparison.OrdinalIgnoreCase)).Select(g => (MaterialGrade?)g).FirstOrDefault() is { } grade
            ? MaterialTable.Of(grade).Expansion
            : MadeOf.Any(char.IsAsciiDigit) && Amount.Split(MadeOf).Digits.Length > 0
                ? Amount.Parse($"{address.Path}, thermal expansion", MadeOf, Dimension.ThermalExpansion, Cylinder.Expansion.Unit).Si
                : throw new BadInputException($"{address.Path}: given '{MadeOf}' as what the part is made of, wanted {Wanted}");
    }

    private static string Wanted => $"a thermal expansion such as 23µm/(m·K), or a material of the handbook such as {EnumWords.Of(nameof(MaterialGrade.Steel42CrMo4))}";

    /// <summary>Expansion of a part by its own field; journals and rods are of steel where nothing else is said. Null when the book has no field for it.</summary>
    private static double? OfPart(View view, FieldAddress address) => address.Field.Subject.Path switch
    {
        "cylinder" => view.AmountIf(Cylinder.Expansion, address.Index),
        "piston" => view.AmountIf(Piston.Expansion, address.Index),
        "rod" => view.AmountOr(Rod.Expansion, Steel),
        "bearing" when address.Field == Bearing.Housing || address.Field == Bearing.HousingTable => BearingFit.HousingExpansion(view, address.Index),
        "bearing" => Steel,
        _ => null,
    };
}
