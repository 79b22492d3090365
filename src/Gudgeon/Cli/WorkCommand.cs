using System.ComponentModel;
using Gudgeon.Book.Files;
using Gudgeon.Book.Rows;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon work: one formula, the list of formulas, or a row file.</summary>
internal sealed class WorkCommand : Command<WorkCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "[FORMULA]")]
        [Description("Trade name of the formula, such as \"helical spring rate\".")]
        public string? Formula { get; init; }

        [CommandArgument(1, "[INPUTS]")]
        [Description("Inputs as name=amount, such as wire=4.2mm.")]
        public string[] Inputs { get; init; } = [];

        [CommandOption("--list")]
        [Description("List every formula with its inputs, results and source.")]
        public bool List { get; init; }

        [CommandOption("--rows <FILE>")]
        [Description("Hold the formulas to a CSV file: id, formula, inputs, output, expected, tolerance, source.")]
        public string? Rows { get; init; }

        [CommandOption("--json")]
        [Description("Print JSON.")]
        public bool Json { get; init; }

        [CommandOption("--imperial")]
        [Description("Print in inch units.")]
        public bool Imperial { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (settings.List || (settings.Formula is null && settings.Rows is null))
        {
            return List(settings);
        }

        return settings.Rows is not null ? Rows(settings) : Work(settings);
    }

    private static int List(Settings settings)
    {
        var wanted = Formulas.All.Where(f => settings.Formula is null || f.Name.Contains(settings.Formula, StringComparison.OrdinalIgnoreCase) || f.Subject.Equals(settings.Formula, StringComparison.OrdinalIgnoreCase)).ToList();
        if (settings.Json)
        {
            Out.Json(wanted.Select(FormulaJson));
            return 0;
        }

        foreach (var subject in wanted.GroupBy(f => f.Subject))
        {
            Out.Line(subject.Key);
            foreach (var f in subject)
            {
                Out.Line($"  {f.Name}");
                Out.Line($"      {f.Declaration.Expression}");
                Out.Line($"      in:  {string.Join("; ", f.Inputs.Select(Described))}");
                Out.Line($"      out: {string.Join("; ", f.Outputs.Select(o => o.Key + Unit(o.Quantity)))}");
                Out.Line($"      {f.Credit()}");
            }
        }

        return 0;
    }

    private static int Work(Settings settings)
    {
        var call = FormulaCall.Run(settings.Formula!, settings.Inputs.Select(RowSheet.Input));
        var f = call.Formula;
        if (settings.Json)
        {
            Out.Json(new
            {
                formula = f.Name,
                expression = f.Declaration.Expression,
                inputs = f.Inputs.Select((input, i) => new { key = input.Key, name = input.Quantity.Name, value = Value(call.Arguments[i]), unit = input.Quantity.Dimension.SiUnit() }),
                results = f.Outputs.Select((o, i) => new { key = o.Key, name = o.Quantity.Name, si = call.Results[i], siUnit = o.Quantity.Dimension.SiUnit(), value = Units.Declared(o.Quantity.Dimension, o.Quantity.Unit).FromSi(call.Results[i]), unit = o.Quantity.Unit }),
                source = f.Declaration.Source,
                provenance = f.Declaration.Provenance.ToString(),
                caution = f.Declaration.Caution,
            });
            return 0;
        }

        Out.Line(f.Name);
        Out.Line($"  {f.Declaration.Expression}");
        Out.Line($"  {Expression.WithNumbers(f, call.Arguments, call.Results)}");
        for (var i = 0; i < f.Outputs.Count; i++)
        {
            var q = f.Outputs[i].Quantity;
            Out.Line($"  {q.Name} = {Figures.Print(call.Results[i], q.Dimension, q.Unit, 6, settings.Imperial)}");
        }

        Out.Line($"  {f.Credit()}");
        Out.LineIf(f.Declaration.Validity.Length > 0, $"  valid: {f.Declaration.Validity}");
        Out.LineIf(f.Declaration.Caution.Length > 0, $"  caution: {f.Declaration.Caution}");
        return 0;
    }

    private static int Rows(Settings settings)
    {
        using var file = new StringReader(AtomicFile.Read(settings.Rows!));
        var results = RowSheet.Read(file, Path.GetFileName(settings.Rows!)).Select(RowSheet.Check).ToList();
        if (settings.Json)
        {
            Out.Json(results.Select(r => new { r.Row.Id, r.Row.Formula, r.Row.Output, computed = Finite(r.Computed), expected = Finite(r.Expected), difference = Finite(r.Difference), allowed = Finite(r.Allowed), r.Unit, inside = r.Inside, r.Problem, r.Row.Source, r.Row.Kind }));
        }
        else
        {
            foreach (var r in results)
            {
                Out.Line(r.Problem.Length > 0
                    ? $"{r.Row.Id,-22} cannot tell  {r.Problem}"
                    : $"{r.Row.Id,-22} {(r.Inside ? "inside " : "OUTSIDE")}  {Figures.Number(r.Computed, 7)} {r.Unit} (known {Figures.Number(r.Expected, 7)}, off by {Figures.Number(r.Difference, 3)}, allowed {Figures.Number(r.Allowed, 3)})  {r.Row.Source}");
            }

            Out.Line($"{results.Count(r => r.Inside)} of {results.Count} rows inside");
        }

        return results.TrueForAll(r => r.Inside) ? 0 : 1;
    }

    private static object FormulaJson(Formula f) => new
    {
        name = f.Name,
        subject = f.Subject,
        expression = f.Declaration.Expression,
        inputs = f.Inputs.Select(i => new
        {
            key = i.Key,
            name = i.Quantity.Name,
            symbol = i.Symbol,
            kind = i.Kind.ToString().ToLowerInvariant(),
            dimension = i.Quantity.Dimension.ToString(),
            unit = i.Quantity.Unit,
            choices = i.Choices,
            optional = i.Default is not null,
            fallback = i.Default is null ? null : Value(i.Default),
            min = Finite(i.Quantity.Min),
            max = Finite(i.Quantity.Max),
            above = Finite(i.Quantity.Above),
            below = Finite(i.Quantity.Below),
            help = i.Quantity.Help,
        }),
        outputs = f.Outputs.Select(o => new { key = o.Key, name = o.Quantity.Name, dimension = o.Quantity.Dimension.ToString(), unit = o.Quantity.Unit }),
        source = f.Declaration.Source,
        provenance = f.Declaration.Provenance.ToString(),
        validity = f.Declaration.Validity,
        caution = f.Declaration.Caution,
    };

    private static string Described(FormulaInput input) =>
        input.Key + Unit(input.Quantity) + (input.Default is null ? "" : " (else " + input.DefaultText() + ")") + (input.Choices.Count > 0 ? " {" + string.Join("|", input.Choices) + "}" : "");

    private static string Unit(QuantityAttribute quantity) => quantity.Unit.Length > 0 ? $" [{quantity.Unit}]" : "";

    private static object Value(object argument) => argument is Enum choice ? choice.ToString() : argument;

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
