using Gudgeon.Book.Build;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Tests.Demo;

namespace Gudgeon.Book.Tests.Drawings;

/// <summary>The numbers of the drawings, added up by hand from the demo's readings.</summary>
public class DrawingNumbersTests
{
    private static readonly Snapshot Heron = DemoBooks.Heron.Now;

    [Fact]
    public void Squish_is_gasket_and_deck()
    {
        var section = CylinderSection.Of(Heron, "1");
        Assert.Equal(["1", "2"], CylinderSection.Keys(Heron));
        Assert.Equal(1.12e-3, section.Squish!.Value, 9);
        Assert.Equal((0.91e-3, 0.21e-3), (section.Gasket!.Value, section.Deck!.Value));
    }

    [Fact]
    public void The_coil_bind_margin_is_what_spacer_lift_and_solid_height_leave()
    {
        var heights = SpringHeights.Of(Heron, "inlet.1.1");
        Assert.Contains("inlet.1.1", SpringHeights.Keys(Heron));
        Assert.Equal(36.47e-3, heights.Shut!.Value, 9);
        Assert.Equal(26.10e-3, heights.Open!.Value, 9);
        Assert.Equal(2.05e-3, heights.Margin!.Value, 9);
        // 30 N/mm by the tester: 273 N at 38.5 mm.
        Assert.Equal(273 + (30 * 2.03), heights.SeatLoad!.Value, 1);
    }

    [Fact]
    public void The_events_are_the_ends_of_the_lift_curves()
    {
        var timing = ValveTiming.Of(Heron, "1");
        double[] degrees = [.. new[] { timing.InletOpens, timing.InletCloses, timing.ExhaustOpens, timing.ExhaustCloses, timing.InletDuration, timing.ExhaustDuration, timing.Overlap }.Select(a => Math.Round(a!.Value * 180 / Math.PI, 6))];
        Assert.Equal([54, 78, 89, 41, 312, 310, 95], degrees);
    }

    [Fact]
    public void Without_a_curve_the_events_are_as_written()
    {
        var timing = ValveTiming.Of(Books.Of(("valve[inlet].opens", "20°"), ("valve[inlet].closes", "50°"), ("valve[exhaust].opens", "55°")).Now(), "1");
        Assert.Equal(250, timing.InletDuration!.Value * 180 / Math.PI, 6);
        Assert.Null(timing.ExhaustDuration);
        Assert.Null(timing.Overlap);
    }

    [Fact]
    public void Clearance_is_housing_less_two_shells_less_journal()
    {
        Assert.Equal(0.042e-3, ShellFit.Of(Heron, "main.1").Clearance!.Value, 9);
        var wanting = ShellFit.Of(Heron, "bigEnd.2");
        Assert.Null(wanting.Housing);
        Assert.Null(wanting.Clearance);
        Assert.NotNull(wanting.Journal);
    }

    [Fact]
    public void An_empty_book_has_drawings_without_numbers()
    {
        var none = Books.Of().Now();
        Assert.Equal(new CylinderSection(null, null, null, null, null, null, null), CylinderSection.Of(none, CylinderSection.Keys(none)[0]));
        Assert.Null(SpringHeights.Of(none, SpringHeights.Keys(none)[0]).Margin);
        Assert.Null(ValveTiming.Of(none, "").Overlap);
        Assert.Null(ShellFit.Of(none, ShellFit.Keys(none)[0]).Clearance);
    }
}
