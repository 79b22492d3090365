using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fits;

namespace Gudgeon.Book.Tests.Fits;

/// <summary>Fits of the references F06 to F12: 40 mm steel in a 70 mm steel hub, a ring in an aluminium head.</summary>
public class FitCheckTests
{
    private static readonly BuildBook Steel = Books.Of(
        ("engine.revLimit", "9000 rpm"),
        ("fit[hub].size", "40 mm"),
        ("fit[hub].hole", "40.000 mm"),
        ("fit[hub].shaft", "40.050 mm"),
        ("fit[hub].interferenceMin", "0.03 mm"),
        ("fit[hub].interferenceMax", "0.06 mm"),
        ("fit[hub].length", "30 mm"),
        ("fit[hub].hubDiameter", "70 mm"),
        ("fit[hub].hubMaterial", "steel EN24T"),
        ("fit[hub].shaftMaterial", "steel EN24T"),
        ("fit[hub].torque", "500 N·m"),
        ("fit[hub].heatLimit", "170 °C"));

    private static Finding Of(BuildBook book, string id) => new Appraiser(new DutyDesk()).Appraise(book.Now()).Single(f => f.Id == id);

    [Fact] // F06, F07: 86.29 MPa and 780.7 N·m at ν 0.3; the table's steel has 0.29, which takes nothing off where both are alike.
    public void ATightHubHoldsItsTorque()
    {
        var grip = Of(Steel, "fit-grip[hub]");
        Assert.Equal(780.7, grip.Judgement!.Value, 1.0);
        Assert.Equal(750, grip.Judgement.Lower!.Value, 1e-9);
        Assert.Equal(Verdict.Holds, grip.Verdict);
        Assert.Equal(225.8e6, Of(Steel, "fit-hub-stress[hub]").Judgement!.Value, 0.3e6);
    }

    [Fact] // F07: 670.5 N·m left with 20 kN axial.
    public void AxialForceTakesItsShareOfTheGrip() => Assert.Equal(670.5, Of(Steel.Set(("fit[hub].axialForce", "20 kN")), "fit-grip[hub]").Judgement!.Value, 1.0);

    [Fact] // F09: Rz 4 and 6.3 µm leave 41.76 µm and 72.07 MPa, so 652 N·m.
    public void RoughFacesGripLess() =>
        Assert.Equal(780.7 * 72.07 / 86.29, Of(Steel.Set(("fit[hub].holeRoughness", "4 µm"), ("fit[hub].shaftRoughness", "6.3 µm")), "fit-grip[hub]").Judgement!.Value, 1.0);

    [Fact] // F08: the hub goes on at 165.8 °C with 20 µm to spare.
    public void TheHubGoesOnHot()
    {
        var heat = Of(Steel.Set(("fit[hub].handlingClearance", "0.02 mm")), "fit-heat[hub]");
        Assert.Equal(165.8 + 273.15, heat.Judgement!.Value, 0.1);
        Assert.Equal(Verdict.Holds, heat.Verdict);
        Assert.Equal(Verdict.FallsShort, Of(Steel.Set(("fit[hub].heatLimit", "160 °C")), "fit-heat[hub]").Verdict);

        // A shaft at −70 °C is 43 µm smaller.
        Assert.Equal(165.8 + 273.15 - 90, Of(Steel.Set(("fit[hub].handlingClearance", "0.02 mm"), ("fit[hub].shaftColdest", "-70 °C")), "fit-heat[hub]").Judgement!.Value, 0.1);
    }

