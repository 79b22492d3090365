using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Web.Host;
using Microsoft.AspNetCore.Components;

namespace Gudgeon.Web.Parts.Head;

/// <summary>One sheet of the head's page. It is worked again when the book has changed, and drawn when anything has.</summary>
public abstract class HeadPart : ComponentBase
{
    private (Book.Build.Snapshot?, bool) _worked;

    /// <summary>The book.</summary>
    [Parameter]
    [EditorRequired]
    public OpenBook Open { get; set; } = null!;

    /// <summary>Whether in inch units.</summary>
    [Parameter]
    public bool Imperial { get; set; }

    /// <summary>Why the sheet cannot be worked; empty when it was.</summary>
    protected string Refused { get; private set; } = "";

    protected override void OnParametersSet()
    {
        if (_worked == (Open.Now, Imperial))
        {
            return;
        }

        _worked = (Open.Now, Imperial);
        Refused = "";
        try
        {
            Work();
        }
        catch (Exception e) when (e is BadInputException or FormulaDomainException)
        {
            Refused = e.Message;
        }
        catch (OutOfRangeException e)
        {
            Refused = Book.Rows.FormulaCall.Sentence(e);
        }
    }

    /// <summary>Works the sheet from the values that hold, where that takes no time; a sheet that takes some asks a question.</summary>
    protected virtual void Work()
    {
    }
}
