using Gudgeon.Book.Drive;

namespace Gudgeon.Web.Drawings;

/// <summary>Loads and bending moment along the nose, px.</summary>
public sealed class NoseGeometry
{
    /// <summary>Size of the drawing, px.</summary>
    public const double Width = 560, Height = 380;

    /// <summary>Height of the shaft and of the line of no moment.</summary>
    public const double Shaft = 120, Base = 350;

    private const double Left = 60, Right = 500, Arrow = 80, Hump = 110;

    private readonly double _from, _scale;

    /// <param name="sheet">The nose.</param>
    public NoseGeometry(NoseSheet sheet)
    {
        _from = sheet.Loads.Min(l => l.Place);
        _scale = (Right - Left) / (sheet.Loads.Max(l => l.Place) - _from);
        var force = Arrow / sheet.Loads.Max(l => Math.Abs(l.Load));
        Loads = [.. sheet.Loads.Select(l => (X(l.Place), Shaft - (l.Load * force), l))];
        var moment = Hump / Math.Max(1e-9, sheet.Moments.Max(m => m.Moment));
        Moment = string.Concat(sheet.Moments.Select((m, i) => $"{(i == 0 ? "M" : "L")}{Px.Of(X(m.Place))} {Px.Of(Base - (m.Moment * moment))}")) + $"L{Px.Of(X(sheet.Moments[^1].Place))} {Px.Of(Base)}L{Px.Of(X(_from))} {Px.Of(Base)}Z";
        Sections = [.. sheet.Sections.Select(s => (X(s.Place), s.Name))];
    }

    /// <summary>Where each load stands and how far its arrow reaches.</summary>
    public IReadOnlyList<(double X, double Y, NoseLoad Load)> Loads { get; }

    /// <summary>The bending moment.</summary>
    public string Moment { get; }

    /// <summary>Sections that are looked at.</summary>
    public IReadOnlyList<(double X, string Name)> Sections { get; }

    private double X(double place) => Left + ((place - _from) * _scale);
}
