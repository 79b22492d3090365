using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Springs;

namespace Gudgeon.Book.Checks.ValveTrain;

/// <summary>Stress range of the wire against the fatigue diagram of its maker.</summary>
public sealed class SpringRangeCheck : SpringCheck
{
    public override string Id => "spring-range";

    public override string Title => "Valve spring stress range";

    public override string Source => "fatigue diagram as in EN 13906-1:2013, its upper line drawn straight (from memory); the range borne from nothing by the maker of the wire";

    public override IEnumerable<string> Instances(View view) => base.Instances(view).Where(i => view.Knows(Spring.StressRange, i));

    public override Judgement Examine(View view, string index) => new FittedSpring(view, index).Worst(coil =>
    {
        var loads = coil.Loads();
        var range = view.Work(FatigueDiagram.Safety, loads.Seat, loads.Open, coil.Wire, coil.MeanDiameter, view.Amount(Spring.StressRange, index), coil.TensileStrength);
        return Judgement.AtMost("stress range", range.Range, range.Allowed, Dimension.Pressure, "MPa", "fatigue diagram of the wire above the lower stress");
    });
}

/// <summary>Stress at full lift against what a spring bears without losing load in the heat.</summary>
public sealed class SpringRelaxationCheck : SpringCheck
{
    /// <summary>Share of the tensile strength that hardened and tempered wire bears before set is removed.</summary>
    private const double UsualShare = 0.5;

    public override string Id => "spring-relaxation";

    public override string Title => "Valve spring set: stress at full lift";

    public override string Source => "50 % of the tensile strength, hardened and tempered wire before set removal (Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., table 10-6, from memory); a spring set hot by its maker bears more";

    public override Judgement Examine(View view, string index) => new FittedSpring(view, index).Worst(coil => Judgement.AtMost(
        "shear stress at full lift",
        coil.OpenStress(),
        view.Limit("spring-relaxation.share", Dimension.Number, "%", UsualShare) * coil.TensileStrength,
        Dimension.Pressure,
        "MPa",
        "share of the wire's tensile strength"));
}

/// <summary>The spring's own vibration against the harmonics of the lift at the rev limit.</summary>
public sealed class SpringSurgeCheck : SpringCheck
{
    /// <summary>Above it the harmonics of a smooth lift curve are under a tenth of a millimetre.</summary>
    private const double UsualOrder = 6;

    public override string Id => "spring-surge";

    public override string Title => "Valve spring surge order at the rev limit";

    public override string Source => "first surge frequency, both ends held (Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., section 10-8, which asks 15 to 20 of springs in general); 6 turns of the cam, above which the harmonics of a smooth lift are under a tenth of a millimetre: common practice, no source";

    public override Judgement Examine(View view, string index) => new FittedSpring(view, index).Worst(coil => Judgement.AtLeast(
        "surge order",
        view.Work(SpringSurge.Order, coil.SurgeFrequency(), view.Amount(Engine.RevLimit)),
        view.Limit("spring-surge.min", Dimension.Number, "", UsualOrder),
        Dimension.Number,
        "",
        "common practice, no source"));
}
