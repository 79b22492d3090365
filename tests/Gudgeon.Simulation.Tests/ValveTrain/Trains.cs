using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Simulation.Tests.ValveTrain;

/// <summary>Invented valve trains for the tests.</summary>
internal static class Trains
{
    public const double Rpm = Math.PI / 30;
    public const double Degree = Math.PI / 180;

    /// <summary>The rigid train of the published float case as a very stiff bucket: 60 g, 250 N, 45 N/mm, 8.5 mm over 150° of cam, no lash, no spring mass.</summary>
    public static TrainSpec FloatCase() => new()
    {
        Profile = LiftProfile.Polynomial(8.5e-3, 150 * Degree),
        ValveMass = 40e-3,
        FollowerMass = 20e-3,
        CamStiffness = 1e8,
        CamDamping = 0.1,
        Springs = [new SpringColumn(45e3, 250, 0) { Elements = 1 }],
    };

    /// <summary>A finger follower with two springs that surge, lash, gas and guide friction.</summary>
    public static TrainSpec Finger() => new()
    {
        Profile = LiftProfile.Polynomial(9.2e-3, 170 * Degree),
        Lash = 0.15e-3,
        ValveMass = 38e-3,
        FollowerMass = 15e-3,
        CamStiffness = 3e7,
        TrainStiffness = 1.5e7,
        Springs =
        [
            new SpringColumn(28e3, 170, 30e-3, 14e-3),
            new SpringColumn(16e3, 90, 14e-3, 14e-3) { Elements = 10 },
        ],
        Gas = new GasForce([-120 * Degree, -60 * Degree, 0, 60 * Degree], [-200, 30, -20, -60]),
        GuideFriction = 5,
    };

    /// <summary>One mass on the cam's spring, the valve held a millimetre off its seat by the base circle: a linear oscillator.</summary>
    public static TrainSpec Oscillator(LiftProfile profile, double damping) => new()
    {
        Profile = profile,
        Lash = -3e-3,
        ValveMass = 0.1,
        CamStiffness = 4e6,
        CamDamping = damping,
        Springs = [new SpringColumn(1e5, 8e3, 0) { Elements = 1 }],
    };
}