    [Fact] // F11, F12: 0.1 mm in the head is 0.05665 mm with both 150 K warmer.
    public void AnIronRingInAluminiumLosesItsGripToHeat()
    {
        var ring = Books.Of(
            ("fit[ring].size", "34 mm"), ("fit[ring].hole", "34 mm"), ("fit[ring].shaft", "34.1 mm"), ("fit[ring].interferenceMin", "0.08 mm"), ("fit[ring].interferenceMax", "0.12 mm"),
            ("fit[ring].shaftBore", "28 mm"), ("fit[ring].hubDiameter", "46 mm"), ("fit[ring].length", "7 mm"), ("fit[ring].hubMaterial", "aluminium A356-T6 cast"), ("fit[ring].shaftMaterial", "ductile iron GJS-500-7"),
            ("fit[ring].hubTemperature", "170 °C"), ("fit[ring].shaftTemperature", "170 °C"));
        var hot = Of(ring, "fit-hot[ring]");
        Assert.Equal(34e-3 * (21.2e-6 - 12.5e-6) * 150, hot.Judgement!.Value, 1e-8);
        Assert.Equal(0.1e-3, hot.Judgement.Upper!.Value, 1e-9);
        Assert.Equal(Verdict.Holds, hot.Verdict);
        Assert.Equal(Verdict.FallsShort, Of(ring.Set(("fit[ring].hubTemperature", "400 °C"), ("fit[ring].shaftTemperature", "380 °C")), "fit-hot[ring]").Verdict);
    }

    [Theory]
    [InlineData("40.050 mm", Verdict.Holds, "interference")]
    [InlineData("40.020 mm", Verdict.FallsShort, "interference")]
    [InlineData("40.070 mm", Verdict.FallsShort, "interference")]
    public void InterferenceIsHeldToWhatIsWanted(string shaft, Verdict verdict, string quantity)
    {
        var finding = Of(Steel.Set(("fit[hub].shaft", shaft)), "fit-interference[hub]");
        Assert.Equal((verdict, quantity), (finding.Verdict, finding.Judgement!.Quantity));
    }

    [Fact]
    public void WithoutLimitsOfItsOwnTheClassesGiveThem()
    {
        // 25H7/g6: 7 to 41 µm of clearance.
        var free = Books.Of(("fit[pin].size", "25 mm"), ("fit[pin].holeClass", "H7"), ("fit[pin].shaftClass", "g6"), ("fit[pin].hole", "25.010 mm"), ("fit[pin].shaft", "24.990 mm"));
        var judged = Of(free, "fit-interference[pin]").Judgement!;
        Assert.Equal(("clearance", 20e-6, 7e-6, 41e-6), (judged.Quantity, Math.Round(judged.Value, 9), Math.Round(judged.Lower!.Value, 9), Math.Round(judged.Upper!.Value, 9)));

        // 10H7/m6: from 9 µm free to 15 µm tight; 2 µm free is 7 µm above the loosest.
        var between = Books.Of(("fit[pin].size", "10 mm"), ("fit[pin].holeClass", "H7"), ("fit[pin].shaftClass", "m6"), ("fit[pin].hole", "10.010 mm"), ("fit[pin].shaft", "10.008 mm"));
        judged = Of(between, "fit-interference[pin]").Judgement!;
        Assert.Equal((7e-6, 0.0, 24e-6), (Math.Round(judged.Value, 9), judged.Lower!.Value, Math.Round(judged.Upper!.Value, 9)));
        Assert.Equal(Verdict.FallsShort, Of(between.Set(("fit[pin].shaft", "10.000 mm")), "fit-interference[pin]").Verdict);
    }

    [Fact]
    public void AClassThatIsNoneIsSaid()
    {
        var finding = Of(Books.Of(("fit[pin].size", "10 mm"), ("fit[pin].holeClass", "Q7"), ("fit[pin].shaftClass", "m6"), ("fit[pin].hole", "10 mm"), ("fit[pin].shaft", "10 mm")), "fit-interference[pin]");
        Assert.Equal(Verdict.NotKnownYet, finding.Verdict);
        Assert.Contains(finding.Missing, m => m.StartsWith("fit[pin].holeClass: given 'Q7'", StringComparison.Ordinal));
    }

