using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tests.Checks;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Head;

/// <summary>The table to work from at the head.</summary>
public class LashSheetTests
{
    private static readonly BuildBook Twin = Books.Of(
        ("engine.cylinders", "2"),
        ("valve[inlet].count", "1"),
        ("valve[exhaust].count", "1"),
        ("valve.lashMin", "0.15 mm"),
        ("valve.lashMax", "0.25 mm"),
        ("valve[inlet.1.1].lash", "0.30 mm"),
        ("valve[inlet.2.1].lash", "0.10 mm"),
        ("valve[exhaust.1.1].lash", "0.20 mm"),
        ("valve[exhaust.2.1].lash", "0.21 mm"),
        ("valve[inlet.1.1].shim", "2.50 mm"),
        ("valve[inlet.2.1].shim", "2.60 mm"),
        ("valve[exhaust.1.1].shim", "2.70 mm"),
        ("valve[exhaust.2.1].shim", "2.75 mm"));

    [Fact]
    public void Says_what_goes_where_and_why()
    {
        var sheet = LashSheet.Of(Twin.Now());
        Assert.Equal(0, sheet.Open);
        Assert.Empty(sheet.Troubles);
        Assert.Equal(["inlet.1.1", "inlet.2.1", "exhaust.1.1", "exhaust.2.1"], sheet.Rows.Select(r => r.Valve));
        Assert.Equal(["fit the one out of inlet.2.1", "fit the one out of inlet.1.1", "stays", "stays"], sheet.Rows.Select(r => r.Action));
        Assert.Equal(["to inlet.2.1", "to inlet.1.1", "", ""], sheet.Rows.Select(r => r.OldShim));
        Assert.Equal(["too loose", "too tight", "as wanted", "in range, and nothing nearer is left for it"], sheet.Rows.Select(r => r.Why));
        Assert.Equal([0.2, 0.2, 0.2, 0.21], sheet.Rows.Select(r => Math.Round(r.After!.Value * 1e3, 6)));
    }

    [Fact]
    public void A_valve_that_was_not_measured_is_named_and_left_alone()
    {
        var sheet = LashSheet.Of(Twin.Without("valve[inlet.2.1].lash").Set(("stock.shims", "2.6 mm at 1")).Now());
        Assert.Equal("not planned: inlet.2.1 (lash not known). The shims in there stay where they are.", Assert.Single(sheet.Troubles));
        Assert.Equal(1, sheet.Open);
        Assert.Equal(["fit one from the bench", "measure it", "stays", "stays"], sheet.Rows.Select(r => r.Action));
        Assert.Null(sheet.Rows[1].Shim);
    }

    [Fact]
    public void A_valve_that_nothing_fits_is_named_with_the_shim_that_it_wants()
    {
        var sheet = LashSheet.Of(Twin.Set(("valve[inlet.1.1].lash", "0.90 mm")).Now());
        Assert.Equal("inlet.1.1: no shim from 3.15 mm to 3.25 mm is at hand or sold; as it is, its lash is 0.9 mm.", sheet.Troubles[0]);
        Assert.Contains("find a shim", sheet.Rows.Select(r => r.Action));
    }

    [Fact]
    public void Shims_are_bought_in_sizes_that_are_sold()
    {
        var sheet = LashSheet.Of(Twin.Set(("valve[inlet.1.1].lash", "0.41 mm"), ("stock.shimStep", "0.05 mm"), ("stock.shimThinnest", "2.2 mm"), ("stock.shimThickest", "3 mm")).Now());
        Assert.Equal(0, sheet.Open);
        Assert.All(sheet.Bought, t => Assert.Equal(0, Math.IEEERemainder(t * 1e3, 0.05), 1e-9));
        Assert.Single(sheet.Bought);
        Assert.Contains("stock.shimThinnest", Assert.Throws<BadInputException>(() => LashSheet.Of(Twin.Set(("stock.shimStep", "0.05 mm")).Now())).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_is_refused_in_a_sentence()
    {
        Assert.Contains("wanted less than the greatest lash", Assert.Throws<BadInputException>(() => LashSheet.Of(Twin.Set(("valve.lashMin", "0.3 mm")).Now())).Message, StringComparison.Ordinal);
        Assert.Contains("wanted a whole number", Assert.Throws<BadInputException>(() => LashSheet.Of(Twin.Set(("stock.shims", "2.6 mm at 1.5")).Now())).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Lash_is_held_to_its_limits()
    {
        Appraisal.Of(Twin, "lash", "exhaust.1.1").Is(0.2e-3, 0.25 / 0.2, Verdict.Holds);
        Appraisal.Of(Twin, "lash", "inlet.2.1").Is(0.1e-3, 0.1 / 0.15, Verdict.FallsShort);
        Assert.Equal(["valve[inlet.2.1].lash"], Appraisal.Of(Twin.Without("valve[inlet.2.1].lash"), "lash", "inlet.2.1").Missing);
        Assert.Empty(CheckCatalogue.Find("lash").Instances(new(Twin.Without("valve.lashMin").Without("valve.lashMax").Now())));
    }
}
