namespace Gudgeon.Book.Bottom;

/// <summary>What the oil pump gives and what is asked of it at one speed. SI.</summary>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="Bearings">Oil that goes through the shell bearings, m³/s.</param>
/// <param name="Other">What else is fed from the gallery, m³/s.</param>
/// <param name="Pump">What the pump gives, m³/s; NaN when it is not known.</param>
/// <param name="Loss">Power that the films take, W.</param>
public sealed record OilDemand(double Speed, double Bearings, double Other, double Pump, double Loss)
{
    /// <summary>Share of the displacement that comes out of a pump that is hot and worn, where it is not known.</summary>
    internal const double UsualEfficiency = 0.75;
}
