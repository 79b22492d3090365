using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Metrology;

namespace Gudgeon.Calc.Fits;

/// <summary>Temperature and interference: assembling a shrink fit, and what heat does to it in service.</summary>
public static class ShrinkFit
{
    private const double Room = ThermalLength.Reference;
    private const string HotParts = "Hot parts burn, and oil and thread-locker on them smoke and ignite: gloves, visor, extraction. Mind the temper of the part.";

    /// <summary>Temperature to which the hub is heated so that it goes on with clearance, K.</summary>
    /// <param name="interference">Diametral interference, m.</param>
    /// <param name="clearance">Clearance wanted while assembling, m.</param>
    /// <param name="expansion">Expansion coefficient of the hub, 1/K.</param>
    /// <param name="diameter">Joint diameter, m.</param>
    /// <param name="ambient">Temperature of the shaft, K.</param>
    [Formula("shrink fit heating", "T = T0 + (U + c) / (α d)", "linear expansion; DIN 7190-1", Provenance = Provenance.Definition, Caution = HotParts)]
    [return: Quantity("hub temperature", Dimension.Temperature, "°C", Symbol = "T")]
    public static double HubTemperature(
        [Quantity("interference", Dimension.Length, "mm", Symbol = "U", Min = 0)] double interference,
        [Quantity("assembly clearance", Dimension.Length, "mm", Symbol = "c", Min = 0)] double clearance,
        [Quantity("expansion of the hub", Dimension.ThermalExpansion, "1/K", Symbol = "α", Above = 0)] double expansion,
        [Quantity("joint diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("room temperature", Dimension.Temperature, "°C", Symbol = "T0", Above = 0)] double ambient = Room) =>
        ambient + ((interference + clearance) / (expansion * diameter));

    /// <summary>Temperature to which the inner part is cooled so that it goes in with clearance, K.</summary>
    /// <param name="interference">Diametral interference, m.</param>
    /// <param name="clearance">Clearance wanted while assembling, m.</param>
    /// <param name="expansion">Mean expansion coefficient of the inner part while cold, 1/K.</param>
    /// <param name="diameter">Joint diameter, m.</param>
    /// <param name="ambient">Temperature of the outer part, K.</param>
    [Formula("shrink fit cooling", "T = T0 - (U + c) / (α d)", "linear expansion; DIN 7190-1", Provenance = Provenance.Definition, Caution = "Dry ice and liquid nitrogen burn and displace air: gloves, visor, an open room. Metals shrink less per kelvin when cold.")]
    [return: Quantity("inner part temperature", Dimension.Temperature, "°C", Symbol = "T")]
    public static double ShaftTemperature(
        [Quantity("interference", Dimension.Length, "mm", Symbol = "U", Min = 0)] double interference,
        [Quantity("assembly clearance", Dimension.Length, "mm", Symbol = "c", Min = 0)] double clearance,
        [Quantity("expansion of the inner part", Dimension.ThermalExpansion, "1/K", Symbol = "α", Above = 0)] double expansion,
        [Quantity("joint diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("room temperature", Dimension.Temperature, "°C", Symbol = "T0", Above = 0)] double ambient = Room)
    {
        var temperature = ambient - ((interference + clearance) / (expansion * diameter));
        FormulaDomainException.Unless(temperature > 0, "interference: cooling alone cannot give this clearance");
        return temperature;
    }

    /// <summary>Interference at working temperature, m; negative when the fit has become a clearance.</summary>
    /// <param name="interference">Diametral interference at room temperature, m.</param>
    /// <param name="diameter">Joint diameter, m.</param>
    /// <param name="hubExpansion">Expansion coefficient of the hub, 1/K.</param>
    /// <param name="shaftExpansion">Expansion coefficient of the inner part, 1/K.</param>
    /// <param name="hubRise">Temperature rise of the hub, K.</param>
    /// <param name="shaftRise">Temperature rise of the inner part, K.</param>
    [Formula("interference at temperature", "Ut = U - d (αo ΔTo - αi ΔTi)", "linear expansion", Provenance = Provenance.Definition)]
    [return: Quantity("interference when hot", Dimension.Length, "mm", Symbol = "Ut")]
    public static double WhenHot(
        [Quantity("interference", Dimension.Length, "mm", Symbol = "U")] double interference,
        [Quantity("joint diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("expansion of the hub", Dimension.ThermalExpansion, "1/K", Symbol = "αo")] double hubExpansion,
        [Quantity("expansion of the inner part", Dimension.ThermalExpansion, "1/K", Symbol = "αi")] double shaftExpansion,
        [Quantity("temperature rise of the hub", Dimension.TemperatureDifference, "K", Symbol = "ΔTo")] double hubRise,
        [Quantity("temperature rise of the inner part", Dimension.TemperatureDifference, "K", Symbol = "ΔTi")] double shaftRise) =>
        interference - (diameter * ((hubExpansion * hubRise) - (shaftExpansion * shaftRise)));

    /// <summary>Temperature at which both parts, equally warm, have lost the interference, K.</summary>
    /// <param name="interference">Diametral interference at room temperature, m.</param>
    /// <param name="diameter">Joint diameter, m.</param>
    /// <param name="hubExpansion">Expansion coefficient of the hub, 1/K.</param>
    /// <param name="shaftExpansion">Expansion coefficient of the inner part, 1/K.</param>
    /// <param name="ambient">Temperature at which the interference was measured, K.</param>
    [Formula("temperature at which a fit is lost", "T = T0 + U / ((αo - αi) d)", "linear expansion", Provenance = Provenance.Definition)]
    [return: Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T")]
    public static double LossTemperature(
        [Quantity("interference", Dimension.Length, "mm", Symbol = "U", Min = 0)] double interference,
        [Quantity("joint diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("expansion of the hub", Dimension.ThermalExpansion, "1/K", Symbol = "αo")] double hubExpansion,
        [Quantity("expansion of the inner part", Dimension.ThermalExpansion, "1/K", Symbol = "αi")] double shaftExpansion,
        [Quantity("room temperature", Dimension.Temperature, "°C", Symbol = "T0", Above = 0)] double ambient = Room)
    {
        FormulaDomainException.Unless(hubExpansion > shaftExpansion, "expansion of the hub: not greater than that of the inner part, heat does not loosen this fit");
        return ambient + (interference / ((hubExpansion - shaftExpansion) * diameter));
    }
}
