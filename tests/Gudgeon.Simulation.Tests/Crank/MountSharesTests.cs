using Gudgeon.Simulation.Crank;

namespace Gudgeon.Simulation.Tests.Crank;

/// <summary>How mounts share what shakes, by statics.</summary>
public class MountSharesTests
{
    private static readonly MountPoint[] Square = [new("a", 0.2, 0, -0.1), new("b", 0.2, 0, 0.1), new("c", -0.2, 0, -0.1), new("d", -0.2, 0, 0.1)];

    [Fact]
    public void A_force_through_the_middle_is_shared_alike()
    {
        // A half-balanced single without its roll: what turns goes through the crank axis, in the middle of four mounts.
        var line = Cranks.Inline(1e-9, 0.0275, 0.104, 0, 0);
        var weight = new Spinner { Name = "w", Unbalance = 4e-3 };
        var shaking = Shaking.Of(line, [weight], 500);
        var loads = MountShares.Of(Square, shaking.About)!.Loads(shaking, [1, 2]);
        Assert.All(loads, m => Assert.Equal(4e-3 * 500 * 500 / 4, m.Orders[0], 1e-3));
        Assert.All(loads, m => Assert.Equal(4e-3 * 500 * 500 / 4, m.Greatest, 1e-3));
        Assert.All(loads, m => Assert.Equal(0, m.Orders[1], 1e-3));
    }

    // A force of 1 kN up at x = 0.1 m: the mounts at x = 0.2 carry 375 N each, those at −0.2 carry 125 N each.
    [Fact]
    public void A_force_beside_the_middle_goes_to_the_nearer_mounts()
    {
        var line = Cranks.Inline(1e-9, 0.0275, 0.104, 0, 0);
        var up = new Spinner { Name = "w", Unbalance = 1e-3, Ratio = 1, X = 0.1 };
        var down = new Spinner { Name = "a", Unbalance = 1e-3, Ratio = -1, X = 0.1 };
        var shaking = Shaking.Of(line, [up, down], Math.Sqrt(500e3));
        var loads = MountShares.Of(Square, shaking.About)!.Loads(shaking, [1]);
        Assert.Equal([375, 375, 125, 125], loads.Select(m => Math.Round(m.Orders[0], 3)));
    }

    [Fact]
    public void Mounts_that_cannot_hold_everything_say_so()
    {
        Assert.Null(MountShares.Of(Square[..2], 0));
        Assert.Null(MountShares.Of([new("a", 0, 0, 0), new("b", 0.1, 0.1, 0), new("c", 0.3, 0.3, 0)], 0));
    }
}
