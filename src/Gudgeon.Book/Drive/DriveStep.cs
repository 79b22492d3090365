using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Drive;

/// <summary>One step of the work on the drive: its numbers, and what can hurt while it is done.</summary>
/// <param name="Title">"Setting the tension".</param>
/// <param name="Facts">What is known; the rest is left out.</param>
/// <param name="Caution">What can hurt; empty when nothing does.</param>
public sealed record DriveStep(string Title, IReadOnlyList<Fact> Facts, string Caution = "");

/// <summary>A sheet of the boost drive.</summary>
public interface IDriveSheet
{
    /// <summary>Its steps, those of which something is known.</summary>
    IReadOnlyList<DriveStep> Steps { get; }

    /// <summary>What is wanted, or why there is none, in one sentence; empty when nothing is.</summary>
    string Missing { get; }

    /// <summary>What was given and cannot be, each in one sentence; what hangs on it is left out.</summary>
    IReadOnlyList<string> Refused { get; }
}

/// <summary>What the sheets of the boost drive share.</summary>
internal static class DriveWords
{
    private const string None = "The book has no supercharger that the crank drives, so there is no drive to look at; blower.kind says which it has.";

    /// <summary>Why a book has no such sheet; empty when it has one.</summary>
    public static string Without(Snapshot now) => BlowerKinds.IsDriven(new View(now).WordOr(Blower.Kind, BlowerKinds.None)) ? "" : None;

    /// <summary>What a sheet lacks.</summary>
    public static string Missing(View view) => view.Trace.Missing.Any() ? $"Not all is known yet: wants {Wanted.Words(view.Trace.Missing)}." : "";

    /// <summary>A step with those of its numbers that are known; none when no one is.</summary>
    public static IEnumerable<DriveStep> Step(string title, string caution, params Fact[] facts)
    {
        var known = facts.Where(f => f.Known).ToList();
        return known.Count > 0 ? [new DriveStep(title, known, caution)] : [];
    }
}
