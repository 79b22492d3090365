using Gudgeon.Simulation.Engine;

namespace Gudgeon.Simulation.Tests.Engine;

/// <summary>An impossible engine is refused with a sentence that names the part.</summary>
public class EngineSpecTests
{
    private static readonly EngineSpec Sound = Engines.PetrolSingle();

    [Fact]
    public void SoundEnginesAreTaken()
    {
        _ = new EngineModel(Sound);
        _ = new EngineModel(Engines.BlownTwin());
        _ = new EngineModel(Engines.MethanolSingle());
        _ = new EngineModel(MotoredRig.Spec);
    }

    [Fact]
    public void LiftCurveThatDoesNotCloseIsRefused() =>
        Refused(Inlet(v => v with { Lift = new([340, 460, 590], [0, 0.009, 0.0005]) }), "cylinder 1, inlet valve", "0.0005", "close");

    [Fact]
    public void NegativeLiftIsRefused() =>
        Refused(Inlet(v => v with { Lift = new([340, 400, 460, 590], [0, 0.009, -0.001, 0]) }), "inlet valve", "-0.001");

    [Fact]
    public void AnglesOutOfOrderAreRefused() =>
        Refused(Inlet(v => v with { Lift = new([340, 460, 450, 590], [0, 0.009, 0.008, 0]) }), "inlet valve", "460", "450", "rise");

    [Fact]
    public void AnglesFromExchangeTopDeadCentreAreRefused() =>
        Refused(Inlet(v => v with { Lift = new([-20, 110, 240], [0, 0.009, 0]) }), "firing top dead centre");

    [Theory]
    [InlineData(0.0)]
    [InlineData(-0.1)]
    [InlineData(1.21)]
    [InlineData(double.NaN)]
    public void FlowCoefficientOutOfRangeIsRefused(double coefficient) =>
        Refused(Inlet(v => v with { Flow = new FlowTable { LiftOverDiameter = [0, 0.1, 0.2], Forward = [0.6, coefficient, 0.5] } }), "inlet valve", "flow coefficient");

    [Fact]
    public void FlowTableOfWrongLengthIsRefused() =>
        Refused(Inlet(v => v with { Flow = new FlowTable { LiftOverDiameter = [0, 0.1, 0.2], Forward = [0.6, 0.5] } }), "inlet valve", "flow table");

    [Theory]
    [InlineData(-1.0)]
    [InlineData(720.0)]
    [InlineData(double.NaN)]
    public void FiringAngleOutsideTheCycleIsRefused(double angle) => Refused(Cylinder(c => c with { FiringAngle = angle }), "cylinder 1", "firing angle");

    [Fact]
    public void TwoEqualFiringAnglesAreRefusedUnlessMeant()
    {
        var twin = Engines.BlownTwin();
        var together = twin with { Cylinders = [twin.Cylinders[0], twin.Cylinders[0]] };
        Refused(together, "two fire at 0°");
        _ = new EngineModel(together with { FireTogether = true });
    }

    [Fact]
    public void NoCylinderIsRefused() => Refused(Sound with { Cylinders = [] }, "cylinders");

    [Fact]
    public void BothCompressionRatioAndClearanceAreRefused() => Refused(Cylinder(c => c with { ClearanceVolume = 5e-5 }), "either");

    [Fact]
    public void ShortRodIsRefused() => Refused(Cylinder(c => c with { Rod = 0.03 }), "cylinder 1", "rod");

    [Fact]
    public void ValvesLargerThanTheBoreAreRefused() => Refused(Inlet(v => v with { HeadDiameter = 0.07 }), "larger than the bore");

    [Fact]
    public void NanIsRefused()
    {
        Refused(Cylinder(c => c with { Bore = double.NaN }), "bore");
        Refused(Sound with { Lambda = double.NaN }, "lambda");
        Refused(Sound with { Ambient = new AmbientSpec { Pressure = double.NaN } }, "ambient");
        Refused(Sound with { Walls = new WallSpec { WoschniScale = double.NaN } }, "Woschni");
    }

    [Fact]
    public void RunOptionsAreChecked()
    {
        var model = new EngineModel(Sound);
        Assert.Throws<EngineSpecException>(() => model.Run(new RunOptions { Speeds = [] }));
        Assert.Throws<EngineSpecException>(() => model.Run(new RunOptions { Speeds = [double.NaN] }));
        Assert.Throws<EngineSpecException>(() => model.Run(new RunOptions { Speeds = [500], CrankStep = 0 }));
    }

    private static EngineSpec Cylinder(Func<CylinderSpec, CylinderSpec> change) => Sound with { Cylinders = [change(Sound.Cylinders[0])] };

    private static EngineSpec Inlet(Func<ValveSpec, ValveSpec> change) => Cylinder(c => c with { Inlet = change(c.Inlet) });

    private static void Refused(EngineSpec spec, params string[] wanted)
    {
        var message = Assert.Throws<EngineSpecException>(() => new EngineModel(spec)).Message;
        Assert.All(wanted, w => Assert.Contains(w, message, StringComparison.Ordinal));
    }
}
