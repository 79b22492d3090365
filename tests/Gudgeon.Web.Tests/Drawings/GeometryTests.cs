using Gudgeon.Book.Drawings;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Web.Drawings;

namespace Gudgeon.Web.Tests.Drawings;

/// <summary>Positions follow the numbers.</summary>
public class GeometryTests
{
    private static readonly CylinderSection Section = new(90e-3, 0.2e-3, 0.9e-3, 92e-3, 38e-6, -7e-6, 1.1e-3);
    private static readonly SpringHeights Heights = new(38.5e-3, 2e-3, 10e-3, 24e-3, 2.5e-3, 3.7e-3, 5, 330, 640);
    private static readonly ShellFit Fit = new(45e-3, 2e-3, 49.04e-3, 40e-6, 28e-6, 58e-6);

    [Fact]
    public void The_gap_under_the_head_is_gasket_and_deck_at_the_stated_factor()
    {
        var drawn = new CylinderGeometry(Section, imperial: false);
        Assert.Equal(1.1e-3 * drawn.Scale * drawn.GapFactor, drawn.Crown - drawn.HeadFace, 6);
        Assert.Equal(0.9 / 1.1, (drawn.Deck - drawn.HeadFace) / (drawn.Crown - drawn.HeadFace), 6);
        Assert.Equal(90e-3 * drawn.Scale, drawn.Right - drawn.Left, 6);
        Assert.Equal(1e-3 * drawn.Scale, drawn.GasketInset, 6);
        Assert.True(drawn.DomeHeight < 0, "a dish lies below the edge of the crown");
    }

    [Fact]
    public void A_piston_that_stands_proud_is_drawn_above_the_deck()
    {
        var drawn = new CylinderGeometry(Section with { Deck = -0.3e-3, Squish = 0.6e-3 }, imperial: false);
        Assert.True(drawn.Crown < drawn.Deck);
        Assert.Equal(0.6e-3 * drawn.Scale * drawn.GapFactor, drawn.Crown - drawn.HeadFace, 6);
        Assert.Contains(new Told("piston proud of the deck", "0.3 mm", Known: true), drawn.Numbers);
    }

    // Half an ellipsoid over the mouth: 2/3 π a² h.
    [Fact]
    public void The_chamber_is_as_deep_as_its_volume()
    {
        var drawn = new CylinderGeometry(Section, imperial: false);
        var (half, depth) = (drawn.MouthHalf / drawn.Scale, drawn.ChamberDepth / drawn.Scale);
        Assert.Equal(38e-6, 2.0 / 3 * Math.PI * half * half * depth, 9);
    }

    [Fact]
    public void Gaps_fit_their_room_whatever_they_are() => Assert.All(
        new[] { 0.05e-3, 0.2e-3, 1e-3, 3e-3, 9e-3 },
        deck => Assert.InRange(new CylinderGeometry(Section with { Deck = deck }, imperial: false).Crown, 140, CylinderGeometry.Height - 60));

