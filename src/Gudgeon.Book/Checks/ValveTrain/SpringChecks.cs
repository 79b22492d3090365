using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.ValveTrain;

/// <summary>What the checks of valve springs share.</summary>
public abstract class SpringCheck : Check
{
    public override string Family => "valve train";

    public override string Caution => "A compressed valve spring stores enough to put an eye out: captive compressor, eye protection, fingers out of the coils.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Valves(view, Spring.InstalledHeight.Subject, InnerSpring.Wire.Subject, Valve.Lift.Subject);
}

/// <summary>Seat load at the measured installed height.</summary>
public sealed class SeatLoadCheck : SpringCheck
{
    public override string Id => "seat-load";

    public override string Title => "Valve spring seat load";

    public override string Source => "EN 13906-1:2013 (linear spring); limit by the maker of the cam";

    public override Judgement Examine(View view, string index) => Judgement.AtLeast(
        "seat load", new FittedSpring(view, index).Loads().Seat, view.Amount(Spring.SeatLoadMin, index), Dimension.Force, "N", "spring.seatLoadMin");
}

/// <summary>Load at full lift against what cam and follower carry.</summary>
public sealed class OpenLoadCheck : SpringCheck
{
    public override string Id => "open-load";

    public override string Title => "Valve spring load at full lift";

    public override string Source => "EN 13906-1:2013 (linear spring); limit by the maker of the cam";

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "load at full lift", new FittedSpring(view, index).Loads().Open, view.Amount(Spring.OpenLoadMax, index), Dimension.Force, "N", "spring.openLoadMax");
}

/// <summary>Margin before the coils touch at full lift; a spacer takes its thickness from it.</summary>
public sealed class CoilBindCheck : SpringCheck
{
    public override string Id => "coil-bind";

    public override string Title => "Coil-bind margin at full lift";

    public override string Source => "installed height less lift, solid height and spacer; 1.5 mm left over the whole spring: common practice, no source";

    public override Judgement Examine(View view, string index) => Judgement.AtLeast(
        "coil-bind margin", new FittedSpring(view, index).CoilBindMargin(), view.Limit("coil-bind.min", Dimension.Length, "mm", 1.5e-3), Dimension.Length, "mm", "common practice, no source");
}

/// <summary>Endurance of the wire between seat load and load at full lift.</summary>
public sealed class SpringFatigueCheck : SpringCheck
{
    public override string Id => "spring-fatigue";

    public override string Title => "Valve spring endurance";

    public override string Source => "Wahl stress; Goodman line through Zimmerli's peened strength (Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 10-28 f.)";

    public override Judgement Examine(View view, string index) => new FittedSpring(view, index).Worst(coil => Judgement.AtLeast(
        "safety against fatigue", coil.FatigueSafety(), view.Limit("spring-fatigue.min", Dimension.Number, "", 1.1), Dimension.Number, "", "1.1: common practice, no source"));
}

/// <summary>Shear stress in the wire at full lift against the wire's strength.</summary>
public sealed class SpringStressCheck : SpringCheck
{
    private const double ShearShare = 0.56;

    public override string Id => "spring-stress";

    public override string Title => "Valve spring stress at full lift";

    public override string Source => "Wahl stress; 56 % of the tensile strength allowed at solid, EN 13906-1 (from memory)";

    public override Judgement Examine(View view, string index) => new FittedSpring(view, index).Worst(coil => Judgement.AtMost(
        "shear stress at full lift", coil.OpenStress(), ShearShare * coil.TensileStrength, Dimension.Pressure, "MPa", "56 % of the wire's tensile strength"));
}
