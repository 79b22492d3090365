using System.Net;
using System.Text;
using Gudgeon.Book.Drawings;
using Gudgeon.Web.Drawings;

namespace Gudgeon.Cli.Head;

/// <summary>The valve timing of one cylinder on the circle of the crank, on paper: the geometry of the page's drawing.</summary>
internal static class TimingPicture
{
    private const double ListTop = TimingGeometry.Height + 10, LineHeight = 18;

    public static void Draw(ValveTiming timing, string cylinder, string file, bool imperial)
    {
        var g = new TimingGeometry(timing, imperial);
        var height = ListTop + (LineHeight * g.Numbers.Count) + 30;
        var svg = new StringBuilder($"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{Px.Of(TimingGeometry.Width)}\" height=\"{Px.Of(height)}\" viewBox=\"0 0 {Px.Of(TimingGeometry.Width)} {Px.Of(height)}\" font-family=\"DejaVu Sans, sans-serif\" font-size=\"13\">");
        svg.Append("<rect width=\"100%\" height=\"100%\" fill=\"white\"/>");
        svg.Append($"<circle cx=\"{Px.Of(TimingGeometry.X)}\" cy=\"{Px.Of(TimingGeometry.Y)}\" r=\"{Px.Of(TimingGeometry.InletRadius - 22)}\" fill=\"none\" stroke=\"#555\" stroke-dasharray=\"1 3\"/>");
        svg.Append($"<path d=\"M{Px.Of(TimingGeometry.X)} 44V{Px.Of(TimingGeometry.Height - 44)}M{Px.Of(TimingGeometry.X - 150)} {Px.Of(TimingGeometry.Y)}h300\" fill=\"none\" stroke=\"#555\" stroke-dasharray=\"1 3\"/>");
        Path(svg, g.Overlap, "fill=\"#d7e8ea\" stroke=\"#0b5563\"");
        Path(svg, g.Inlet.Path, "fill=\"none\" stroke=\"#0b5563\" stroke-width=\"14\"");
        Path(svg, g.Exhaust.Path, "fill=\"none\" stroke=\"#1d2125\" stroke-width=\"14\"");
        Path(svg, g.Exhaust.Path, "fill=\"none\" stroke=\"white\" stroke-width=\"9\"");
        Word(svg, TimingGeometry.X, 18, "middle", $"Valve timing{(cylinder.Length > 0 ? $", cylinder {cylinder}" : "")}: inlet solid, exhaust hollow; the crank turns clockwise");
        Word(svg, TimingGeometry.X, 36, "middle", "TDC");
        Word(svg, TimingGeometry.X, TimingGeometry.Height - 28, "middle", "BDC");
        foreach (var end in g.Inlet.Ends.Concat(g.Exhaust.Ends))
        {
            Word(svg, end.X, end.Y, end.Anchor, end.Words);
        }

        for (var i = 0; i < g.Numbers.Count; i++)
        {
            Word(svg, TimingGeometry.X - 10, ListTop + (LineHeight * (i + 1)), "end", g.Numbers[i].Name);
            Word(svg, TimingGeometry.X + 10, ListTop + (LineHeight * (i + 1)), "start", g.Numbers[i].Value);
        }

        Pictures.Write(svg.Append("</svg>\n").ToString(), file);
    }

    private static void Path(StringBuilder svg, string path, string look) => svg.Append(path.Length > 0 ? $"<path d=\"{path}\" {look}/>" : "");

    private static void Word(StringBuilder svg, double x, double y, string anchor, string words) =>
        svg.Append($"<text x=\"{Px.Of(x)}\" y=\"{Px.Of(y)}\" text-anchor=\"{anchor}\">{WebUtility.HtmlEncode(words)}</text>");
}
