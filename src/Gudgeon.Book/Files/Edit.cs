using System.Text.Json;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;

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

    /// <summary>The id made where it was taken; empty when it has none.</summary>
    internal string Id => Reading["id"]?.Text ?? "";

    internal override void Do(JsonPlace root) => BookTree.List(root, "measurements").Items.Add(Reading);

    /// <summary>Whether it was taken before: one with its id is known.</summary>
    /// <param name="taken">The reading with its id; null when there is none.</param>
    /// <exception cref="BadInputException">One with its id is known, and is another.</exception>
    internal bool Repeats(Measurement? taken)
    {
        if (taken is null)
        {
            return false;
        }

        var sent = new BookReader("the book", lines: false).Reading(Reading);
        return sent.Address == taken.Address && Alike(sent.Value.Content, taken.Value.Content)
            ? true
            : throw new BadInputException($"{sent.Address.Path}: the reading {sent.Value.Content} bears the id of another, {taken.Address.Path} of {taken.Value.Content}; a new reading needs a new id");
    }

    // A ± may be the instrument's of the moment, and another when the reading is sent again.
    private static bool Alike(object sent, object taken) => (sent, taken) is (Amount a, Amount b)
        ? a with { Uncertainty = 0 } == b with { Uncertainty = 0 }
        : sent.Equals(taken);
}

/// <summary>A run that somebody wants kept.</summary>
/// <param name="Run">The run, as a book's JSON has it.</param>
public sealed record KeepRun(JsonPlace Run) : Edit
{
    public override string Kind => "run";

    public override string Words => $"the {Run["kind"]?.Text} run \"{Run["title"]?.Text}\" is kept";

    internal override IEnumerable<(string Name, JsonPlace Value)> Parts() => [("run", Run)];

    internal override void Do(JsonPlace root) => BookTree.List(root, "runs").Items.Add(Run);
}

/// <summary>A job card of the book's own: a new one, or in place of one with its id.</summary>
/// <param name="Card">The card, as a book's JSON has it.</param>
public sealed record PutCard(JsonPlace Card) : Edit
{
    public override string Kind => "card";

    public override string Words => $"the job card {Id} is the book's own";

    /// <summary>Id of the card.</summary>
    internal string Id => Card["id"]?.Text ?? "";

    internal override IEnumerable<(string Name, JsonPlace Value)> Parts() => [("card", Card)];

    internal override void Do(JsonPlace root)
    {
        var cards = BookTree.List(root, "cards").Items;
        var place = cards.FindIndex(c => c["id"]?.Text == Id);
        if (place < 0)
        {
            cards.Add(Card);
        }
        else
        {
            cards[place] = Card;
        }
    }
}

/// <summary>Something done to a job card.</summary>
/// <param name="Act">The act, as a book's JSON has it.</param>
public sealed record AddAct(JsonPlace Act) : Edit
{
    public override string Kind => "act";

    public override string Words => $"job card {Act["card"]?.Text}: {Act["act"]?.Text}{(Act["step"] is { } step ? $" {step.Text}" : "")}{(Act["value"] is { } value ? $", {value.Text}" : "")}";

    internal override IEnumerable<(string Name, JsonPlace Value)> Parts() => [("act", Act)];

    internal override void Do(JsonPlace root) => BookTree.List(root, "acts").Items.Add(Act);
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
