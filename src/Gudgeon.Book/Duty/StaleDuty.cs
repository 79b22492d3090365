using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>An engine run by the wave model that is kept and no longer holds.</summary>
/// <param name="Duty">The run as it was.</param>
/// <param name="Changed">Paths that it read and that read otherwise now; none when the model itself has changed.</param>
public sealed record StaleDuty(EngineDuty Duty, IReadOnlyList<string> Changed)
{
    /// <summary>"computed before intake.runner.length changed".</summary>
    public string Sentence => Changed.Count == 0 ? "computed before the engine model changed" : $"computed before {Wanted.Words(Changed)} changed";

    /// <summary>The run that was kept last, when it does not hold; null when it does, or there is none, or the book asks for the lumped model.</summary>
    /// <param name="shelf">Where runs are kept; null for nowhere.</param>
    /// <param name="now">The values that hold.</param>
    public static StaleDuty? Of(IDutyShelf? shelf, Snapshot now)
    {
        if (Depths.Of(new Tracing.View(now)) != Depth.Wave || KeptDuty.Parse(shelf?.Latest()) is not { } kept)
        {
            return null;
        }

        var changed = kept.Reads.Where(r => !Same(r.Value, Now(r.Key, now))).Select(r => r.Key).ToList();
        return (changed.Count > 0 || kept.Model != ModelVersion.Engine) && kept.Spec() is { } spec ? new StaleDuty(kept.Of(spec), changed) : null;
    }

    private static HeldValue? Now(string path, Snapshot now)
    {
        try
        {
            return now.Find(FieldCatalogue.Address(path)) is { } found ? HeldValue.Of(found.Value, null) : null;
        }
        catch (BadInputException)
        {
            // A field that there is no more.
            return null;
        }
    }

    private static bool Same(HeldValue? a, HeldValue? b) => a is null || b is null
        ? a is null && b is null
        : a.Text == b.Text
            && (a.Columns ?? []).SequenceEqual(b.Columns ?? [], StringComparer.Ordinal)
            && (a.Rows ?? []).SelectMany(r => r).SequenceEqual((b.Rows ?? []).SelectMany(r => r));
}
