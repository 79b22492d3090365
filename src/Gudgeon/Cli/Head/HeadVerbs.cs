using Spectre.Console.Cli;

namespace Gudgeon.Cli.Head;

/// <summary>gudgeon head: the sheets of head and valve train, under the same words as on the page.</summary>
internal static class HeadVerbs
{
    public static void Add(IConfigurator<CommandSettings> head)
    {
        head.SetDescription("Head and valve train: flow, cams, valve to piston, springs, motion, lash and shims, seats.");
        head.AddCommand<FlowCommand>("flow").WithDescription("What the ports pass: flow by lift, coefficients, mean area, inlet Mach index, now and before the changes.").WithExample("head", "flow", "heron.json", "--svg", "flow.svg");
        head.AddCommand<CamsCommand>("cams").WithDescription("Cams: timing at any lift, motion, lobe centres by degree wheel and the correction at the sprocket.").WithExample("head", "cams", "heron.json", "--at", "0.5mm");
        head.AddCommand<ClearanceCommand>("clearance").WithDescription("Valve to piston: the room cold and at the rev limit, and what takes from it.").WithExample("head", "clearance", "heron.json", "--svg", "room.svg");
        head.AddCommand<SpringsCommand>("springs").WithDescription("Valve springs at their installed heights; spacers off the bench; springs in matched sets.").WithExample("head", "springs", "heron.json", "--valve", "exhaust.1.2", "--svg", "spring.svg");
        head.AddCommand<MotionCommand>("motion").WithDescription("How the valves move up to the rev limit and beyond: where the train comes apart, bounce, seating speed. Exit code 3: no motion repeats at the rev limit.").WithExample("head", "motion", "heron.json", "--svg", "motion.svg");
        head.AddCommand<LashCommand>("lash").WithDescription("Lash and shims: which shim goes where. Exit code 3: a valve is left without one that does.").WithExample("head", "lash", "heron.json", "--svg", "lash.svg");
        head.AddCommand<SeatsCommand>("seats").WithDescription("Valve seats, stems in their guides, and what the leak test says.").WithExample("head", "seats", "heron.json", "--svg", "seats.svg");
    }
}
