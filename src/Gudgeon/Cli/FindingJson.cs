using Gudgeon.Book.Checks;
using Gudgeon.Book.Measuring;
using Gudgeon.Book.Rows;
using Gudgeon.Book.Values;

namespace Gudgeon.Cli;

/// <summary>A finding as JSON.</summary>
internal static class FindingJson
{
    public static object Of(Finding f, MonteCarloResult? drawn = null, IReadOnlyList<Remedy>? remedies = null) => new
    {
        id = f.Id,
        check = f.Check.Id,
        instance = f.Index,
        title = f.Check.Title,
        family = f.Check.Family,
        verdict = f.Verdict.Words(),
        quantity = f.Judgement?.Quantity,
        value = Shown(f, f.Judgement?.Value),
        lower = Shown(f, f.Judgement?.Lower),
        upper = Shown(f, f.Judgement?.Upper),
        unit = f.Judgement?.Unit,
        remark = f.Judgement?.Remark,
        limitSource = f.Judgement?.LimitSource,
        reserve = Finite(f.Reserve),
        reserveStandardUncertainty = f.ReserveUncertainty,
        probabilityOfConformity = Finite(f.Conformity),
        missing = f.Missing,
        advice = f.Advice,
        rule = f.Rule.Sentence,
        toDecideIt = remedies ?? [],
        formulas = f.Trace.Steps.Select(s => new { name = s.Formula.Name, expression = s.Formula.Declaration.Expression, numbers = Expression.WithNumbers(s.Formula, s.Arguments, s.Results), source = s.Formula.Declaration.Source }),
        reads = f.Trace.Reads.Select(r => new { path = r.Address.Path, source = r.Found?.Source, value = r.Found?.Value.Content.ToString() ?? r.Fallback, how = r.Found?.Value.Story, change = r.Found?.Under, missing = r.IsMissing }),
        contributions = f.Contributions.Select(c => new { source = c.Found.Source, effect = c.Effect }),
        monteCarlo = drawn,
        source = f.Check.Source,
        caution = f.Check.Caution,
        questions = f.Questions,
    };

    private static double? Shown(Finding f, double? si) => si is { } value && double.IsFinite(value) ? Units.Declared(f.Judgement!.Dimension, f.Judgement.Unit).FromSi(value) : null;

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
