using Gudgeon.Book.Fields;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Parts;

/// <summary>A part of the build as the book has it. SI; null or empty where it is not known.</summary>
/// <param name="Key">Its name in the book.</param>
/// <param name="Name">What it is.</param>
public sealed record PartLine(string Key, string Name)
{
    /// <summary>How far it has come; empty when the book does not say.</summary>
    public string State { get; init; } = "";

    /// <summary>Stock, modified, own or bought; empty when the book does not say.</summary>
    public string Source { get; init; } = "";

    /// <summary>How many.</summary>
    public int Quantity { get; init; } = 1;

    /// <summary>Serial, batch or casting number.</summary>
    public string Serial { get; init; } = "";

    /// <summary>Mass of one, kg.</summary>
    public double? Mass { get; init; }

    /// <summary>Mass of the one that it replaces, kg.</summary>
    public double? MassBefore { get; init; }

    /// <summary>From whom.</summary>
    public string Supplier { get; init; } = "";

    /// <summary>The supplier's number.</summary>
    public string OrderNumber { get; init; } = "";

    /// <summary>Price of one, in the shop's money.</summary>
    public double? Price { get; init; }

    /// <summary>Time from order to delivery, s.</summary>
    public double? LeadTime { get; init; }

    /// <summary>When it was ordered.</summary>
    public DateOnly? OrderedOn { get; init; }

    /// <summary>When it is promised, or its lead time after the day of its order.</summary>
    public DateOnly? Due { get; init; }

    /// <summary>Material or test certificate.</summary>
    public string Certificate { get; init; } = "";

    /// <summary>Id of the job card that waits for it.</summary>
    public string Card { get; init; } = "";

    /// <summary>Mass of all, kg.</summary>
    public double? MassAll => Mass * Quantity;

    /// <summary>Mass that all save over what they replace, kg; negative when they are heavier.</summary>
    public double? MassSaved => (MassBefore - Mass) * Quantity;

    /// <summary>Price of all, in the shop's money.</summary>
    public double? Cost => Price * Quantity;

    /// <summary>Whether its money is gone: ordered, here or fitted.</summary>
    public bool Spent => State is Part.Ordered or Part.Here or Part.Fitted;

    /// <summary>Whether it is scrapped.</summary>
    public bool Scrapped => State == Part.Scrapped;

    /// <summary>The parts of a book.</summary>
    public static IReadOnlyList<PartLine> All(View view) => [.. NeededPart.Keys(view).Select(k => Of(view, k))];

    /// <summary>The line of a part.</summary>
    public static PartLine Of(View view, string key) => new(key, view.WordOr(Part.Name, key, key))
    {
        State = view.WordOr(Part.State, "", key),
        Source = view.WordOr(Part.Source, "", key),
        Quantity = view.CountOr(Part.Quantity, 1, key),
        Serial = view.WordOr(Part.Serial, "", key),
        Mass = view.AmountIf(Part.Mass, key),
        MassBefore = view.AmountIf(Part.MassBefore, key),
        Supplier = view.WordOr(Part.Supplier, "", key),
        OrderNumber = view.WordOr(Part.OrderNumber, "", key),
        Price = view.AmountIf(Part.Price, key),
        LeadTime = view.AmountIf(Part.LeadTime, key),
        OrderedOn = view.DateIf(Part.OrderedOn, key),
        Due = NeededPart.Promised(view, key),
        Certificate = view.WordOr(Part.Certificate, "", key),
        Card = view.WordOr(Part.Card, "", key),
    };

    /// <summary>Whether another would do in its place: of the same name, or the same number to order by.</summary>
    public bool IsLike(PartLine other) => other.Name.Equals(Name, StringComparison.OrdinalIgnoreCase) || (OrderNumber.Length > 0 && other.OrderNumber == OrderNumber);
}
