using Gudgeon.Book.Head;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Web.Drawings;

/// <summary>A valve on its seat, cut through the stem, px. What is not known is drawn at a usual size.</summary>
public sealed class SeatGeometry
{
    /// <summary>Size of the drawing, px.</summary>
    public const double Width = 620, Height = 400;

    private const double Middle = 270, Below = 352, HeadWidth = 300;
    private const double UsualHead = 34e-3, UsualWidth = 1.2e-3, UsualStem = 5.5e-3, UsualAngle = Math.PI / 4;
    private const double Margin = 1.2e-3, FacePast = 0.8e-3, RingDepth = 6e-3, RingWall = 3.5e-3, Throat = 1.2e-3, NeckHeight = 11e-3;
    private const double GuideLength = 16e-3, GuideWall = 3e-3, ClearanceDrawn = 20;

    private readonly double _scale;

    /// <param name="row">The numbers.</param>
    /// <param name="imperial">Whether in inch units.</param>
    public SeatGeometry(SeatRow row, bool imperial)
    {
        var (radius, width, angle, stem) = ((row.HeadDiameter ?? UsualHead) / 2, row.Width ?? UsualWidth, row.Angle ?? UsualAngle, (row.Stem ?? UsualStem) / 2);
        _scale = HeadWidth / (2 * radius);
        var (faceIn, faceUp) = ((width + FacePast) * Math.Cos(angle), (width + FacePast) * Math.Sin(angle));
        var (bandIn, bandUp) = (width * Math.Cos(angle), width * Math.Sin(angle));
        var bore = stem + ((row.Cold ?? 0) / 2 * ClearanceDrawn);
        var guideFrom = Margin + faceUp + NeckHeight + 2e-3;
        Valve = Closed(1,
            [(radius, 0), (radius, Margin), (radius - faceIn, Margin + faceUp), (stem * 1.6, Margin + faceUp + (NeckHeight * 0.45)), (stem, Margin + faceUp + NeckHeight), (stem, guideFrom + GuideLength + 4e-3)],
            mirrored: true);
        (double X, double Y)[] ring = [(radius, Margin), (radius - bandIn, Margin + bandUp), (radius - bandIn - Throat, Margin + bandUp + (2 * Throat)), (radius - bandIn - Throat, Margin + RingDepth), (radius + RingWall, Margin + RingDepth), (radius + RingWall, Margin)];
        (double X, double Y)[] guide = [(bore, guideFrom), (bore + GuideWall, guideFrom), (bore + GuideWall, guideFrom + GuideLength), (bore, guideFrom + GuideLength)];
        Rings = [Closed(1, ring), Closed(-1, ring), Closed(1, guide), Closed(-1, guide)];
        Bands = [Band(1), Band(-1)];
        Words =
        [
            (X(radius + RingWall) + 10, Y(Margin + (RingDepth / 2)), "seat", "start"),
            (X(bore + GuideWall) + 10, Y(guideFrom + (GuideLength / 2)), "guide", "start"),
            (X(-bore - GuideWall) - 10, Y(guideFrom + (GuideLength / 2)), "stem, hot end below", "end"),
            (Middle, Below + 24, "cylinder", "middle"),
        ];
        Numbers =
        [
            Told.Length("head diameter", row.HeadDiameter, imperial),
            Told.Length("seat width", row.Width, imperial),
            row.Angle is null ? new Told("seat angle", "45° (usual)", Known: true) : Told.Of("seat angle", row.Angle, Dimension.Angle, "°", imperial),
            Told.Length("mean diameter of the band", Rounded(row.MeanDiameter, 1e-5), imperial),
            Told.Of("seat pressure", Rounded(row.SeatPressure, 1e5), Dimension.Pressure, "MPa", imperial),
            Told.Length("stem", row.Stem, imperial),
            Told.Length("guide bore", row.Bore, imperial),
            Told.Length("clearance cold", Rounded(row.Cold, 1e-7), imperial),
            Told.Length("clearance hot", Rounded(row.Hot, 1e-7), imperial),
        ];

        string Band(int side) => $"M{Px.Of(X(side * radius))} {Px.Of(Y(Margin))}L{Px.Of(X(side * (radius - bandIn)))} {Px.Of(Y(Margin + bandUp))}";
    }

    /// <summary>Outline of the valve.</summary>
    public string Valve { get; }

    /// <summary>Seat and guide, cut on both sides.</summary>
    public IReadOnlyList<string> Rings { get; }

    /// <summary>The contact band on both sides.</summary>
    public IReadOnlyList<string> Bands { get; }

    /// <summary>Words in the drawing.</summary>
    public IReadOnlyList<(double X, double Y, string Words, string Anchor)> Words { get; }

    /// <summary>Every number, for the list.</summary>
    public IReadOnlyList<Told> Numbers { get; }

    /// <summary>To so many units of the last place that matters.</summary>
    private static double? Rounded(double? si, double unit) => si is { } known ? Math.Round(known / unit) * unit : null;

    private double X(double radius) => Middle + (radius * _scale);

    private double Y(double up) => Below - (up * _scale);

    private string Closed(int side, IReadOnlyList<(double X, double Y)> points, bool mirrored = false)
    {
        var all = points.Select(p => (p.X * side, p.Y)).ToList();
        if (mirrored)
        {
            all.AddRange(points.Reverse().Select(p => (-p.X, p.Y)));
        }

        return "M" + string.Join("L", all.Select(p => $"{Px.Of(X(p.Item1))} {Px.Of(Y(p.Item2))}")) + "Z";
    }
}
