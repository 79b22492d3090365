using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Tests.Demo;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Duty;

public class WhatIfTests
{
    private static readonly Lazy<WhatIf> Heron = new(() => new WhatIf(DemoBooks.Heron.Book, DemoBooks.Heron.Run));

    private static WhatIf Bare => new(Engines.Bare, Engines.BareDuty);

    private static WhatIf Centrifugal { get; } = new(Engines.Centrifugal, Run(Engines.Centrifugal));

    [Fact]
    public void With_no_wish_the_figures_are_the_present_ones()
    {
        var answer = Whole(Heron.Value, new Wishes());
        Same(DemoBooks.Heron.Run, answer.Duty, 1e-5);
        Assert.Empty(answer.Values);
        Assert.All(answer.Against(Heron.Value.Now), d => Assert.Equal("as it is", d.Moved(false)));
    }

    [Fact]
    public void Wishes_for_what_is_there_already_change_nothing()
    {
        var heron = Heron.Value;
        var answer = Whole(heron, new Wishes { DriveRatio = heron.DriveRatio, Burned50 = heron.Burned50, CompressionRatio = heron.CompressionRatio, Fuel = heron.Fuel, Lambda = heron.Lambda });
        Same(heron.Now, answer.Duty, 1e-4);
        Assert.Equal(["blower.driveRatio", "combustion.burned50", "cylinder[1].chamberVolume", "cylinder[2].chamberVolume", "fuel.kind", "fuel.lambda"], answer.Values.Keys.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Another_drive_ratio_is_what_an_edit_of_the_book_gives()
    {
        var heron = Heron.Value;
        var ratio = Math.Round(heron.DriveRatio!.Value * 1.06, 4);
        var answer = Whole(heron, new Wishes { DriveRatio = ratio });
        var edited = Run(DemoBooks.Heron.Book.Changed("pulley", ("blower.driveRatio", ratio.ToString(System.Globalization.CultureInfo.InvariantCulture))));
        Same(edited, answer.Duty, 1e-4);
        var boost = Assert.Single(answer.Against(heron.Now), d => d.Name == "greatest boost");
        Assert.True(boost.After > boost.Before * 1.03, "a quicker blower gives more boost");
        Assert.Contains("more", boost.Moved(false), StringComparison.Ordinal);
    }

    [Fact]
    public void A_turbocharger_has_no_drive_and_its_boost_is_wished_at_the_wastegate()
    {
        var turbo = new WhatIf(Engines.Turbo, Engines.TurboDuty);
        Assert.Null(turbo.DriveRatio);
        Assert.Equal(0.3e5, turbo.WastegateOpening!.Value, 6);
        var wished = Engines.TurboDuty.Most(f => f.Boost).Value * 1.15;
        var answer = Whole(turbo, new Wishes { Boost = wished });
        Assert.Equal(["turbine.wastegate.openingPressure"], answer.Values.Keys);
        Assert.Equal(1, answer.Duty.Most(f => f.Boost).Value / wished, 6e-3);
        Assert.True(BoostSetting.Of(answer.Duty.Spec) > 0.3e5);
        Same(Run(Engines.Turbo.Set([.. answer.Values.Select(v => (v.Key, v.Value))])), answer.Duty, 1e-4);
        var later = turbo.Look(new Wishes { WastegateOpening = 0.35e5 });
        Assert.Equal("0.35 bar", later.Values["turbine.wastegate.openingPressure"]);
        Assert.True(later.Duty.Most(f => f.Boost).Value > Engines.TurboDuty.Most(f => f.Boost).Value * 1.05);
    }

    [Fact]
    public void A_boost_that_the_turbine_cannot_give_is_refused_in_its_own_words()
    {
        var turbo = new WhatIf(Engines.Turbo, Engines.TurboDuty);
        Assert.Matches("^a boost of 4 bar is not reached: at a wastegate that opens at [0-9.]+ bar the blower gives [0-9.]+ bar$", Assert.Throws<BadInputException>(() => turbo.Look(new Wishes { Boost = 4e5 })).Message);
        var bare = Engines.Turbo.Without("turbine.wastegate.area");
        var free = new WhatIf(bare, Run(bare));
        Assert.Null(free.Setting);
        Assert.Equal("this turbocharger has no wastegate to set its boost by", Assert.Throws<BadInputException>(() => free.Look(new Wishes { Boost = 0.5e5 })).Message);
    }

    [Fact]
    public void A_burn_that_is_placed_by_itself_is_not_offered()
    {
        Assert.Equal(8 * Math.PI / 180, Bare.Burned50!.Value, 9);
        var now = Engines.BareDuty;
        Assert.Null(new WhatIf(Engines.Bare, now with { Spec = now.Spec with { Combustion = now.Spec.Combustion! with { Search = new() } } }).Burned50);
    }

    [Fact]
    public void Every_wish_written_into_the_book_gives_what_was_shown()
    {
        var wishes = new Wishes { DriveRatio = 1.07, Burned50 = 11 * Math.PI / 180, CompressionRatio = 8.4, Fuel = "methanol", Lambda = 0.8 };
        var answer = Whole(Centrifugal, wishes);
        Same(Run(Engines.Centrifugal.Changed("what-if", [.. answer.Values.Select(v => (v.Key, v.Value))])), answer.Duty, 1e-4);
        Assert.Equal("methanol", answer.Duty.Spec.Fuel.Name);
        Assert.Equal((11, 0.8), (Math.Round(answer.Duty.Spec.Combustion!.Burned50, 6), answer.Duty.Spec.Lambda));
    }

    [Fact]
    public void The_compression_ratio_is_the_one_wished_and_the_spread_between_cylinders_stays()
    {
        var book = Engines.Bare.Set(("engine.cylinders", "2"), ("cylinder[2].chamberVolume", "56 cm³"));
        var whatIf = new WhatIf(book, Run(book));
        var answer = whatIf.Look(new Wishes { CompressionRatio = 10 });
        var (before, after) = (Ratios(whatIf.Now), Ratios(answer.Duty));
        Assert.Equal(10, after.Average(), 1e-3);
        Assert.Equal(before[0] / before[1], after[0] / after[1], 1e-4);
        Assert.True(before[0] - before[1] > 0.2);

        // V = πB²s/4 = 499.9 cm³ each; the mean of the ratios is 1 + V/Vc over both.
        Assert.All(answer.Duty.Spec.Cylinders, c => Assert.InRange(c.ClearanceVolume!.Value, 499.9e-6 / 9.4, 499.9e-6 / 8.6));
    }

    [Theory]
    [InlineData(0.6)]
    [InlineData(0.9)]
    [InlineData(1.15)]
    public void The_boost_wished_is_reached(double share)
    {
        var wanted = share * Heron.Value.Now.Most(f => f.Boost).Value;
        var answer = Whole(Heron.Value, new Wishes { Boost = wanted });
        Assert.Equal(wanted, answer.Duty.Most(f => f.Boost).Value, 0.01 * wanted);
        Assert.Equal(share > 1, answer.Duty.Spec.Intake.Induction!.DriveRatio > Heron.Value.DriveRatio);
        Assert.Equal(["blower.driveRatio"], answer.Values.Keys);
    }

    [Fact]
    public void A_boost_that_no_drive_ratio_gives_is_refused_in_a_sentence()
    {
        Assert.Matches("^a boost of 30 bar is not reached: at a drive ratio of [0-9.]+ the blower gives [0-9.]+ bar$", Refused(Centrifugal, new Wishes { Boost = 30e5 }));
        Assert.Equal("this engine has no blower to give boost", Refused(Bare, new Wishes { Boost = 0.5e5 }));
    }

    [Fact]
    public void A_ratio_that_would_need_less_than_no_chamber_is_refused() =>
        Assert.Matches("^Chamber volume.*which cannot be", Refused(Bare, new Wishes { CompressionRatio = 500 }));

    [Fact]
    public void A_look_has_few_speeds_with_the_ends_and_the_greatest_among_them()
    {
        var look = Heron.Value.Look(new Wishes { Lambda = 0.84 });
        var speeds = look.Duty.Points.Select(p => p.Speed).ToList();
        var all = Heron.Value.Now.Points.Select(p => p.Speed).ToList();
        Assert.False(look.IsWhole);
        Assert.InRange(speeds.Count, WhatIf.FewSpeeds, all.Count - 1);
        Assert.Subset(all.ToHashSet(), speeds.ToHashSet());
        Assert.Contains(all[0], speeds);
        Assert.Contains(all[^1], speeds);
        Assert.Contains(Heron.Value.Now.Power.Speed, speeds);
        var whole = Heron.Value.Whole(look);
        Assert.True(whole.IsWhole);
        Assert.Equal(all, whole.Duty.Points.Select(p => p.Speed));
    }

    [Fact]
    public void What_is_tried_stays_out_of_the_book()
    {
        var before = DemoBooks.Heron.Now.Holding("blower.driveRatio");
        Heron.Value.Look(new Wishes { DriveRatio = 1.5 * Heron.Value.DriveRatio });
        Assert.Equal(before, DemoBooks.Heron.Now.Holding("blower.driveRatio"));
        Same(Heron.Value.Now, Whole(Heron.Value, new Wishes()).Duty, 1e-4);
    }

    [Fact]
    public void It_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => Bare.Look(new Wishes { Lambda = 0.95 }, stop.Token));
    }

