using Gudgeon.Web.Doors;

namespace Gudgeon.Web.Host;

/// <summary>Who looks at the open pages and how they like them shown; a change shows at once on all of them.</summary>
/// <param name="visitor">As they came in.</param>
public sealed class Looker(Visitor visitor)
{
    /// <summary>Raised when they like it otherwise.</summary>
    public event Action? Changed;

    /// <summary>Who looks.</summary>
    public Visitor Visitor { get; private set; } = visitor;

    /// <summary>Whether in inch units.</summary>
    public bool Imperial => Visitor.Imperial;

    /// <summary>Takes another liking.</summary>
    public void Like(Func<Visitor, Visitor> other)
    {
        Visitor = other(Visitor);
        Changed?.Invoke();
    }
}