    [Fact]
    public void Springs_stand_to_one_scale_on_the_spacer()
    {
        var drawn = new SpringGeometry(Heights, imperial: false);
        Assert.Equal([36.5, 26.5, 24], drawn.Springs.Select(s => Math.Round((s.Bottom - s.Top) / drawn.Scale * 1000, 6)));
        Assert.All(drawn.Springs, s => Assert.Equal(2e-3 * drawn.Scale, SpringGeometry.Seat - s.Bottom, 6));
        Assert.Equal(2.5e-3 * drawn.Scale, drawn.Uprights[^1].To - drawn.Uprights[^1].From, 6);
        Assert.StartsWith("M", drawn.Path(drawn.Springs[0]), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_known_is_said_and_drawn_as_not_known()
    {
        var drawn = new SpringGeometry(Heights with { Lift = null, Margin = null, OpenLoad = null }, imperial: false);
        Assert.Equal([true, false, true], drawn.Springs.Select(s => s.Known));
        Assert.Contains(new Told("coil-bind margin", "not known", Known: false), drawn.Numbers);
        Assert.Equal("not known", drawn.Uprights[^1].Told.Value);
        Assert.DoesNotContain("not known", string.Join(' ', new SpringGeometry(Heights, imperial: false).Numbers.Select(n => n.Value)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 0, -100)]
    [InlineData(90, 100, 0)]
    [InlineData(180, 0, 100)]
    [InlineData(270, -100, 0)]
    [InlineData(360, 0, -100)]
    public void The_crank_turns_clockwise_from_the_top(double degrees, double right, double down)
    {
        var at = TimingGeometry.At(degrees * Math.PI / 180, 100);
        Assert.Equal((right, down), (Math.Round(at.X - TimingGeometry.X, 6), Math.Round(at.Y - TimingGeometry.Y, 6)));
    }

    [Fact]
    public void Events_stand_where_they_happen()
    {
        var drawn = new TimingGeometry(Timing(20, 50, 55, 15), imperial: false);
        Assert.Equal(["inlet opens 20° before TDC", "inlet closes 50° after BDC"], drawn.Inlet.Ends.Select(e => e.Words));
        Assert.Equal(["exhaust opens 55° before BDC", "exhaust closes 15° after TDC"], drawn.Exhaust.Ends.Select(e => e.Words));
        Assert.True(drawn.Inlet.Ends[0].X < TimingGeometry.X && drawn.Inlet.Ends[0].Y < TimingGeometry.Y, "before TDC is above, to the left");
        Assert.True(drawn.Inlet.Ends[1].X < TimingGeometry.X && drawn.Inlet.Ends[1].Y > TimingGeometry.Y, "after BDC is below, to the left");
        Assert.True(drawn.Exhaust.Ends[0].X > TimingGeometry.X && drawn.Exhaust.Ends[0].Y > TimingGeometry.Y, "before BDC is below, to the right");
        // More than half a turn: the long way round, clockwise.
        Assert.Contains("0 1 1 ", drawn.Inlet.Path, StringComparison.Ordinal);
        Assert.NotEmpty(drawn.Overlap);
        Assert.Contains(new Told("overlap", "35 °", Known: true), drawn.Numbers);
    }

    [Fact]
    public void Without_overlap_there_is_no_sector_and_without_events_no_arc()
    {
        Assert.Empty(new TimingGeometry(Timing(-10, 50, 55, 5), imperial: false).Overlap);
        var none = new TimingGeometry(new ValveTiming(null, null, null, null, null, null, null, null, null), imperial: false);
        Assert.Equal(("", "", 0), (none.Inlet.Path, none.Exhaust.Path, none.Inlet.Ends.Count));
        Assert.All(none.Numbers, n => Assert.Equal("not known", n.Value));
    }

    [Fact]
    public void The_clearance_is_drawn_at_the_stated_factor()
    {
        var drawn = new ShellGeometry(Fit, imperial: false);
        Assert.Equal(20e-6 * drawn.Scale * drawn.Factor, drawn.ShellInside - drawn.Journal, 6);
        Assert.Equal(2e-3 * drawn.Scale, drawn.Housing - drawn.ShellInside, 6);
        Assert.True(new ShellGeometry(Fit with { Clearance = -10e-6 }, imperial: false) is var tight && tight.Journal > tight.ShellInside);
    }

    [Fact]
    public void Numbers_are_in_the_units_of_the_looker()
    {
        Assert.Equal("0.9 mm", new CylinderGeometry(Section, imperial: false).Numbers[2].Value);
        Assert.Equal("0.035433 in", new CylinderGeometry(Section, imperial: true).Numbers[2].Value);
        Assert.Equal("0.0015748 in", new ShellGeometry(Fit, imperial: true).Numbers[3].Value);
    }

    [Theory]
    [InlineData("valve.flowTable", "1 mm at 0.6 at 0.5; 2 mm at 0.5 at 0.4", 2, 2)]
    [InlineData("driveline.gears", "2.7; 1.9; 1.5", 1, 3)]
    [InlineData("blower.map", "20000 rpm at 0.1 kg/s at 1.2 at 0.7; 20000 rpm at 0.2 kg/s at 1.1 at 0.7; 30000 rpm at 0.2 kg/s at 1.5 at 0.7; 30000 rpm at 0.3 kg/s at 1.4 at 0.7", 2, 2)]
    public void A_table_is_drawn_over_its_first_column_or_by_its_lines(string path, string text, int curves, int points)
    {
        var drawn = TablePicture.Drawn(Table.Parse(FieldCatalogue.Find(path)!, text));
        Assert.Equal((curves, points), (drawn.Curves.Count, drawn.Curves[0].X.Count));
    }

    private static ValveTiming Timing(double io, double ic, double eo, double ec)
    {
        const double Degree = Math.PI / 180;
        return new ValveTiming(io * Degree, ic * Degree, eo * Degree, ec * Degree, (io + 180 + ic) * Degree, (eo + 180 + ec) * Degree, (io + ec) * Degree, null, null);
    }
}
