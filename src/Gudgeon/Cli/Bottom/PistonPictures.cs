using Gudgeon.Book.Bottom;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using ScottPlot;

namespace Gudgeon.Cli.Bottom;

/// <summary>Pistons on paper: side thrust and load on the pin over the cycle, and what the squish clearance comes down to.</summary>
internal static class PistonPictures
{
    /// <summary>Draws the sheet.</summary>
    public static void Draw(PistonSheet sheet, string file, bool imperial)
    {
        Pictures.Save(Pictures.Sheet(Loads(sheet.Pistons[0], imperial), Squish(sheet, imperial)), file);
    }

    private static Plot Loads(PistonFigures piston, bool imperial)
    {
        var plot = new Plot();
        var force = Figures.Shown(Dimension.Force, "kN", imperial);
        for (var i = 0; i < piston.Hardest.Count; i++)
        {
            var (speed, loads) = piston.Hardest[i];
            RodPictures.Line(plot, $"side thrust at {RodPictures.At(speed)}", loads, loads.Side, force, RodPictures.Patterns[(2 * i) % RodPictures.Patterns.Length]);
            RodPictures.Line(plot, $"gudgeon pin at {RodPictures.At(speed)}", loads, loads.PinAlong, force, RodPictures.Patterns[((2 * i) + 1) % RodPictures.Patterns.Length]);
        }

        plot.Title(piston.Cylinder.Length > 0 ? $"Piston {piston.Cylinder}: side thrust and load on the pin" : "Side thrust and load on the pin");
        plot.XLabel("crank angle after firing TDC, °");
        plot.YLabel($"force, {force.Symbol}");
        plot.ShowLegend(Edge.Right);
        plot.Layout.Fixed(new PixelPadding(76, 240, 56, 44));
        return plot;
    }

    /// <summary>From the cold clearance down to what is left, step by step.</summary>
    private static Plot Squish(PistonSheet sheet, bool imperial)
    {
        var plot = new Plot();
        var length = Figures.Shown(Dimension.Length, "mm", imperial);
        var steps = sheet.Pistons.SelectMany(Steps).Reverse().ToList();
        plot.Add.Bars(steps.ConvertAll(s => new Bar
        {
            Position = steps.IndexOf(s),
            ValueBase = length.FromSi(s.From),
            Value = length.FromSi(s.To),
            Orientation = Orientation.Horizontal,
            FillColor = s.Whole ? Colors.SteelBlue : Colors.LightGray,
        })).Horizontal = true;
        plot.Axes.Left.SetTicks([.. steps.Select((_, i) => (double)i)], [.. steps.Select(s => s.Name)]);
        plot.Axes.SetLimitsX(0, steps.Count == 0 ? 1 : 1.1 * steps.Max(s => length.FromSi(Math.Max(s.From, s.To))));
        plot.Title("Squish clearance: as built, what takes from it, what is left at the rev limit");
        plot.XLabel($"clearance, {length.Symbol}");
        plot.Layout.Fixed(new PixelPadding(240, 40, 56, 44));
        return plot;
    }

    private static IEnumerable<(string Name, double From, double To, bool Whole)> Steps(PistonFigures piston)
    {
        if (piston.Squish is not { Cold: { } cold, Left: { } left })
        {
            yield break;
        }

        yield return ($"piston {piston.Cylinder}, as built", 0, cold, true);
        var at = cold;
        foreach (var (name, takes) in piston.Squish.Takes)
        {
            yield return (name, at, at - (takes ?? 0), false);
            at -= takes ?? 0;
        }

        yield return ($"piston {piston.Cylinder}, at the rev limit", 0, left, true);
    }
}
