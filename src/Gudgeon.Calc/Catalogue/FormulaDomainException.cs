namespace Gudgeon.Calc.Catalogue;

/// <summary>
/// The inputs are numbers, but the formula has no meaning for them: a mean coil diameter smaller than the wire, a
/// spring past coil bind. The message is one sentence for the user and names the quantity.
/// </summary>
public sealed class FormulaDomainException : Exception
{
    /// <param name="message">One clear sentence: what was given and what was wanted.</param>
    public FormulaDomainException(string message)
        : base(message)
    {
    }

    /// <summary>Throws with <paramref name="sentence"/> unless <paramref name="condition"/> holds.</summary>
    public static void Unless(bool condition, string sentence)
    {
        if (!condition)
        {
            throw new FormulaDomainException(sentence);
        }
    }
}
