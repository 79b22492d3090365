using System.Globalization;
using System.Text.Json;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;

namespace Gudgeon.Book.Store;

internal sealed record ChangeRow(string Id, string Title, string Reason, long IsOn);

internal sealed record ValueRow(string Change, string Path, string Content);

/// <summary>A job card of the book's own.</summary>
internal sealed record CardRow(string Id, string Content);

/// <summary>A reading, a kept run or an act on a job card, and the entry that brought it.</summary>
internal sealed record DatedRow(long Revision, string Content);

internal sealed record LimitRow(string Name, string Value, string Reason);

internal sealed record ConflictRow(long Revision, string Change, string Path, string Content)
{
    public static ConflictRow Of(long revision, ContestValue contest) => new(revision, contest.Change, contest.Path, JsonText.OneLine(contest.Value));
}

internal sealed record AttachmentRow(long Revision, string Name, string Type, long Size, string Sha256, string About)
{
    public static AttachmentRow Of(long revision, AttachFile file) => new(revision, file.Name, file.Type, file.Size, file.Sha256, file.About);
}

internal sealed record SignatureRow(long Revision, string Statement, long Over, string Seal)
{
    public static SignatureRow Of(long revision, Sign sign) => new(revision, sign.Statement, sign.Over, sign.Seal);
}

/// <summary>A book as rows of a store's tables, each kind in its order.</summary>
internal sealed record BookRows(string Name, string Notes, IReadOnlyList<ChangeRow> Changes, IReadOnlyList<ValueRow> Values, IReadOnlyList<DatedRow> Readings, IReadOnlyList<LimitRow> Limits)
{
    public IReadOnlyList<DatedRow> Runs { get; init; } = [];

    public IReadOnlyList<CardRow> Cards { get; init; } = [];

    public IReadOnlyList<DatedRow> Acts { get; init; } = [];

    public IReadOnlyList<ConflictRow> Conflicts { get; init; } = [];

    public IReadOnlyList<AttachmentRow> Attachments { get; init; } = [];

    public IReadOnlyList<SignatureRow> Signatures { get; init; } = [];

    /// <summary>The rows of a book's JSON tree.</summary>
    /// <param name="root">The tree.</param>
    /// <param name="readings">The entries that brought the readings, in order; the first entry brought those that are left.</param>
    /// <param name="runs">The same for kept runs.</param>
    /// <param name="acts">The same for acts on job cards.</param>
    public static BookRows Of(JsonPlace root, IReadOnlyList<long>? readings = null, IReadOnlyList<long>? runs = null, IReadOnlyList<long>? acts = null)
    {
        var reader = new BookReader("the book", lines: false);
        IEnumerable<ValueRow> Leaves(string change, JsonPlace? layer) =>
            layer is null ? [] : reader.Leaves(layer).Select(l => new ValueRow(change, l.Address.Path, JsonText.OneLine(l.Value)));
        var changes = root["changes"]?.Items ?? [];
        return new BookRows(
            Text(root, "name"),
            Text(root, "notes"),
            [.. changes.Select(c => new ChangeRow(Text(c, "id"), Text(c, "title"), Text(c, "reason"), c["on"] is { Kind: JsonValueKind.False } ? 0 : 1))],
            [.. Leaves("", root["baseline"]), .. changes.SelectMany(c => Leaves(Text(c, "id"), c["set"]))],
            Dated(root["measurements"], readings ?? []),
            [.. (root["limits"]?.Members ?? []).Select(l => new LimitRow(l.Name, Text(l.Value, "value"), Text(l.Value, "reason")))])
        {
            Runs = Dated(root["runs"], runs ?? []),
            Cards = [.. (root["cards"]?.Items ?? []).Select(c => new CardRow(Text(c, "id"), JsonText.OneLine(c)))],
            Acts = Dated(root["acts"], acts ?? []),
        };
    }

    /// <summary>The JSON tree of a book that these rows make; conflicts and attachments have no place in it.</summary>
    public JsonPlace Tree()
    {
        var root = BookTree.Empty(Name);
        if (Notes.Length > 0)
        {
            root.Members.Insert(2, ("notes", JsonPlace.Of(Notes)));
        }

        foreach (var change in Changes)
        {
            new AddChange(change.Id, change.Title, change.Reason).Do(root);
            new SwitchChange(change.Id, change.IsOn == 1).Do(root);
        }

        foreach (var value in Values)
        {
            new SetValue(value.Path, value.Change, Node(value.Content)).Do(root);
        }

        foreach (var reading in Readings)
        {
            new AddReading(Node(reading.Content)).Do(root);
        }

        foreach (var run in Runs)
        {
            new KeepRun(RunReader.OnLines(JsonPlace.Parse(run.Content, "the store"))).Do(root);
        }

        foreach (var card in Cards)
        {
            new PutCard(JsonPlace.Parse(card.Content, "the store")).Do(root);
        }

        foreach (var act in Acts)
        {
            new AddAct(Node(act.Content)).Do(root);
        }

        foreach (var limit in Limits)
        {
            new SetLimit(limit.Name, limit.Value, limit.Reason).Do(root);
        }

        return root;
    }

    /// <summary>Every row as a line, to hold two sets of rows side by side; the order of values means nothing.</summary>
    public IEnumerable<string> Lines() =>
    [
        $"book {Name} {Notes}",
        .. Changes.Select(c => c.ToString()),
        .. Values.Select(v => v.ToString()).Order(StringComparer.Ordinal),
        .. Readings.Select(r => $"reading {r}"),
        .. Runs.Select(r => $"run {r}"),
        .. Cards.Select(c => c.ToString()),
        .. Acts.Select(a => $"act {a}"),
        .. Limits.Select(l => l.ToString()),
        .. Conflicts.Select(c => c.ToString()),
        .. Attachments.Select(a => a.ToString()),
        .. Signatures.Select(s => s.ToString()),
    ];

    private static List<DatedRow> Dated(JsonPlace? list, IReadOnlyList<long> revisions)
    {
        var items = list?.Items ?? [];
        var begun = items.Count - revisions.Count;
        return [.. items.Select((item, i) => new DatedRow(i < begun ? 1 : revisions[i - begun], JsonText.OneLine(item)))];
    }

    private static JsonPlace Node(string text) => JsonPlace.Parse(text, "the store").OnOneLine();

    private static string Text(JsonPlace place, string name) => place[name]?.Text ?? "";
}
