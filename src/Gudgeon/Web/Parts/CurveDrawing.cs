using Plotly.Blazor;
using Plotly.Blazor.LayoutLib;
using Plotly.Blazor.Traces;
using Plotly.Blazor.Traces.ScatterLib;

namespace Gudgeon.Web.Parts;

/// <summary>Curves as the plotting library wants them.</summary>
internal static class CurveDrawing
{
    private static readonly string[] Light = ["#0b5563", "#9a3412", "#4c3a8f", "#5b4a2f", "#1f6b3a", "#8a1f5c"];
    private static readonly string[] Dark = ["#6cc3d1", "#f2a07b", "#b7a8f5", "#d3bd92", "#7fd09b", "#f09ac7"];
    private static readonly string[] Dashes = ["solid", "dash", "dot", "dashdot", "longdash", "longdashdot"];
    private static readonly Plotly.Blazor.Traces.ScatterLib.MarkerLib.SymbolEnum[] Shapes =
    [
        Plotly.Blazor.Traces.ScatterLib.MarkerLib.SymbolEnum.Circle,
        Plotly.Blazor.Traces.ScatterLib.MarkerLib.SymbolEnum.Square,
        Plotly.Blazor.Traces.ScatterLib.MarkerLib.SymbolEnum.TriangleUp,
        Plotly.Blazor.Traces.ScatterLib.MarkerLib.SymbolEnum.DiamondOpen,
        Plotly.Blazor.Traces.ScatterLib.MarkerLib.SymbolEnum.X,
        Plotly.Blazor.Traces.ScatterLib.MarkerLib.SymbolEnum.CircleOpen,
    ];

    public static (IList<ITrace> Data, Plotly.Blazor.Layout Layout) Of(
        IReadOnlyList<Curve> curves,
        IReadOnlyList<(double X, string Words)> uprights,
        (string X, string Y, string Right) titles,
        (bool X, bool Y) log,
        bool dark)
    {
        var ink = dark ? "#e9e7e1" : "#1d2125";
        var grid = dark ? "#343a40" : "#e2dfd6";
        var layout = new Plotly.Blazor.Layout
        {
            PaperBgColor = "rgba(0,0,0,0)",
            PlotBgColor = "rgba(0,0,0,0)",
            Font = new Plotly.Blazor.LayoutLib.Font { Color = ink, Family = "system-ui, DejaVu Sans, sans-serif", Size = 13 },
            Margin = new Margin { L = 64, R = titles.Right.Length > 0 ? 64 : 16, T = 12, B = 48 },
            ShowLegend = curves.Count > 1,
            Legend = [new Legend { Orientation = Plotly.Blazor.LayoutLib.LegendLib.OrientationEnum.H, Y = 1.02m, YAnchor = Plotly.Blazor.LayoutLib.LegendLib.YAnchorEnum.Bottom, X = 0 }],
            XAxis = [new XAxis { Title = new Plotly.Blazor.LayoutLib.XAxisLib.Title { Text = titles.X }, GridColor = grid, ZeroLineColor = grid, LineColor = ink, Type = log.X ? Plotly.Blazor.LayoutLib.XAxisLib.TypeEnum.Log : Plotly.Blazor.LayoutLib.XAxisLib.TypeEnum.Linear }],
            YAxis = Uprightly(titles, log.Y, grid, ink),
            Shapes = [.. uprights.Select(u => new Shape { Type = Plotly.Blazor.LayoutLib.ShapeLib.TypeEnum.Line, X0 = u.X, X1 = u.X, Y0 = 0, Y1 = 1, YRef = "paper", Line = new Plotly.Blazor.LayoutLib.ShapeLib.Line { Color = ink, Width = 2, Dash = "dot" } })],
            Annotations = [.. uprights.Select(u => new Annotation { X = u.X, Y = 1, YRef = "paper", YAnchor = Plotly.Blazor.LayoutLib.AnnotationLib.YAnchorEnum.Top, XAnchor = Plotly.Blazor.LayoutLib.AnnotationLib.XAnchorEnum.Left, Text = u.Words, ShowArrow = false, Font = new Plotly.Blazor.LayoutLib.AnnotationLib.Font { Color = ink } })],
            HoverMode = Plotly.Blazor.LayoutLib.HoverModeEnum.X,
        };
        return ([.. curves.Select((c, i) => Trace(c, i, dark))], layout);
    }

    private static IList<YAxis> Uprightly((string X, string Y, string Right) titles, bool log, string grid, string ink)
    {
        var left = new YAxis { Title = new Plotly.Blazor.LayoutLib.YAxisLib.Title { Text = titles.Y }, GridColor = grid, ZeroLineColor = grid, LineColor = ink, Type = log ? Plotly.Blazor.LayoutLib.YAxisLib.TypeEnum.Log : Plotly.Blazor.LayoutLib.YAxisLib.TypeEnum.Linear };
        return titles.Right.Length == 0
            ? [left]
            : [left, new YAxis { Title = new Plotly.Blazor.LayoutLib.YAxisLib.Title { Text = titles.Right }, Overlaying = "y", Side = Plotly.Blazor.LayoutLib.YAxisLib.SideEnum.Right, ShowGrid = false, LineColor = ink }];
    }

    private static Scatter Trace(Curve curve, int place, bool dark)
    {
        var colour = curve.Faint ? (dark ? "#7d858c" : "#8d9195") : (dark ? Dark : Light)[place % Light.Length];
        return new Scatter
        {
            Name = curve.Name,
            ShowLegend = curve.Listed,
            X = [.. curve.X.Select(x => (object)x)],
            Y = [.. curve.Y.Select(y => (object)y)],
            Mode = ModeOf(curve),
            TextArray = curve.Labels.Count > 0 ? [.. curve.Labels] : null,
            TextPosition = curve.Labels.Count > 0 ? Plotly.Blazor.Traces.ScatterLib.TextPositionEnum.TopLeft : null,
            Line = new Plotly.Blazor.Traces.ScatterLib.Line { Color = colour, Width = curve.Faint ? 1.5m : 2.5m, Dash = Dashes[place % Dashes.Length] },
            Marker = new Plotly.Blazor.Traces.ScatterLib.Marker { Color = colour, Size = 7, Symbol = Shapes[place % Shapes.Length] },
            YAxis = curve.Right ? "y2" : "y",
        };
    }

    private static ModeFlag ModeOf(Curve curve)
    {
        var drawn = curve.Joined ? (curve.Marks ? ModeFlag.Lines | ModeFlag.Markers : ModeFlag.Lines) : ModeFlag.Markers;
        return curve.Labels.Count > 0 ? drawn | ModeFlag.Text : drawn;
    }
}
