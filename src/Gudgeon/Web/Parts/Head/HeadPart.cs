using Gudgeon.Web.Host;
using Microsoft.AspNetCore.Components;

namespace Gudgeon.Web.Parts.Head;

/// <summary>A part of the head's page. It is drawn again whenever the book changes.</summary>
public abstract class HeadPart : ComponentBase
{
    /// <summary>The book.</summary>
    [Parameter]
    [EditorRequired]
    public OpenBook Open { get; set; } = null!;

    /// <summary>Whether in inch units.</summary>
    [Parameter]
    public bool Imperial { get; set; }
}
