using Gudgeon.Book.Measuring;

namespace Gudgeon.Book.Jobs;

/// <summary>What was done to a job card.</summary>
public enum ActKind
{
    /// <summary>A step, or one bolt of it, was done.</summary>
    Tick,

    /// <summary>A step that was ticked is not done after all.</summary>
    Untick,

    /// <summary>A process that takes its time was begun.</summary>
    Start,

    /// <summary>The card was signed.</summary>
    Sign,

    /// <summary>A signed card was opened again.</summary>
    Reopen,

    /// <summary>The card is not wanted for this build.</summary>
    LeaveOut,

    /// <summary>The card is wanted after all.</summary>
    TakeIn,
}

/// <summary>One thing done to a job card, by a person, at a time. Acts are only added.</summary>
/// <param name="Card">Id of the card.</param>
/// <param name="Kind">What was done.</param>
/// <param name="By">By whom.</param>
/// <param name="On">When: UTC, ISO 8601.</param>
public sealed record CardAct(string Card, ActKind Kind, string By, string On)
{
    /// <summary>Key of the step, or of one bolt of it: "gap", "gap@2", "tighten@3.7"; empty for the whole card.</summary>
    public string Step { get; init; } = "";

    /// <summary>With which tool; empty when none matters.</summary>
    public string With { get; init; } = "";

    /// <summary>Whether the tool's calibration had run out when it was used.</summary>
    public bool WithOverdue => With.Contains(InstrumentLine.OverdueSince, StringComparison.Ordinal);

    /// <summary>What was read, set or fitted: a torque, a batch number.</summary>
    public string Value { get; init; } = "";

    /// <summary>What the plan wanted of the bolt at that moment: "to 8 N·m"; empty for all else.</summary>
    public string Asked { get; init; } = "";

    /// <summary>Why, or anything else worth knowing.</summary>
    public string Note { get; init; } = "";

    /// <summary>What the card stood on when it was signed, as written, by path.</summary>
    public IReadOnlyDictionary<string, string> Reads { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>Limits of its checks when the card was signed, by name; empty text for a check's usual one.</summary>
    public IReadOnlyDictionary<string, string> Limits { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>What spoke against signing and was overridden, in sentences.</summary>
    public IReadOnlyList<string> Overridden { get; init; } = [];

    /// <summary>The entry of the journal that brought it; 0 in a book without one.</summary>
    public long Revision { get; init; }
}
