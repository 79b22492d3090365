using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Limits;

/// <summary>One level of the family: the engine run harder or easier by one value.</summary>
/// <param name="Value">The value that makes the level: drive ratio, opening pressure of the wastegate, Pa, or rev limit, rad/s.</param>
/// <param name="Power">Greatest power, W.</param>
/// <param name="Boost">Greatest boost, Pa gauge.</param>
/// <param name="Extrapolated">Whether the compressor ran outside its map.</param>
public sealed record Level(double Value, double Power, double Boost, bool Extrapolated);

/// <summary>One part on the ladder.</summary>
/// <param name="Finding">Its finding as things stand.</param>
/// <param name="Reserves">Its reserve at each level.</param>
/// <param name="Power">Power at which its reserve reaches 1, W; null when that lies outside the levels.</param>
/// <param name="Value">Value that makes the level at which it does; null when outside.</param>
/// <param name="GivesBelow">Whether it is short already at the lowest level.</param>
public sealed record Rung(Finding Finding, IReadOnlyList<double> Reserves, double? Power, double? Value, bool GivesBelow);

/// <summary>What gives first: the reserves along a family of levels, ranked by the power at which each reaches 1.</summary>
/// <param name="Varied">The field that makes the levels: what the boost is set by, or the rev limit of an engine without such a thing.</param>
/// <param name="Now">Its value as things stand, SI.</param>
/// <param name="Levels">Levels in rising order.</param>
/// <param name="Rungs">Parts in the order in which they give.</param>
/// <param name="Target">Target power, W; null when none is set.</param>
/// <param name="Dropped">Levels that could not be run, in words.</param>
public sealed record Ladder(Field Varied, double Now, IReadOnlyList<Level> Levels, IReadOnlyList<Rung> Rungs, double? Target, IReadOnlyList<string> Dropped)
{
    /// <summary>The depth of the engine model that it came from.</summary>
    public Depth Depth { get; init; }

    /// <summary>Whether the rungs are told apart by power; else by the rev limit, since power falls again past its peak.</summary>
    public bool ByPower => Varied != Engine.RevLimit;

    /// <summary>Where a part gives on the scale of the ladder, SI; null when it holds at every level.</summary>
    public double? At(Rung rung) => ByPower ? rung.Power : rung.Value;

    /// <summary>The top of the scale, SI.</summary>
    public double Top => ByPower ? Levels.Max(l => l.Power) : Levels.Max(l => l.Value);

    /// <summary>Whether a part gives only where the compressor runs outside its map.</summary>
    public bool OutsideMap(Rung rung) => rung.Power is { } power && !rung.GivesBelow && Levels.Any(l => l.Extrapolated) && power > Levels.Where(l => !l.Extrapolated).Select(l => l.Power).DefaultIfEmpty(0).Max();

    /// <summary>What is marked on the scale, SI: the target power, or the rev limit that is set; null when there is no target.</summary>
    public double? Mark => ByPower ? Target : Now;
}

/// <summary>Runs the engine over a family of boost levels, or of rev limits, and sees where each reserve reaches 1.</summary>
public static class GivesFirst
{
    /// <summary>Levels of boost as shares of the drive ratio that is fitted.</summary>
    private static readonly double[] DriveShares = [0.55, 0.7, 0.8, 0.9, 1.0, 1.06, 1.12, 1.18];

    /// <summary>The same of a wastegate's opening pressure: boost goes about with the square of a drive ratio and with an opening pressure itself.</summary>
    private static readonly double[] OpeningShares = [0.4, 0.6, 0.8, 0.9, 1.0, 1.12, 1.25, 1.4];

    private const double Plenty = 1e3;

    private static readonly double[] SpeedShares = [0.75, 0.85, 0.92, 1.0, 1.06, 1.12, 1.18, 1.25];

