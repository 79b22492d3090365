using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Joints;

/// <summary>What a check says of a joint as it would be.</summary>
/// <param name="Check">Its id.</param>
/// <param name="Title">What it asks, for people.</param>
/// <param name="Reserve">Capacity over demand; NaN when it is not known.</param>
/// <param name="Verdict">Holds, falls short, or not known yet.</param>
public sealed record SwapVerdict(string Check, string Title, double Reserve, Verdict Verdict)
{
    /// <summary>The check of the preload while tightening, and that of the stress in service.</summary>
    public const string Tightening = "bolt-preload", Service = "bolt-working-stress";

    /// <summary>The check of the swing of the stress, which knows only the metal of the book.</summary>
    private const string Fatigue = "bolt-fatigue";

    private static readonly string[] Asked = [Tightening, Service, Fatigue, "bolt-head-pressure", "thread-stripping", "joint-clamp-left", "head-separation", "joint-thermal"];

    /// <summary>What the checks of a joint say, without the ± of the values.</summary>
    /// <param name="now">The values that would hold.</param>
    /// <param name="desk">Where engine runs are made and kept.</param>
    /// <param name="key">The joint.</param>
    /// <param name="strange">Whether the bolts are of a metal whose fatigue strength the book does not have.</param>
    public static IReadOnlyList<SwapVerdict> Of(Snapshot now, DutyDesk desk, string key, bool strange)
    {
        var appraiser = new Appraiser(desk) { WithUncertainty = false };
        var checks = Asked.Select(CheckCatalogue.Find).Where(c => c.Instances(new View(now, desk)).Contains(key));
        return [.. checks.Select(c => strange && c.Id == Fatigue
            ? new SwapVerdict(c.Id, c.Title, double.NaN, Verdict.NotKnownYet)
            : appraiser.Appraise(c, key, now) is var finding && finding.Judgement is null
                ? new SwapVerdict(c.Id, c.Title, double.NaN, finding.Verdict)
                : new SwapVerdict(c.Id, c.Title, finding.Reserve, finding.Verdict))];
    }
}
