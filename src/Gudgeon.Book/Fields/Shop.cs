using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>The shop that does the work.</summary>
public static class Shop
{
    private static readonly Subject Subject = new("workshop", "Workshop");

    public static readonly Field Begin = Subject.Date("begin", "Day on which the work begins", "Today when left out.");
    public static readonly Field HoursPerDay = Subject.Amount("hoursPerDay", "Hours of work on a day", Dimension.Time, "h", (1, 12), help: "Days off counted in: 5 days of 8 h in a week are 5.7 h; 4 h when left out.", most: 86400);
}
