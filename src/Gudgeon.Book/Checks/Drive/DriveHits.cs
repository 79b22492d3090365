using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Boost;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Book.Checks.Drive;

/// <summary>One sudden change of engine speed and what it does to the drive. SI.</summary>
/// <param name="Name">"shift up, first to second".</param>
/// <param name="Change">Change of crank speed, rad/s; down negative.</param>
/// <param name="Time">Time that it takes, s.</param>
/// <param name="Stiff">Inertia torque at the crank in a stiff drive, N·m.</param>
/// <param name="Factor">What the give of the belt makes of it.</param>
/// <param name="Torque">Greatest torque at the crank with the steady one, N·m.</param>
/// <param name="Steady">Greatest steady torque, N·m.</param>
public readonly record struct DriveHit(string Name, double Change, double Time, double Stiff, double Factor, double Torque, double Steady)
{
    /// <summary>Over the greatest steady torque.</summary>
    public double Times => Torque / Steady;
}

/// <summary>Start, shifts, ignition cuts and missed gears as the drive feels them. What is not known reads as NaN.</summary>
/// <param name="view">The values.</param>
public sealed class DriveHits(View view)
{
    /// <summary>Rotor whose joint is the belt; it and all that hangs on it is what the belt drives.</summary>
    public const string Driven = "blower";

    private readonly DrivenBelt _belt = new(view);

    /// <summary>What the belt drives, felt at the crank, kg·m².</summary>
    public double Inertia() => Sum(driven: true);

    /// <summary>Crank and all else that turns with it, felt at the crank, kg·m²; rods and pistons are left out.</summary>
    public double EngineInertia() => Sum(driven: false);

    /// <summary>Stiffness of the belt, felt at the crank, N·m/rad.</summary>
    public double Stiffness() => view.Work(Torsion.ReferredStiffness, view.Amount(Rotor.Stiffness, Driven), view.AmountOr(Rotor.Ratio, 1, Driven));

    /// <summary>All of the hits that are known.</summary>
    public IEnumerable<DriveHit> All() => ((DriveHit?[])[Shift(), Cut(), Return(), Start()]).OfType<DriveHit>();

    /// <summary>The worst of them; NaN when none is known.</summary>
    public DriveHit Worst() => All().Where(h => !double.IsNaN(h.Torque)).DefaultIfEmpty(new DriveHit("", double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN)).MaxBy(h => h.Torque);

    /// <summary>The greatest pull of the belt and what makes it: the worst hit, else the greatest steady one.</summary>
    public (BeltPull Pull, string Cause) Hardest()
    {
        if (!view.Knows(Rotor.Inertia, Driven))
        {
            var steady = _belt.Worst();
            return (steady, $"steady {Motion.PeakPressureCheck.At(steady.Speed)}".Trim());
        }

        // The belt as a spring pulls most half-way through a change that takes revs away; one that adds them begins at the rev limit.
        var worst = Worst();
        var speed = view.Amount(Engine.RevLimit) + (Math.Min(0, worst.Change) / 2);
        return (_belt.At(speed, worst.Torque * speed), worst.Name);
    }

    /// <summary>Torque at the crank that the belt carries where it runs fastest, N·m.</summary>
    public double BeltTorque()
    {
        var radius = _belt.Crank() / 2;
        return _belt.Capacity(view.Amount(Engine.RevLimit) * radius) * radius;
    }

    /// <summary>Torque at the crank at which the slack span of a belt on fixed centres goes slack, N·m.</summary>
    public double SlackTorque()
    {
        var radius = _belt.Crank() / 2;
        return 2 * Math.Max(0, _belt.Pressing(view.Amount(Engine.RevLimit) * radius)) * radius;
    }

    /// <summary>The gear change that takes most revs away, at the rev limit.</summary>
    private DriveHit? Shift()
    {
        if (view.TableIf(Fields.Driveline.Gears)?["ratio"] is not { Length: > 1 } gears)
        {
            return null;
        }

        var from = Enumerable.Range(0, gears.Length - 1).MaxBy(i => 1 - (gears[i + 1] / gears[i]));
        var change = view.Amount(Engine.RevLimit) * (1 - (gears[from + 1] / gears[from]));
        return Hit($"shift from gear {from + 1} to {from + 2}", -change, view.AmountIf(Shock.EngageTime) ?? view.Amount(Fields.Driveline.ShiftTime));
    }

    /// <summary>Ignition cut at the rev limit: friction and blower brake the engine alone.</summary>
    private DriveHit? Cut() => Top() is var (speed, torque, braking) ? Free("ignition cut, clutch held", -braking, speed) : null;

    /// <summary>Full torque at once with nothing to drive: a missed gear, the spark coming back.</summary>
    private DriveHit? Return() => Top() is var (speed, torque, braking) ? Free("full torque at once, no gear", torque, speed) : null;

    private DriveHit? Start() => view.AmountIf(Shock.StartSpeed) is { } speed && view.AmountIf(Shock.StartTime) is { } time ? Hit("start", speed, time) : null;

    /// <summary>The engine alone under a torque, for two turns.</summary>
    private DriveHit Free(string name, double torque, double speed)
    {
        var time = 2 * Math.Tau / speed;
        return Hit(name, torque / (EngineInertia() + Inertia()) * time, time);
    }

    private DriveHit Hit(string name, double change, double time)
    {
        var (inertia, stiffness, steady) = (Inertia(), Stiffness(), _belt.Worst().Torque);
        if (double.IsNaN(inertia + stiffness + steady + change + time))
        {
            return new DriveHit(name, change, time, double.NaN, double.NaN, double.NaN, steady);
        }

        var stiff = view.Work(DriveShock.Torque, inertia, Math.Abs(change), time);
        var factor = view.Work(DriveShock.Factor, inertia, stiffness, time).Factor;

        // Slowed down, the rotor drives the crank while its air still brakes it; speeded up, it wants both.
        return new DriveHit(name, change, time, stiff, factor, Math.Max(steady, (stiff * factor) + (change < 0 ? -steady : steady)), steady);
    }

    /// <summary>Speed, torque and what brakes the engine without spark, at the top of the run; null without one.</summary>
    private (double Speed, double Torque, double Braking)? Top()
    {
        if (view.Duty() is not { Points.Count: > 0 } duty)
        {
            return null;
        }

        var (speed, top) = duty.Figures.Last();
        return (speed, duty.Torque.Value, (top.Torque * top.FrictionMep / top.Bmep) + ((top.Blower?.DrivePower ?? 0) / speed));
    }

    private double Sum(bool driven)
    {
        var names = Instances.Named(view, Rotor.Inertia.Subject).Where(n => n.Length > 0).ToList();
        var counted = names.Where(n => IsDriven(n, names.Count) == driven).ToList();
        return counted.Count > 0 ? counted.Sum(n => view.Work(Torsion.ReferredInertia, view.Amount(Rotor.Inertia, n), view.AmountOr(Rotor.Ratio, 1, n))) : view.Amount(Rotor.Inertia, Driven);
    }

    /// <summary>Whether a rotor hangs, over at most so many others, on the belt.</summary>
    private bool IsDriven(string name, int most) => name == Driven || (most > 0 && view.WordOr(Rotor.On, "", name).Trim() is { Length: > 0 } on && IsDriven(on, most - 1));
}
