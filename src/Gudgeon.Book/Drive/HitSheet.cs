using Gudgeon.Book.Build;
using Gudgeon.Book.Checks.Drive;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Boost;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Drive;

/// <summary>What a part of the drive carries, against the hits.</summary>
/// <param name="Name">"key alone".</param>
/// <param name="Torque">At the crank, N·m.</param>
public sealed record DrivePath(string Name, double Torque);

/// <summary>Hits of start, shift and cut, and the burst of the impeller.</summary>
/// <param name="Steps">Its numbers.</param>
/// <param name="Hits">The hits that are known.</param>
/// <param name="Paths">What carries them.</param>
/// <param name="Missing">What is wanted.</param>
public sealed record HitSheet(IReadOnlyList<DriveStep> Steps, IReadOnlyList<DriveHit> Hits, IReadOnlyList<DrivePath> Paths, string Missing) : IDriveSheet
{
    /// <inheritdoc/>
    public IReadOnlyList<string> Refused { get; init; } = [];

    /// <summary>What it leaves out.</summary>
    public const string Remark = "The change of speed is even over its time; the belt is one spring without damping, so that the factor, 2 at the most, is an upper bound. A cut and full torque at once last two turns at the rev limit, the engine free of its gearbox; rods and pistons are left out of its inertia, which makes it quicker. A belt without teeth slips first and spares what comes after. Builders report 5 to 10 times the steady torque (common practice, no source).";

    private const string Hit = "First shifts at part throttle, belt guard on, nobody in the plane of the belt; look at key, belt teeth and spigot after each session.";
    private const string Bursting = "An impeller that bursts is shrapnel: keep to the maker's greatest speed, put containment round its plane, and nobody stands in it. The event's rules on guards and the maker's data go first.";

    /// <summary>The sheet of the values that hold.</summary>
    public static HitSheet Of(Snapshot now, DutyDesk? desk)
    {
        if (DriveWords.Without(now) is { Length: > 0 } none)
        {
            return new HitSheet([], [], [], none);
        }

        var view = new View(now, desk);
        var hits = new DriveHits(view);
        IReadOnlyList<DriveHit> known = [.. hits.All().Where(h => !double.IsNaN(h.Torque))];
        IReadOnlyList<DrivePath> paths = [.. Carrying(view, hits)];
        return new HitSheet([.. Inertia(hits), .. Worst(hits, known, paths), .. Burst(view)], known, paths, DriveWords.Missing(view))
        {
            Refused = view.Trace.Refused,
        };
    }

    private static IEnumerable<DrivePath> Carrying(View view, DriveHits hits)
    {
        var nose = new LoadedNose(view);
        (string Name, double? Torque)[] all =
        [
            (view.WordOr(Belt.Kind, BeltKinds.Toothed) == BeltKinds.Toothed ? "belt, by its teeth" : "belt, at slip", Sketch.Known(hits.BeltTorque)),
            ("shrunk fit of the spigot", view.Knows(Fit.Length, Nose.Fit) ? Sketch.Known(nose.Joint.SlipTorque) : null),
            ("key alone", view.Knows(Fit.KeyLength, Nose.Fit) ? Sketch.Known(nose.KeyTorque) : null),
            ("spigot itself, to the yield of its notch", LoadedNose.HasSpigot(view) ? Sketch.Known(nose.SpigotTorque) : null),
        ];
        return all.Where(p => p.Torque is not null).Select(p => new DrivePath(p.Name, p.Torque!.Value));
    }

    private static IEnumerable<DriveStep> Inertia(DriveHits hits) => DriveWords.Step(
        "Inertia behind the belt",
        "",
        new Fact("rotors behind the belt, felt at the crank", Sketch.Known(hits.Inertia), Dimension.MomentOfInertia, "kg·mm²") { Remark = "each times the square of its ratio" },
        new Fact("engine without them", Sketch.Known(hits.EngineInertia), Dimension.MomentOfInertia, "kg·mm²"),
        new Fact("belt as a spring, felt at the crank", Sketch.Known(hits.Stiffness), Dimension.RotationalStiffness, "N·m/rad"),
        new Fact("they swing on it with a period of", Sketch.Known(() => DriveShock.Factor(hits.Inertia(), hits.Stiffness(), 1).Period), Dimension.Time, "ms"));

    private static IEnumerable<DriveStep> Worst(DriveHits hits, IReadOnlyList<DriveHit> known, IReadOnlyList<DrivePath> paths)
    {
        var worst = known.Count > 0 ? known.MaxBy(h => h.Torque) : default;
        double? torque = known.Count > 0 ? worst.Torque : null;
        return DriveWords.Step(
            "Worst hit",
            Hit,
            [
                new Fact("greatest torque at the crank", torque, Dimension.Torque, "N·m") { Remark = worst.Name ?? "" },
                new Fact("over the greatest steady torque", known.Count > 0 ? worst.Times : null, Dimension.Number, "") { Digits = 3, RemarkIn = imperial => known.Count > 0 ? $"which is {Figures.Print(worst.Steady, Dimension.Torque, "N·m", 3, imperial)}" : "" },
                .. paths.Select(p => new Fact(p.Name, p.Torque, Dimension.Torque, "N·m") { Remark = torque is { } t ? $"{Figures.Number(p.Torque / t, 3)} times the worst hit" : "" }),
                new Fact("slack span goes slack beyond", Sketch.Known(hits.SlackTorque), Dimension.Torque, "N·m") { Remark = "at the rev limit on fixed centres; beyond it the idler must hold the belt" },
            ]);
    }

    private static IEnumerable<DriveStep> Burst(View view)
    {
        var speed = Sketch.Known(() => ImpellerBurstCheck.Speed(view));
        var impeller = new HotImpeller(view);
        double? Of(Func<double> work) => view.Knows(Impeller.Diameter) ? Sketch.Known(work) : null;
        var burst = Of(impeller.Burst);
        return DriveWords.Step(
            "Impeller",
            Bursting,
            new Fact("speed at the rev limit", speed, Dimension.RotationalSpeed, "rpm") { Digits = 5 },
            new Fact("speed of its tips", view.Knows(Impeller.Diameter) ? speed * view.Amount(Impeller.Diameter) / 2 : null, Dimension.Speed, "m/s"),
            new Fact("energy in it", view.AmountIf(Rotor.Inertia, "impeller") is { } inertia && speed is { } w ? DriveShock.Energy(inertia, w) : null, Dimension.Energy, "kJ") { Remark = "all of it comes out when it bursts" },
            new Fact("tensile strength as it runs", Of(impeller.Strength), Dimension.Pressure, "MPa") { Digits = 3, RemarkIn = impeller.StrengthWords },
            new Fact("burst speed", burst, Dimension.RotationalSpeed, "rpm") { Remark = speed is { } s && burst is { } b ? $"{Figures.Number(b / s, 3)} times the speed at the rev limit" : "" });
    }
}
