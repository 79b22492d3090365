using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Tests.Demo;

/// <summary>The demo books, opened once; engine runs are shared between the tests because they are the slow part.</summary>
internal static class DemoBooks
{
    private static readonly Lazy<Opened> HeronBook = new(() => new Opened("heron"));
    private static readonly Lazy<Opened> WrenBook = new(() => new Opened("wren"));

    public static Opened Heron => HeronBook.Value;

    public static Opened Wren => WrenBook.Value;

    public static Opened Named(string name) => name == "heron" ? Heron : Wren;

    public static string PathOf(string name) => Path.Combine(Root(), "demo", name + ".json");

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Gudgeon.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("the tests do not run inside the repository");
    }
}

/// <summary>An open book with its engine runs and its findings as things stand.</summary>
internal sealed class Opened
{
    private readonly Lazy<IReadOnlyList<Finding>> _findings;
    private readonly Lazy<EngineDuty> _duty;
    private readonly Lazy<EngineDuty> _factory;

    public Opened(string name)
    {
        Book = BookFile.Open(DemoBooks.PathOf(name)).Book;
        _duty = new(() => Duty(Now, Desk));
        _factory = new(() => Duty(new Snapshot(Book, new HashSet<string>(StringComparer.Ordinal)), new DutyDesk()));
        _findings = new(() => [.. new Appraiser(Desk) { WithUncertainty = false }.Appraise(Now)]);
    }

    public BuildBook Book { get; }

    /// <summary>Keeps the engine run of the book as things stand.</summary>
    public DutyDesk Desk { get; } = new();

    public Snapshot Now => Book.Now();

    /// <summary>The engine run with the changes that are on.</summary>
    public EngineDuty Run => _duty.Value;

    /// <summary>The engine run of the baseline alone.</summary>
    public EngineDuty Factory => _factory.Value;

    /// <summary>Every finding, uncertainties left out: they would nudge the engine run dozens of times.</summary>
    public IReadOnlyList<Finding> Findings => _findings.Value;

    public View View => new(Now, Desk);

    /// <summary>One finding with its uncertainty; for checks that do not rest on the engine run.</summary>
    public Finding Measured(string check, string index) => new Appraiser(Desk).Appraise(CheckCatalogue.Find(check), index, Now);

    private static EngineDuty Duty(Snapshot snapshot, DutyDesk desk)
    {
        var view = new View(snapshot, desk);
        return view.Duty() ?? throw new InvalidOperationException("the engine does not run; wanted: " + Wanted.Words(view.Trace.Missing));
    }
}
