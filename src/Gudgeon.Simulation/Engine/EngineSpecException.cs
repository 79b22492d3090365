namespace Gudgeon.Simulation.Engine;

/// <summary>
/// The description of an engine cannot be simulated as it stands. The message is one sentence that names the part, what
/// was given and what was wanted.
/// </summary>
public sealed class EngineSpecException : Exception
{
    /// <param name="message">One clear sentence.</param>
    public EngineSpecException(string message)
        : base(message)
    {
    }

    /// <summary>Throws with <paramref name="sentence"/> unless <paramref name="condition"/> holds.</summary>
    public static void Unless(bool condition, FormattableString sentence)
    {
        if (!condition)
        {
            throw new EngineSpecException(FormattableString.Invariant(sentence));
        }
    }
}
