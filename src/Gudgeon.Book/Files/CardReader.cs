using System.Text.Json;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Files;

/// <summary>Job cards and what was done to them, as a book's JSON has them.</summary>
/// <param name="book">The reader of what they stand in.</param>
internal sealed class CardReader(BookReader book)
{
    /// <summary>Members of a step, one of which it has: each is a kind of step.</summary>
    public static readonly IReadOnlyDictionary<string, StepKind> Kinds = Enum.GetValues<StepKind>().ToDictionary(k => EnumWords.Of(k.ToString()), StringComparer.Ordinal);

    /// <summary>Members of a step besides.</summary>
    public static readonly string[] StepMembers = ["id", "text", "each", "when", "hold", "caution", "source", "uses"];

    /// <summary>Members of a card.</summary>
    public static readonly string[] CardMembers = ["id", "title", "stage", "hours", "after", "when", "checks", "steps"];

    /// <summary>Members of an act.</summary>
    public static readonly string[] ActMembers = ["card", "act", "by", "on", "step", "with", "value", "asked", "note", "reads", "limits", "overridden"];

    /// <summary>The card at a place.</summary>
    /// <exception cref="BadInputException">Anything that cannot be taken.</exception>
    public CardTemplate Card(JsonPlace place, string path)
    {
        book.Expect(place, JsonValueKind.Object, path, "an object");
        book.Only(place, path, CardMembers);
        var steps = book.Items(place["steps"], path + ".steps").Select((s, i) => Step(s, $"{path}.steps[{i}]")).ToList();
        if (steps.Count == 0)
        {
            throw book.Bad(place, path, "missing 'steps'; a card has at least one");
        }

        if (steps.GroupBy(s => s.Id).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw book.Bad(place["steps"]!, path + ".steps", $"the step '{twice.Key}' is given twice");
        }

        return new CardTemplate(book.ShortName(place, "id", path), Needed(place, "title", path), Needed(place, "stage", path), Time(place, "hours", Needed(place, "hours", path), path))
        {
            After = Words(place, "after", path),
            When = Conditions(place, path),
            Checks = Checks(place, path),
            Steps = steps,
        };
    }

    /// <summary>The act at a place.</summary>
    /// <exception cref="BadInputException">Anything that cannot be taken.</exception>
    public CardAct Act(JsonPlace place, string path)
    {
        book.Expect(place, JsonValueKind.Object, path, "an object");
        book.Only(place, path, ActMembers);
        Needed(place, "act", path);
        var on = Needed(place, "on", path);
        book.Guard(place["on"]!, path + ".on", () => CardWork.At(on));
        return new CardAct(book.ShortName(place, "card", path), book.Word<ActKind>(place["act"]!, path + ".act"), Needed(place, "by", path), on)
        {
            Step = book.Text(place, "step", path),
            With = book.Text(place, "with", path),
            Value = book.Text(place, "value", path),
            Asked = book.Text(place, "asked", path),
            Note = book.Text(place, "note", path),
            Reads = (place["reads"]?.Members ?? []).ToDictionary(m => book.Guard(m.Value, path + ".reads", () => FieldCatalogue.Address(m.Name)).Path, m => m.Value.Text, StringComparer.Ordinal),
            Limits = (place["limits"]?.Members ?? []).ToDictionary(m => m.Name, m => m.Value.Text, StringComparer.Ordinal),
            Overridden = Words(place, "overridden", path),
        };
    }

    /// <summary>An act as it is written, on one line.</summary>
    public static JsonPlace Write(CardAct act) => JsonPlace.Filled(
    [
        ("card", JsonPlace.Of(act.Card)),
        ("act", JsonPlace.Of(EnumWords.Of(act.Kind.ToString()))),
        ("by", JsonPlace.Of(act.By)),
        ("on", JsonPlace.Of(act.On)),
        ("step", Filled(act.Step)),
        ("with", Filled(act.With)),
        ("value", Filled(act.Value)),
        ("asked", Filled(act.Asked)),
        ("note", Filled(act.Note)),
        ("reads", Filled(act.Reads)),
        ("limits", Filled(act.Limits)),
        ("overridden", act.Overridden.Count > 0 ? JsonPlace.Array(act.Overridden.Select(JsonPlace.Of)) : null),
    ]).OnOneLine();

