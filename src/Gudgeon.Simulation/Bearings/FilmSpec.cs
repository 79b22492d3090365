using Gudgeon.Calc.Bearings;

namespace Gudgeon.Simulation.Bearings;

/// <summary>Engine oil: what its maker prints. SI.</summary>
/// <param name="Cold">Kinematic viscosity at 40 °C, m²/s.</param>
/// <param name="Hot">Kinematic viscosity at 100 °C, m²/s.</param>
/// <param name="HighShear">Dynamic viscosity at 150 °C and high shear, Pa·s; NaN when it is not known, and the oil then thins by warmth alone.</param>
/// <param name="Density">At 15 °C, kg/m³.</param>
/// <param name="SpecificHeat">J/(kg·K).</param>
public readonly record struct OilSpec(double Cold, double Hot, double HighShear, double Density, double SpecificHeat)
{
    private const double HighShearTemperature = 423.15;

    /// <summary>Density at a temperature, K.</summary>
    public double DensityAt(double temperature) => BearingOil.Density(Density, temperature);

    /// <summary>
    /// Dynamic viscosity in a film at a temperature, K: by the line of ASTM D341, less what shear takes off at 150 °C, taken as
    /// the same share at every temperature (common practice).
    /// </summary>
    public double ViscosityAt(double temperature)
    {
        var sheared = double.IsNaN(HighShear) ? 1 : Math.Min(1, HighShear / Still(HighShearTemperature));
        return sheared * Still(temperature);
    }

    private double Still(double temperature) => DensityAt(temperature) * OilViscosity.AtTemperature(temperature, Cold, Hot).Kinematic;
}

/// <summary>A shell bearing with its oil, warm and running. SI.</summary>
public readonly record struct FilmSpec
{
    /// <summary>Journal diameter, m.</summary>
    public required double Diameter { get; init; }

    /// <summary>Width of the shells, m.</summary>
    public required double Width { get; init; }

    /// <summary>Radial clearance, running, m.</summary>
    public required double Clearance { get; init; }

    /// <summary>How the oil comes in.</summary>
    public OilFeed Feed { get; init; }

    /// <summary>Width of the groove, or diameter of the hole, m.</summary>
    public double Opening { get; init; }

    /// <summary>Pressure of the oil where it comes in, Pa above the crankcase's.</summary>
    public double SupplyPressure { get; init; }

    /// <summary>Temperature of the oil that comes in, K.</summary>
    public required double SupplyTemperature { get; init; }

    /// <summary>The oil.</summary>
    public required OilSpec Oil { get; init; }

    /// <summary>Films that share the load: two where a groove goes all round.</summary>
    internal int Lands => Feed == OilFeed.FullGroove ? 2 : 1;

    /// <summary>Length of each of them, m.</summary>
    internal double Land => Feed == OilFeed.FullGroove ? (Width - Opening) / 2 : Width;

    /// <summary>Length that carries, m.</summary>
    public double Carrying => Lands * Land;

    /// <summary>Oil that its pressure pushes through, m³/s.</summary>
    internal double FeedFlow(double viscosity, double eccentricity) => SupplyPressure <= 0
        ? 0
        : BearingOil.FeedFlow(Feed, SupplyPressure, viscosity, Diameter, Feed == OilFeed.Hole ? Width : (Width - Opening) / 2, Clearance, eccentricity, Opening);

    /// <exception cref="BearingSpecException">The bearing cannot be marched.</exception>
    internal void Require()
    {
        BearingSpecException.Unless(Diameter > 0, $"journal diameter: given {Diameter * 1e3:0.###} mm, wanted more than 0");
        BearingSpecException.Unless(Clearance > 0, $"clearance, running: given {Clearance * 2e6:0.#} µm on the diameter, wanted more than 0");
        BearingSpecException.Unless(Opening >= 0 && Opening < Width, $"groove or hole: given {Opening * 1e3:0.###} mm, wanted less than the width of the shells, {Width * 1e3:0.###} mm");
        BearingSpecException.Unless(Oil.Cold > Oil.Hot && Oil.Hot > 2e-6, $"oil viscosity: given {Oil.Cold * 1e6:0.#} mm²/s at 40 °C and {Oil.Hot * 1e6:0.#} mm²/s at 100 °C, wanted less when hot, and more than 2 mm²/s there");
    }
}
