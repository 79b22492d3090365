using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Parts on the bench to choose from.</summary>
public static class Stock
{
    private static readonly Subject Subject = new("stock", "Parts on the bench");

    private const string ShellHelp = "Number of the grade, least and greatest thickness at the crown, and how many halves are at hand, the fitted ones counted in: 3 at 1.496 mm at 1.5 mm at 4. Others can be bought; without numbers there are plenty.";

    private static readonly Column[] ShellColumns = [new("grade", Dimension.Number, ""), new("least", Dimension.Length, "mm"), new("greatest", Dimension.Length, "mm"), new("count", Dimension.Number, "", Optional: true)];

    public static readonly Field Spacers = Subject.Table("spacers", "Spring spacers at hand", "Thickness and how many there are, those that came out counted in: 0.5 mm at 8; 1 mm at 8. Without numbers there are plenty.", new Column("thickness", Dimension.Length, "mm"), new Column("count", Dimension.Number, "", Optional: true));
    public static readonly Field Springs = Subject.Table("springs", "Valve springs at hand", "Number on the spring, its load at the height below and, where it was read, at the open height: 1 at 268 N at 655 N.", new Column("number", Dimension.Number, ""), new Column("load", Dimension.Force, "N"), new Column("openLoad", Dimension.Force, "N", Optional: true));
    public static readonly Field SpringTestHeight = Subject.Amount("springTestHeight", "Height at which the springs were tested", Dimension.Length, "mm", (15, 80), "spring tester, its stop set with a gauge block");
    public static readonly Field SpringOpenHeight = Subject.Amount("springOpenHeight", "Second height of the test, valve open", Dimension.Length, "mm", (12, 70), "spring tester, its stop set with a gauge block");
    public static readonly Field Shims = Subject.Table("shims", "Lash shims at hand", "Thickness by micrometer and how many there are, the fitted ones left out: 2.35 mm at 2; 2.4 mm at 1. Without numbers there are plenty.", new Column("thickness", Dimension.Length, "mm"), new Column("count", Dimension.Number, "", Optional: true));
    public static readonly Field ShimStep = Subject.Amount("shimStep", "Step of the shims that are sold", Dimension.Length, "mm", (0.01, 0.1), help: "None can be bought when left out.");
    public static readonly Field ShimThinnest = Subject.Amount("shimThinnest", "Thinnest shim that is sold", Dimension.Length, "mm", (0.8, 6));
    public static readonly Field ShimThickest = Subject.Amount("shimThickest", "Thickest shim that is sold", Dimension.Length, "mm", (1, 6));
    public static readonly Field MainShells = Subject.Table("mainShells", "Main bearing shells, by grade", ShellHelp, ShellColumns);
    public static readonly Field BigEndShells = Subject.Table("bigEndShells", "Big end shells, by grade", ShellHelp, ShellColumns);
}
