using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Checks.Fits;

/// <summary>A check of a fit.</summary>
public abstract class FitCheck : Check
{
    public sealed override string Family => "fits";

    public sealed override IEnumerable<string> Instances(View view)
    {
        var named = Checks.Instances.Named(view, Fit.Size.Subject).Where(i => i.Length > 0).ToList();
        return named.Where(i => Applies(view, i));
    }

    /// <summary>Whether the fit is of the kind that this check asks after.</summary>
    protected abstract bool Applies(View view, string index);
}