    [Fact]
    public void CoatingsCountBeforeTheyAreThere()
    {
        // 10 µm of plating on the shaft is 20 µm on its diameter; 20 µm of hard anodising in the hole takes as much off it.
        double Found(params (string, string)[] more) => Of(Steel.Set(more), "fit-interference[hub]").Judgement!.Value;
        Assert.Equal(70e-6, Found(("fit[hub].shaftCoating", "10 µm")), 1e-9);
        Assert.Equal(70e-6, Found(("fit[hub].holeCoating", "20 µm"), ("fit[hub].coatingOutward", "0.5")), 1e-9);
    }

    [Fact] // 40H7 0 to 25 µm, 40s6 43 to 59 µm; 10 µm of plating on the shaft is 20 µm on its diameter, so it must come 20 µm smaller.
    public void APlatedPartIsDrawnBareAndPlated()
    {
        var plated = Steel.Set(("fit[hub].holeClass", "H7"), ("fit[hub].shaftClass", "s6"), ("fit[hub].shaftCoating", "10 µm"), ("fit[hub].shaft", "40.030 mm"));
        var zones = SizeZone.Of(Assert.Single(FitsSheet.Of(plated.Now()).Rows));
        Assert.Equal(["hole H7", "shaft, bare", "shaft s6, coated"], zones.Select(z => z.Name));
        Assert.Equal([(0, 25, 0), (23, 39, 30), (43, 59, 50)], zones.Select(z => (Micro(z.Low), Micro(z.High), Micro(z.Found))));
        Assert.Equal([(false, false), (true, true), (true, false)], zones.Select(z => (z.OfShaft, z.Bare)));
        Assert.Equal([null, null, 20e-6], zones.Select(z => z.BuildUp is { } b ? Math.Round(b, 12) : (double?)null));

        static int Micro(double? metres) => (int)Math.Round(metres!.Value * 1e6);
    }

    [Fact] // A coating closes a hole: 20 µm of hard anodising, half of it outward, takes 20 µm off the diameter.
    public void AnAnodisedHoleIsBoredWider()
    {
        var row = Assert.Single(FitsSheet.Of(Steel.Set(("fit[hub].holeCoating", "20 µm"), ("fit[hub].coatingOutward", "0.5")).Now()).Rows);
        var zones = SizeZone.Of(row);
        Assert.Equal(["hole, bare", "hole, coated", "shaft"], zones.Select(z => z.Name));
        Assert.Equal(-20e-6, zones[1].BuildUp!.Value, 1e-12);
        Assert.Equal((0.0, -20e-6), (Math.Round(zones[0].Middle!.Value, 9), Math.Round(zones[1].Middle!.Value, 9)));
        Assert.Contains(row.Facts, f => f.Name == "coating on the hole, on its diameter" && f.Words(false).StartsWith("20 µm thick", StringComparison.Ordinal));
    }

    [Fact] // F21: 265.0 N·m on a 1:10 taper, mean 25 mm, 30 kN.
    public void ATaperHoldsByItsNut()
    {
        var taper = Books.Of(("fit[nose].size", "25 mm"), ("fit[nose].taper", "0.1"), ("fit[nose].length", "25 mm"), ("fit[nose].nutForce", "30 kN"), ("fit[nose].torque", "150 N·m"));
        Assert.Equal(265.0, Of(taper, "fit-grip[nose]").Judgement!.Value, 0.5);
        Assert.Contains("fit[nose].nutForce", Of(taper.Without("fit[nose].nutForce"), "fit-grip[nose]").Missing);
    }

    [Fact] // K03: 8 × 7 × 32 on 30 mm with 120 N·m presses 111.1 MPa.
    public void AKeyIsPressedByAllOfTheTorque()
    {
        var key = Books.Of(("fit[nose].size", "30 mm"), ("fit[nose].keyLength", "32 mm"), ("fit[nose].torque", "120 N·m"), ("fit[nose].keyPressureLimit", "100 MPa"));
        var finding = Of(key, "fit-key[nose]");
        Assert.Equal(111.1e6, finding.Judgement!.Value, 0.1e6);
        Assert.Equal(Verdict.FallsShort, finding.Verdict);
    }

