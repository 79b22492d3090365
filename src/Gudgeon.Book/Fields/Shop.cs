using Gudgeon.Book.Checks;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>The shop that does the work.</summary>
public static class Shop
{
    private static readonly Subject Subject = new("workshop", "Workshop");

    public static readonly Field Begin = Subject.Date("begin", "Day on which the work begins", "Today when left out.");
    public static readonly Field HoursPerDay = Subject.Amount("hoursPerDay", "Hours of work on a day", Dimension.Time, "h", (1, 12), help: "Days off counted in: 5 days of 8 h in a week are 5.7 h; 4 h when left out.", most: 86400);
    public static readonly Field DecisionRule = Subject.Choice<DecisionRuleKind>("decisionRule", "Rule by which a measured value is judged", "Guard band after ISO 14253-1 (when left out), simple acceptance, or a stated risk of a wrong verdict after JCGM 106.");
    public static readonly Field WrongVerdict = Subject.Amount("wrongVerdict", "Greatest probability of a wrong verdict", Dimension.Number, "%", (0.1, 20), help: "For the rule of a stated risk; 5 % when left out.", most: 0.49);
}
