using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Pipes and hoses from the filter to the plenum: duct[inlet], duct[delivery].</summary>
public static class AirDuct
{
    internal static readonly Subject Subject = new("duct", "Air duct", Indexing.Name);

    public static readonly Field Place = Subject.Choice("place", "Where it is", DuctPlaces.All, "Says how warm and how dense the air in it is.");
    public static readonly Field Bore = Subject.Amount("bore", "Bore where it is narrowest", Dimension.Length, "mm", (15, 150), "calliper or telescopic gauge", "Of a duct that is not round: √(4 A/π).");
    public static readonly Field Loss = Subject.Amount("loss", "Loss of its bends, steps and ends", Dimension.Number, "", (0, 5), "flow bench: pressure lost over dynamic pressure", "Sum of the loss coefficients: a bellmouth 0.05, a wide bend 0.2, a tight one 0.5, a step into a wide box 1: common practice, no source. 0 when left out.", zero: true);
}

/// <summary>Where ducts can be.</summary>
public static class DuctPlaces
{
    /// <summary>Air as it comes from the filter.</summary>
    public const string BeforeBlower = "before the blower";

    /// <summary>Air under boost, as hot as the blower makes it.</summary>
    public const string BehindBlower = "behind the blower";

    /// <summary>Air under boost, as cool as it reaches the plenum.</summary>
    public const string BehindCooler = "behind the cooler";

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<string> All = [BeforeBlower, BehindBlower, BehindCooler];
}
