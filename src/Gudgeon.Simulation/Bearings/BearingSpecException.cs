namespace Gudgeon.Simulation.Bearings;

/// <summary>
/// A bearing cannot be marched as it is described. The message is one sentence that names the quantity, what was given and
/// what was wanted.
/// </summary>
public sealed class BearingSpecException : Exception
{
    /// <param name="message">One clear sentence.</param>
    public BearingSpecException(string message)
        : base(message)
    {
    }

    /// <summary>Throws with <paramref name="sentence"/> unless <paramref name="condition"/> holds.</summary>
    internal static void Unless(bool condition, FormattableString sentence)
    {
        if (!condition)
        {
            throw new BearingSpecException(FormattableString.Invariant(sentence));
        }
    }
}
