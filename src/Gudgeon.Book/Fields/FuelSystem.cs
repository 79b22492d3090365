using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Fuel and injectors.</summary>
public static class FuelSystem
{
    private static readonly Subject Subject = new("fuel", "Fuel");

    public static readonly Field Kind = Subject.Choice("kind", "Fuel", FuelNames.All, "What the knock limit, the mixture and the heat come from.");
    public static readonly Field Lambda = Subject.Amount("lambda", "Mixture (lambda)", Dimension.Number, "", (0.65, 1.2), "wide-band probe", "Air over the air that the fuel can burn.");
    public static readonly Field Temperature = Subject.Amount("temperature", "Fuel temperature", Dimension.Temperature, "°C", (-10, 60));
    public static readonly Field Injectors = Subject.Count("injectors", "Injectors in all", (1, 24));
    public static readonly Field InjectorFlow = Subject.Amount("injectorFlow", "Flow of one injector, held open", Dimension.MassFlow, "g/s", (0.5, 60), "catch and weigh at the running pressure", "At the fuel pressure that it will see.");
    public static readonly Field InjectorDutyMax = Subject.Amount("injectorDutyMax", "Greatest injector duty", Dimension.Number, "%", (60, 95), help: "85 % when left out.", most: 1);
    public static readonly Field EvaporatedInPort = Subject.Amount("evaporatedInPort", "Share evaporated before the valve", Dimension.Number, "", (0, 1), zero: true, help: "0.6 when left out.", most: 1);
    public static readonly Field InjectorDistance = Subject.Amount("injectorDistance", "Injector before the valve seat", Dimension.Length, "mm", (20, 600), "wire along the middle of the passage", "100 mm when left out (common practice). Read by the wave depth.");
    public static readonly Field FilmShare = Subject.Amount("filmShare", "Share that lands on the wall of the port", Dimension.Number, "", (0, 0.8), zero: true, help: "Evaporates with the heat of the wall instead of the charge's, so that the charge is cooled less; 0 when left out. Read by the wave depth.", most: 1);
    public static readonly Field FilmTime = Subject.Amount("filmTime", "Time in which that film falls to 1/e", Dimension.Time, "s", (0.03, 2), help: "About 0.1 s with a hot port, 1 s with a cold one; 0.3 s when left out (common practice).");
}

/// <summary>The burn, the walls and the friction of the engine model.</summary>
public static class Combustion
{
    /// <summary>Knock integral allowed when the book does not say; 1 is the onset. Common practice.</summary>
    internal const double UsualKnockLimit = 0.9;

    private static readonly Subject Subject = new("combustion", "Combustion");

    public static readonly Field Burned50 = Subject.Amount("burned50", "Angle of 50 % burned after TDC", Dimension.Angle, "°", (3, 25), "from cylinder pressure, else assumed; 8° is best torque", "At 6000 rpm.");
    public static readonly Field Burned50Slope = Subject.Amount("burned50Slope", "Change of that angle per 1000 rpm", Dimension.Angle, "°", (-3, 5), signed: true);
    public static readonly Field Duration = Subject.Amount("duration", "10 to 90 % burn duration", Dimension.Angle, "°", (12, 60), help: "At 6000 rpm and best mixture.");
    public static readonly Field Placing = Subject.Choice("placing", "How the burn is placed", BurnPlacings.All, "As given: by the angle of 50 % burned. For best torque: at each speed where torque is greatest, as far as the knock limit and the peak pressure of the piston let it, which is what is done on a dyno. As given when left out.");
    public static readonly Field PlacingMargin = Subject.Amount("placingMargin", "Distance kept from knock and peak pressure limits", Dimension.Number, "%", (0, 30), zero: true, help: "Of a burn placed for best torque; 5 % when left out (common practice).", most: 0.8);
    public static readonly Field ResidualReference = Subject.Amount("residualReference", "Share of burned gas at which the burn duration holds", Dimension.Number, "%", (0, 20), zero: true, help: "More than that in the charge makes the burn longer. When left out 5 % in the wave depth (common practice), and no effect in the lumped one.", most: 0.25);
    public static readonly Field KnockLimit = Subject.Amount("knockLimit", "Knock integral allowed", Dimension.Number, "", (0.5, 1), help: "1 is the onset; 0.9 when left out.");
    public static readonly Field HeadTemperature = Subject.Amount("headTemperature", "Chamber wall temperature", Dimension.Temperature, "°C", (100, 350), "thermocouple under the plug");
    public static readonly Field PistonTemperature = Subject.Amount("pistonTemperature", "Piston crown temperature", Dimension.Temperature, "°C", (120, 400));
    public static readonly Field LinerTemperature = Subject.Amount("linerTemperature", "Liner temperature", Dimension.Temperature, "°C", (70, 250));
    public static readonly Field FrictionConstant = Subject.Amount("frictionConstant", "Friction, constant part", Dimension.Pressure, "bar", (0.1, 1.5));
    public static readonly Field FrictionPeakPressure = Subject.Amount("frictionPeakPressure", "Friction per peak pressure", Dimension.Number, "", (0, 0.02), zero: true);
    public static readonly Field FrictionSpeed = Subject.Amount("frictionSpeed", "Friction per m/s of mean piston speed", Dimension.Pressure, "bar", (0, 0.3), zero: true);
    public static readonly Field FrictionSpeedSquared = Subject.Amount("frictionSpeedSquared", "Friction per (m/s)² of mean piston speed", Dimension.Pressure, "bar", (0, 0.01), zero: true);
}

/// <summary>How the burn can be placed.</summary>
public static class BurnPlacings
{
    /// <summary>By the angle of 50 % burned in the book.</summary>
    public const string AsGiven = "as given";

    /// <summary>Where torque is greatest, within limits.</summary>
    public const string BestTorque = "for best torque";

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<string> All = [AsGiven, BestTorque];
}
