using Spectre.Console.Cli;

namespace Gudgeon.Cli.Jobs;

/// <summary>gudgeon jobs: the job cards of the rebuild, as on the page.</summary>
internal static class JobVerbs
{
    public static void Add(IConfigurator<CommandSettings> jobs)
    {
        jobs.SetDescription("Job cards: what is done in which order, ticked, held, signed, and opened again when a value moves.");
        jobs.AddCommand<BoardCommand>("board").WithDescription("Every card that the book calls for, and how far it has come.").WithExample("jobs", "board", "heron.gudgeon");
        jobs.AddCommand<PathCommand>("path").WithDescription("The longest way to the first start, through cards and parts' delivery days.").WithExample("jobs", "path", "heron.gudgeon");
        jobs.AddCommand<CardCommand>("card").WithDescription("One card with its steps, what it stands on and what speaks against signing. Exit code 3: it cannot be signed yet.").WithExample("jobs", "card", "heron.gudgeon", "head");
        jobs.AddCommand<StepCommand>("tick").WithDescription("A step, or the next bolt of it, is done.").WithExample("jobs", "tick", "heron.gudgeon", "head", "tighten@1.4", "--with", "wrench-60", "--value", "\"18 N·m\"", "--by", "Ada");
        jobs.AddCommand<StepCommand>("untick").WithDescription("A tick is taken back, with a reason.").WithExample("jobs", "untick", "heron.gudgeon", "head", "faces", "--because", "\"oil found\"", "--by", "Ada");
        jobs.AddCommand<StepCommand>("start").WithDescription("A process that takes its time begins.").WithExample("jobs", "start", "heron.gudgeon", "clutch", "soak", "--by", "Ada");
        jobs.AddCommand<WholeCommand>("sign").WithDescription("A card is signed; with --because although something speaks against it.").WithExample("jobs", "sign", "heron.gudgeon", "head", "--by", "Ada");
        jobs.AddCommand<WholeCommand>("reopen").WithDescription("A signed card is opened again, with a reason.");
        jobs.AddCommand<WholeCommand>("leave-out").WithDescription("A card is not wanted for this build, with a reason.");
        jobs.AddCommand<WholeCommand>("take-in").WithDescription("A card that was left out is wanted after all.");
        jobs.AddCommand<TemplateCommand>("template").WithDescription("A card as JSON, to be edited and taken back with put.").WithExample("jobs", "template", "heron.gudgeon", "head");
        jobs.AddCommand<PutCommand>("put").WithDescription("Take a card from a JSON file: a new one, or in place of one.").WithExample("jobs", "put", "heron.gudgeon", "head.json");
    }
}
