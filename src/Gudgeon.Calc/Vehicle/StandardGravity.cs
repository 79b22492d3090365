namespace Gudgeon.Calc.Vehicle;

/// <summary>Standard acceleration of free fall.</summary>
public static class StandardGravity
{
    /// <summary>9.80665 m/s², exact by definition: 3rd General Conference on Weights and Measures, 1901.</summary>
    public const double Value = 9.80665;
}
