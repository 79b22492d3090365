using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Checks.Surfaces;
using Gudgeon.Book.Tests.Checks;
using Gudgeon.Book.Tests.Drive;
using Gudgeon.Book.Tracing;
using static Gudgeon.Book.Tests.Surfaces.RouteBooks;

namespace Gudgeon.Book.Tests.Surfaces;

/// <summary>Superfinishing, baking, coats, and what they hand to other checks.</summary>
public class FinishCheckTests
{
    [Fact]
    public void StockIsHeldToToleranceAndCase()
    {
        Of(Gears, "superfinish-removal[gears]").Is(4e-6, 2, Verdict.Holds);
        Of(Gears, "superfinish-case[gears]").Is(0.796e-3, 0.796 / 0.6, Verdict.Holds);
        Assert.Equal(Verdict.FallsShort, Of(Gears.Set(("superfinish[gears].removal", "9 µm")), "superfinish-removal[gears]").Verdict);
        Assert.Equal(Verdict.FallsShort, Of(Gears.Set(("treatment[gears].caseDepth", "0.602 mm")), "superfinish-case[gears]").Verdict);
        Assert.Equal(["superfinish[gears].removalMax"], Of(Gears.Without("superfinish[gears].removalMax"), "superfinish-removal[gears]").Missing);
        Assert.Null(Find(Gears.Without("treatment[gears].caseDepth"), "superfinish-case[gears]"));
    }

    [Fact]
    public void RoughnessIsHeldToTheDrawing()
    {
        Of(Gears, "superfinish-roughness[gears]").Is(0.083e-6, 0.1 / 0.083, Verdict.Holds);
        Assert.Equal(Verdict.FallsShort, Of(Gears.Set(("superfinish[gears].roughnessAfter", "0.12 µm")), "superfinish-roughness[gears]").Verdict);
    }

    [Fact] // Λ = 0.3 / (√2 √(π/2) 0.083), and with a ground face of 0.434 µm against it.
    public void TheFilmIsToldOverTheRoughness()
    {
        var rq = Math.Sqrt(Math.PI / 2);
        Of(Gears, "superfinish-lambda[gears]").Is(0.3 / (Math.Sqrt(2) * rq * 0.083), 0.3 / (Math.Sqrt(2) * rq * 0.083), Verdict.Holds);
        var ground = 0.3 / (rq * Math.Sqrt((0.083 * 0.083) + (0.434 * 0.434)));
        Of(Gears.Set(("superfinish[gears].matingRoughness", "0.434 µm")), "superfinish-lambda[gears]").Is(ground, ground, Verdict.FallsShort);
        Assert.Null(Find(Gears.Without("superfinish[gears].film"), "superfinish-lambda[gears]"));
    }

    [Fact] // SAE J417: 38 HRC is 1180 MPa; S08: 10 h up to 1200 MPa.
    public void TheBakeIsLongEnoughForTheHardness()
    {
        Of(Shaft, "bake-time[shaft]").Is(12 * 3600, 1.2, Verdict.Holds);
        Of(Shaft.Set(("treatment[shaft].hardness", "44")), "bake-time[shaft]").Is(12 * 3600, 12.0 / 16, Verdict.FallsShort);
        Of(Shaft.Set(("treatment[shaft].tensileStrength", "1201 MPa")), "bake-time[shaft]").Is(12 * 3600, 1, Verdict.Holds);
        Assert.Equal(["bake[shaft].time"], Of(Shaft.Without("bake[shaft].time"), "bake-time[shaft]").Missing);
        Assert.Equal(["treatment[shaft].tensileStrength"], Of(Shaft.Without("treatment[shaft].hardness"), "bake-time[shaft]").Missing);
    }

    [Fact]
    public void ASoftOrDryOrLightPartIsNotBaked()
    {
        Assert.Null(Find(Shaft.Set(("treatment[shaft].hardness", "31")), "bake-time[shaft]"));
        Assert.Null(Find(Shaft.Set(("treatment[shaft].tensileStrength", "1000 MPa")), "bake-time[shaft]"));
        Assert.Null(Find(Shaft.Set(("coating[shaft].process", "dry")), "bake-time[shaft]"));
        Assert.Null(Find(Shaft.Set(("treatment[shaft].metal", "aluminium")), "bake-time[shaft]"));
        Assert.Null(Find(Gears, "bake-time[gears]"));
    }

    [Fact]
    public void AnAcidCompoundWantsABake() =>
        Assert.Equal(["bake[gears].time"], Of(Gears.Set(("superfinish[gears].chemistry", "acid")), "bake-time[gears]").Missing);

