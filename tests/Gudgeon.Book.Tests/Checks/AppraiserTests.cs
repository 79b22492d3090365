using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;

namespace Gudgeon.Book.Tests.Checks;

public class AppraiserTests
{
    private static readonly BuildBook Twin = Books.Of(
        ("engine.cylinders", "2"),
        ("crank.stroke", "48.5 mm"),
        ("cylinder.bore", "81 mm"),
        ("cylinder.chamberVolume", "24.8 cm³"),
        ("cylinder.domeVolume", "4.6 cm³"),
        ("cylinder.gasketBore", "82 mm"),
        ("cylinder.gasketThickness", "0.65 mm"),
        ("cylinder[1].deckHeight", "0.25 mm ± 0.02 mm"),
        ("cylinder[2].deckHeight", "0.26 mm ± 0.02 mm"),
        ("cylinder.ratioMin", "10.5"),
        ("cylinder.ratioMax", "11.5"));

    private static readonly IReadOnlyList<Check> Chamber = CheckCatalogue.OfFamily("chamber");

    // Without its blower's kind the engine is not run, so that every edit costs little.
    private static readonly BuildBook Standing = Engines.Bare.Without("blower.kind");

    public static TheoryData<string> Amounts => [.. Standing.Baseline.Where(v => v.Value.Field.Kind == FieldKind.Amount).Select(v => v.Key)];

    [Fact]
    public void Nothing_is_worked_twice_while_nothing_changes()
    {
        var appraiser = new Appraiser(new DutyDesk());
        var first = appraiser.Appraise(Standing.Now());
        Assert.Equal(first.Count, appraiser.Computed);
        var again = appraiser.Appraise(Standing.Now());
        Assert.Equal(first.Count, appraiser.Computed);
        Assert.All(first.Zip(again), p => Assert.Same(p.First, p.Second));
    }

    [Theory]
    [MemberData(nameof(Amounts))]
    public void An_edit_works_again_only_the_findings_that_read_it(string path)
    {
        var appraiser = new Appraiser(new DutyDesk());
        var before = appraiser.Appraise(Standing.Now());
        var first = appraiser.Computed;
        var value = Standing.Baseline[path];
        var after = appraiser.Appraise(Standing.Set((path, value.Field.Print(value.Si * 1.01))).Now());
        Assert.Equal(before.Count(f => f.Trace.Reads.Any(r => r.Found?.Source == path)), appraiser.Computed - first);
        Assert.All(before.Zip(after), p => Assert.Equal(p.First.Trace.Reads.Any(r => r.Found?.Source == path), !ReferenceEquals(p.First, p.Second)));
    }

