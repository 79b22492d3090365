using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Rows;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Chamber;
using Gudgeon.Calc.Springs;

namespace Gudgeon.Book.Tests.Tracing;

public class ViewTests
{
    private static readonly BuildBook Book = Books.Of(
        ("engine.cylinders", "2"),
        ("bearing[main].shellThickness", "1.991 mm ± 0.002 mm"),
        ("bearing[main.1].journal", "37.985 mm ± 0.003 mm"),
        ("spring.wire", "4 mm"),
        ("spring.loadTable", "286 N at 39 mm; 604 N at 29 mm"),
        ("piston.ringService", "racing"));

    [Fact]
    public void A_read_is_recorded_with_what_was_found()
    {
        var view = new View(Book.Now());
        Assert.Equal(4e-3, view.Amount(Spring.Wire, "inlet.1.2"), 15);
        var read = Assert.Single(view.Trace.Reads);
        Assert.Equal("spring[inlet.1.2].wire", read.Address.Path);
        Assert.Equal("spring.wire", read.Found!.Source);
        Assert.Null(read.Fallback);
        Assert.False(read.IsMissing);
    }

    [Fact]
    public void A_value_that_is_not_known_reads_as_nothing_and_is_missing()
    {
        var view = new View(Book.Now());
        Assert.True(double.IsNaN(view.Amount(Crank.Stroke)));
        Assert.Equal(0, view.Count(FuelSystem.Injectors));
        Assert.Null(view.Word(FuelSystem.Kind));
        Assert.Null(view.Table(Blower.Map));
        Assert.Null(view.Choice<Gudgeon.Calc.Joints.TighteningMethod>(Joint.Method, "head"));
        Assert.Equal(["crank.stroke", "fuel.injectors", "fuel.kind", "blower.map", "joint[head].method"], view.Trace.Missing);
    }

    [Fact]
    public void A_fallback_is_used_and_shown_and_nothing_is_missing()
    {
        var view = new View(Book.Now());
        Assert.Equal(79.3e9, view.AmountOr(Spring.ShearModulus, 79.3e9, "inlet"));
        Assert.Equal(3, view.CountOr(FuelSystem.Injectors, 3));
        Assert.Equal("none", view.WordOr(Blower.Kind, "none"));
        Assert.Null(view.AmountIf(Cooler.Effectiveness));
        Assert.Null(view.TableIf(Blower.Map));
        Assert.False(view.Knows(Crank.Stroke));
        Assert.Empty(view.Trace.Missing);
        Assert.Equal("79.3 GPa", view.Trace.Reads.First().Fallback);
    }

    [Fact]
    public void A_fallback_gives_way_to_what_is_known()
    {
        var view = new View(Book.Now());
        Assert.Equal(4e-3, view.AmountOr(Spring.Wire, 1, "inlet"), 15);
        Assert.Equal(2, view.CountOr(Engine.Cylinders, 9));
        Assert.Equal(RingService.Racing, view.Choice<RingService>(Piston.RingService, "1"));
        Assert.Equal([286.0, 604.0], view.Table(Spring.LoadTable, "inlet")!["load"]);
    }

    [Fact]
    public void What_is_needed_is_missing_even_when_it_was_asked_for_lightly_before()
    {
        var view = new View(Book.Now());
        view.AmountIf(Crank.Stroke);
        Assert.Empty(view.Trace.Missing);
        view.Amount(Crank.Stroke);
        Assert.Equal(["crank.stroke"], view.Trace.Missing);
        view.AmountIf(Crank.Stroke);
        Assert.Equal(["crank.stroke"], view.Trace.Missing);
    }

    [Fact]
    public void A_nudged_group_value_moves_all_its_instances_and_nothing_else()
    {
        var view = new View(Book.Now(), nudged: new Dictionary<string, double>(StringComparer.Ordinal) { ["bearing[main].shellThickness"] = 2e-3 });
        Assert.Equal([2e-3, 2e-3, 2e-3], new[] { "main", "main.1", "main.2" }.Select(i => view.Amount(Bearing.ShellThickness, i)));
        Assert.Equal(37.985e-3, view.Amount(Bearing.Journal, "main.1"), 12);
    }

