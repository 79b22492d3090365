using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Values;
using Gudgeon.Web.Host;

namespace Gudgeon.Web.Readings;

/// <summary>The findings that rest on one field by reading it themselves, for whoever has just measured it.</summary>
internal static class Resting
{
    /// <summary>All of them when they are worked; until then those that need no engine run, and the names of the others.</summary>
    public static object On(OpenBook open, FieldAddress address, bool imperial)
    {
        var answer = open.Ask(Questions.Findings);
        var findings = answer.IsReady ? [.. answer.Value!.Where(f => Reads(f, address))] : AtOnce(open.Now, address);
        var waiting = answer.IsReady ? [] : (answer.Value ?? []).Where(f => Reads(f, address) && !findings.Exists(known => known.Id == f.Id)).Select(f => f.Check.Title).Distinct(StringComparer.Ordinal);
        return new { verdicts = findings.Select(f => Shown(f, open.Now, imperial)), waiting, state = answer.State.ToString().ToLowerInvariant(), answer.Sentence };
    }

    /// <summary>Those that can be worked without an engine run.</summary>
    public static List<Finding> AtOnce(Snapshot now, FieldAddress address)
    {
        // A desk that may not begin a run: a check that asks for one is left out.
        var desk = new DutyDesk { Cancellation = new CancellationToken(canceled: true) };
        var (rough, whole) = (new Appraiser(desk) { WithUncertainty = false }, new Appraiser(desk));
        return [.. CheckCatalogue.All.SelectMany(check => Worked(rough, check, now).Where(f => Reads(f, address)).ToList() is { Count: > 0 } ? Worked(whole, check, now).Where(f => Reads(f, address)) : [])];
    }

    private static IReadOnlyList<Finding> Worked(Appraiser appraiser, Check check, Snapshot now)
    {
        try
        {
            return appraiser.Appraise(now, [check]);
        }
        catch (OperationCanceledException)
        {
            return [];
        }
    }

    private static bool Reads(Finding finding, FieldAddress address) => finding.Trace.Direct.Any(r => r.Address.WithGroups().Contains(address));

    private static object Shown(Finding f, Snapshot now, bool imperial) => new
    {
        id = f.Id,
        title = f.Check.Title,
        index = f.Index,
        verdict = f.Verdict.ToString(),
        value = f.Judgement is { } value ? $"{value.Quantity} {f.ValueIn(imperial)}{(value.Remark.Length > 0 ? " " + value.Remark : "")}" : "",
        limit = f.Judgement is { } limit ? $"wanted {limit.LimitIn(imperial)}" : "",
        reserve = double.IsNaN(f.Reserve) ? "" : $"reserve {Figures.Number(f.Reserve, 3)}",
        advice = f.Advice,
        remedies = Remedy.For(f, now, Days.Today).Select(r => r.Words),
        caution = f.Check.Caution,
    };
}
