using Gudgeon.Book.Build;
using Gudgeon.Book.Checks.Drive;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Drive;

/// <summary>A load on the nose, for the picture.</summary>
/// <param name="Name">"outboard bearing".</param>
/// <param name="Place">From the near main bearing, m.</param>
/// <param name="Load">Against the pull of the belt positive, N.</param>
public sealed record NoseLoad(string Name, double Place, double Load);

/// <summary>The nose of the crank and its outboard bearing.</summary>
/// <param name="Steps">Its numbers.</param>
/// <param name="Loads">Loads along it with the bore true, from the far main bearing on; empty when they are not known.</param>
/// <param name="Moments">Greatest bending moment along it, the offset the worst way round: place, m, and moment, N·m.</param>
/// <param name="Sections">Sections that are looked at, by name and place, m.</param>
/// <param name="Missing">What is wanted.</param>
public sealed record NoseSheet(IReadOnlyList<DriveStep> Steps, IReadOnlyList<NoseLoad> Loads, IReadOnlyList<(double Place, double Moment)> Moments, IReadOnlyList<(string Name, double Place)> Sections, string Missing) : IDriveSheet
{
    /// <inheritdoc/>
    public IReadOnlyList<string> Refused { get; init; } = [];

    /// <summary>What it leaves out.</summary>
    public const string Remark = "A beam of one diameter on mains that give no way; play of the bearings counts with the offset of the bore, and the stiffness of the cover decides what share it takes. The pull of the belt stands still while the shaft turns, so its bending alternates. Shocks have a sheet of their own.";

    private const string Breaking = "A nose that breaks lets belt and pulley go at speed: guard on, nobody in the plane of the belt, a crack test after the first runs.";
    private const string Heat = "Shrinking the spigot in: hot crank, cold spigot, gloves and visor, a stop ready. The page of fits has its temperatures; the makers' data go first.";
    private const int Points = 40;

    /// <summary>The sheet of the values that hold.</summary>
    public static NoseSheet Of(Snapshot now, DutyDesk? desk)
    {
        if (DriveWords.Without(now) is { Length: > 0 } none)
        {
            return new NoseSheet([], [], [], [], none);
        }

        var view = new View(now, desk);
        var nose = new LoadedNose(view);
        var load = nose.HubLoad();
        var known = Sketch.Known(() => nose.Supports(load, 0).Near) is not null;
        return new NoseSheet(
            [.. Bending(view, nose, load), .. Seat(view, nose), .. Bearing(view, nose, load)],
            known ? [.. Along(view, nose, load)] : [],
            known ? [.. Course(view, nose, load)] : [],
            [.. new[] { (LoadedNose.Mouth, view.AmountIf(Nose.MouthFrom)), (LoadedNose.Shoulder, view.AmountIf(Nose.FilletFrom)) }.Where(s => s.Item2 is not null).Select(s => (s.Item1, s.Item2!.Value))],
            DriveWords.Missing(view))
        {
            Refused = view.Trace.Refused,
        };
    }

    private static IEnumerable<DriveStep> Bending(View view, LoadedNose nose, double load)
    {
        Fact At(string name, string section) => new($"bending moment at the {name}", view.Knows(section == LoadedNose.Mouth ? Nose.MouthFrom : Nose.FilletFrom) ? Sketch.Known(() => nose.Moment(nose.Place(section), load)) : null, Dimension.Torque, "N·m");
        Fact Safe(string name, string section) => new($"safety against fatigue at the {name}", view.Knows(section == LoadedNose.Mouth ? Nose.MouthFrom : Nose.Fillet) ? Sketch.Known(() => nose.Safety(section).Fatigue) : null, Dimension.Number, "") { Digits = 3 };
        return DriveWords.Step(
            "Bending and torsion of the spigot",
            Breaking,
            new Fact("greatest load of the belt on the pulley", load, Dimension.Force, "N") { Remark = "at rest or running" },
            new Fact("steady torque", nose.Worst().Torque, Dimension.Torque, "N·m"),
            new Fact("load on the near main bearing", Sketch.Known(() => nose.Offsets().Max(o => Math.Abs(nose.Supports(load, o).Near))), Dimension.Force, "N"),
            At("mouth of the fit", LoadedNose.Mouth),
            At("shoulder", LoadedNose.Shoulder),
            Safe("mouth of the fit", LoadedNose.Mouth),
            Safe("shoulder", LoadedNose.Shoulder));
    }

