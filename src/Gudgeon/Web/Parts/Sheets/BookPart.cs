using Gudgeon.Web.Host;
using Microsoft.AspNetCore.Components;

namespace Gudgeon.Web.Parts.Sheets;

/// <summary>A part of a page of sheets. It is drawn again whenever the book changes.</summary>
public abstract class BookPart : ComponentBase
{
    /// <summary>The book.</summary>
    [Parameter]
    [EditorRequired]
    public OpenBook Open { get; set; } = null!;

    /// <summary>Whether in inch units.</summary>
    [Parameter]
    public bool Imperial { get; set; }
}
