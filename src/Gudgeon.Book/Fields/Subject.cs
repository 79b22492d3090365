using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>A part or a circumstance that fields are about.</summary>
/// <param name="Path">Path in the book: "cylinder".</param>
/// <param name="Label">Trade name.</param>
/// <param name="Indexing">How its instances are told apart.</param>
public sealed record Subject(string Path, string Label, Indexing Indexing = Indexing.None)
{
    /// <summary>Declares an amount that cannot be zero or less unless <paramref name="signed"/> or <paramref name="zero"/>, nor more than <paramref name="most"/>, SI. The plausible range is in the display unit.</summary>
    internal Field Amount(
        string name,
        string label,
        Dimension dimension,
        string unit,
        (double Low, double High) plausible,
        string measured = "",
        string help = "",
        bool signed = false,
        bool zero = false,
        double most = double.MaxValue)
    {
        var shown = Units.Declared(dimension, unit);
        var least = signed ? double.NegativeInfinity : zero || dimension == Dimension.Temperature ? 0 : double.Epsilon;
        return new Field(this, name, label, FieldKind.Amount)
        {
            Dimension = dimension,
            Unit = unit,
            Plausible = (shown.ToSi(plausible.Low), shown.ToSi(plausible.High)),
            Possible = (least, most),
            Measured = measured,
            Help = help,
        };
    }

    /// <summary>Declares a whole number.</summary>
    internal Field Count(string name, string label, (int Low, int High) plausible, int least = 1, string help = "") => new(this, name, label, FieldKind.Count)
    {
        Plausible = (plausible.Low, plausible.High),
        Possible = (least, 1000),
        Help = help,
    };

    /// <summary>Declares one of a fixed set of words.</summary>
    internal Field Choice(string name, string label, IEnumerable<string> choices, string help = "") => new(this, name, label, FieldKind.Choice) { Choices = [.. choices], Help = help };

    /// <summary>Declares one of the words of an enumeration.</summary>
    internal Field Choice<TEnum>(string name, string label, string help = "")
        where TEnum : struct, Enum => Choice(name, label, Enum.GetNames<TEnum>().Select(EnumWords.Of), help);

    /// <summary>Declares text.</summary>
    internal Field Text(string name, string label, string help) => new(this, name, label, FieldKind.Text) { Help = help };

    /// <summary>Declares a day.</summary>
    internal Field Date(string name, string label, string help = "") => new(this, name, label, FieldKind.Date) { Help = help };

    /// <summary>Declares readings at stations in two axes, of which another field is the mean.</summary>
    internal Field Stations(string name, string label, string help, Field mean) => new(this, name, label, FieldKind.Table)
    {
        Columns = [new("station", mean.Dimension, mean.Unit, Place: true), new("first", mean.Dimension, mean.Unit), new("second", mean.Dimension, mean.Unit)],
        Help = help,
        Mean = mean,
    };

    /// <summary>Declares a table.</summary>
    internal Field Table(string name, string label, string help, params Column[] columns) => new(this, name, label, FieldKind.Table) { Columns = columns, Help = help };
}
