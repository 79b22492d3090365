using System.Globalization;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Store;

/// <summary>Reads edits back from a journal.</summary>
internal static class EditReader
{
    /// <summary>The edit that an entry holds.</summary>
    /// <exception cref="BadInputException">It holds none that this program knows.</exception>
    public static Edit Read(JournalEntry entry)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"entry {entry.Revision}");
        var place = JsonPlace.Parse(entry.Content, name);
        JsonPlace Part(string part) => place[part] ?? throw new BadInputException($"{name}: missing '{part}'");
        string Text(string part) => Part(part).Text;
        long Number(string part) => long.TryParse(Text(part), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : throw new BadInputException($"{name}: '{part}' is no number");
        return Text("edit") switch
        {
            "begin" => new BeginBook(Part("book")),
            "set" => new SetValue(Text("path"), Text("change"), Part("value")),
            "change" => new AddChange(Text("id"), Text("title"), Text("reason")),
            "switch" => new SwitchChange(Text("id"), Part("on").Kind == System.Text.Json.JsonValueKind.True),
            "reading" => new AddReading(Part("reading")),
            "limit" => new SetLimit(Text("name"), Text("value"), Text("reason")),
            "contest" => new ContestValue(Text("path"), Text("change"), Part("value"), (int)Number("basedOn")),
            "settle" => new SettleValue((int)Number("of"), Text("path"), Text("change"), place["value"]),
            "attach" => new AttachFile(Text("name"), Text("type"), Number("size"), Text("sha256"), Text("about")),
            "run" => new KeepRun(Part("run")),
            "card" => new PutCard(Part("card")),
            "act" => new AddAct(Part("act")),
            "sign" => new Sign(Text("statement"), (int)Number("over"), Text("seal")),
            "undo" => new UndoEdit((int)Number("of")),
            var other => throw new BadInputException($"{name}: '{other}' is not an edit known here"),
        };
    }
}