    private static JsonPlace? Filled(string text) => text.Length > 0 ? JsonPlace.Of(text) : null;

    private static JsonPlace? Filled(IReadOnlyDictionary<string, string> words) => words.Count > 0 ? JsonPlace.Object(words.Select(w => (w.Key, JsonPlace.Of(w.Value)))) : null;

    private CardStep Step(JsonPlace place, string path)
    {
        book.Expect(place, JsonValueKind.Object, path, "an object");
        book.Only(place, path, [.. StepMembers, .. Kinds.Keys]);
        var kinds = Kinds.Keys.Where(k => place[k] is not null).ToList();
        if (kinds is not [var kind])
        {
            throw book.Bad(place, path, $"wanted just one of {string.Join(", ", Kinds.Keys)}; given {(kinds.Count == 0 ? "none" : string.Join(" and ", kinds))}");
        }

        var step = new CardStep(book.ShortName(place, "id", path), Kinds[kind], Needed(place, kind, path))
        {
            Text = book.Text(place, "text", path),
            Each = Subject(place, path),
            When = Conditions(place, path),
            Hold = Hold(place, path),
            Caution = book.Text(place, "caution", path),
            Source = book.Text(place, "source", path),
            Uses = book.Text(place, "uses", path),
            Time = Kinds[kind] == StepKind.Wait ? Time(place, kind, Needed(place, kind, path), path) : 0,
        };
        return step.Kind == StepKind.Read
            ? step with { What = book.Guard(place[kind]!, $"{path}.{kind}", () => FieldCatalogue.Address(step.What).Path) }
            : step;
    }

    private string Subject(JsonPlace place, string path)
    {
        var each = book.Text(place, "each", path);
        return each.Length == 0 || FieldCatalogue.Subjects.Any(s => s.Path == each)
            ? each
            : throw book.Bad(place["each"]!, path + ".each", $"given '{each}', wanted a part such as cylinder or valve; the nearest is '{Nearest.To(each, FieldCatalogue.Subjects.Select(s => s.Path))}'");
    }

    private bool Hold(JsonPlace place, string path) => place["hold"] switch
    {
        null or { Kind: JsonValueKind.False } => false,
        { Kind: JsonValueKind.True } => true,
        { } other => throw book.Bad(other, path + ".hold", $"given {other.Text}, wanted true or false"),
    };

    /// <summary>A check that does not exist would hold nobody back.</summary>
    private List<string> Checks(JsonPlace place, string path)
    {
        var checks = Words(place, "checks", path);
        return checks.Find(c => !CheckCatalogue.All.Any(k => k.Id == c.Split('[')[0])) is { } wrong
            ? throw book.Bad(place["checks"]!, path + ".checks", $"given '{wrong}', wanted a check such as squish or bolt-preload[head]; the nearest is '{Nearest.To(wrong, CheckCatalogue.All.Select(k => k.Id))}'")
            : checks;
    }

    private List<string> Conditions(JsonPlace place, string path)
    {
        var parts = Words(place, "when", path);
        return parts.Find(p => !FieldCatalogue.All.Any(f => (f.Path + ".").StartsWith(p.Split('[')[0] + ".", StringComparison.Ordinal))) is { } wrong
            ? throw book.Bad(place["when"]!, path + ".when", $"given '{wrong}', wanted a part of a book such as blower or joint[head]")
            : parts;
    }

    private double Time(JsonPlace place, string name, string text, string path) =>
        book.Guard(place[name]!, $"{path}.{name}", () => Amount.Parse("the time", text, Dimension.Time, "h").Si is var time and >= 0 and <= 1e7 ? time : throw new BadInputException($"the time: given '{text}', wanted hours from 0 to 2000"));

    private List<string> Words(JsonPlace place, string name, string path) => [.. book.Items(place[name], $"{path}.{name}").Select(i => i.Text)];

    private string Needed(JsonPlace place, string name, string path) =>
        book.Text(place, name, path) is { Length: > 0 } text ? text : throw book.Bad(place, path, $"missing '{name}'");
}
