using CsCheck;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Calc.Tests.ValveTrain;

public class SprocketSettingTests
{
    /// <summary>Every correction is met within half the least step, and the holes named give it.</summary>
    [Fact]
    public void TheVernierMeetsEveryCorrectionWithinHalfAStep() => Gen.Select(Gen.Double[-0.3, 0.3], Gen.Int[2, 40], Gen.Int[2, 40]).Sample((wanted, hub, sprocket) =>
    {
        var holes = SprocketSetting.Vernier(wanted, hub, sprocket);
        Assert.Equal(wanted, holes.Correction + holes.Left, 1e-12);
        Assert.InRange(Math.Abs(holes.Left), 0, (holes.Step / 2) + 1e-9);
        var turns = (holes.Sprocket / sprocket) - (holes.Hub / hub) - (holes.Correction / (4 * Math.PI));
        Assert.Equal(0, turns - Math.Round(turns), 1e-9);
    }, iter: 1_000);

    [Fact]
    public void NothingWantedLeavesTheHolesAlone() => Assert.Equal((0, 0, 0), (SprocketSetting.Vernier(0, 7, 8) is var h ? h.Hub : -1, h.Sprocket, h.Correction));
}
