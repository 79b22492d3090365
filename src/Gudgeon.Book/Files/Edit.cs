using System.Text.Json;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;

namespace Gudgeon.Book.Files;

/// <summary>
/// One thing done to a book. It carries all that it takes to do it again, so that both forms of a book are edited by the
/// same code and a journal of edits can be replayed.
/// </summary>
public abstract record Edit
{
    /// <summary>Its word in the journal: "set".</summary>
    public abstract string Kind { get; }

    /// <summary>What it did, for people: "cylinder[1].bore is 94.01 mm".</summary>
    public abstract string Words { get; }

    /// <summary>Its form in the journal.</summary>
    internal JsonPlace Written() => JsonPlace.Object([("edit", JsonPlace.Of(Kind)), .. Parts()]);

    /// <summary>What it carries, by name.</summary>
    internal abstract IEnumerable<(string Name, JsonPlace Value)> Parts();

    /// <summary>Does it to the tree of a book.</summary>
    internal virtual void Do(JsonPlace root)
    {
    }

    /// <summary>Refuses a result that is not wanted, beyond the rules of every book.</summary>
    internal virtual void Verify(BuildBook book)
    {
    }
}

/// <summary>A value of the baseline, or of a change.</summary>
/// <param name="Path">"cylinder[1].bore".</param>
/// <param name="Change">Id of the change; empty for the baseline.</param>
/// <param name="Value">The value with its story, as a book's JSON has it.</param>
public sealed record SetValue(string Path, string Change, JsonPlace Value) : Edit
{
    public override string Kind => "set";

    public override string Words => $"{Path} is {Value.Words()}{(Change.Length > 0 ? $" in the change {Change}" : "")}";

    internal override IEnumerable<(string Name, JsonPlace Value)> Parts() => [("path", JsonPlace.Of(Path)), ("change", JsonPlace.Of(Change)), ("value", Value)];

    internal override void Do(JsonPlace root)
    {
        var layer = Change.Length == 0 ? root.Child("baseline") : BookTree.Change(root, Change).Child("set");
        BookTree.Put(layer, FieldCatalogue.Address(Path), Value);
    }
}

/// <summary>A change, on, without values yet.</summary>
public sealed record AddChange(string Id, string Title, string Reason) : Edit
{
    public override string Kind => "change";

    public override string Words => $"the change {Id} begins";

    internal override IEnumerable<(string Name, JsonPlace Value)> Parts() => [("id", JsonPlace.Of(Id)), ("title", JsonPlace.Of(Title)), ("reason", JsonPlace.Of(Reason))];

    internal override void Do(JsonPlace root) => BookTree.List(root, "changes").Items.Add(JsonPlace.Object([.. Parts(), ("on", JsonPlace.Of(true)), ("set", JsonPlace.Object())]));
}

/// <summary>A change laid over the baseline, or taken off.</summary>
public sealed record SwitchChange(string Id, bool On) : Edit
{
    public override string Kind => "switch";

    public override string Words => $"the change {Id} is {(On ? "on" : "off")}";

    internal override IEnumerable<(string Name, JsonPlace Value)> Parts() => [("id", JsonPlace.Of(Id)), ("on", JsonPlace.Of(On))];

    internal override void Do(JsonPlace root) => BookTree.Change(root, Id).Set("on", JsonPlace.Of(On));
}

/// <summary>A reading; earlier ones stay.</summary>
/// <param name="Reading">Field, value, story and the changes that were on, as a book's JSON has them.</param>
public sealed record AddReading(JsonPlace Reading) : Edit
{
    public override string Kind => "reading";

    public override string Words => $"{Reading["field"]?.Text} reads {Reading.Words()}";

    internal override IEnumerable<(string Name, JsonPlace Value)> Parts() => [("reading", Reading)];

    internal override void Do(JsonPlace root) => BookTree.List(root, "measurements").Items.Add(Reading);
}

/// <summary>A limit of the user's own.</summary>
public sealed record SetLimit(string Name, string Text, string Reason) : Edit
{
    public override string Kind => "limit";

    public override string Words => $"limit {Name} is {Text}, because {Reason}";

    internal override IEnumerable<(string Name, JsonPlace Value)> Parts() => [("name", JsonPlace.Of(Name)), ("value", JsonPlace.Of(Text)), ("reason", JsonPlace.Of(Reason))];

    internal override void Do(JsonPlace root) => root.Child("limits").Set(Name, JsonPlace.Object([("value", JsonPlace.Of(Text)), ("reason", JsonPlace.Of(Reason))]).OnOneLine());

    internal override void Verify(BuildBook book) => LimitRules.Verify(book, Name);
}
