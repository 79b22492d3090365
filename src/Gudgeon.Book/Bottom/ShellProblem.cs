namespace Gudgeon.Book.Bottom;

/// <summary>A bearing that wants shells. SI.</summary>
/// <param name="Bearing">Its key: "main.2".</param>
/// <param name="Room">Housing bore less journal, m: what both shells and the clearance share.</param>
/// <param name="Least">Least clearance allowed, m.</param>
/// <param name="Greatest">Greatest clearance allowed, m.</param>
/// <param name="Wanted">Clearance wanted, m.</param>
public sealed record BearingRoom(string Bearing, double Room, double Least, double Greatest, double Wanted);

/// <summary>A grade of shells. SI.</summary>
/// <param name="Number">Number of the grade.</param>
/// <param name="Least">Least thickness at the crown, m.</param>
/// <param name="Greatest">Greatest thickness at the crown, m.</param>
/// <param name="Count">Halves at hand; null for plenty.</param>
public sealed record ShellGrade(double Number, double Least, double Greatest, int? Count)
{
    /// <summary>Middle of its thickness, m.</summary>
    public double Middle => (Least + Greatest) / 2;
}

/// <summary>Bearings of one size that share a stock of shells.</summary>
/// <param name="Bearings">The bearings.</param>
/// <param name="Grades">The grades, thinnest first.</param>
public sealed record ShellProblem(IReadOnlyList<BearingRoom> Bearings, IReadOnlyList<ShellGrade> Grades);

/// <summary>The shells chosen for a bearing.</summary>
/// <param name="Bearing">The bearing.</param>
/// <param name="Thin">The thinner half; null when no pair does.</param>
/// <param name="Thick">The thicker half, of the same grade or the next.</param>
public sealed record ShellsChosen(BearingRoom Bearing, ShellGrade? Thin, ShellGrade? Thick)
{
    /// <summary>Clearance with halves of middling thickness, m; NaN without.</summary>
    public double Clearance => Thin is null || Thick is null ? double.NaN : Bearing.Room - Thin.Middle - Thick.Middle;

    /// <summary>Least that halves of these grades leave, m.</summary>
    public double Tightest => Thin is null || Thick is null ? double.NaN : Bearing.Room - Thin.Greatest - Thick.Greatest;

    /// <summary>Most that they leave, m.</summary>
    public double Loosest => Thin is null || Thick is null ? double.NaN : Bearing.Room - Thin.Least - Thick.Least;
}
