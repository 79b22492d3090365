using Gudgeon.Book.Bottom;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Web.Drawings;

/// <summary>Scale on which the clearances of all bearings lie side by side, px.</summary>
public sealed class ClearanceScale
{
    /// <summary>Size of the drawing, and where its rows begin, px.</summary>
    public const double Width = 480, Top = 8;

    private const double Left = 84, Right = 458, RowHeight = 34;
    private const int MostTicks = 6;
    private readonly Unit _unit;
    private readonly double _perUnit;

    /// <param name="rows">The bearings.</param>
    /// <param name="imperial">Whether in inch units.</param>
    public ClearanceScale(IReadOnlyList<BearingRow> rows, bool imperial)
    {
        _unit = Figures.Shown(Dimension.Length, "mm", imperial);
        Height = Top + (RowHeight * Math.Max(1, rows.Count)) + 30;
        var most = rows.SelectMany(r => new[] { r.Clearance, r.Hot, r.Loosest, r.Greatest }).Append(0).Max(m => m is { } si && double.IsFinite(si) ? _unit.FromSi(si) : 0);
        most = most > 0 ? most * 1.05 : 0.1;
        _perUnit = (Right - Left) / most;
        var decade = Math.Pow(10, Math.Floor(Math.Log10(most)));
        var step = new[] { 0.1, 0.2, 0.5, 1 }.Select(f => f * decade).First(s => most / s <= MostTicks || s >= decade);
        Ticks = [.. Enumerable.Range(0, (int)(most / step) + 1).Select(i => (Left + (i * step * _perUnit), i == 0 ? "0" : $"{Figures.Number(i * step, 3)} {_unit.Symbol}"))];
    }

    /// <summary>Height of the drawing, px.</summary>
    public double Height { get; }

    /// <summary>Places and words of the scale.</summary>
    public IReadOnlyList<(double X, string Text)> Ticks { get; }

    /// <summary>Middle of a row.</summary>
    public static double Y(int row) => Top + (RowHeight * (row + 0.5));

    /// <summary>Place of a clearance, m.</summary>
    public double X(double clearance) => Left + (_unit.FromSi(clearance) * _perUnit);
}
