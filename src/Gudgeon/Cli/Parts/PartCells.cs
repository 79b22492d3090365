using System.Globalization;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Parts;
using Gudgeon.Book.Values;
using Gudgeon.Cli.Sheets;

namespace Gudgeon.Cli.Parts;

/// <summary>Parts as they are written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class PartCells(bool imperial)
{
    /// <summary>Headings of the parts; the first is the part's name.</summary>
    public static readonly IReadOnlyList<string> Lines = ["part\t", "key\t", "state\t", "source\t", "quantity", "supplier\t", "due", "mass", "saved", "cost", "card\t", "serial\t", "certificate\t"];

    /// <summary>Headings of what is to be ordered.</summary>
    public static readonly IReadOnlyList<string> Orders = ["part\t", "when\t", "order number\t", "quantity", "price", "cost", "lead time"];

    /// <summary>The row of a part.</summary>
    public IReadOnlyList<string> Of(PartLine l) =>
        [l.Name, l.Key, State(l), l.Source, Count(l.Quantity), l.Supplier, Day(l.Due), Mass(l.MassAll), Mass(l.MassSaved), Money(l.Cost), l.Card, l.Serial, l.Certificate];

    /// <summary>The row of an order.</summary>
    public static IReadOnlyList<string> Of(PartOrder o) =>
        [o.Part.Name, o.Words, o.Part.OrderNumber, Count(o.Part.Quantity), Money(o.Part.Price), Money(o.Part.Cost), o.Part.LeadTime is { } lead ? Part.LeadTime.Print(lead) : Cell.Unknown];

    /// <summary>"ordered", "not said".</summary>
    public static string State(PartLine line) => line.State.Length > 0 ? line.State : "not said";

    /// <summary>A mass.</summary>
    public string Mass(double? kilograms) => Cell.Of(kilograms, Part.Mass.Dimension, Part.Mass.Unit, 4, imperial);

    /// <summary>A day.</summary>
    public static string Day(DateOnly? day) => day is { } known ? Days.Written(known) : Cell.Unknown;

    /// <summary>Money of the shop.</summary>
    public static string Money(double? amount) => amount is { } known ? Book.Values.Money.Written(known) : Cell.Unknown;

    private static string Count(int quantity) => quantity.ToString(CultureInfo.InvariantCulture);
}
