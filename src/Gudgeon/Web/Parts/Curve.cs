namespace Gudgeon.Web.Parts;

/// <summary>One curve of a picture. Curves are told apart by dash and mark as well as by colour.</summary>
/// <param name="Name">In the legend.</param>
/// <param name="X">In the unit of the axis.</param>
/// <param name="Y">In the unit of the axis.</param>
public sealed record Curve(string Name, IReadOnlyList<double> X, IReadOnlyList<double> Y)
{
    /// <summary>Whether it belongs to the axis on the right.</summary>
    public bool Right { get; init; }

    /// <summary>Whether marks stand on its points.</summary>
    public bool Marks { get; init; }

    /// <summary>Whether its points are joined.</summary>
    public bool Joined { get; init; } = true;

    /// <summary>Whether it stands in the legend.</summary>
    public bool Listed { get; init; } = true;

    /// <summary>Words beside its points; empty when there are none.</summary>
    public IReadOnlyList<string> Labels { get; init; } = [];

    /// <summary>Whether it is drawn thin and grey, for comparison.</summary>
    public bool Faint { get; init; }
}
