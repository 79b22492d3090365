namespace Gudgeon.Book.Joints;

/// <summary>One bolt of a layout.</summary>
/// <param name="Number">Its number in the layout, from 1.</param>
/// <param name="X">Across, m.</param>
/// <param name="Y">Along, m.</param>
public sealed record BoltPlace(int Number, double X, double Y)
{
    /// <summary>How far another one is, m.</summary>
    public double To(BoltPlace other) => double.Hypot(X - other.X, Y - other.Y);
}
