using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Joints;

namespace Gudgeon.Book.Jobs;

/// <summary>How far a job card has come.</summary>
public enum Standing
{
    /// <summary>Something else comes first.</summary>
    Waiting,

    /// <summary>It can be begun.</summary>
    Ready,

    /// <summary>It was begun.</summary>
    Begun,

    /// <summary>It was signed, and something that it stood on has changed since, or it was opened again.</summary>
    LookAgain,

    /// <summary>It is signed.</summary>
    Signed,

    /// <summary>It is not wanted for this build.</summary>
    LeftOut,
}

/// <summary>How standings are spoken.</summary>
public static class Standings
{
    /// <summary>"waiting", "ready", "begun", "look again", "signed", "left out".</summary>
    public static string Words(this Standing standing) => EnumWords.Of(standing.ToString());
}

/// <summary>One bolt in one stage of a joint's plan.</summary>
/// <param name="Number">The bolt.</param>
/// <param name="Key">Key under which it is ticked: "tighten@3.7".</param>
/// <param name="Ticked">Its tick that stands; null while there is none.</param>
/// <param name="Done">The same, when it was for what the plan asks now; null while the bolt is still to be done.</param>
public sealed record BoltState(int Number, string Key, CardAct? Ticked, CardAct? Done);

/// <summary>One round over the bolts of a joint.</summary>
/// <param name="Number">Counted from 1.</param>
/// <param name="Stage">What is done.</param>
/// <param name="Bolts">The bolts in their order.</param>
public sealed record StageState(int Number, TighteningStage Stage, IReadOnlyList<BoltState> Bolts);

/// <summary>A step of a card, for one instance, as it stands.</summary>
/// <param name="Step">Its declaration.</param>
/// <param name="Key">Key under which it is ticked: "gap@2".</param>
/// <param name="Index">The instance; empty where there is one.</param>
/// <param name="Words">What is done.</param>
public sealed record StepState(CardStep Step, string Key, string Index, string Words)
{
    /// <summary>Its tick that stands; null while there is none.</summary>
    public CardAct? Tick { get; init; }

    /// <summary>When its process was begun; null while it was not.</summary>
    public CardAct? Begun { get; init; }

    /// <summary>The field that it reads; null for other steps.</summary>
    public FieldAddress? Address { get; init; }

    /// <summary>The reading of its field that holds; null while there is none.</summary>
    public Found? Reading { get; init; }

    /// <summary>Whether that reading was taken in the course of the card, and not before it.</summary>
    public bool InItsCourse { get; init; }

    /// <summary>A reading from before, which somebody has yet to find still so; null when there is none.</summary>
    public Found? Earlier => Done ? null : Reading;

    /// <summary>Rounds of its joint; none for other steps, and while the plan is not known.</summary>
    public IReadOnlyList<StageState> Stages { get; init; } = [];

    /// <summary>What is wrong with the joint's plan or wanted for it.</summary>
    public IReadOnlyList<string> Troubles { get; init; } = [];

    /// <summary>The joint's plan, for its picture; null for other steps.</summary>
    public TighteningPlan? Plan { get; init; }

    /// <summary>Whether it is done.</summary>
    public bool Done => Step.Kind == StepKind.Read ? Reading is not null && (InItsCourse || Tick is not null) : Stages.Count > 0 ? Next is null : Tick is not null;

    /// <summary>Whether somebody did anything about it on the card.</summary>
    public bool Touched => Tick is not null || Begun is not null || Stages.Any(s => s.Bolts.Any(b => b.Ticked is not null));

    /// <summary>The bolt that comes next, and its round; null when all are done, or there are none.</summary>
    public (StageState Stage, BoltState Bolt)? Next => Stages.SelectMany(s => s.Bolts, (s, b) => (s, b)).Where(p => p.b.Done is null).Select(p => ((StageState, BoltState)?)p).FirstOrDefault();
}

/// <summary>A job card as it stands in a book.</summary>
/// <param name="Card">Its declaration.</param>
/// <param name="Standing">How far it has come.</param>
/// <param name="Steps">Its steps, each for every instance.</param>
public sealed record CardState(CardTemplate Card, Standing Standing, IReadOnlyList<StepState> Steps)
{
    /// <summary>What comes first: cards and parts, in words.</summary>
    public IReadOnlyList<string> WaitsFor { get; init; } = [];

    /// <summary>Why a signed card must be looked at again.</summary>
    public IReadOnlyList<string> LookAgain { get; init; } = [];

    /// <summary>The last signature; null while there is none.</summary>
    public CardAct? Signature { get; init; }

    /// <summary>Why it is left out; empty when it is not.</summary>
    public string LeftOut { get; init; } = "";

    /// <summary>What was done to it, in order.</summary>
    public IReadOnlyList<CardAct> Acts { get; init; } = [];

    /// <summary>Steps that are done.</summary>
    public int StepsDone => Steps.Count(s => s.Done);

    /// <summary>The step with this key, or to which the bolt with this key belongs; null when there is none.</summary>
    public StepState? Find(string key) => Steps.FirstOrDefault(s => s.Key == key) ?? Steps.FirstOrDefault(s => s.Stages.Any(g => g.Bolts.Any(b => b.Key == key)));
}
