using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Checks.Drive;
using Gudgeon.Book.Drive;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tests.Demo;
using Gudgeon.Book.Tracing;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Tests.Drive;

/// <summary>Air filter, ducts and compressor map of the invented twin.</summary>
public class AirTests
{
    private const double R = 287.05287;

    private static EngineDuty Run => DemoBooks.Heron.Run;

    private static PointFigures Top => BlowerDuty.MostAir(Run)!.Value.Figures;

    private static AirSheet Sheet => AirSheet.Of(DriveBooks.Heron.Now(), DriveBooks.Desk);

    private static Finding Of(string id, params (string Path, string Text)[] other) => DriveBooks.Of(DriveBooks.Heron.Changed("other", other), id);

    [Fact] // 1250 cm² tested with 120 L/s and 0.3 kPa, four tenths of it linear, in air of 17 °C and 1011 hPa, as read.
    public void TheDropOfTheFilterIsAsByHand()
    {
        var (density, test) = (101_100 / (R * 290.15), 101_325 / (R * 293.15));
        var share = Top.Blower!.Flow / density / 0.120;
        var viscosity = Math.Pow(290.15 / 293.15, 1.5) * (293.15 + 110.4) / (290.15 + 110.4);
        var drop = 300 * ((0.4 * viscosity * share) + (0.6 * density / test * share * share));
        Assert.Equal(1, Of("filter-drop").Judgement!.Value / drop, 1e-9);
        Assert.InRange(drop, 400, 500);
    }

    [Theory] // In proportion to what was tested: some 0.45 kPa of the 1.5 kPa that are allowed.
    [InlineData("0.9 kPa", "", Verdict.Holds)]
    [InlineData("1.1 kPa", "", Verdict.FallsShort)]
    [InlineData("1.1 kPa", "2 kPa", Verdict.Holds)]
    public void AFilterThatTakesMuchFallsShort(string drop, string limit, Verdict verdict)
    {
        var book = DriveBooks.Heron.Changed("other", ("airFilter.testDrop", drop));
        Assert.Equal(verdict, DriveBooks.Of(limit.Length > 0 ? book.Limited("filter-drop.max", limit) : book, "filter-drop").Verdict);
    }

    [Theory] // Some 154 L/s at 1.5 m/s want 1026 cm².
    [InlineData("1040 cm²", "1.5 m/s", Verdict.Holds)]
    [InlineData("1010 cm²", "1.5 m/s", Verdict.FallsShort)]
    [InlineData("1010 cm²", "1.6 m/s", Verdict.Holds)]
    public void AreaIsWantedForTheFlow(string area, string speed, Verdict verdict)
    {
        var finding = Of("filter-area", ("airFilter.area", area), ("airFilter.faceSpeed", speed));
        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(1, finding.Judgement!.Lower!.Value * (speed == "1.5 m/s" ? 1.5 : 1.6) * 101_100 / (R * 290.15) / Top.Blower!.Flow, 1e-9);
    }

    [Fact] // The areas that the sheet wants are the edges of their checks.
    public void TheAreaWantedForADropHasThatDrop()
    {
        var flow = Top.Blower!.Flow;
        var filter = new FittedFilter(new View(DriveBooks.Heron.Changed("kept", ("airFilter.testArea", "1250 cm²")).Now()));
        var area = filter.AreaForDrop(flow);
        var other = new FittedFilter(new View(DriveBooks.Heron.Changed("kept", ("airFilter.testArea", "1250 cm²"), ("airFilter.area", $"{area * 1e4:R} cm²")).Now()));
        Assert.Equal(1500, other.Drop(flow), 1e-4);
    }

    [Fact] // Filter and inlet as one opening: a slow flow through it takes ρ u² / 2.
    public void TheRunIsNotMadeWithARosierInlet()
    {
        var view = new View(DriveBooks.Heron.Now(), DriveBooks.Desk);
        var lost = new FittedFilter(view).Drop(Top.Blower!.Flow) + new FittedDuct(view, "inlet").Loss(Top);
        var opening = Top.Blower.Flow / Math.Sqrt(2 * lost * 101_100 / (R * 290.15));
        Assert.Equal(1, Of("inlet-area").Judgement!.Value / opening, 0.005);
        Assert.Equal(Verdict.Holds, Of("inlet-area").Verdict);
        Assert.Equal(Verdict.FallsShort, Of("inlet-area", ("airFilter.testDrop", "0.4 kPa")).Verdict);
        Assert.Equal(Verdict.FallsShort, Of("inlet-area", ("duct[inlet].loss", "0.4")).Verdict);
        Assert.Equal(Verdict.Holds, Of("inlet-area", ("duct[delivery].loss", "4")).Verdict);
    }

