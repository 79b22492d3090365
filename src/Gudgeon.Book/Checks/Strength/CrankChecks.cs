using Gudgeon.Book.Checks.Motion;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Strength;

/// <summary>A check of a fillet of the crank.</summary>
public abstract class CrankFilletCheck : Check
{
    public override string Family => "crank";

    public override string Source => "IACS UR M53 (stress concentration factors from memory, fatigue strength as printed), 10 MPa added for misalignment, 1.15 against fatigue; throw as a beam on its two main bearings";

    public override string Caution => "A screening by a rule made for larger engines: crack-test the fillets before and after. A crank that breaks locks the rear wheel.";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view);

    public override Judgement Examine(View view, string index)
    {
        var fillet = Stress(new CrankStrength(view, index)) ?? new FilletStress(double.NaN, double.NaN, double.NaN);
        var allowed = fillet.Strength / view.Limit($"{Id}.factor", Dimension.Number, "", 1.15);
        return Judgement.AtMost("equivalent alternating stress", fillet.Stress, allowed, Dimension.Pressure, "MPa", "fatigue strength over 1.15") with { Remark = PeakPressureCheck.At(fillet.Speed) };
    }

    private protected abstract FilletStress? Stress(CrankStrength strength);
}

/// <summary>Fatigue of the crank pin's fillet.</summary>
public sealed class CrankPinFilletCheck : CrankFilletCheck
{
    public override string Id => "crank-pin-fillet";

    public override string Title => "Crank pin fillet against fatigue";

    private protected override FilletStress? Stress(CrankStrength strength) => strength.PinFillet();
}

/// <summary>Fatigue of the main journals' fillets.</summary>
public sealed class CrankJournalFilletCheck : CrankFilletCheck
{
    public override string Id => "crank-journal-fillet";

    public override string Title => "Main journal fillet against fatigue";

    private protected override FilletStress? Stress(CrankStrength strength) => strength.JournalFillet();
}

/// <summary>End float of the crank.</summary>
public sealed class CrankEndFloatCheck : Check
{
    public override string Id => "crank-end-float";

    public override string Title => "End float of the crank";

    public override string Family => "crank";

    public override string Source => "as read; limits by the maker of the engine";

    public override Judgement Examine(View view, string index) => Judgement.Between(
        "end float", view.Amount(Crank.EndFloat), view.Amount(Crank.EndFloatMin), view.Amount(Crank.EndFloatMax), Dimension.Length, "mm", "crank.endFloatMin and endFloatMax");
}
