namespace Gudgeon.Calc.Chamber;

/// <summary>Where the air of a leak test is heard to go.</summary>
public enum LeakPath
{
    /// <summary>Nowhere that can be heard.</summary>
    Nowhere,

    /// <summary>At the throttle: past an inlet valve.</summary>
    InletValve,

    /// <summary>At the exhaust: past an exhaust valve.</summary>
    ExhaustValve,

    /// <summary>At the oil filler: past the rings.</summary>
    Rings,

    /// <summary>At the next cylinder, the coolant or the gasket's edge.</summary>
    Gasket,

    /// <summary>At more than one of these.</summary>
    Several,
}