    // Trade knowledge: a later burn gives lower peak pressure and less knock, more compression the contrary.
    [Fact]
    public void Later_burning_eases_the_end_gas_and_more_compression_loads_it()
    {
        var late = Bare.Look(new Wishes { Burned50 = Bare.Burned50 + (6 * Math.PI / 180) }).Against(Bare.Now).ToDictionary(d => d.Name, StringComparer.Ordinal);
        var tight = Bare.Look(new Wishes { CompressionRatio = Bare.CompressionRatio + 1 }).Against(Bare.Now).ToDictionary(d => d.Name, StringComparer.Ordinal);
        Assert.True(late["peak cylinder pressure"].After < late["peak cylinder pressure"].Before);
        Assert.True(late["knock integral"].After < late["knock integral"].Before);
        Assert.True(tight["peak cylinder pressure"].After > tight["peak cylinder pressure"].Before);
        Assert.True(tight["knock integral"].After > tight["knock integral"].Before);
        Assert.False(late.ContainsKey("greatest boost"));
    }

    private static string Refused(WhatIf whatIf, Wishes wishes) => Assert.Throws<BadInputException>(() => whatIf.Look(wishes)).Message;

    private static WhatIfAnswer Whole(WhatIf whatIf, Wishes wishes) => whatIf.Whole(whatIf.Look(wishes));

    private static double[] Ratios(EngineDuty duty) => [.. duty.Spec.Cylinders.Select(c => 1 + (Math.PI / 4 * c.Bore * c.Bore * c.Stroke / c.ClearanceVolume!.Value))];

    private static EngineDuty Run(BuildBook book) => new View(book.Now(), new DutyDesk()).Duty() ?? throw new InvalidOperationException("the engine does not run");

    private static void Same(EngineDuty expected, EngineDuty actual, double share)
    {
        Assert.Equal(expected.Points.Select(p => Math.Round(p.Speed, 6)), actual.Points.Select(p => Math.Round(p.Speed, 6)));
        foreach (var (e, a) in expected.Figures.Zip(actual.Figures))
        {
            Assert.Equal(e.Figures.Power, a.Figures.Power, share * e.Figures.Power);
            Assert.Equal(e.Figures.Torque, a.Figures.Torque, share * e.Figures.Torque);
            Assert.Equal(e.Figures.PeakPressure, a.Figures.PeakPressure, share * e.Figures.PeakPressure);
            Assert.Equal(e.Figures.KnockIntegral, a.Figures.KnockIntegral, 10 * share * e.Figures.KnockIntegral);
        }
    }
}
