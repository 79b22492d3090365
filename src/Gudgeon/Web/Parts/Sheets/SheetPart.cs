using Gudgeon.Book.Build;
using Gudgeon.Book.Rows;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Web.Parts.Sheets;

/// <summary>A sheet that is worked in a moment, on the spot, and again when the book or the units have changed.</summary>
/// <typeparam name="T">The sheet.</typeparam>
public abstract class SheetPart<T> : BookPart
    where T : class
{
    private (Snapshot?, bool) _worked;

    /// <summary>The sheet; null when it cannot be worked.</summary>
    protected T? Sheet { get; private set; }

    /// <summary>Why it cannot be worked, in one sentence; empty when it can.</summary>
    protected string Refused { get; private set; } = "";

    protected override void OnParametersSet()
    {
        if (_worked == (Open.Now, Imperial))
        {
            return;
        }

        _worked = (Open.Now, Imperial);
        try
        {
            (Sheet, Refused) = (Work(Open.Now), "");
            Draw(Sheet);
        }
        catch (Exception e) when (e is BadInputException or FormulaDomainException or OutOfRangeException)
        {
            (Sheet, Refused) = (null, e is OutOfRangeException range ? FormulaCall.Sentence(range) : e.Message);
        }
    }

    /// <summary>Works the sheet.</summary>
    /// <exception cref="BadInputException">It cannot be worked.</exception>
    protected abstract T Work(Snapshot now);

    /// <summary>Makes curves of it in the looker's units, where it has any.</summary>
    protected virtual void Draw(T sheet)
    {
    }
}