    [Fact]
    public void WhatIsNotKnownIsNoStressOfNought()
    {
        var bare = Books.Of(("fit[pin].size", "10 mm"), ("fit[pin].hole", "10 mm"), ("fit[pin].shaft", "10.01 mm"));
        var row = Assert.Single(FitsSheet.Of(bare.Now()).Rows);
        Assert.Equal(10e-6, row.Interference!.Value, 1e-12);
        Assert.Null(row.SlipTorque);
        Assert.DoesNotContain(row.Facts, f => f.Name.Contains("pressure", StringComparison.Ordinal));
    }

    [Fact]
    public void SeveralOfAKindAreCounted()
    {
        var dowels = Books.Of(("fit[dowel].size", "10 mm"), ("fit[dowel].holeClass", "H7"), ("fit[dowel].shaftClass", "m6"), ("fit[dowel].shaft", "10.010 mm"),
            ("fit[dowel.1].hole", "10.004 mm"), ("fit[dowel.2].hole", "10.008 mm"), ("fit[dowel.3].hole", "10.012 mm"));
        var spread = Assert.Single(FitsSheet.Of(dowels.Now()).Spreads);
        Assert.Equal(("dowel", 3), (spread.Name, spread.Count));
        Assert.Equal((2e-6, 4e-6, -2e-6, 6e-6), (Math.Round(spread.Mean, 9), Math.Round(spread.Deviation, 9), Math.Round(spread.Least, 9), Math.Round(spread.Greatest, 9)));

        // Wanted −9 to 15 µm: 2.75 deviations below, 3.25 above.
        Assert.Equal(0.00298 + 0.00058, spread.Outside!.Value, 1e-4);
    }

    [Fact] // Rz 10 and 6 µm take 12.8 of the 32 µm: 19.2 µm are gone 34.3 K above the room, and press with three fifths of what 32 µm would.
    public void RoughFacesComeLooseSooner()
    {
        BuildBook rough = Drive.DriveBooks.Heron.Changed("rough", ("fit[coverSeat].holeRoughness", "10 µm"), ("fit[coverSeat].shaftRoughness", "6 µm"));
        Assert.Equal(54.3 + 273.15, Told(rough, "hub and shaft come loose at"), 0.05);
        Assert.Equal(5.32e6, Told(rough, "pressure of the joint, cold and at rest"), 0.01e6);
        Assert.Equal(19.2e-6, Told(rough, "interference left when the faces are pressed flat"), 1e-9);
        Assert.Equal(77.2 + 273.15, Told(Drive.DriveBooks.Heron, "hub and shaft come loose at"), 0.05);

        // With so rough a face nothing is left to lose.
        Assert.DoesNotContain(Row(rough.Changed("rougher", ("fit[coverSeat].holeRoughness", "40 µm")), "coverSeat").Facts, f => f.Name == "hub and shaft come loose at");

        static double Told(BuildBook book, string name) => Row(book, "coverSeat").Facts.Single(f => f.Name == name).Value!.Value;
    }

    [Theory]
    [InlineData("Q7", "fit[hub].holeClass: given 'Q7', wanted letter and grade of a hole, such as H7: A to ZC, grades 01, 0 and 1 to 18")]
    [InlineData("K9", "ISO hole limits: tolerance grade: K holes over 3 mm are defined up to grade 8")]
    public void AClassThatCannotBeIsSaidOnTheSheet(string hole, string sentence)
    {
        var row = Row(Steel.Set(("fit[hub].holeClass", hole), ("fit[hub].shaftClass", "p6")), "hub");
        Assert.Contains(sentence, row.Refused);
        Assert.Null(row.HoleLimits);
        Assert.NotNull(row.ShaftLimits);
        Assert.Empty(Row(Steel.Set(("fit[hub].holeClass", "H7"), ("fit[hub].shaftClass", "p6")), "hub").Refused);
    }

    private static FitRow Row(BuildBook book, string index) => FitsSheet.Of(book.Now()).Rows.Single(r => r.Index == index);
}
