using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Chamber;

/// <summary>How hard the rings will be worked: the row of the ring makers' gap tables.</summary>
public enum RingService
{
    /// <summary>Road use.</summary>
    Street,

    /// <summary>Fast road use.</summary>
    StreetHot,

    /// <summary>Modified engine or nitrous oxide.</summary>
    Modified,

    /// <summary>Racing, naturally aspirated.</summary>
    Racing,

    /// <summary>Racing with exhaust-driven charging or nitrous oxide.</summary>
    TurboRacing,

    /// <summary>Racing with a mechanically driven supercharger.</summary>
    BlowerRacing,
}

/// <summary>Piston ring end gaps.</summary>
public static class RingGap
{
    private const string Makers = "Ring makers' published tables; no standard; makers differ by up to 0.0005 of the bore";

    /// <summary>Top ring end gap as a factor of the bore, m.</summary>
    /// <param name="bore">Cylinder bore at the ring's top position, m.</param>
    /// <param name="service">How hard the ring will be worked.</param>
    [Formula(
        "top ring end gap",
        "g = f B",
        Makers,
        Provenance = Provenance.CommonPractice,
        Validity = "Factors 0.0040 street, 0.0045 street hot, 0.0050 modified, 0.0055 racing, 0.0060 turbo racing (to 0.0065), 0.0070 blower racing.",
        Caution = "A least gap: a gap too small breaks the land, one too large costs a little blow-by. The ring maker's own figure comes first. For methanol no figure is published: take the blower value.")]
    [return: Quantity("end gap", Dimension.Length, "mm", Symbol = "g")]
    public static double Top(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 0.5)] double bore,
        [Quantity("ring service", Dimension.Number, Symbol = "f")] RingService service) =>
        TopFactor(service) * bore;

    /// <summary>Second ring end gap as a factor of the bore, m.</summary>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="service">How hard the ring will be worked.</param>
    [Formula(
        "second ring end gap",
        "g = f B",
        Makers,
        Provenance = Provenance.CommonPractice,
        Validity = "Factors 0.0050 street, 0.0055 modified, 0.0053 racing, 0.0057 turbo racing, 0.0063 blower racing.",
        Caution = "Disagrees with the other trade rule (1.25 times the top gap): keep to the ring maker's own rule.")]
    [return: Quantity("end gap", Dimension.Length, "mm", Symbol = "g")]
    public static double Second(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 0.5)] double bore,
        [Quantity("ring service", Dimension.Number, Symbol = "f")] RingService service) =>
        SecondFactor(service) * bore;

    /// <summary>Second ring end gap from the top gap, m: so that gas which passes the top ring does not lift it.</summary>
    /// <param name="top">Top ring end gap, m.</param>
    /// <param name="factor">Second gap over top gap.</param>
    [Formula("second ring end gap from the top gap", "g2 = k g1", "Ring makers' rule", Provenance = Provenance.CommonPractice)]
    [return: Quantity("second ring end gap", Dimension.Length, "mm", Symbol = "g2")]
    public static double SecondFromTop(
        [Quantity("top ring end gap", Dimension.Length, "mm", Symbol = "g1", Above = 0, Max = 0.01)] double top,
        [Quantity("second over top", Dimension.Number, Symbol = "k", Min = 1, Max = 2)] double factor = 1.25) =>
        factor * top;

    /// <summary>End gap from any factor of the bore, m.</summary>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="factor">Gap over bore, from the ring maker.</param>
    [Formula("ring end gap by factor", "g = f B", "The ring maker's own factor", Provenance = Provenance.CommonPractice)]
    [return: Quantity("end gap", Dimension.Length, "mm", Symbol = "g")]
    public static double ByFactor(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 0.5)] double bore,
        [Quantity("gap over bore", Dimension.Number, Symbol = "f", Min = 0, Max = 0.02)] double factor) =>
        factor * bore;

    /// <summary>How much an end gap closes as ring and bore warm up, m.</summary>
    /// <param name="bore">Cylinder bore, m.</param>
    /// <param name="ringExpansion">Expansion coefficient of the ring, 1/K.</param>
    /// <param name="ringTemperature">Mean temperature of the ring, K.</param>
    /// <param name="boreExpansion">Expansion coefficient of the bore, 1/K.</param>
    /// <param name="boreTemperature">Temperature of the bore where the ring stands, K.</param>
    /// <param name="cold">Temperature at which the gap was measured, K.</param>
    [Formula(
        "ring end gap closing when hot",
        "x = π B (ar (Tr - T0) - ab (Tb - T0))",
        "Linear thermal expansion of ring and bore circumference",
        Provenance = Provenance.Definition)]
    [return: Quantity("closing of the end gap", Dimension.Length, "mm", Symbol = "x")]
    public static double Closing(
        [Quantity("bore", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 0.5)] double bore,
        [Quantity("expansion coefficient of the ring", Dimension.ThermalExpansion, "1/K", Symbol = "ar", Min = 0, Max = 5e-5)] double ringExpansion,
        [Quantity("ring temperature", Dimension.Temperature, "°C", Symbol = "Tr", Above = 0, Max = 1500)] double ringTemperature,
        [Quantity("expansion coefficient of the bore", Dimension.ThermalExpansion, "1/K", Symbol = "ab", Min = 0, Max = 5e-5)] double boreExpansion,
        [Quantity("bore temperature", Dimension.Temperature, "°C", Symbol = "Tb", Above = 0, Max = 1500)] double boreTemperature,
        [Quantity("measuring temperature", Dimension.Temperature, "°C", Symbol = "T0", Above = 0, Max = 400)] double cold = 293.15) =>
        Math.PI * bore * ((ringExpansion * (ringTemperature - cold)) - (boreExpansion * (boreTemperature - cold)));

    private static double TopFactor(RingService service) => service switch
    {
        RingService.Street => 0.0040,
        RingService.StreetHot => 0.0045,
        RingService.Modified => 0.0050,
        RingService.Racing => 0.0055,
        RingService.TurboRacing => 0.0060,
        _ => 0.0070,
    };

    private static double SecondFactor(RingService service) => service switch
    {
        RingService.Street or RingService.StreetHot => 0.0050,
        RingService.Modified => 0.0055,
        RingService.Racing => 0.0053,
        RingService.TurboRacing => 0.0057,
        _ => 0.0063,
    };
}
