using Gudgeon.Book.Checks.ValveTrain;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Springs;
using Gudgeon.Calc.ValveTrain;
using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Book.Head;

/// <summary>Puts one valve's train together for the march. Values that only refine it have customary stand-ins; the view shows which.</summary>
internal static class TrainAssembly
{
    /// <summary>Share of the give of a finger or rocker train that lies in camshaft and contact; the rest is in the beam: common practice.</summary>
    private const double CamShare = 0.2;

    /// <summary>Stiffness from cam to valve, N/m: common practice, no source.</summary>
    private const double UsualBucket = 4e7, UsualBeam = 2e7;

    /// <summary>Density of spring steel, kg/m³.</summary>
    private const double Steel = 7850;

    /// <summary>The train; null, and what is missing noted in the view, when something is not known.</summary>
    /// <param name="view">The values.</param>
    /// <param name="index">"inlet.1.2".</param>
    /// <exception cref="BadInputException">Values that make no train.</exception>
    public static (TrainSpec Spec, CamMotion Motion)? Build(View view, string index)
    {
        var motion = CamMotion.Of(view, index);
        if (motion is null)
        {
            view.Unknown($"a lift curve or lobe of {index} ({Valve.LiftTable.At(index)}, {Cam.LiftTable.At(index)} or {Cam.Law.At(index)})");
        }

        var (valve, moving) = (view.Amount(Valve.Mass, index), view.Amount(Valve.MovingMass, index));
        var follower = view.AmountOr(Follower.CamMass, moving / 2, index);
        var springs = Springs(view, index);
        if (motion is null || springs is null || double.IsNaN(valve + moving))
        {
            return null;
        }

        try
        {
            // A curve laid through readings may dip below the base circle by a micrometre: there the valve is shut.
            var points = motion.Points.Lift.Select((lift, i) => lift > 0 ? new LiftPoint(lift, motion.Points.Slope[i], motion.Points.Curvature[i]) : default).ToArray();
            (points[0], points[^1]) = (default, default);
            return (Stiff(view, index, new TrainSpec
            {
                Profile = LiftProfile.FromPoints(motion.Points.Angles, points),
                Lash = motion.Lash,
                ValveMass = valve + moving - follower,
                FollowerMass = follower,
                Springs = springs,
                Gas = GasLoad.On(view, index, motion),
            }), motion);
        }
        catch (TrainSpecException e)
        {
            throw new BadInputException($"{index}: {e.Message}");
        }
    }

    private static TrainSpec Stiff(View view, string index, TrainSpec spec)
    {
        var bucket = view.Knows(Follower.Kind, index) && view.Choice<FollowerKind>(Follower.Kind, index) == FollowerKind.Bucket;
        var whole = view.AmountOr(Follower.Stiffness, bucket ? UsualBucket : UsualBeam, index);

        // Springs in series: the give of cam and beam adds up to that of the whole.
        return bucket
            ? spec with { CamStiffness = whole }
            : spec with { CamStiffness = whole / CamShare, TrainStiffness = whole / (1 - CamShare) };
    }

    private static List<SpringColumn>? Springs(View view, string index)
    {
        var lift = view.Amount(Valve.Lift, index);
        var columns = new List<SpringColumn>();
        foreach (var coil in new FittedSpring(view, index).Coils)
        {
            var loads = coil.Loads();
            var mass = view.Work(SpringSurge.ActiveMass, coil.Wire, coil.MeanDiameter, coil.ActiveCoils, Steel);
            var bind = coil.CoilBindMargin() + lift;
            if (double.IsNaN(loads.Seat + loads.Open + mass + bind))
            {
                return null;
            }

            columns.Add(new SpringColumn((loads.Open - loads.Seat) / lift, loads.Seat, mass, bind));
        }

        return columns;
    }
}
