using Gudgeon.Book.Build;
using Microsoft.AspNetCore.Components;

namespace Gudgeon.Web.Drawings;

/// <summary>A drawing of one part of several alike, from the values that hold.</summary>
public abstract class PartDrawing : ComponentBase
{
    /// <summary>The values that hold.</summary>
    [Parameter]
    [EditorRequired]
    public Snapshot Now { get; set; } = null!;

    /// <summary>Whether in inch units.</summary>
    [Parameter]
    public bool Imperial { get; set; }

    /// <summary>Keys of the parts.</summary>
    protected IReadOnlyList<string> Keys { get; private set; } = [];

    /// <summary>The part that is drawn.</summary>
    protected string Key { get; private set; } = "";

    protected override void OnParametersSet()
    {
        Keys = KeysOf(Now);
        Key = Keys.Contains(Key, StringComparer.Ordinal) ? Key : Keys.Count > 0 ? Keys[0] : "";
        Work();
    }

    /// <summary>Keys of the parts that the build has.</summary>
    protected abstract IReadOnlyList<string> KeysOf(Snapshot now);

    /// <summary>Works the geometry of the part.</summary>
    protected abstract void Work();

    /// <summary>Draws another part.</summary>
    protected void Choose(string? key)
    {
        Key = key ?? Key;
        Work();
    }

    /// <summary>Class of a line for something that may not be known.</summary>
    protected static string Unknown(bool known) => known ? "" : "unknown";
}
