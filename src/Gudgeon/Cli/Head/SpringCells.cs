using System.Globalization;
using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Cli.Head;

/// <summary>The figures of the springs' sheet as they are written, on paper and on the page.</summary>
/// <param name="imperial">Whether in inch units.</param>
internal sealed class SpringCells(bool imperial)
{
    /// <summary>What is written where something is not known.</summary>
    public const string Unknown = "–";

    /// <summary>Headings of the loads on a spacer.</summary>
    public static readonly IReadOnlyList<string> StateHeadings = ["seat load", "full lift", "to coil bind", "to seal", "stress", "fatigue"];

    /// <summary>Headings of a valve's row.</summary>
    public static readonly IReadOnlyList<string> Headings = ["installed", "spacer", "height", .. StateHeadings, "bind, read", "EN gap"];

    /// <summary>The row of a valve.</summary>
    public IReadOnlyList<string> Of(SpringRow row) => [Length(row.Installed), Length(row.State.Spacer), Length(row.State.Shut), .. Of(row.State), Length(row.CoilBindMeasured), Length(row.GapWanted)];

    /// <summary>Loads, margins, stress and safety.</summary>
    public IReadOnlyList<string> Of(SpringState? state) =>
    [
        Load(state?.SeatLoad), Load(state?.OpenLoad), Length(state?.CoilBindMargin), Length(state?.RetainerSeal),
        Print(state?.Stress, Dimension.Pressure, "MPa", 3), state?.Fatigue is { } safety ? safety.ToString("F2", CultureInfo.InvariantCulture) : Unknown,
    ];

    /// <summary>The spacer to fit, in words.</summary>
    public string Choice(SpacerRow row) => row.Chosen is null ? Refusal(row) : Stack(row.Chosen);

    /// <summary>"1.5 mm: 1 mm + 0.5 mm", "none".</summary>
    public string Stack(SpacerOption option) => option.Stack.Count switch
    {
        0 => "none",
        1 => Length(option.Stack[0]),
        _ => $"{Length(option.Thickness)}: {string.Join(" + ", option.Stack.Select(t => Length(t)))}",
    };

    /// <summary>A load.</summary>
    public string Load(double? si) => Print(si, Dimension.Force, "N", 4);

    /// <summary>A length, to a hundredth.</summary>
    public string Length(double? si) => si is { } m ? Figures.Print(Math.Round(m, 5) + 0.0, Dimension.Length, "mm", 4, imperial) : Unknown;

    /// <summary>A whole number.</summary>
    public static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Refusal(SpacerRow row) => row.Options.All(o => o.Refused.Length > 0) ? $"nothing: even without, {row.Options[0].Refused}" : "nothing: too few on the bench";

    private string Print(double? si, Dimension dimension, string unit, int digits) => si is { } value ? Figures.Print(value, dimension, unit, digits, imperial) : Unknown;
}
