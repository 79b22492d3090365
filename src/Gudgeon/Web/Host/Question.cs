using Gudgeon.Book.AsBuilt;
using Gudgeon.Book.Bottom;
using Gudgeon.Book.Drive;
using Gudgeon.Book.Build;
using Gudgeon.Book.Changes;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Head;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Joints;
using Gudgeon.Book.Limits;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Cli;
using Gudgeon.Simulation.Engine;
using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Web.Host;

/// <summary>What an answer is worked from.</summary>
/// <param name="Book">The build as it stood when the work began.</param>
/// <param name="Now">The values that hold.</param>
/// <param name="Appraiser">Findings, kept from one edit to the next.</param>
/// <param name="Desk">Engine runs, kept from one edit to the next; they can be stopped.</param>
/// <param name="Progress">Told the share of the work done, 0 to 1.</param>
public sealed record Asked(BuildBook Book, Snapshot Now, Appraiser Appraiser, DutyDesk Desk, IProgress<double> Progress);

/// <summary>Something asked of a book that takes time: worked once for everybody who looks, and again after an edit.</summary>
/// <param name="Name">What is worked, for people: "every check".</param>
/// <param name="Work">Works it; a <see cref="BadInputException"/> is its answer in one sentence.</param>
public sealed record Question<T>(string Name, Func<Asked, T> Work)
    where T : class;

/// <summary>How an answer stands.</summary>
public enum AnswerState
{
    /// <summary>It is being worked or waits for its turn.</summary>
    Working,

    /// <summary>It holds for the book as it is.</summary>
    Ready,

    /// <summary>Somebody stopped the work.</summary>
    Stopped,

    /// <summary>It cannot be worked; the sentence says why.</summary>
    Refused,
}

/// <summary>An answer as far as it is known.</summary>
/// <param name="Value">The newest value; of an older state of the book unless <paramref name="State"/> is ready; null when there is none yet.</param>
/// <param name="State">How it stands.</param>
/// <param name="Sentence">Why there is none; empty unless refused.</param>
public sealed record Answer<T>(T? Value, AnswerState State, string Sentence)
    where T : class
{
    /// <summary>Whether the value holds for the book as it is.</summary>
    public bool IsReady => State == AnswerState.Ready;
}

/// <summary>The questions that the pages ask.</summary>
public static class Questions
{
    /// <summary>Every finding, uncertainties counted.</summary>
    public static readonly Question<IReadOnlyList<Finding>> Findings = new("every check", a => a.Appraiser.Appraise(a.Now, progress: a.Progress));

    /// <summary>What gives first.</summary>
    public static readonly Question<Ladder> Ladder = new("what gives first", a => GivesFirst.Climb(a.Now, a.Desk, a.Progress));

    /// <summary>The engine at full load over its speeds.</summary>
    public static readonly Question<EngineDuty> Duty = new("the engine run", a =>
    {
        a.Desk.Progress = a.Progress;
        return Demand.Engine(new View(a.Now, a.Desk), whole: true);
    });

    /// <summary>Valve to piston; the room that running takes wants the motion of the valves, and that the engine run.</summary>
    public static readonly Question<ClearanceSheet> Clearance = new("valve to piston", a => ClearanceSheet.Of(a.Now, a.Desk));

    /// <summary>How the valves move up to the rev limit and beyond.</summary>
    public static readonly Question<MotionSheet> Motion = new("the motion of the valves", a => MotionSheet.Of(new View(a.Now, a.Desk), null, a.Progress, a.Desk.Cancellation));

    /// <summary>Loads in the bottom end over the speeds of the engine run.</summary>
    public static readonly Question<LoadsSheet> Loads = new("the loads of the bottom end", a => LoadsSheet.Of(new View(a.Now, a.Desk)));

    /// <summary>Bolted joints; the head takes an engine run.</summary>
    public static readonly Question<JointSheet> Joints = new("the joints", a => JointSheet.Of(new View(a.Now, a.Desk)));

    /// <summary>The head joint over the levels of load.</summary>
    public static readonly Question<HeadJointSheet> HeadJoint = new("the head joint", a => HeadJointSheet.Of(a.Now, a.Desk, null, a.Progress));

    /// <summary>Shell bearings in their oil over the speeds of the engine run.</summary>
    public static readonly Question<BearingsSheet> Bearings = new("the bearings", a => BearingsSheet.Of(new View(a.Now, a.Desk)));