    [Fact]
    public void The_uncertain_sources_are_named_once()
    {
        var view = new View(Book.Now());
        view.Amount(Bearing.ShellThickness, "main.1");
        view.Amount(Bearing.ShellThickness, "main.2");
        view.Amount(Bearing.Journal, "main.1");
        view.Amount(Spring.Wire);
        Assert.Equal(["bearing[main].shellThickness", "bearing[main.1].journal"], view.Trace.Uncertain.Select(f => f.Source));
    }

    // R = 79.3 GPa · 4⁴ / (8 · 25³ · 6) = 27.068 N/mm.
    [Fact]
    public void A_formula_is_recorded_with_its_numbers()
    {
        var view = new View(Book.Now());
        var rate = view.Work(HelicalSpring.Rate, view.Amount(Spring.Wire), 25e-3, 6.0, 79.3e9);
        Assert.Equal(27068, rate, 1.0);
        var step = Assert.Single(view.Trace.Steps);
        Assert.Equal("helical spring rate", step.Formula.Name);
        Assert.Equal([rate], step.Results);
        Assert.Equal("(27.07 N/mm) = (79.3 GPa) (4 mm)^4 / (8 (25 mm)^3 × 6)", Expression.WithNumbers(step.Formula, step.Arguments, step.Results));
    }

    [Fact]
    public void An_unknown_input_gives_an_unknown_result_without_an_exception()
    {
        var view = new View(Book.Now());
        Assert.True(double.IsNaN(view.Work(HelicalSpring.Rate, view.Amount(Spring.OutsideDiameter), 25e-3, 6.0, 79.3e9)));
        Assert.Equal(new(double.NaN, double.NaN), view.Work(SpringLoad.FromTwoHeights, double.NaN, 1.0, 2.0, 3.0));
        Assert.Empty(view.Trace.Steps);
        Assert.Equal(["spring.outsideDiameter"], view.Trace.Missing);
    }

    [Fact]
    public void A_formula_out_of_its_range_is_refused()
    {
        var view = new View(Book.Now());
        Assert.Throws<OutOfRangeException>(() => view.Work(HelicalSpring.Rate, 0.0, 25e-3, 6.0, 79.3e9));
        Assert.Throws<FormulaDomainException>(() => view.Work(HelicalSpring.Rate, 25e-3, 4e-3, 6.0, 79.3e9));
    }

    [Fact]
    public void The_trace_holds_while_what_was_read_is_the_same()
    {
        var view = new View(Book.Now());
        view.Amount(Spring.Wire, "inlet");
        view.AmountIf(Crank.Stroke);
        view.Limit("squish.min", Dimension.Length, "mm", 1e-3);
        view.Indices(Bearing.Journal.Subject);
        Assert.True(view.Trace.HoldsIn(Book.Now()));
        Assert.True(view.Trace.HoldsIn(Book.Set(("piston.ringService", "street")).Now()));
        Assert.False(view.Trace.HoldsIn(Book.Set(("spring.wire", "4.1 mm")).Now()));
        Assert.False(view.Trace.HoldsIn(Book.Set(("spring[inlet].wire", "4 mm")).Now()));
        Assert.False(view.Trace.HoldsIn(Book.Set(("crank.stroke", "70 mm")).Now()));
        Assert.False(view.Trace.HoldsIn(Book.Limited("squish.min", "1 mm").Now()));
        Assert.False(view.Trace.HoldsIn(Book.Set(("bearing[main.2].journal", "38 mm")).Now()));
        Assert.False(view.Trace.HoldsIn(Book.Without("spring.wire").Now()));
    }

    [Fact]
    public void A_limit_is_the_users_else_the_checks_own_else_wanted()
    {
        Assert.Equal(1e-3, new View(Book.Now()).Limit("squish.min", Dimension.Length, "mm", 1e-3));
        Assert.Equal(0.8e-3, new View(Book.Limited("squish.min", "0.8 mm").Now()).Limit("squish.min", Dimension.Length, "mm", 1e-3), 15);
        var view = new View(Book.Now());
        Assert.True(double.IsNaN(view.Limit("squish.min", Dimension.Length, "mm", null)));
        Assert.Equal(["limit squish.min"], view.Trace.Missing);
    }
}
