using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Web.Drawings;

/// <summary>One number of a drawing, for its list and for those who cannot look.</summary>
/// <param name="Name">"squish, cold".</param>
/// <param name="Value">In the looker's units; "not known" when it is not.</param>
/// <param name="Known">Whether it is known.</param>
public sealed record Told(string Name, string Value, bool Known)
{
    /// <summary>A length; not known when null.</summary>
    public static Told Length(string name, double? metres, bool imperial) => Of(name, metres, Dimension.Length, "mm", imperial);

    /// <summary>A number of any dimension; not known when null.</summary>
    public static Told Of(string name, double? si, Dimension dimension, string unit, bool imperial) =>
        new(name, si is { } known ? Figures.Print(known, dimension, unit, 5, imperial) : "not known", si is not null);
}

/// <summary>An upright dimension line between two heights, px; the words stand beside it.</summary>
/// <param name="X">Where it stands.</param>
/// <param name="From">Upper end.</param>
/// <param name="To">Lower end.</param>
/// <param name="Told">What it measures.</param>
public sealed record Upright(double X, double From, double To, Told Told)
{
    /// <summary>Whether the words stand to the left of the line.</summary>
    public bool LeftWords { get; init; }
}

/// <summary>Numbers of attributes of SVG.</summary>
internal static class Px
{
    /// <summary>A coordinate, to a hundredth of a pixel.</summary>
    public static string Of(double value) => Math.Round(value, 2).ToString(System.Globalization.CultureInfo.InvariantCulture);
}
