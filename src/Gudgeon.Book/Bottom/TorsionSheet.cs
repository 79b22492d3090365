using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>The joint of a rotor over the running range. SI.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="Torque">Greatest vibratory torque in it, referred to the crank, N·m.</param>
/// <param name="Speed">Crank speed of that, rad/s.</param>
/// <param name="Rigid">What it would carry at that speed were the line stiff, N·m.</param>
/// <param name="Order">The order that does most there.</param>
/// <param name="Stress">Nominal stress of it, Pa; null when no diameter is known.</param>
public sealed record JointRow(TorsionalJoint Joint, double Torque, double Speed, double Rigid, double Order, double? Stress);

/// <summary>A critical speed in the running range.</summary>
/// <param name="Critical">Where it is.</param>
/// <param name="Frequency">Natural frequency, Hz.</param>
/// <param name="Joint">Joint that its order loads most.</param>
/// <param name="Torque">Amplitude of the order in it, N·m.</param>
public sealed record CriticalRow(CriticalSpeed Critical, double Frequency, string Joint, double Torque);

/// <summary>Torsional vibration of the crank and all that hangs on it.</summary>
/// <param name="Build">The line; null when it is not known.</param>
/// <param name="Sweep">Its vibration over the speeds.</param>
/// <param name="Other">Natural frequencies of the line it is held against: before the changes, or without a rotor, Hz.</param>
/// <param name="OtherIs">Which that is; empty when there is none.</param>
/// <param name="Range">Running range, rad/s.</param>
/// <param name="WithGas">Whether gas of an engine run drives it, or inertia alone.</param>
/// <param name="Joints">The joints.</param>
/// <param name="Criticals">Critical speeds in the running range, the strongest first.</param>
/// <param name="Missing">What is wanted, in one sentence; empty when nothing is.</param>
public sealed record TorsionSheet(
    TorsionalBuild? Build,
    TorsionalSweep? Sweep,
    IReadOnlyList<double> Other,
    string OtherIs,
    (double From, double To) Range,
    bool WithGas,
    IReadOnlyList<JointRow> Joints,
    IReadOnlyList<CriticalRow> Criticals,
    string Missing)
{
    /// <summary>What it leaves out.</summary>
    public const string Remark = "Rotors on massless shafts, small swings about even running, rods and pistons as their mean inertia; damping is a loss factor of each joint and a guess unless it was measured: amplitudes at resonance go with it, frequencies hardly do. Torques are those of vibration, about the mean that the engine gives; stresses are nominal, without oil holes, keyways and fillets. Backlash, belt whip and slipping clutches are not in it.";

    /// <summary>What can hurt.</summary>
    public const string Caution = "A crank breaks in torsion without a warning that can be heard. Do not dwell at a strong critical speed; after a rotor is hung on the nose or taken off, look at the frequencies again before the first run.";

    private const double Past = 1.15;
    private const int Points = 140;

    /// <summary>The sheet of a book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="desk">Where engine runs are made.</param>
    /// <param name="without">A rotor to hold it against the line without; the line before the changes when empty.</param>
    /// <exception cref="BadInputException">Rotors that make no line.</exception>
    public static TorsionSheet Of(BuildBook book, DutyDesk? desk, string without = "")
    {
        var view = new View(book.Now(), desk);
        var crank = CrankAssembly.Of(view);
        if (crank is null || TorsionAssembly.Of(view, crank) is not { } build || TorsionalDuty.Range(view) is not { } range)
        {
            return new TorsionSheet(null, null, [], "", default, false, [], [], $"Not known yet: wants {Wanted.Words(view.Trace.Missing)}.");
        }

        var run = desk is null ? [] : view.Try(CycleLoads.All);
        var sweep = TorsionalSweep.Of(build.Line, TorqueOrders.Of(crank, run), TorsionalDuty.Speeds(range.From, range.To * Past, Points));
        var (other, words) = Held(book, view, crank, without);
        return new TorsionSheet(build, sweep, other, words, range, run.Count > 0, TorsionalDuty.Joints(build, sweep, range), [.. Strongest(build, sweep, range)], "");
    }

    private static (IReadOnlyList<double> Frequencies, string Words) Held(BuildBook book, View view, CrankLine crank, string without)
    {
        if (without.Length > 0)
        {
            return (Frequencies(TorsionAssembly.Of(view, crank, without)), $"without {without}");
        }

        var before = new View(new Snapshot(book, new HashSet<string>(StringComparer.Ordinal)));
        return before.Try(CrankAssembly.Of) is { } old && before.Try(v => TorsionAssembly.Of(v, old)) is { } build ? (Frequencies(build), "before the changes") : ([], "");
    }

    private static IReadOnlyList<double> Frequencies(TorsionalBuild? build) => build is null ? [] : [.. build.Line.Shapes().Select(s => s.Frequency)];

    private static IEnumerable<CriticalRow> Strongest(TorsionalBuild build, TorsionalSweep sweep, (double From, double To) range) =>
        from critical in sweep.Criticals
        where critical.Speed >= range.From && critical.Speed <= range.To
        let worst = Enumerable.Range(1, critical.Joints.Length - 1).MaxBy(j => build.Joints[j].Stress(critical.Joints[j]) ?? 0)
        orderby critical.Joints[worst] descending
        select new CriticalRow(critical, sweep.Shapes[critical.Mode - 1].Frequency, build.Joints[worst].Name, critical.Joints[worst]);
}
