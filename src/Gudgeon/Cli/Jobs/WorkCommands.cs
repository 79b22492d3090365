using System.ComponentModel;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Files;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Jobs;

/// <summary>gudgeon jobs tick, untick and start: work on one step of a card.</summary>
internal sealed class StepCommand : Command<StepCommand.Settings>
{
    internal sealed class Settings : EditSettings
    {
        [CommandArgument(0, "<[BOOK] CARD STEP>")]
        [Description("The book, the only one in this folder when left out; the id of a card; the key of a step, such as gap, gap@2 or tighten@1.4 for stage 1, bolt 4.")]
        public string[] Words { get; init; } = [];

        [CommandOption("--with <TOOL>")]
        [Description("With which tool.")]
        public string With { get; init; } = "";

        [CommandOption("--value <TEXT>")]
        [Description("What was read, set or fitted: a torque, a batch number, the name of a picture's file.")]
        public string Value { get; init; } = "";

        [CommandOption("--photo <FILE>")]
        [Description("A picture: it is kept with the book, and its name is the value.")]
        public string Photo { get; init; } = "";

        [CommandOption("--note <TEXT>")]
        [Description("Anything else worth knowing.")]
        public string Note { get; init; } = "";

        [CommandOption("--because <REASON>")]
        [Description("Why a tick is taken back.")]
        public string Because { get; init; } = "";
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (path, rest) = Books.Split(settings.Words, 2, $"gudgeon jobs {context.Name} [BOOK] CARD STEP --by NAME");
        var work = CardWork.Now(settings.By);
        var value = settings.Photo.Length > 0 ? Path.GetFileName(settings.Photo) : settings.Value;
        Func<BuildBook, CardAct> act = context.Name switch
        {
            "tick" => book => work.Tick(book, rest[0], rest[1], settings.With, value, settings.Note),
            "untick" => book => work.Untick(book, rest[0], rest[1], settings.Because),
            _ => book => work.Start(book, rest[0], rest[1]),
        };
        var file = settings.Open(path);
        if (settings.Photo.Length > 0)
        {
            // A tick that would be refused leaves no picture behind.
            act(file.Book);
            file = Books.Store(path, settings.By).Attach(settings.Photo, CardWork.About(rest[0]));
        }

        file = file.Work(act);
        var card = CardStates.Find(file.Book, file.Book.Now(), rest[0]);
        var bolts = card.Find(rest[1]) is { Next: not null } same ? same : null;
        Out.Line($"{rest[0]}: {card.StepsDone} of {card.Steps.Count} steps done{((bolts ?? card.Steps.FirstOrDefault(s => !s.Done)) is { } next ? $"; next: {Next(next)}" : "; to be signed: gudgeon jobs sign")}");
        if (card.Acts[^1] is { WithOverdue: true } last)
        {
            Out.Line($"! {last.With}: it stands among the open points of the as-built book");
        }

        return 0;
    }

    private static string Next(StepState step) => step.Next is { } bolt
        ? $"{bolt.Bolt.Key}, bolt {bolt.Bolt.Number} {bolt.Stage.Stage.Words(imperial: false)}"
        : $"{step.Key}, {step.Words}";
}

/// <summary>gudgeon jobs sign, reopen, leave-out and take-in: work on a whole card.</summary>
internal sealed class WholeCommand : Command<WholeCommand.Settings>
{
    internal sealed class Settings : EditSettings
    {
        [CommandArgument(0, "<[BOOK] CARD>")]
        [Description("The book, the only one in this folder when left out; the id of a card, such as head.")]
        public string[] Words { get; init; } = [];

        [CommandOption("--because <REASON>")]
        [Description("Why.")]
        public string Because { get; init; } = "";
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (path, rest) = Books.Split(settings.Words, 1, $"gudgeon jobs {context.Name} [BOOK] CARD --by NAME");
        var (work, card) = (CardWork.Now(settings.By), rest[0]);
        var file = settings.Open(path);
        Func<BuildBook, CardAct> act = context.Name switch
        {
            "sign" => Signing(work, file, card, settings.Because, cancellationToken),
            "reopen" => book => work.Reopen(book, card, settings.Because),
            "leave-out" => book => work.LeaveOut(book, card, settings.Because),
            _ => book => work.TakeIn(book, card),
        };
        var after = file.Work(act).Book;
        Out.Line($"{card}: {CardStates.Find(after, after.Now(), card).Standing.Words()}");
        foreach (var overridden in after.Acts[^1].Overridden)
        {
            Out.Line($"  overridden, because {settings.Because}: {overridden}");
        }

        return 0;
    }

    private static Func<BuildBook, CardAct> Signing(CardWork work, BookFile file, string card, string because, CancellationToken stop)
    {
        if (work.By.Length == 0)
        {
            throw new BadInputException("a signature needs the person: --by NAME");
        }

        var now = file.Book.Now();
        var examined = Examined.Of(CardStates.Find(file.Book, now, card), now, new Appraiser(Books.Desk(file, stop)));
        return book => work.Sign(book, card, examined, because);
    }
}

/// <summary>gudgeon jobs template: a card as JSON.</summary>
internal sealed class TemplateCommand : Command<TemplateCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "<[BOOK] CARD>")]
        [Description("The book, the only one in this folder when left out; the id of a card.")]
        public string[] Words { get; init; } = [];
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var (path, rest) = Books.Split(settings.Words, 1, "gudgeon jobs template [BOOK] CARD");
        Out.Line(CardCatalogue.Written(BookFile.Open(path), rest[0]).TrimEnd());
        return 0;
    }
}

/// <summary>gudgeon jobs put: a card of the book's own.</summary>
internal sealed class PutCommand : Command<PutCommand.Settings>
{
    internal sealed class Settings : EditSettings
    {
        [CommandArgument(0, "<[BOOK] FILE>")]
        [Description("The book, the only one in this folder when left out; a JSON file with one card.")]
        public string[] Words { get; init; } = [];
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        // The file may be named like a book, so two words are the book and the file.
        var (path, card) = settings.Words switch
        {
            [var book, var given] => (book, given),
            [var given] => (Books.Find(null), given),
            _ => throw new BadInputException("wanted: gudgeon jobs put [BOOK] FILE"),
        };
        var after = settings.Open(path).PutCard(AtomicFile.Read(card), Path.GetFileName(card)).Book;
        Out.Line($"{after.Cards[^1].Id}: the book's own");
        return 0;
    }
}
