using CsCheck;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Joints;
using Gudgeon.Book.Tests.Demo;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Joints;

/// <summary>Orders and stages of tightening.</summary>
public class TighteningPlanTests
{
    private static readonly IReadOnlyList<BoltPlace> TwinHead = Places((-96, 42), (-96, -42), (-12, 42), (-12, -42), (12, 42), (12, -42), (96, 42), (96, -42));

    [Fact]
    public void From_the_centre_outwards_the_inner_bolts_come_first()
    {
        var order = BoltOrder.Of(Joint.CentreOut, TwinHead);
        Assert.Equal([3, 4, 5, 6], order.Take(4).Order());
        Assert.Empty(BoltOrder.Troubles(TwinHead, order));
    }

    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(8)]
    [InlineData(10)]
    [InlineData(14)]
    public void Crosswise_on_a_circle_the_second_is_opposite_and_no_neighbours_follow_twice(int bolts)
    {
        var places = Circle(bolts);
        var order = BoltOrder.Of(Joint.Cross, places);
        Assert.Empty(BoltOrder.Troubles(places, order));
        Assert.InRange(Math.Abs(order[1] - order[0]), bolts / 2, (bolts + 1) / 2);
    }

    [Fact]
    public void Round_and_round_goes_from_neighbour_to_neighbour_and_is_told() =>
        Assert.Contains("twice in a row", Assert.Single(BoltOrder.Troubles(Circle(8), [1, 2, 3, 4, 5, 6, 7, 8])), StringComparison.Ordinal);

    public static TheoryData<int> Sizes => [.. Enumerable.Range(4, 17)];

    [Theory]
    [MemberData(nameof(Sizes))]
    public void A_spiral_alternates_between_opposite_sides(int bolts)
    {
        var rows = Places([.. Enumerable.Range(0, bolts).Select(i => ((i / 2 * 60.0) - (bolts * 15), i % 2 == 0 ? 42.0 : -42.0))]);
        var middle = Places([(0, 0), .. Enumerable.Range(0, bolts - 1).Select(i => (60 * Math.Cos(2 * Math.PI * i / (bolts - 1)), 60 * Math.Sin(2 * Math.PI * i / (bolts - 1))))]);
        foreach (var places in new[] { Circle(bolts), rows, middle })
        {
            Assert.Empty(BoltOrder.Troubles(places, BoltOrder.Of(Joint.Spiral, places)));
        }

        var (round, order) = (Circle(bolts), BoltOrder.Of(Joint.Spiral, Circle(bolts)));
        Assert.InRange(Math.Abs(round[order[0] - 1].To(round[order[1] - 1])), 0.095, 0.121);
    }

    // Eight round a circle, the first of them at the least bearing: each is followed by the one across from it.
    [Fact]
    public void A_spiral_of_eight() => Assert.Equal([6, 2, 7, 3, 8, 4, 1, 5], BoltOrder.Of(Joint.Spiral, Circle(8)));

    [Fact]
    public void A_spiral_begins_in_the_middle_and_passes_on_the_twin()
    {
        var order = BoltOrder.Of(Joint.Spiral, TwinHead);
        Assert.Equal([3, 4, 5, 6], order.Take(4).Order());
        Assert.Empty(BoltOrder.Troubles(TwinHead, order));
        Assert.Empty(TighteningPlan.Of(new View(DemoBooks.Heron.Book.Set(("joint[cover].order", "spiral")).Now()), "cover").Troubles);
    }

    [Fact]
    public void The_plan_says_how_bolts_are_numbered()
    {
        Assert.StartsWith("Bolt 1 is the first place of joint[head].layout", TighteningPlan.Of(new View(DemoBooks.Heron.Now), "head").Numbering, StringComparison.Ordinal);
        Assert.Contains("as you number them", TighteningPlan.Of(new View(DemoBooks.Heron.Now), "rod").Numbering, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_order_takes_every_bolt_once() =>
        Gen.Select(Gen.Double[-100, 100], Gen.Double[-100, 100]).Array[2, 16].Sample(points =>
        {
            var places = Places(points);
            foreach (var name in new[] { Joint.CentreOut, Joint.Cross, Joint.Spiral })
            {
                Assert.Equal(Enumerable.Range(1, places.Count), BoltOrder.Of(name, places).Order());
            }
        });

    [Fact]
    public void A_bolt_left_out_is_named() =>
        Assert.Equal("The order does not take every bolt once: twice 1; left out 8.", Assert.Single(BoltOrder.Troubles(TwinHead, [1, 2, 3, 4, 5, 6, 7, 1])));

    [Fact]
    public void Torque_in_stages_and_once_more_round()
    {
        var plan = TighteningPlan.Of(new View(DemoBooks.Heron.Now), "head");
        Assert.Empty(plan.Troubles);
        Assert.Equal([15.0, 30.0, 48.0, 48.0], plan.Stages.Select(s => Math.Round(s.Value!.Value, 9)));
        Assert.All(plan.Stages, s => Assert.Equal(Enumerable.Range(1, 8), s.Order.Order()));
    }

    // New stretch bolts: to a figure, all backed off, to the figure again, then the angle in turns of no more than a quarter.
    [Fact]
    public void Stretch_bolts_are_backed_off_and_turned_by_angle()
    {
        var book = Engines.Bare.Set(("joint[head].method", "yield or angle"), ("joint[head].snugTorque", "20 N·m"), ("joint[head].angle", "120°"));
        var plan = TighteningPlan.Of(new View(book.Now()), "head");
        Assert.Equal([StageKind.Torque, StageKind.BackOff, StageKind.Torque, StageKind.Angle, StageKind.Angle], plan.Stages.Select(s => s.Kind));
        Assert.Equal(plan.Order.Reverse(), plan.Stages[1].Order);
        Assert.Equal(Math.PI / 3, plan.Stages[^1].Value!.Value, 1e-12);
        Assert.Contains("joint[head].layout", Assert.Single(plan.Troubles), StringComparison.Ordinal);
        Assert.DoesNotContain(StageKind.BackOff, TighteningPlan.Of(new View(book.Set(("joint[head].backOff", "no")).Now()), "head").Stages.Select(s => s.Kind));
    }

    [Fact]
    public void Torques_that_fall_are_told()
    {
        var book = Engines.Bare.Set(("joint[head].stages", "30 N·m; 50 N·m"), ("joint[head].layout", "0 mm at 0 mm; 100 mm at 0 mm; 100 mm at 100 mm; 0 mm at 100 mm"));
        Assert.Equal("joint[head].stages: the torques do not rise to 44 N·m.", Assert.Single(TighteningPlan.Of(new View(book.Now()), "head").Troubles));
    }

    [Fact]
    public void The_makers_order_wants_its_numbers()
    {
        var book = Engines.Bare.Set(("joint[head].order", "by the maker"), ("joint[head].layout", "0 mm at 0 mm; 100 mm at 0 mm; 100 mm at 100 mm; 0 mm at 100 mm"));
        Assert.Contains("'turn'", Assert.Throws<BadInputException>(() => TighteningPlan.Of(new View(book.Now()), "head")).Message, StringComparison.Ordinal);
        var given = book.Set(("joint[head].layout", "0 mm at 0 mm at 2; 100 mm at 0 mm at 3; 100 mm at 100 mm at 1; 0 mm at 100 mm at 4"));
        Assert.Equal([3, 1, 2, 4], TighteningPlan.Of(new View(given.Now()), "head").Order);
    }

    [Fact]
    public void Places_and_bolts_that_disagree_are_told()
    {
        var book = Engines.Bare.Set(("joint[head].layout", "0 mm at 0 mm; 100 mm at 0 mm; 100 mm at 100 mm"));
        Assert.Contains("has 3 places", TighteningPlan.Of(new View(book.Now()), "head").Troubles[0], StringComparison.Ordinal);
    }

    private static List<BoltPlace> Circle(int bolts) => Places([.. Enumerable.Range(0, bolts).Select(i => (60 * Math.Cos(2 * Math.PI * i / bolts), 60 * Math.Sin(2 * Math.PI * i / bolts)))]);

    private static List<BoltPlace> Places(params (double X, double Y)[] millimetres) => [.. millimetres.Select((p, i) => new BoltPlace(i + 1, p.X * 1e-3, p.Y * 1e-3))];
}
