using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Parts and consumables that the build needs: part[pistons], part[head-gasket].</summary>
public static class Part
{
    /// <summary>Words for how far a part has come.</summary>
    public const string Needed = "needed", Ordered = "ordered", Here = "here", Fitted = "fitted", Scrapped = "scrapped";

    /// <summary>The source of a part that is paid for.</summary>
    public const string Bought = "bought";

    private static readonly Subject Subject = new("part", "Part of the build", Indexing.Name);

    public static readonly Field Name = Subject.Text("name", "What it is", "a few words, such as: forged pistons with pins and rings");
    public static readonly Field Source = Subject.Choice("source", "Where it comes from", ["stock", "modified", "own", Bought], "Stock is as the factory made it; own is made in the shop.");
    public static readonly Field State = Subject.Choice("state", "How far it has come", [Needed, Ordered, Here, Fitted, Scrapped]);
    public static readonly Field Quantity = Subject.Count("quantity", "How many", (1, 100), help: "1 when left out.");
    public static readonly Field Serial = Subject.Text("serial", "Serial, batch or casting number", "the number as it is stamped");
    public static readonly Field Mass = Subject.Amount("mass", "Mass of one", Dimension.Mass, "g", (0.5, 60000), "scale");
    public static readonly Field MassBefore = Subject.Amount("massBefore", "Mass of the one that it replaces", Dimension.Mass, "g", (0.5, 60000), "scale");
    public static readonly Field Supplier = Subject.Text("supplier", "From whom", "a name");
    public static readonly Field OrderNumber = Subject.Text("orderNumber", "Number to order by", "the supplier's number");
    public static readonly Field Price = Subject.Amount("price", "Price of one", Dimension.Number, "", (0.05, 20000), help: "In the shop's own money.");
    public static readonly Field LeadTime = Subject.Amount("leadTime", "Time from order to delivery", Dimension.Time, "d", (1, 200));
    public static readonly Field OrderedOn = Subject.Date("orderedOn", "Day on which it was ordered");
    public static readonly Field Due = Subject.Date("due", "Day on which it is promised", "By the supplier; the day of the order and the lead time when left out.");
    public static readonly Field Certificate = Subject.Text("certificate", "Certificate", "number and issuer of a material or test certificate");
    public static readonly Field Card = Subject.Text("card", "Job card that waits for it", "the id of a card, such as pistons");
    public static readonly Field SingleUse = Subject.Choice("singleUse", "New each time", ["yes", "no"], "Gaskets, stretch bolts, circlips: no when left out.");
}
