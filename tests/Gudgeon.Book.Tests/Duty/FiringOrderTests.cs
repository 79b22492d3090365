using CsCheck;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Duty;

public class FiringOrderTests
{
    // Crank angle at which cylinder 1, 2, … fires.
    [Theory]
    [InlineData(1, "", "", new double[] { 0 })]
    [InlineData(2, "", "", new double[] { 0, 360 })]
    [InlineData(2, "1-2", "360-360", new double[] { 0, 360 })]
    [InlineData(2, "1-2", "180-540", new double[] { 0, 180 })]
    [InlineData(2, "1-2", "270-450", new double[] { 0, 270 })]
    [InlineData(2, "2-1", "270-450", new double[] { 270, 0 })]
    [InlineData(2, "1-2", "315-405", new double[] { 0, 315 })]
    [InlineData(2, "1-2", "0-720", new double[] { 0, 0 })]
    [InlineData(3, "1-2-3", "", new double[] { 0, 240, 480 })]
    [InlineData(4, "1-3-4-2", "", new double[] { 0, 540, 180, 360 })]
    [InlineData(4, "1-2-4-3", "", new double[] { 0, 180, 540, 360 })]
    [InlineData(4, "1-3-2-4", "180 - 90 - 180 - 270", new double[] { 0, 270, 180, 450 })]
    [InlineData(6, "1-5-3-6-2-4", "", new double[] { 0, 480, 240, 600, 120, 360 })]
    public void Cylinders_fire_where_order_and_intervals_put_them(int cylinders, string order, string intervals, double[] angles) =>
        Assert.Equal(angles, FiringOrder.Angles(cylinders, order, intervals));

    [Theory]
    [InlineData(2, "1", "")]
    [InlineData(2, "1-1", "")]
    [InlineData(2, "1-3", "")]
    [InlineData(2, "0-1", "")]
    [InlineData(2, "1-2-3", "")]
    [InlineData(2, "1.5-2", "")]
    [InlineData(2, "1.2-2.9", "")]
    [InlineData(2, "a-b", "")]
    [InlineData(2, "1,2", "")]
    [InlineData(2, "1-NaN", "")]
    [InlineData(4, "1-3-4", "")]
    [InlineData(2, "", "360")]
    [InlineData(2, "", "360-350")]
    [InlineData(2, "", "360-360-0")]
    [InlineData(2, "", "720-720")]
    [InlineData(2, "", "NaN-NaN")]
    [InlineData(2, "", "Infinity-360")]
    [InlineData(2, "", "x")]
    public void A_bad_order_is_refused(int cylinders, string order, string intervals)
    {
        var e = Assert.Throws<BadInputException>(() => FiringOrder.Angles(cylinders, order, intervals));
        Assert.StartsWith(order.Length > 0 ? "engine.firingOrder: given '" : "engine.firingIntervals: given '", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_order_with_even_intervals_fires_every_cylinder_once_and_evenly() =>
        Gen.Shuffle(Enumerable.Range(1, 6).ToArray()).Sample(order =>
        {
            var angles = FiringOrder.Angles(6, string.Join('-', order), "");
            Assert.Equal([0.0, 120, 240, 360, 480, 600], angles.Order());
            Assert.Equal(order, Enumerable.Range(1, 6).OrderBy(c => angles[c - 1]));
        });
}
