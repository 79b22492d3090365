using Gudgeon.Book.Fields;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Book.Checks.ValveTrain;

/// <summary>Quasi-static speed at which the spring no longer holds the follower on the cam, against the rev limit.</summary>
public sealed class ValveFloatCheck : SpringCheck
{
    public override string Id => "valve-float";

    public override string Title => "Valve float speed";

    public override string Source => "equilibrium of spring and inertia force at the nose of the measured lift curve, or over the polynomial lobe of the same lift and duration; a springy train floats some 5 to 15 % earlier, so 1.1 times the rev limit is wanted: common practice, no source";

    public override Judgement Examine(View view, string index)
    {
        var spring = new FittedSpring(view, index);
        var mass = view.Work(ValveForces.EffectiveMass, view.Amount(Valve.Mass, index), view.Amount(Valve.MovingMass, index), spring.Mass(), 0.0);
        var loads = spring.Loads();
        var floats = ValveLift.Drawn(view, index) is { } curve && ValveLift.InRadians(curve) is var (angles, lifts)
            ? view.Work(ValveFloat.SpeedFromNose, loads.Open, mass, LiftNose.Curvature(angles, lifts))
            : view.Work(ValveFloat.Speed, mass, loads.Seat, spring.MeanRate(), view.Amount(Valve.Lift, index), Duration(view, index) / 2).CrankSpeed;
        var wanted = view.Limit("valve-float.factor", Dimension.Number, "", 1.1) * view.Amount(Engine.RevLimit);
        return Judgement.AtLeast("float speed at the crank", floats, wanted, Dimension.RotationalSpeed, "rpm", "1.1 times engine.revLimit");
    }

    /// <summary>Crank angle over which the valve is open, rad.</summary>
    private static double Duration(View view, string index) => Math.PI + view.Amount(Valve.Opens, index) + view.Amount(Valve.Closes, index);
}

/// <summary>Pressure that pushes the shut valve open, against what the seat load holds.</summary>
public sealed class ValveGasForceCheck : SpringCheck
{
    public override string Id => "valve-pressure";

    public override string Title => "Boost or back-pressure against the seat load";

    public override string Source => "pressure difference on the head against the seat load; the inlet sees the boost with the cylinder at ambient, the exhaust the back-pressure, before the turbine where there is one, with the cylinder at the plenum's pressure";

    public override Judgement Examine(View view, string index)
    {
        var duty = view.Duty();
        Func<Simulation.Engine.PointFigures, double> difference = index.StartsWith("inlet", StringComparison.Ordinal)
            ? f => f.Boost
            : f => f.ExhaustBackPressure - f.Boost;
        var (pressure, speed) = duty?.Most(difference) ?? (double.NaN, double.NaN);
        var force = view.Work(ValveForces.GasForce, view.Amount(Valve.HeadDiameter, index), Math.Max(pressure, 0), new FittedSpring(view, index).Loads().Seat);
        return Judgement.AtMost("pressure that opens the valve", pressure, force.HeldPressure, Dimension.Pressure, "bar", "pressure that the seat load holds") with { Remark = Motion.PeakPressureCheck.At(speed) };
    }
}