    private static IEnumerable<DriveStep> Seat(View view, LoadedNose nose)
    {
        var key = view.Knows(Fit.KeyLength, Nose.Fit) && view.Knows(Fit.KeyPressureLimit, Nose.Fit) ? Sketch.Known(nose.KeyTorque) : null;
        return DriveWords.Step(
            "Spigot in the crank's end",
            Heat,
            new Fact("slip torque of the fit, running", Sketch.Known(nose.Joint.SlipTorque), Dimension.Torque, "N·m") { Remark = "the first path" },
            new Fact("torque that the key carries alone", key, Dimension.Torque, "N·m") { Remark = "the second path, at the pressure allowed on its flank" },
            new Fact("interference at running heat", Sketch.Known(() => nose.Joint.RunsHot ? nose.Joint.Hot() : double.NaN), Dimension.Length, "µm"),
            new Fact("crank's end to go on at", Sketch.Known(nose.Joint.HubTemperature), Dimension.Temperature, "°C"),
            new Fact("comes loose at", Sketch.Known(nose.Joint.LossTemperature), Dimension.Temperature, "°C") { Remark = "both as hot as each other" });
    }

    private static IEnumerable<DriveStep> Bearing(View view, LoadedNose nose, double load) => !nose.Held ? [] : DriveWords.Step(
        "Outboard bearing in its cover",
        "Line the cover up by the dial gauge before its dowels are reamed; a bearing that is pulled over runs hot and lets go.",
        new Fact("load with its bore true", Sketch.Known(() => nose.Supports(load, 0).Outboard), Dimension.Force, "N") { Remark = Share(nose, load) },
        new Fact("load, the offset the worst way round", view.Knows(Outboard.Offset) ? Sketch.Known(() => nose.OutboardLoad(load)) : null, Dimension.Force, "N"),
        new Fact("load from the offset alone", view.Knows(Outboard.Offset) ? Sketch.Known(() => nose.OutboardLoad(0)) : null, Dimension.Force, "N"),
        new Fact("misalignment", Sketch.Known(nose.Misalignment), Dimension.Angle, "°") { Digits = 3, Remark = $"{Outboard.TiltLimit.Print(Math.Round(nose.TiltLimit(), 5))} allowed" },
        new Fact("mean load over the run", Sketch.Known(nose.MeanLoad), Dimension.Force, "N"),
        new Fact("rating life at full load", Sketch.Known(nose.Life), Dimension.Time, "h"));

    private static string Share(LoadedNose nose, double load) => Sketch.Known(() => nose.Supports(load, 0).Outboard / load) is { } share ? $"{Figures.Number(100 * share, 3)} % of the pull" : "";

    private static IEnumerable<NoseLoad> Along(View view, LoadedNose nose, double load)
    {
        var supports = nose.Supports(load, 0);
        yield return new NoseLoad("far main", -view.Amount(Nose.Span), supports.Far);
        yield return new NoseLoad("near main", 0, supports.Near);
        yield return new NoseLoad("belt", view.Amount(Nose.Overhang), -load);
        if (nose.Held)
        {
            yield return new NoseLoad("outboard", view.Amount(Outboard.Distance), supports.Outboard);
        }
    }

    private static IEnumerable<(double Place, double Moment)> Course(View view, LoadedNose nose, double load)
    {
        var end = nose.Held ? view.Amount(Outboard.Distance) : view.Amount(Nose.Overhang);
        yield return (-view.Amount(Nose.Span), 0);
        foreach (var place in Enumerable.Range(0, Points + 1).Select(i => end * i / Points).Append(view.Amount(Nose.Overhang)).Distinct().Order())
        {
            yield return (place, nose.Moment(place, load));
        }
    }
}