    /// <summary>The ladder of a snapshot.</summary>
    /// <exception cref="BadInputException">The engine cannot be run yet; the sentence says what is missing.</exception>
    public static Ladder Climb(Snapshot snapshot, DutyDesk desk, IProgress<double>? progress = null)
    {
        var (varied, source, now, depth) = Varied(snapshot, desk);
        var shares = Shares(varied);
        var appraiser = new Appraiser(desk) { WithUncertainty = false };
        var findings = appraiser.Appraise(snapshot);
        var levels = new List<Level>();
        var reserves = findings.ToDictionary(f => f.Id, _ => new List<double>(), StringComparer.Ordinal);
        var dropped = new List<string>();
        for (var i = 0; i < shares.Count; i++)
        {
            var nudge = new Dictionary<string, double>(StringComparer.Ordinal) { [source] = now * shares[i] };
            if (new View(snapshot, desk, nudge).Duty() is not { } duty)
            {
                dropped.Add($"the level {varied.Print(now * shares[i])} did not settle");
                continue;
            }

            levels.Add(new Level(now * shares[i], duty.Power.Value, duty.Most(f => f.Boost).Value, duty.Figures.Any(p => p.Figures.Blower?.Extrapolated == true)));
            foreach (var finding in findings)
            {
                // A part without demand at one level must still be comparable with itself at the next.
                reserves[finding.Id].Add(Math.Min(appraiser.Nudge(finding.Check, finding.Index, snapshot, nudge, slightly: false)?.Reserve ?? double.NaN, Plenty));
            }

            progress?.Report((i + 1.0) / shares.Count);
        }

        dropped.AddRange(findings.Where(f => f.Verdict != Verdict.NotKnownYet && reserves[f.Id].Exists(double.IsNaN)).Select(f => $"{f.Id} is not known at some level"));
        var target = new View(snapshot).AmountIf(Target.Power);
        var rungs = findings
            .Where(f => f.Check.Family != "goal" && f.Check.Gives && Moves(reserves[f.Id]))
            .Select(f => Rung(f, reserves[f.Id], levels))
            .OrderBy(r => r.GivesBelow ? 0 : r.Power is null ? 2 : 1)
            .ThenBy(r => (varied == Engine.RevLimit ? r.Value : r.Power) ?? 0)
            .ThenBy(r => r.Reserves[^1])
            .ToList();
        return new Ladder(varied, now, levels, rungs, target, dropped) { Depth = depth };
    }

    /// <summary>The levels as shares of the value that stands.</summary>
    internal static IReadOnlyList<double> Shares(Field varied) => varied == Blower.DriveRatio ? DriveShares : varied == Wastegate.OpeningPressure ? OpeningShares : SpeedShares;

    /// <summary>What makes the levels, the path under which it is written, its value, and the depth of the engine run.</summary>
    internal static (Field Field, string Source, double Now, Depth Depth) Varied(Snapshot snapshot, DutyDesk desk)
    {
        var view = new View(snapshot, desk);
        var duty = Demand.Engine(view);
        var field = BoostSetting.Field(view) is { } setting && Works(setting, duty) ? setting : Engine.RevLimit;
        var found = snapshot.Find(new FieldAddress(field, ""))!;
        return (field, found.Source, found.Value.Si, duty.Depth);
    }

    /// <summary>A wastegate that stays shut sets nothing: the turbine gives what it can, and more comes with speed alone.</summary>
    private static bool Works(Field setting, EngineDuty duty) => setting != Wastegate.OpeningPressure || duty.Most(f => f.Blower?.Turbine?.WastegateShare ?? 0).Value > 0;

    private static bool Moves(List<double> reserves) =>
        reserves.Count > 1 && reserves.TrueForAll(double.IsFinite) && reserves.Max() - reserves.Min() > 1e-6 * Math.Abs(reserves[0]);

    private static Rung Rung(Finding finding, List<double> reserves, List<Level> levels)
    {
        if (reserves[0] < 1)
        {
            return new Rung(finding, reserves, levels[0].Power, levels[0].Value, GivesBelow: true);
        }

        for (var i = 1; i < reserves.Count; i++)
        {
            if (reserves[i] < 1)
            {
                var t = (reserves[i - 1] - 1) / (reserves[i - 1] - reserves[i]);
                return new Rung(finding, reserves, Between(levels[i - 1].Power, levels[i].Power, t), Between(levels[i - 1].Value, levels[i].Value, t), GivesBelow: false);
            }
        }

        return new Rung(finding, reserves, null, null, GivesBelow: false);
    }

    private static double Between(double a, double b, double t) => a + (t * (b - a));
}
