using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Bench;

/// <summary>The Heron book: its full-load sweep, and what a check costs after one edit.</summary>
internal static class BookBench
{
    private static readonly BuildBook Heron = BookFile.Open(Path.Combine(AppContext.BaseDirectory, "heron.json")).Book;

    /// <summary>Fourteen full-load points of the book as it stands, converged.</summary>
    public static void Sweep()
    {
        var spec = EngineAssembly.Build(new View(Heron.Now()))!;
        var speeds = Enumerable.Range(0, DutyDesk.Speeds).Select(i => (4000 + (5700 * i / (DutyDesk.Speeds - 1.0))) * Math.PI / 30).ToList();
        SideBySide.Run(
            "Heron, 14-speed full-load sweep",
            "ms",
            1e3,
            ("from cold", () => EngineRun.Run(spec, speeds)));
    }

    /// <summary>All findings with their uncertainties: afresh, after an edit that the engine does not read, and after one that it does.</summary>
    public static void Recheck()
    {
        var now = Heron.Now();
        var edits = 0;

        // Each way has findings of its own to start from, so that none undoes the edit of another.
        Action After(Field field, string index, string value)
        {
            var appraiser = new Appraiser(new DutyDesk());
            appraiser.Appraise(now);
            return () => appraiser.Appraise(With(field, index, FormattableString.Invariant($"{value}{edits++ % 1000:000} mm ± 0.02 mm")));
        }

        SideBySide.Run(
            "Heron, every finding with its uncertainty",
            "ms",
            1e3,
            ("afresh, engine run and all", () => new Appraiser(new DutyDesk()).Appraise(now)),
            ("after editing a ring gap", After(Piston.TopRingGap, "2", "0.64")),
            ("after editing an installed height", After(Spring.InstalledHeight, "inlet.1.1", "38.2")),
            ("after editing a deck height, which the engine reads", After(Cylinder.DeckHeight, "1", "0.21")));
    }

    private static Snapshot With(Field field, string index, string text)
    {
        var address = new FieldAddress(field, index);
        var reading = new Measurement(address, KnownValue.Read(field, text, How.Measured), null);
        return (Heron with { Measurements = [.. Heron.Measurements, reading] }).Now();
    }
}
