using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Oil tank that cools by its walls and fins.</summary>
public static class OilTank
{
    private static readonly Subject Subject = new("oilTank", "Oil tank");

    public static readonly Field Volume = Subject.Amount("volume", "Oil in the tank and the engine", Dimension.Volume, "L", (1, 12), "measuring jug");
    public static readonly Field Area = Subject.Amount("area", "Plain outside of the tank in the wind", Dimension.Area, "m²", (0.02, 1), "tape", "Between the fins too; walls out of the wind left out.");
    public static readonly Field Height = Subject.Amount("height", "Height of its walls", Dimension.Length, "mm", (60, 600), "tape");
    public static readonly Field Length = Subject.Amount("length", "Length of its walls and fins along the wind", Dimension.Length, "mm", (40, 500), "tape");
    public static readonly Field Fins = Subject.Count("fins", "Fins", (4, 100), help: "None when left out.");
    public static readonly Field FinHeight = Subject.Amount("finHeight", "Height of the fins from the wall", Dimension.Length, "mm", (4, 60), "calliper");
    public static readonly Field FinThickness = Subject.Amount("finThickness", "Thickness of the fins", Dimension.Length, "mm", (0.5, 6), "calliper");
    public static readonly Field FinConductivity = Subject.Amount("finConductivity", "Conductivity of the fins", Dimension.ThermalConductivity, "W/(m·K)", (10, 250), help: "170 W/(m·K) when left out: 6082 (from memory).");
    public static readonly Field AirSpeed = Subject.Amount("airSpeed", "Air past the tank", Dimension.Speed, "m/s", (0, 70), "vane held beside it", "Mean of the day; standing still counts as nought.", zero: true);
    public static readonly Field HeatShare = Subject.Amount("heatShare", "Share of friction that the oil carries off", Dimension.Number, "", (0.2, 0.9), help: "0.5 when left out: common practice, no source.", most: 1);
    public static readonly Field RunTime = Subject.Amount("runTime", "Time of a run at full load", Dimension.Time, "s", (3, 600));
    public static readonly Field Rest = Subject.Amount("rest", "Time from one run to the next", Dimension.Time, "min", (1, 240));
    public static readonly Field Limit = Subject.Amount("limit", "Hottest that the oil may be", Dimension.Temperature, "°C", (90, 160), help: "By the maker of the oil; 130 °C when left out: common practice, no source.");
}
