using Gudgeon.Book.Sweeps;

namespace Gudgeon.Book.Tests.Sweeps;

/// <summary>The search apart from the engine, on functions whose greatest value is known.</summary>
public class BoxSearchTests
{
    [Fact]
    public void Finds_the_top_of_a_parabola()
    {
        var found = new BoxSearch(1, Free(x => 5 - ((x[0] - 0.371) * (x[0] - 0.371)))).Run([0.9]);
        Assert.Equal(0.371, found.Best.At[0], 0.01);
        Assert.True(found.Closed);
    }

    // A quadric with its axes turned against the bounds: its top is where its gradient vanishes.
    [Fact]
    public void Finds_the_top_of_a_slanting_ridge_of_three_numbers()
    {
        double[] top = [0.62, 0.34, 0.71];
        var found = new BoxSearch(3, Free(x =>
        {
            var (a, b, c) = (x[0] - top[0], x[1] - top[1], x[2] - top[2]);
            return 1 - (3 * (a + b) * (a + b)) - ((a - b) * (a - b) / 2) - (2 * (b - c) * (b - c));
        })).Run([0.1, 0.1, 0.1]);
        Assert.All(found.Best.At.Zip(top), p => Assert.Equal(p.Second, p.First, 0.01));
    }

    [Fact]
    public void Six_numbers_reach_their_top_within_the_trials_allowed()
    {
        double[] top = [0.2, 0.35, 0.5, 0.6, 0.75, 0.9];
        var found = new BoxSearch(6, Free(x => 10 - x.Zip(top, (a, b) => (a - b) * (a - b)).Sum())).Run([0.5, 0.5, 0.5, 0.5, 0.5, 0.5]);
        Assert.All(found.Best.At.Zip(top), p => Assert.Equal(p.Second, p.First, 0.01));
        Assert.True(found.Closed);
        Assert.InRange(found.Trials, 30, 420);
    }

    [Fact]
    public void A_rising_function_ends_at_its_bounds()
    {
        var found = new BoxSearch(2, Free(x => x[0] - (2 * x[1]))).Run([0.4, 0.4]);
        Assert.Equal([1.0, 0.0], found.Best.At);
    }

    // x + 2y on the unit disc is greatest at (1, 2)/√5, and is √5 there.
    [Fact]
    public void Keeps_what_must_hold_and_slides_along_its_edge()
    {
        var found = new BoxSearch(2, x => new Trial(x, x[0] + (2 * x[1]), 1 - (x[0] * x[0]) - (x[1] * x[1]))).Run([0.1, 0.1]);
        Assert.True((found.Best.At[0] * found.Best.At[0]) + (found.Best.At[1] * found.Best.At[1]) <= 1);
        Assert.Equal(Math.Sqrt(5), found.Best.Value, 0.01 * Math.Sqrt(5));
        Assert.Equal(1 / Math.Sqrt(5), found.Best.At[0], 0.01);
    }

    [Fact]
    public void From_a_start_that_does_not_hold_it_comes_to_what_does()
    {
        var found = new BoxSearch(2, x => new Trial(x, -x[0] - x[1], x[0] - 0.8)).Run([0.05, 0.5]);
        Assert.InRange(found.Best.At[0], 0.8, 0.81);
        Assert.Equal(0, found.Best.At[1]);
    }

    [Fact]
    public void Never_chooses_a_point_without_a_value()
    {
        var found = new BoxSearch(1, x => new Trial(x, x[0] > 0.6 ? double.NaN : x[0])).Run([0.99]);
        Assert.InRange(found.Best.At[0], 0.59, 0.6);
    }

    // Two checks that meet at a corner, and a value with a fold in it: nothing here is smooth.
    [Fact]
    public void Finds_a_corner_of_two_edges()
    {
        var found = new BoxSearch(2, x => new Trial(x, x[0] + x[1] - Math.Abs(x[0] - x[1]), Math.Min(0.7 - x[0] - (x[1] / 4), 0.9 - x[1] - (x[0] / 2)))).Run([0.1, 0.1]);

        // x = y is best: 2x with x + x/4 ≤ 0.7 and x + x/2 ≤ 0.9, so x = 0.56.
        Assert.Equal(0.56, found.Best.At[0], 0.01);
        Assert.Equal(1.12, found.Best.Value, 0.0112);
        Assert.True(found.Best.Holds);
    }

    [Fact]
    public void Goes_the_same_way_every_time()
    {
        List<double> Way()
        {
            var way = new List<double>();
            new BoxSearch(2, Free(x =>
            {
                way.AddRange(x);
                return -((x[0] - 0.3) * (x[0] - 0.3)) - Math.Abs(x[1] - x[0]);
            })).Run([0.8, 0.2]);
            return way;
        }

        Assert.Equal(Way(), Way());
    }

    [Fact]
    public void Tries_no_more_points_than_it_may_and_says_that_it_was_not_done()
    {
        var found = new BoxSearch(2, Free(x => x[0] + x[1])) { MostTrials = 12 }.Run([0.2, 0.2]);
        Assert.Equal(12, found.Trials);
        Assert.False(found.Closed);
    }

    [Fact]
    public void Stops_when_told()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => new BoxSearch(1, Free(x => x[0])) { Cancellation = stop.Token }.Run([0.5]));
    }

    private static Func<double[], Trial> Free(Func<double[], double> value) => x => new Trial(x, value(x));
}