    /// <summary>Torsional vibration of the crank and all that hangs on it.</summary>
    public static readonly Question<TorsionSheet> Torsion = new("torsional vibration", a => TorsionSheet.Of(a.Book, a.Desk));

    /// <summary>Ratio, course, tension and pull of the belt; takes an engine run.</summary>
    public static readonly Question<BeltSheet> DriveBelt = new("the belt", a => BeltSheet.Of(a.Now, a.Desk));

    /// <summary>The nose of the crank under the belt, and its outboard bearing; takes an engine run.</summary>
    public static readonly Question<NoseSheet> DriveNose = new("the nose of the crank", a => NoseSheet.Of(a.Now, a.Desk));

    /// <summary>What start, shift and cut do to the boost drive; takes an engine run.</summary>
    public static readonly Question<HitSheet> DriveHits = new("the hits on the drive", a => HitSheet.Of(a.Now, a.Desk));

    /// <summary>Heat of oil tank and charge cooler; takes an engine run.</summary>
    public static readonly Question<HeatSheet> DriveHeat = new("the heat of tank and cooler", a => HeatSheet.Of(a.Now, a.Desk));

    /// <summary>Filter, ducts and compressor map; takes an engine run.</summary>
    public static readonly Question<AirSheet> DriveAir = new("the air path", a => AirSheet.Of(a.Now, a.Desk));

    /// <summary>Rods, their bolts and the strength of the crank; takes an engine run.</summary>
    public static readonly Question<RodSheet> Rods = new("rods and crank", a => RodSheet.Of(new View(a.Now, a.Desk)));

    /// <summary>Gudgeon pins, pistons and rings; takes an engine run.</summary>
    public static readonly Question<PistonSheet> Pistons = new("the pistons", a => PistonSheet.Of(new View(a.Now, a.Desk)));

    /// <summary>Seats, guides and stems; takes an engine run.</summary>
    public static readonly Question<SeatSheet> Seats = new("the seats", a => SeatSheet.Of(new View(a.Now, a.Desk)));

    /// <summary>The as-built book.</summary>
    /// <param name="open">The book.</param>
    public static Question<AsBuiltBook> AsBuilt(OpenBook open) => new("the as-built book", a => AsBuiltBook.Of(open.File, a.Appraiser, a.Desk, a.Progress));

    /// <summary>What a job card stands on.</summary>
    /// <param name="card">Id of the card.</param>
    public static Question<Examined> Card(string card) => new($"what the job card {card} stands on", a => Examined.Of(CardStates.Find(a.Book, a.Now, card), a.Now, a.Appraiser));

    /// <summary>The standing start over a mile.</summary>
    public static readonly Question<SprintResult> Sprint = new("the standing start", a => Demand.Sprint(new View(a.Now, a.Desk)));

    /// <summary>The standing start in other air than the book's.</summary>
    /// <param name="air">Values of the weather, by path; the book's where there is none.</param>
    public static Question<SprintResult> SprintIn(IReadOnlyDictionary<string, KnownValue> air) => air.Count == 0
        ? Sprint
        : new($"the standing start with {string.Join(", ", air.Values.Select(v => $"{v.Field.Label} {v.Content}"))}", a => Demand.Sprint(new View(a.Book.Supposing(air).Now(), a.Desk)));

    /// <summary>One cycle of the engine run over its crank angle.</summary>
    /// <param name="speed">Crank speed, rad/s.</param>
    public static Question<TracedCycle> Cycle(double speed) => new($"the cycle at {Gudgeon.Book.Fields.Engine.RevLimit.Print(speed)}", a =>
        EngineRun.Traced(Duty.Work(a), speed, a.Desk.Cancellation) ?? throw new BadInputException($"the cycles do not settle at {Gudgeon.Book.Fields.Engine.RevLimit.Print(speed)}"));

    /// <summary>A joint with bolts of another material.</summary>
    /// <param name="joint">The joint.</param>
    /// <param name="material">The material.</param>
    public static Question<SwapSheet> Swap(string joint, SwapMaterial material) =>
        new($"joint {joint} with bolts of {material.Name}", a => SwapSheet.Of(a.Book, a.Desk, joint, material));

    /// <summary>What a change does to every other part.</summary>
    /// <param name="change">Id of the change.</param>
    public static Question<Consequences> Consequences(string change) =>
        new($"what {change} does", a => Book.Changes.Consequences.Of(a.Book, a.Book.Find(change), a.Appraiser));
}
