namespace Gudgeon.Simulation.Sprint;

/// <summary>Lengths of a run, m; exact by the definition of the mile, 1609.344 m.</summary>
public static class StripLength
{
    public const double QuarterMile = Mile / 4;

    public const double Mile = 1609.344;
}
