namespace Gudgeon.Simulation.ValveTrain;

/// <summary>Contact force of a rigid train where it is least.</summary>
/// <param name="Force">N; below 0 the train would come apart.</param>
/// <param name="Angle">Cam angle from the nose, rad.</param>
public readonly record struct RigidContact(double Force, double Angle);

/// <summary>Speed at which a rigid train comes apart.</summary>
/// <param name="Speed">Cam speed, rad/s; infinite when it never does.</param>
/// <param name="Angle">Cam angle from the nose where it does, rad.</param>
public readonly record struct RigidLiftOff(double Speed, double Angle);

/// <summary>
/// The estimate beside the march: nothing bends, nothing surges, all of the train follows the cam. Equilibrium of spring, gas
/// and inertia, N = F₀ + k x + m s'' w² − G, over the part of the lobe that holds the valve open.
/// </summary>
public static class RigidTrain
{
    private const int Places = 7200;

    /// <summary>Force of the cam on the follower at a cam angle from the nose, rad, and a cam speed, rad/s; N at the valve.</summary>
    public static double ContactForce(TrainSpec spec, double speed, double angle) =>
        Held(spec, angle) + (spec.RigidMass * spec.Profile.At(angle).Curvature * speed * speed);

    /// <summary>Where the contact force is least while the valve is open, at a cam speed, rad/s.</summary>
    public static RigidContact LeastContactForce(TrainSpec spec, double speed)
    {
        var least = new RigidContact(double.PositiveInfinity, 0);
        foreach (var angle in Open(spec))
        {
            var force = ContactForce(spec, speed, angle);
            least = force < least.Force ? new RigidContact(force, angle) : least;
        }

        return least;
    }

    /// <summary>The least cam speed at which the contact force comes down to nought.</summary>
    public static RigidLiftOff LiftOff(TrainSpec spec)
    {
        var first = new RigidLiftOff(double.PositiveInfinity, 0);
        foreach (var angle in Open(spec))
        {
            var falling = -spec.RigidMass * spec.Profile.At(angle).Curvature;
            var speed = falling > 0 ? Math.Sqrt(Math.Max(0, Held(spec, angle)) / falling) : double.PositiveInfinity;
            first = speed < first.Speed ? new RigidLiftOff(speed, angle) : first;
        }

        return first;
    }

    /// <summary>Springs less gas at a cam angle, N.</summary>
    private static double Held(TrainSpec spec, double angle) =>
        spec.ShutLoad + (spec.Rate * Math.Max(0, spec.Profile.At(angle).Lift - spec.Lash)) - (spec.Gas?.At(angle) ?? 0);

    /// <summary>Angles at which the cam holds the valve open; the nose is one of them.</summary>
    private static IEnumerable<double> Open(TrainSpec spec)
    {
        var profile = spec.Profile;
        for (var i = -Places; i <= Places; i++)
        {
            var angle = (i < 0 ? -profile.Start : profile.End) * i / Places;
            if (profile.At(angle).Lift > spec.Lash)
            {
                yield return angle;
            }
        }
    }
}