    [Fact] // m = ρ u A in the air that the run has there.
    public void DuctsPassTheSameAir()
    {
        var (blower, view) = (Top.Blower!, new View(DriveBooks.Heron.Now(), DriveBooks.Desk));
        Passes("inlet", 70e-3, blower.MeanInletPressure / (R * 290.15));
        Passes("delivery", 48e-3, blower.MeanInletPressure * blower.PressureRatio / (R * blower.DeliveryTemperature));
        Passes("cooled", 50e-3, (101_100 + Top.Boost) / (R * Top.ChargeTemperature));

        void Passes(string duct, double bore, double density) =>
            Assert.Equal(blower.Flow, density * new FittedDuct(view, duct).Speed(Top) * Math.PI / 4 * bore * bore, 1e-9);
    }

    [Theory]
    [InlineData("duct-speed[inlet]", "58 mm", "57 mm", "duct-speed.before")]
    [InlineData("duct-speed[delivery]", "39 mm", "38 mm", "duct-speed.behind")]
    [InlineData("duct-speed[cooled]", "34.5 mm", "33.5 mm", "duct-speed.behind")]
    public void ANarrowDuctFallsShort(string id, string wide, string narrow, string limit)
    {
        var bore = id.Replace("duct-speed", "duct", StringComparison.Ordinal) + ".bore";
        Assert.Equal(Verdict.Holds, Of(id, (bore, wide)).Verdict);
        Assert.Equal(Verdict.FallsShort, Of(id, (bore, narrow)).Verdict);
        Assert.Equal(Verdict.Holds, DriveBooks.Of(DriveBooks.Heron.Changed("other", (bore, narrow)).Limited(limit, "90 m/s"), id).Verdict);
    }

    [Fact]
    public void ADuctWhosePlaceIsNotKnownIsAskedFor()
    {
        var finding = Of("duct-speed[spare]", ("duct[spare].bore", "50 mm"));
        Assert.Equal(Verdict.NotKnownYet, finding.Verdict);
        Assert.Equal(["duct[spare].place"], finding.Missing);
    }

    // Read off the map again: the flow of each point over the last point of its own speed line.
    [Fact]
    public void TheChokeMarginIsWhatIsLeftOfTheMap()
    {
        var map = BlowerDuty.Map(Run)!;
        var filled = BlowerDuty.Line(Run).Select(s => s.Flow / map.At(s.Speed).ChokeFlow).ToList();
        Assert.All(filled.Zip(Run.Figures), p => Assert.Equal(1 - p.First, p.Second.Figures.Blower!.ChokeMargin!.Value, 5e-3));
        var finding = Of("choke-margin");
        Assert.Equal(filled.Max(), finding.Judgement!.Value, 5e-3);
        Assert.Equal(0.95 / finding.Judgement.Value, finding.Reserve, 1e-12);
        Assert.Equal(Verdict.Holds, finding.Verdict);
        Assert.Equal(Verdict.FallsShort, DriveBooks.Of(DriveBooks.Heron.Limited("choke-margin.min", "25 %"), "choke-margin").Verdict);
        Assert.Contains(BlowerDuty.Least(Run, b => b.ChokeMargin).Speed, Run.TellingSpeeds);
    }

