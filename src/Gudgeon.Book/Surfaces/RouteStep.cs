using Gudgeon.Book.Values;

namespace Gudgeon.Book.Surfaces;

/// <summary>One step of a route.</summary>
/// <param name="Name">Its name in the book: "gears.coarse".</param>
/// <param name="Process">What is done: "Shot peening".</param>
/// <param name="Facts">Its numbers, those that are known.</param>
/// <param name="Words">What is not a number: media, compound.</param>
/// <param name="Before">What must be measured and seen to before.</param>
/// <param name="After">What must be measured and seen to afterwards.</param>
/// <param name="Cautions">What can hurt.</param>
/// <param name="Source">Where its rules come from.</param>
public sealed record RouteStep(string Name, string Process, IReadOnlyList<Fact> Facts, IReadOnlyList<string> Words, IReadOnlyList<string> Before, IReadOnlyList<string> After, IReadOnlyList<string> Cautions, string Source)
{
    /// <summary>Faces that are masked or plugged.</summary>
    public IReadOnlyList<string> Masked { get; init; } = [];

    /// <summary>Path under which photos of the masking are kept; empty where nothing is masked.</summary>
    public string MaskedPath { get; init; } = "";

    /// <summary>Strips of a step of peening; null for other steps and without readings.</summary>
    public StripCurve? Strips { get; init; }

    /// <summary>What it is and which: "Shot peening, gears.coarse".</summary>
    public string Title => $"{Process}, {Name}";
}
