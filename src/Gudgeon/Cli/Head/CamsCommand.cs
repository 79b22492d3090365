using Gudgeon.Cli.Sheets;
using System.ComponentModel;
using System.Globalization;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Head;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.ValveTrain;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Head;

/// <summary>gudgeon head cams: timing, motion, lobe centres.</summary>
internal sealed class CamsCommand : Command<CamsCommand.Settings>
{
    internal sealed class Settings : SheetSettings
    {
        [CommandOption("--at <LIFT>")]
        [Description("Lift at which the timing is given, such as 0.5mm; may be given again. 1 mm and 0.050 in when left out.")]
        public string[] At { get; init; } = [];

        [CommandOption("--timing-svg <FILE>")]
        [Description("Draw the timing of one cylinder on the circle of the crank.")]
        public string? TimingSvg { get; init; }

        [CommandOption("--cylinder <NUMBER>")]
        [Description("The cylinder of the timing picture; the first when left out.")]
        public string? Cylinder { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var now = settings.Open().Book.Now();
        var lifts = settings.At.Select(Lift).ToList();
        var sheet = CamSheet.Of(now, lifts);
        if (sheet.Cams.Count == 0)
        {
            throw new BadInputException(string.Join("; ", sheet.Missing));
        }

        if (settings.Svg is not null)
        {
            CamPictures.Draw(sheet, settings.Svg, settings.Imperial);
        }

        if (settings.TimingSvg is not null)
        {
            var keys = ValveTiming.Keys(now);
            var key = settings.Cylinder ?? keys[0];
            TimingPicture.Draw(ValveTiming.Of(now, keys.Contains(key) ? key : throw new BadInputException($"--cylinder: given '{key}', wanted one of {string.Join(", ", keys)}")), key, settings.TimingSvg, settings.Imperial);
        }

        if (settings.Json)
        {
            Out.Json(Json(sheet));
        }
        else
        {
            Print(sheet, settings.Imperial);
        }

        return 0;
    }

    private static double Lift(string text) => Amount.Parse("--at", text, Dimension.Length, "mm").Si is var lift and >= 0
        ? lift
        : throw new BadInputException($"--at: given {text}, wanted a lift of zero or more");

    private static void Print(CamSheet sheet, bool imperial)
    {
        foreach (var cam in sheet.Cams)
        {
            Out.Line($"{cam.Index}: {cam.Motion.From}");
            foreach (var timing in cam.Timings)
            {
                Out.Line("  " + CamWords.Timing(cam, timing, imperial));
            }

            foreach (var lift in cam.NotReached)
            {
                Out.Line("  " + CamWords.NotReached(lift, imperial));
            }

            FactLines.Print(cam.Facts, imperial);
            if (cam.Wheel is { } wheel)
            {
                Out.Line("  degree wheel, crank degrees from overlap TDC:");
                foreach (var row in wheel.Rows)
                {
                    Out.Line(string.Create(CultureInfo.InvariantCulture, $"    {Figures.Print(row.Lift, Dimension.Length, "mm", 4, imperial),10}  {Degrees(row.Opening),8} {Degrees(row.Closing),8}  centre {Degrees(row.Centre),8}"));
                }

                FactLines.Print(wheel.Facts, imperial);
                Out.Line("  " + WheelCaution);
            }

            Out.Line();
        }

        FactLines.Print(sheet.Facts, imperial);
        foreach (var missing in sheet.Missing)
        {
            Out.Line(missing);
        }
    }

    /// <summary>What stands beside degree-wheel work.</summary>
    internal static readonly string WheelCaution = Formulas.Find("lobe centre by degree wheel")!.Declaration.Caution;

    private static string Degrees(double radians) => Figures.Print(radians, Dimension.Angle, "°", 4);

    private static object Json(CamSheet sheet) => new
    {
        speed = sheet.Speed,
        cams = sheet.Cams.Select(c => new
        {
            index = c.Index,
            from = c.Motion.From,
            lash = c.Motion.Lash,
            centre = c.Motion.Centre,
            timings = c.Timings.Select(t => new { lift = t.Lift, opens = t.Crossings.Opens, closes = t.Crossings.Closes, duration = t.Crossings.Duration, centre = t.Crossings.Middle }),
            facts = FactLines.Json(c.Facts),
            wheel = c.Wheel is { } w ? new { centre = w.Centre, expanded = w.Expanded, facts = FactLines.Json(w.Facts) } : null,
            motion = new { angles = c.Motion.Points.Angles, lift = c.Motion.Points.Lift, slope = c.Motion.Points.Slope, curvature = c.Motion.Points.Curvature, jerk = c.Motion.Points.Jerk },
        }),
        facts = FactLines.Json(sheet.Facts),
        missing = sheet.Missing,
    };
}
