namespace Gudgeon.Simulation.Sprint;

/// <summary>A run cannot be computed from the given spec. The message is one sentence for the user and names the quantity.</summary>
public sealed class SprintSpecException : Exception
{
    /// <param name="message">One clear sentence: what was given and what was wanted.</param>
    public SprintSpecException(string message)
        : base(message)
    {
    }

    /// <summary>Throws with <paramref name="sentence"/> unless <paramref name="condition"/> holds.</summary>
    internal static void Unless(bool condition, string sentence)
    {
        if (!condition)
        {
            throw new SprintSpecException(sentence);
        }
    }
}
