namespace Gudgeon.Web.Layout;

/// <summary>The sheets of one page, in the order of the work; the command line has them under the same words.</summary>
/// <param name="Page">Last part of the page's address.</param>
/// <param name="Words">What the page is about.</param>
/// <param name="All">Last part of each sheet's address and the words for it.</param>
public sealed record SheetLinks(string Page, string Words, (string Part, string Words)[] All)
{
    /// <summary>Head and valve train.</summary>
    public static readonly SheetLinks Head = new("head", "Head and valve train",
    [
        ("flow", "Flow"),
        ("cams", "Cams"),
        ("clearance", "Valve to piston"),
        ("springs", "Springs"),
        ("motion", "Motion"),
        ("lash", "Lash and shims"),
        ("seats", "Seats and guides"),
    ]);

    /// <summary>Bottom end.</summary>
    public static readonly SheetLinks Bottom = new("bottom", "Bottom end",
    [
        ("loads", "Loads"),
        ("bearings", "Bearings and oil"),
        ("shells", "Shells"),
        ("rods", "Rods and crank"),
        ("pistons", "Pistons and rings"),
        ("balance", "Balance"),
        ("torsion", "Torsion"),
    ]);

    /// <summary>Fits.</summary>
    public static readonly SheetLinks Fits = new("fits", "Fits",
    [
        ("pairs", "Pairs"),
        ("limits", "Limits of size"),
    ]);

    /// <summary>Bolted joints.</summary>
    public static readonly SheetLinks Joints = new("joints", "Bolted joints",
    [
        ("bolts", "Bolts"),
        ("torque", "Torque"),
        ("plan", "Tightening plan"),
        ("head", "Head joint"),
        ("swap", "Other bolts"),
        ("list", "Bolt list"),
    ]);

    /// <summary>Boost drive.</summary>
    public static readonly SheetLinks Drive = new("drive", "Boost drive",
    [
        ("belt", "Ratio and belt"),
        ("nose", "Nose and outboard bearing"),
        ("hits", "Hits and burst"),
        ("heat", "Oil tank and charge cooler"),
        ("air", "Air path"),
    ]);

    /// <summary>Job cards.</summary>
    public static readonly SheetLinks Jobs = new("jobs", "Job cards",
    [
        ("board", "Board"),
        ("path", "Way to the first start"),
    ]);

    /// <summary>The sheet of an address; the first when it names none.</summary>
    public (string Part, string Words) Of(string? part) => All.FirstOrDefault(l => l.Part == part, All[0]);

    /// <summary>Address of a sheet.</summary>
    public string To(string key, string part) => $"{BookLinks.To(key, Page)}/{part}";
}
