using CsCheck;
using Gudgeon.Calc.Bearings;

namespace Gudgeon.Calc.Tests.Bearings;

/// <summary>Shells, marks and clearance.</summary>
public class ShellClearanceTests
{
    [Fact]
    public void TheWallForAClearanceGivesThatClearance() => Gen.Select(Gen.Double[0.03, 0.06], Gen.Double[1e-6, 1e-4]).Sample((journal, clearance) =>
    {
        var wall = ShellClearance.WallFor(journal + 0.003, journal, clearance);
        Assert.Equal(clearance, ShellClearance.Clearance(journal + 0.003, wall, journal), 1e-12);
    });

    [Fact]
    public void OneStepOnBothShellsMovesTheClearanceByTwoSteps() =>
        Assert.Equal(6e-6, ShellClearance.Clearance(0.044, 0.002, 0.03996) - ShellClearance.Clearance(0.044, 0.002003, 0.03996), 1e-12);

    [Fact]
    public void MixedShellsLieHalfWay() =>
        Assert.Equal(3e-6, ShellClearance.Clearance(0.044, 0.002, 0.03996) - ShellClearance.Clearance(0.044, 0.002, 0.03996, 0.002003), 1e-12);
}
