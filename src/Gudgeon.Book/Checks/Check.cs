using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Checks;

/// <summary>
/// A pure function from a snapshot, and the duty of the engine, to a judgement for each instance that it applies to. It
/// reads only through the view that it is handed, carries no uncertainty code, and writes no dependencies down: the
/// appraiser sees to all three. Ids are public and never used again for something else.
/// </summary>
public abstract class Check
{
    /// <summary>Short name, unique and lasting: "squish".</summary>
    public abstract string Id { get; }

    /// <summary>What it asks, for people: "Squish clearance".</summary>
    public abstract string Title { get; }

    /// <summary>Trade family: "chamber".</summary>
    public abstract string Family { get; }

    /// <summary>Where the method and the usual limit come from.</summary>
    public abstract string Source { get; }

    /// <summary>Cautions that stand beside the finding; empty when the work cannot hurt anybody.</summary>
    public virtual string Caution => "";

    /// <summary>Whether a part gives where it falls short: not so where two values of the book are merely held against each other.</summary>
    public virtual bool Gives => true;

    /// <summary>Index keys of the instances that it applies to; an empty key for the engine as a whole; none when the build has no such part.</summary>
    public virtual IEnumerable<string> Instances(View view) => [""];

    /// <summary>The judgement for one instance.</summary>
    public abstract Judgement Examine(View view, string index);
}
