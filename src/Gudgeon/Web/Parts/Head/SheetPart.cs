using Gudgeon.Book.Build;
using Gudgeon.Book.Values;

namespace Gudgeon.Web.Parts.Head;

/// <summary>A sheet that is worked in a moment, on the spot, and again when the book has changed.</summary>
/// <typeparam name="T">The sheet.</typeparam>
public abstract class SheetPart<T> : HeadPart
    where T : class
{
    private Snapshot? _worked;

    /// <summary>The sheet; null when it cannot be worked.</summary>
    protected T? Sheet { get; private set; }

    /// <summary>Why it cannot be worked, in one sentence; empty when it can.</summary>
    protected string Refused { get; private set; } = "";

    protected override void OnParametersSet()
    {
        if (Open.Now == _worked)
        {
            return;
        }

        _worked = Open.Now;
        try
        {
            (Sheet, Refused) = (Work(Open.Now), "");
        }
        catch (BadInputException e)
        {
            (Sheet, Refused) = (null, e.Message);
        }
    }

    /// <summary>Works the sheet.</summary>
    /// <exception cref="BadInputException">It cannot be worked.</exception>
    protected abstract T Work(Snapshot now);
}
