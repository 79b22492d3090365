using Microsoft.AspNetCore.Components;

namespace Gudgeon.Web.Host;

/// <summary>A page about one book. It is drawn again whenever the book, an answer or the looker's liking changes.</summary>
public abstract class BookPage : ComponentBase, IDisposable
{
    private OpenBook? _open;

    /// <summary>File name of the book, from the address.</summary>
    [Parameter]
    public string Key { get; set; } = "";

    /// <summary>Who looks.</summary>
    [CascadingParameter]
    public Looker Looker { get; set; } = null!;

    /// <summary>The books.</summary>
    [Inject]
    public Workshop Workshop { get; set; } = null!;

    /// <summary>The book; the layout shows no page without one.</summary>
    protected OpenBook Open => _open!;

    /// <summary>Whether in inch units.</summary>
    protected bool Imperial => Looker.Imperial;

    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    protected override void OnParametersSet()
    {
        if (_open?.Key == Key)
        {
            return;
        }

        Leave();
        _open = Workshop.Find(Key);
        if (_open is not null)
        {
            _open.Changed += DrawAgain;
            Looker.Changed += DrawAgain;
        }
    }

    /// <summary>Called before the page is drawn again because something changed.</summary>
    protected virtual void OnBookChanged()
    {
    }

    protected virtual void Dispose(bool disposing) => Leave();

    private void Leave()
    {
        if (_open is not null)
        {
            _open.Changed -= DrawAgain;
            Looker.Changed -= DrawAgain;
        }
    }

    private void DrawAgain() => _ = InvokeAsync(() =>
    {
        OnBookChanged();
        StateHasChanged();
    });
}
