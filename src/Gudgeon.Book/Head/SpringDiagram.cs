using Gudgeon.Book.Build;
using Gudgeon.Book.Checks.ValveTrain;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Head;

/// <summary>A point of a spring's load-height line that has a name.</summary>
/// <param name="Name">"valve shut", "full lift", "coil bind".</param>
/// <param name="Height">Height of the outer spring, m.</param>
/// <param name="Load">Load of all springs there, N.</param>
public sealed record SpringMark(string Name, double Height, double Load);

/// <summary>Load over height of the springs on one valve.</summary>
/// <param name="Valve">The valve.</param>
/// <param name="Line">Heights, falling, and loads.</param>
/// <param name="Marks">Valve shut, full lift, coil bind; with a spacer and without where there is one.</param>
/// <param name="Tested">Readings of the tester, where there is one spring.</param>
/// <param name="BindsAt">Height at which the first coil binds, m; null when not known.</param>
public sealed record SpringDiagram(string Valve, IReadOnlyList<(double Height, double Load)> Line, IReadOnlyList<SpringMark> Marks, IReadOnlyList<(double Height, double Load)> Tested, double? BindsAt)
{
    private const int Steps = 60;

    /// <summary>The diagram of one valve; a line without points where the load is not known.</summary>
    public static SpringDiagram Of(Snapshot now, string index)
    {
        var view = new View(now);
        var spring = new FittedSpring(view, index);
        double? At(double? height) => height is { } h ? Sketch.Known(() => spring.LoadAt(h)) : null;
        var installed = view.AmountIf(Spring.InstalledHeight, index);
        var lift = view.AmountIf(Fields.Valve.Lift, index);
        var spacer = view.AmountOr(Spring.Spacer, 0, index);
        var bind = Sketch.Known(() => spring.Coils.Max(c => c.BindsAt));
        List<SpringMark> marks = [];
        void Mark(string name, double? height)
        {
            if (At(height) is { } load)
            {
                marks.Add(new SpringMark(name, height!.Value, load));
            }
        }

        var on = spacer > 0 ? " on the spacer" : "";
        Mark("valve shut" + on, installed - spacer);
        Mark("full lift" + on, installed - spacer - lift);
        if (spacer > 0)
        {
            Mark("valve shut, no spacer", installed);
            Mark("full lift, no spacer", installed - lift);
        }

        Mark("coil bind", bind);
        var tested = spring.Coils.Count == 1 && view.TableIf(Spring.LoadTable, index) is { } table ? table["height"].Zip(table["load"]).ToList() : [];
        return new SpringDiagram(index, Along(At, [.. marks.Select(m => m.Height), .. tested.Select(t => t.First)], bind), marks, tested, bind);
    }

    private static List<(double Height, double Load)> Along(Func<double?, double?> at, IReadOnlyList<double> heights, double? bind)
    {
        if (heights.Count == 0)
        {
            return [];
        }

        var (from, to) = (heights.Max(), bind ?? heights.Min());
        return [.. Enumerable.Range(0, Steps + 1)
            .Select(i => from + ((to - from) * i / Steps))
            .Select(h => (Height: h, Load: at(h)))
            .Where(p => p.Load is not null)
            .Select(p => (p.Height, p.Load!.Value))];
    }
}
