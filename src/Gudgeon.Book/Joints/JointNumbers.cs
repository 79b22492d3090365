using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Joints;

/// <summary>
/// Numbers of a sheet, worked one by one so that one that is not known leaves the others standing. What a formula refuses is
/// kept as a sentence: a number that cannot be must not pass for one that nobody has measured yet.
/// </summary>
/// <param name="view">The values.</param>
internal sealed class JointNumbers(View view)
{
    private readonly List<string> _refused = [];

    /// <summary>Sentences of the formulas that refused, each once; empty when none did.</summary>
    public string Refused => string.Join(" ", _refused.Distinct(StringComparer.Ordinal).Select(s => s.EndsWith('.') ? s : s + "."));

    /// <summary>A number; NaN when something that it takes is missing or refused.</summary>
    public double Of(Func<View, double> work) => view.Try(v =>
    {
        try
        {
            return work(v) is var number && double.IsFinite(number) && !v.Trace.Missing.Any() ? number : double.NaN;
        }
        catch (Exception e) when (e is OutOfRangeException or FormulaDomainException)
        {
            // With something missing the formula was handed nothing to work on.
            if (!v.Trace.Missing.Any())
            {
                _refused.AddRange(v.Trace.Refused);
            }

            return double.NaN;
        }
    });
}
