namespace Gudgeon.Book.Jobs;

/// <summary>What a step of a job card asks for.</summary>
public enum StepKind
{
    /// <summary>Something to be done.</summary>
    Do,

    /// <summary>A reading of a field.</summary>
    Read,

    /// <summary>A joint, tightened bolt by bolt after its plan.</summary>
    Tighten,

    /// <summary>A process that takes its time.</summary>
    Wait,

    /// <summary>A part that is used once: a new one, by its batch or number.</summary>
    Renew,

    /// <summary>A picture.</summary>
    Photo,
}

/// <summary>A step of a job card as it is declared.</summary>
/// <param name="Id">Short name, unique on the card.</param>
/// <param name="Kind">What it asks for.</param>
/// <param name="What">The sentence, the path of the field, the name of the joint, the time, the part or the picture, by its kind.</param>
public sealed record CardStep(string Id, StepKind Kind, string What)
{
    /// <summary>What to see to; the sentence of a process.</summary>
    public string Text { get; init; } = "";

    /// <summary>Path of the subject for each of whose instances it is done: "cylinder"; empty for once.</summary>
    public string Each { get; init; } = "";

    /// <summary>Parts of the book one of which it takes: "blower", "joint[head]"; none for always.</summary>
    public IReadOnlyList<string> When { get; init; } = [];

    /// <summary>Whether no later step is begun before it is done.</summary>
    public bool Hold { get; init; }

    /// <summary>What can hurt.</summary>
    public string Caution { get; init; } = "";

    /// <summary>Where it comes from: a standard, the maker, common practice.</summary>
    public string Source { get; init; } = "";

    /// <summary>Consumables that it uses up.</summary>
    public string Uses { get; init; } = "";

    /// <summary>The least time of a process, s.</summary>
    public double Time { get; init; }
}

/// <summary>A job card as it is declared: one operation of the assembly. Those of the program and those of a book are read alike.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Title">What is done.</param>
/// <param name="Stage">Part of the rebuild: "bottom end".</param>
/// <param name="Hours">Work, s.</param>
public sealed record CardTemplate(string Id, string Title, string Stage, double Hours)
{
    /// <summary>Cards that come before it; one that the book does not call for is passed over.</summary>
    public IReadOnlyList<string> After { get; init; } = [];

    /// <summary>Parts of the book one of which it takes: "blower", "joint[head]"; none for always.</summary>
    public IReadOnlyList<string> When { get; init; } = [];

    /// <summary>Checks that must hold when it is signed: "squish", "bolt-preload[head]".</summary>
    public IReadOnlyList<string> Checks { get; init; } = [];

    /// <summary>The steps.</summary>
    public required IReadOnlyList<CardStep> Steps { get; init; }

    /// <summary>Whether it is the book's own, in place of the program's or besides.</summary>
    public bool Own { get; init; }

    /// <summary>Whether a check for an instance is one that it stands on.</summary>
    public bool StandsOn(string check, string index) => Checks.Any(c => c == check
        || (c.EndsWith(']') && c.StartsWith(check + "[", StringComparison.Ordinal) && Within(index, c[(check.Length + 1)..^1])));

    /// <summary>Whether it stands on any finding of a check.</summary>
    public bool Asks(string check) => Checks.Any(c => c == check || c.StartsWith(check + "[", StringComparison.Ordinal));

    private static bool Within(string index, string group) => index == group || index.StartsWith(group + ".", StringComparison.Ordinal);
}
