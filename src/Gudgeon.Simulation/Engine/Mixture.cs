namespace Gudgeon.Simulation.Engine;

/// <summary>Amounts of the carried species: masses in kg, or mass fractions of a flow.</summary>
/// <param name="Air">Air with its humidity.</param>
/// <param name="Vapour">Fuel vapour.</param>
/// <param name="Burned">Burned gas of the run's mixture.</param>
/// <param name="Liquid">Fuel not yet evaporated; it has mass and energy but no volume.</param>
internal readonly record struct Mixture(double Air, double Vapour, double Burned, double Liquid)
{
    public double Mass => Air + Vapour + Burned + Liquid;

    public static Mixture operator *(double factor, in Mixture m) => new(factor * m.Air, factor * m.Vapour, factor * m.Burned, factor * m.Liquid);
}