    [Fact] // Carburised steel tempered at 180 °C cannot be baked at 190 °C.
    public void TheBakeIsHotEnoughBelowTemperingAndSoon()
    {
        Assert.Equal(Verdict.Holds, Of(Shaft, "bake-temperature[shaft]").Verdict);
        Assert.Equal(Verdict.FallsShort, Of(Shaft.Set(("bake[shaft].temperature", "189 °C")), "bake-temperature[shaft]").Verdict);
        Assert.Equal(Verdict.FallsShort, Of(Shaft.Set(("bake[shaft].temperature", "221 °C")), "bake-temperature[shaft]").Verdict);
        Of(Shaft, "treatment-temper[shaft]").Is(473.15, 753.15 / 473.15, Verdict.Holds);
        Assert.Equal(Verdict.FallsShort, Of(Gears.Set(("superfinish[gears].chemistry", "acid"), ("bake[gears].temperature", "190 °C")), "treatment-temper[gears]").Verdict);
        Of(Shaft, "bake-delay[shaft]").Is(2 * 3600, 2, Verdict.Holds);
        Assert.Equal(Verdict.FallsShort, Of(Shaft.Set(("bake[shaft].delay", "5 h")), "bake-delay[shaft]").Verdict);
        Assert.Equal(Verdict.FallsShort, Of(Shaft.Limited("bake-delay.max", "1 h"), "bake-delay[shaft]").Verdict);
    }

    [Theory] // S11: 50 µm, half outward; S13: 3 µm of a dry coat.
    [InlineData("shaft", "50 µm", "0.5", 50)]
    [InlineData("bore", "50 µm", "0.5", 50)]
    [InlineData("face", "50 µm", "0.5", 25)]
    [InlineData("thread", "50 µm", "0.5", 100)]
    [InlineData("shaft", "3 µm", "1", 6)]
    public void BuildUpIsHeldToItsRoom(string where, string thickness, string outward, double micrometres)
    {
        var book = Shaft.Set(("coating[shaft].where", where), ("coating[shaft].thickness", thickness), ("coating[shaft].outward", outward));
        Of(book, "coating-room[shaft]").Is(micrometres * 1e-6, 20 / micrometres, micrometres <= 20 ? Verdict.Holds : Verdict.FallsShort);
    }

    [Fact] // 17.012 less 16.966 mm is 46 µm; 8 µm of plating take 16 µm.
    public void ACoatToComeIsCountedInItsFit()
    {
        double Clearance(BuildBook book) => Of(book, "fit-interference[bush]").Judgement!.Value;
        Assert.Equal(30e-6, Clearance(Shaft), 1e-9);
        Assert.Equal(46e-6, Clearance(Shaft.Set(("coating[shaft].state", "done"))), 1e-9);
        Assert.Equal(46e-6, Clearance(Shaft.Set(("coating[shaft].fit", "other"))), 1e-9);
        Assert.Equal(46e-6, Clearance(Shaft.Set(("coating[shaft].where", "thread"))), 1e-9);
        Assert.Equal(38e-6, Clearance(Shaft.Set(("coating[shaft].where", "bore"), ("coating[shaft].outward", "0.5"))), 1e-9);
        Assert.Equal(36e-6, Clearance(Shaft.Set(("fit[bush].shaftCoating", "5 µm"))), 1e-9);
    }

    [Fact]
    public void ASuperfinishedJournalHandsItsRoughnessOn()
    {
        var book = Gears.Set(("treatment[gears].bearing", "main"));
        Assert.Equal(0.083e-6, TreatedPart.JournalRoughness(new View(book.Now()), "main.2"));
        Assert.Null(TreatedPart.JournalRoughness(new View(book.Now()), "bigEnd.2"));
        Assert.Null(TreatedPart.JournalRoughness(new View(book.Now()), "main2"));
        Assert.Null(TreatedPart.JournalRoughness(new View(Gears.Now()), "main.2"));
    }

    [Fact] // 3 · 1.25 √(0.05² + 0.3²) µm of the journal as finished; as written on the bearing, 0.12 µm, it goes first.
    public void TheOilFilmCountsTheFinishedJournal()
    {
        var finished = DriveBooks.Heron.Changed("finish", ("treatment[mains].bearing", "main"), ("superfinish[mains].removal", "2 µm"), ("superfinish[mains].roughnessAfter", "0.05 µm"));
        double Limit(BuildBook book) => DriveBooks.Of(book, "oil-film[main.1]").Judgement!.Lower!.Value;
        Assert.Equal(3.75e-6 * Math.Sqrt((0.12 * 0.12) + (0.3 * 0.3)), Limit(finished), 1e-12);
        Assert.Equal(3.75e-6 * Math.Sqrt((0.05 * 0.05) + (0.3 * 0.3)), Limit(finished.Without("bearing[main].journalRoughness")), 1e-12);
    }
}
