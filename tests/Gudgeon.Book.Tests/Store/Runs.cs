using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Store;

/// <summary>Runs to be kept, with invented figures: what they read is real.</summary>
internal static class Runs
{
    public static readonly Dictionary<string, KnownValue> NothingGiven = new(StringComparer.Ordinal);

    public static RunFigures Figures(double power = 61.5) => new(
        RunKind.Engine,
        ["speed rpm", "torque N·m", "power kW", "boost bar", "peak pressure bar", "converged"],
        [[5000.0, 98.5, 51.5738, -0.02, 71.0, true], [6000.0, 97.5, power, null, 72.5, true]]);

    /// <summary>A run that asked for the bore of the first cylinder and for the stroke.</summary>
    public static KeptRun Of(BuildBook book, string title = "as it came", RunFigures? figures = null)
    {
        var view = new View(book.Now());
        view.Amount(Cylinder.Bore, "1");
        view.Amount(Crank.Stroke);
        return KeptRun.Of(figures ?? Figures(), title, "Ada", book, view.Trace, NothingGiven);
    }

    /// <summary>A run as text, to hold two side by side.</summary>
    public static string Text(KeptRun run) => JsonText.OneLine(RunReader.Write(run));
}
