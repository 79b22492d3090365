namespace Gudgeon.Calc.Bearings;

/// <summary>A film's mobility wherever the journal stands.</summary>
public interface IMobility
{
    /// <summary>The mobility under a load.</summary>
    /// <param name="along">Eccentricity ratio along the load.</param>
    /// <param name="across">Eccentricity ratio a quarter turn on from it.</param>
    MobilityVector At(double along, double across);
}
