using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Simulation.Tests.ValveTrain;

/// <summary>Each bad train is refused with a sentence that names the quantity.</summary>
public class TrainSpecTests
{
    private static readonly TrainSpec Good = Trains.Finger();

    public static TheoryData<string, Action> Bad => new()
    {
        { "lash: ", () => Run(Good with { Lash = double.NaN }) },
        { "never opens", () => Run(Trains.FloatCase() with { Profile = LiftProfile.Polynomial(1e-3, 1), Lash = 2e-3 }) },
        { "valve mass", () => Run(Good with { ValveMass = 0 }) },
        { "follower mass", () => Run(Good with { FollowerMass = 0 }) },
        { "stiffness of cam and follower", () => Run(Good with { CamStiffness = 1e3 }) },
        { "stiffness between follower and valve", () => Run(Good with { TrainStiffness = double.NaN }) },
        { "stiffness of the seat", () => Run(Good with { SeatStiffness = -1 }) },
        { "damping of the seat", () => Run(Good with { SeatDamping = 2 }) },
        { "guide friction", () => Run(Good with { GuideFriction = 300 }) },
        { "springs: 0 given", () => Run(Good with { Springs = [] }) },
        { "spring rate", () => Run(Good with { Springs = [new SpringColumn(0, 100, 0.01)] }) },
        { "active mass of a spring: none given", () => Run(Good with { Springs = [new SpringColumn(2e4, 100, 0)] }) },
        { "travel to coil bind", () => Run(Good with { Springs = [new SpringColumn(2e4, 100, 0.01, -1e-3)] }) },
        { "load with the valve shut is 0", () => Run(Good with { Springs = [new SpringColumn(2e4, 0, 0.01)] }) },
        { "elements of a spring", () => Run(Good with { Springs = [new SpringColumn(2e4, 10, 0.01) { Elements = 65 }] }) },
        { "cam speed", () => new TrainModel(Good).At(double.NaN, new TrainOptions()) },
        { "tolerance of a step", () => new TrainModel(Good).At(300, new TrainOptions { Tolerance = 0 }) },
        { "longest step", () => new TrainModel(Good).At(300, new TrainOptions { LongestStep = 1 }) },
        { "turns of the cam", () => new TrainModel(Good).At(300, new TrainOptions { MaxRevolutions = 1 }) },
        { "wanted it to rise", () => TrainSweep.Over(new TrainModel(Good), new SpeedRange(300, 200, 4), new TrainOptions()) },
        { "cam angles must rise", () => LiftProfile.FromPoints([-1, -1, 1], [default, default, default]) },
        { "the greatest lift is nought", () => LiftProfile.FromPoints([-1, 0, 1], [default, default, default]) },
        { "at its end, 57.3°", () => LiftProfile.FromPoints([-1, 0, 1], [default, new(1e-3, 0, 0), new(1e-3, 0, 0)]) },
        { "below 0 (the nose)", () => LiftProfile.FromPoints([0.1, 0.5, 1], [default, new(1e-3, 0, 0), default]) },
        { "is not a number", () => LiftProfile.FromPoints([-1, 0, 1], [default, new(1e-3, 0, double.NaN), default]) },
        { "lift readings: 3 angles", () => LiftProfile.FromReadings([-1, 0, 1], [0, 1, 0]) },
        { "gas force: the angles go over", () => _ = new GasForce([0, 7], [1, 2]) },
        { "gas force: the force at point 2", () => _ = new GasForce([0, 1], [1, double.NaN]) },
    };

    [Theory]
    [MemberData(nameof(Bad), DisableDiscoveryEnumeration = true)]
    public void BadTrainIsRefusedByName(string quantity, Action work) =>
        Assert.Contains(quantity, Assert.Throws<TrainSpecException>(work).Message, StringComparison.Ordinal);

    private static void Run(TrainSpec spec) => _ = new TrainModel(spec);
}