    [Fact]
    public void OnlyWhatIsThereIsLookedAt()
    {
        Assert.Equal(["choke-margin", "surge-margin"], Ids(Engines.Centrifugal, Engines.BlownDesk).Intersect(Air).Order(StringComparer.Ordinal));
        Assert.Empty(Ids(Engines.Blown, Engines.BlownDesk).Intersect(Air));
        Assert.Empty(Ids(DriveBooks.Wren.Changed("filter", ("airFilter.area", "400 cm²"), ("duct[inlet].bore", "50 mm")), DemoBooks.Wren.Desk).Intersect(Air));

        var finding = new Appraiser(Engines.BlownDesk) { WithUncertainty = false }.Appraise(CheckCatalogue.Find("filter-drop"), "", Engines.Blown.Set(("airFilter.area", "500 cm²")).Now());
        Assert.Equal(["airFilter.testDrop", "airFilter.testFlow"], finding.Missing.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void TheSheetFollowsTheAirOverTheWholeRun()
    {
        var sheet = Sheet;
        Assert.Equal(["Air filter at the greatest flow", "Ducts at the greatest flow", "Match on the compressor map"], sheet.Steps.Select(s => s.Title));
        Assert.Equal(["inlet", "delivery", "cooled"], sheet.Ducts);
        Assert.Equal(Run.Points.Select(p => p.Speed), sheet.Rows.Select(r => r.Speed));
        Assert.Empty(sheet.Missing);

        var (first, last) = (sheet.Rows[0], sheet.Rows[^1]);
        Assert.Equal(9700 * 1.3226 * 7.5 / 98000, last.SpeedShare!.Value, 1e-9);
        Assert.Equal(Of("filter-drop").Judgement!.Value, last.FilterDrop!.Value, 1e-9);
        Assert.Equal(Of("duct-speed[delivery]").Judgement!.Value, last.Ducts[1]!.Value, 1e-9);
        Assert.Equal(Of("surge-margin").Judgement!.Value - 1, sheet.Rows.Min(r => r.SurgeMargin!.Value), 1e-12);
        Assert.Equal(1 - Of("choke-margin").Judgement!.Value, sheet.Rows.Min(r => r.ChokeMargin!.Value), 1e-12);
        Assert.True(last.FilterDrop > 5 * first.FilterDrop && last.Corrected > 3 * first.Corrected);
    }

    [Fact]
    public void ABlowerWithoutAMapHasFilterAndDuctsAlone()
    {
        var sheet = AirSheet.Of(Engines.Blown.Set(("duct[hose].place", "behind the blower"), ("duct[hose].bore", "45 mm")).Now(), Engines.BlownDesk);
        Assert.DoesNotContain(sheet.Steps, s => s.Title.Contains("map", StringComparison.Ordinal));
        Assert.All(sheet.Rows, r => Assert.True(r is { Corrected: null, SurgeMargin: null, ChokeMargin: null, FilterDrop: null } && r.Ducts[0] > 1));
        Assert.Contains("airFilter.testDrop", sheet.Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void WithoutABlowerThereIsNoSheet()
    {
        var sheet = AirSheet.Of(DriveBooks.Wren.Now(), DemoBooks.Wren.Desk);
        Assert.Empty(sheet.Steps);
        Assert.Contains("no supercharger that the crank drives", sheet.Missing, StringComparison.Ordinal);
    }

    private static readonly string[] Air = ["filter-drop", "filter-area", "inlet-area", "duct-speed", "surge-margin", "choke-margin"];

    private static IEnumerable<string> Ids(BuildBook book, DutyDesk desk) =>
        new Appraiser(desk) { WithUncertainty = false }.Appraise(book.Now(), CheckCatalogue.All.Where(c => Air.Contains(c.Id, StringComparer.Ordinal))).Select(f => f.Check.Id).Distinct();

    [Fact] // The surge line straight between the ends of the map's lines: the run at 9700 rpm against it, by hand.
    public void TheSurgeMarginSaysWhichItIs()
    {
        var match = Sheet.Steps.Single(s => s.Title == "Match on the compressor map").Facts;
        Assert.Contains("same speed: Πs m / (Π ms) - 1", match.Single(f => f.Name == "least surge margin").Words(imperial: false), StringComparison.Ordinal);
        Assert.Contains("same pressure ratio: 1 - mp / m", match.Single(f => f.Name == "least surge margin by flow alone").Words(imperial: false), StringComparison.Ordinal);
        Assert.Equal(Sheet.Rows.Min(r => r.SurgeMarginAtRatio), match.Single(f => f.Name == "least surge margin by flow alone").Value);
        var (spot, lines) = (BlowerDuty.Line(Run)[^1], BlowerDuty.Map(Run)!.Lines);
        var upper = lines.First(l => l.Points[0].PressureRatio >= spot.Ratio).Points[0];
        var lower = lines.Last(l => l.Points[0].PressureRatio < spot.Ratio).Points[0];
        var along = (spot.Ratio - lower.PressureRatio) / (upper.PressureRatio - lower.PressureRatio);
        Assert.Equal(1 - ((lower.CorrectedFlow + (along * (upper.CorrectedFlow - lower.CorrectedFlow))) / spot.Flow), Sheet.Rows[^1].SurgeMarginAtRatio!.Value, 1e-12);
    }
}
