using Gudgeon.Calc.Bearings;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Engine oil and what brings it to the bearings.</summary>
public static class Oil
{
    private static readonly Subject Subject = new("oil", "Engine oil");

    public static readonly Field Grade = Subject.Choice<OilGrade>("grade", "Hot grade of the oil", "SAE J300; a middling oil of the grade is taken where the viscosities are not known (common practice).");
    public static readonly Field Cold = Subject.Amount("viscosity40", "Kinematic viscosity at 40 °C", Dimension.KinematicViscosity, "mm²/s", (20, 400), help: "By the maker of the oil.");
    public static readonly Field Hot = Subject.Amount("viscosity100", "Kinematic viscosity at 100 °C", Dimension.KinematicViscosity, "mm²/s", (4, 30), help: "By the maker of the oil.");
    public static readonly Field HighShear = Subject.Amount("highShear", "Viscosity at 150 °C and high shear", Dimension.DynamicViscosity, "mPa·s", (1.5, 7), help: "By the maker of the oil; the least of its grade when left out. In a bearing the oil is thinner than at rest.");
    public static readonly Field Density = Subject.Amount("density", "Density at 15 °C", Dimension.Density, "kg/m³", (800, 1000), help: "870 kg/m³ when left out.");
    public static readonly Field Temperature = Subject.Amount("temperature", "Temperature of the oil where it comes into the bearings", Dimension.Temperature, "°C", (40, 150), "probe in the gallery, at the end of a run");
    public static readonly Field Pressure = Subject.Amount("pressure", "Oil pressure in the gallery", Dimension.Pressure, "bar", (1, 10), "gauge on the gallery, hot, at the rev limit");
    public static readonly Field Displacement = Subject.Amount("pumpDisplacement", "Displacement of the pump for a turn", Dimension.Volume, "cm³", (1, 60), "turn it by hand in oil and catch what ten turns give");
    public static readonly Field Ratio = Subject.Amount("pumpRatio", "Turns of the pump for a turn of the crank", Dimension.Number, "", (0.3, 2), "count of teeth");
    public static readonly Field Efficiency = Subject.Amount("pumpEfficiency", "Share of the pump's displacement that comes out", Dimension.Number, "", (0.4, 1), help: "0.75 when left out: against the pressure, hot and worn (common practice).", most: 1);
    public static readonly Field OtherFlow = Subject.Amount("otherFlow", "Oil that goes elsewhere", Dimension.VolumeFlow, "L/min", (0, 40), "jets, cam bearings, gearbox and balance shafts: each caught at the gallery's pressure", "None when left out.", zero: true);
}