    [Fact]
    public void An_edit_of_one_cylinder_leaves_the_other_alone()
    {
        var appraiser = new Appraiser(new DutyDesk());
        var before = appraiser.Appraise(Twin.Now(), Chamber);
        var after = appraiser.Appraise(Twin.Set(("cylinder[2].deckHeight", "0.3 mm")).Now(), Chamber);
        Assert.Equal(
            ["compression-ratio[2]", "compression-spread", "squish-running[2]", "squish[2]"],
            before.Zip(after).Where(p => !ReferenceEquals(p.First, p.Second)).Select(p => p.First.Id).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void An_equal_value_works_nothing_again()
    {
        var appraiser = new Appraiser(new DutyDesk());
        appraiser.Appraise(Twin.Now(), Chamber);
        var first = appraiser.Computed;
        appraiser.Appraise(Twin.Set(("cylinder[2].deckHeight", "0.26 mm ± 0.02 mm")).Now(), Chamber);
        Assert.Equal(first, appraiser.Computed);
    }

    [Fact]
    public void A_limit_works_again_only_the_findings_held_to_it()
    {
        var appraiser = new Appraiser(new DutyDesk());
        appraiser.Appraise(Twin.Now(), Chamber);
        var first = appraiser.Computed;
        appraiser.Appraise(Twin.Limited("squish.min", "0.8 mm").Now(), Chamber);
        Assert.Equal(2, appraiser.Computed - first);
    }

    [Fact]
    public void A_cylinder_more_gives_findings_more()
    {
        var appraiser = new Appraiser(new DutyDesk());
        Assert.Equal(["squish[1]", "squish[2]"], appraiser.Appraise(Twin.Now(), [CheckCatalogue.Find("squish")]).Select(f => f.Id));
        Assert.Equal(["squish[1]", "squish[2]", "squish[3]"], appraiser.Appraise(Twin.Set(("engine.cylinders", "3")).Now(), [CheckCatalogue.Find("squish")]).Select(f => f.Id));
    }

    [Fact]
    public void What_is_missing_is_named()
    {
        var finding = Appraisal.Of(Twin.Without("cylinder[2].deckHeight"), "squish", "2");
        Assert.Equal(Verdict.NotKnownYet, finding.Verdict);
        Assert.Equal(["cylinder[2].deckHeight"], finding.Missing);
        Assert.Equal("wanted: cylinder[2].deckHeight", finding.Advice);
        Assert.True(double.IsNaN(finding.Reserve));
    }

    [Fact]
    public void An_empty_book_is_all_unknown_and_every_finding_says_what_it_wants()
    {
        var findings = new Appraiser(new DutyDesk()).Appraise(Books.Of().Now());
        Assert.NotEmpty(findings);
        Assert.All(findings, f => Assert.Equal(Verdict.NotKnownYet, f.Verdict));
        Assert.All(findings, f => Assert.NotEmpty(f.Missing));
        Assert.Equal(findings.Count, findings.DistinctBy(f => f.Id).Count());
    }

    [Fact]
    public void A_formula_out_of_its_domain_is_not_known_yet_with_its_sentence()
    {
        var finding = Appraisal.Of(Standing.Set(("valve[inlet].lift", "16 mm")), "seat-load", "inlet");
        Assert.Equal(Verdict.NotKnownYet, finding.Verdict);
        Assert.Equal(["height: less than the solid length, the spring is coil-bound"], finding.Missing);
    }

    [Fact]
    public void An_input_out_of_its_range_is_not_known_yet_with_its_sentence()
    {
        var finding = Appraisal.Of(Twin.Set(("cylinder.gasketThickness", "60 mm")), "squish", "1");
        Assert.Equal(["crushed gasket thickness: given 60 mm, wanted at least 0 mm and at most 50 mm"], finding.Missing);
    }

    // A dome of 70 cm³ in a chamber of 54 cm³, a rod shorter than the throw, an order that fires nobody.
    [Theory]
    [InlineData("cylinder.domeVolume", "70 cm³")]
    [InlineData("rod.length", "30 mm")]
    [InlineData("engine.firingOrder", "1-2")]
    public void An_engine_that_cannot_be_is_not_known_yet_and_is_worked_again_when_it_is_put_right(string path, string text)
    {
        var check = CheckCatalogue.Find("peak-pressure");
        var appraiser = new Appraiser(Engines.BareDesk) { WithUncertainty = false };
        var wrong = appraiser.Appraise(check, "", Engines.Bare.Set((path, text)).Now());
        Assert.Equal(Verdict.NotKnownYet, wrong.Verdict);
        Assert.NotEmpty(wrong.Missing);
        Assert.NotEqual(Verdict.NotKnownYet, appraiser.Appraise(check, "", Engines.Bare.Now()).Verdict);
    }

    // Written into the book by hand; through the program it is refused.
    [Fact]
    public void A_limit_that_cannot_be_read_spoils_its_own_finding_and_no_other()
    {
        var book = Twin.Limited("squish.min", "95 N·m");
        Assert.Equal(["limit squish.min: given '95 N·m', which is a torque; wanted a length such as '12.3 mm'"], Appraisal.Of(book, "squish", "1").Missing);
        Assert.Equal(Verdict.Holds, Appraisal.Of(book, "compression-ratio", "1").Verdict);
    }

    [Fact]
    public void A_value_outside_what_is_usual_is_asked_about() =>
        Assert.Equal(["Head gasket, crushed of 20 mm is outside what is usual (0.1 mm to 3 mm): is it right?"], Appraisal.Of(Twin.Set(("cylinder.gasketThickness", "20 mm")), "squish", "1").Questions);
}
