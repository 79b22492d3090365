using Gudgeon.Book.Checks.Rods;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Book.Checks.Motion;

/// <summary>A gudgeon pin under the push of the gas and the pull at overlap. SI; NaN where it is not known.</summary>
/// <param name="view">The values, with a desk: the push takes an engine run.</param>
/// <param name="cylinder">Whose pin.</param>
internal sealed class LoadedPin(View view, string cylinder)
{
    private readonly RodDuty _duty = new(view, cylinder);

    /// <summary>Greatest push and its speed.</summary>
    public (double Load, double Speed) Push => _duty.PinPush;

    /// <summary>Pull at overlap TDC at the rev limit.</summary>
    public double Pull => _duty.PinPull;

    /// <summary>Stresses and pressures under a load.</summary>
    public PinStresses Stress(double load) => view.Work(GudgeonPin.Stress, load, view.Amount(Pin.Diameter, cylinder), view.Amount(Pin.Bore, cylinder), view.Amount(Pin.Length, cylinder), view.Amount(Pin.BossGap, cylinder), view.Amount(Pin.RodWidth, cylinder));

    /// <summary>How oval it goes under a load.</summary>
    public PinOvality Ovality(double load) => view.Work(GudgeonPin.Ovality, load, view.Amount(Pin.Diameter, cylinder), view.Amount(Pin.Bore, cylinder), view.Amount(Pin.Length, cylinder), view.AmountOr(Pin.Modulus, 206e9, cylinder));

    /// <summary>Safety of a stress that swings from the push's to the pull's, the other way.</summary>
    public SwingingStress Swing(double pushed, double pulled) => view.Work(CrankFatigue.Goodman, pushed, -pulled, view.Amount(Pin.FatigueStrength, cylinder), view.Amount(Pin.TensileStrength, cylinder));
}

/// <summary>A check of each gudgeon pin.</summary>
public abstract class PinCheck : Check
{
    private protected const string Textbook = "Kolchin & Demidov, Design of Automotive Engines (from memory); push of the gas less the piston's inertia at the hardest speeds";

    public override string Family => "moving parts";

    public override string Source => Textbook;

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Cylinders(view);

    public override Judgement Examine(View view, string index)
    {
        var pin = new LoadedPin(view, index);
        return Examine(view, index, pin) with { Remark = PeakPressureCheck.At(pin.Push.Speed) };
    }

    private protected abstract Judgement Examine(View view, string index, LoadedPin pin);
}

/// <summary>Fatigue of the pin in bending.</summary>
public sealed class PinBendingCheck : PinCheck
{
    public override string Id => "pin-bending";

    public override string Title => "Gudgeon pin in bending, against fatigue";

    public override string Source => Textbook + ", the pull at overlap the other way, Goodman's line; 1.2: common practice, no source";

    private protected override Judgement Examine(View view, string index, LoadedPin pin) => Judgement.AtLeast(
        "safety against fatigue", pin.Swing(pin.Stress(pin.Push.Load).Bending, pin.Stress(pin.Pull).Bending).Safety, view.Limit("pin-bending.min", Dimension.Number, "", 1.2), Dimension.Number, "", "common practice, no source");
}

/// <summary>Fatigue of the pin's bore as it goes oval.</summary>
public sealed class PinBoreCheck : PinCheck
{
    public override string Id => "pin-bore";

    public override string Title => "Gudgeon pin's bore going oval, against fatigue";

    public override string Source => Textbook + ", the pull at overlap the other way, Goodman's line; 1.2: common practice, no source";

    private protected override Judgement Examine(View view, string index, LoadedPin pin) => Judgement.AtLeast(
        "safety against fatigue", pin.Swing(pin.Ovality(pin.Push.Load).Bore, pin.Ovality(pin.Pull).Bore).Safety, view.Limit("pin-bore.min", Dimension.Number, "", 1.2), Dimension.Number, "", "common practice, no source");
}

/// <summary>How oval the pin goes.</summary>
public sealed class PinOvalityCheck : PinCheck
{
    public override string Id => "pin-ovality";

    public override string Title => "Ovality of the gudgeon pin";

    public override string Source => Textbook + "; at most 0.02 to 0.05 mm there";

    private protected override Judgement Examine(View view, string index, LoadedPin pin) => Judgement.AtMost(
        "ovality", pin.Ovality(pin.Push.Load).Growth, view.AmountOr(Pin.OvalityLimit, 0.05e-3, index), Dimension.Length, "mm", "pin.ovalityLimit, else textbook");
}

/// <summary>Shear of the pin in the gaps between rod and bosses.</summary>
public sealed class PinShearCheck : PinCheck
{
    public override string Id => "pin-shear";

    public override string Title => "Gudgeon pin in shear";

    public override string Source => Textbook + "; a fifth of the tensile strength: common practice, no source";

    private protected override Judgement Examine(View view, string index, LoadedPin pin) => Judgement.AtMost(
        "shear stress", pin.Stress(pin.Push.Load).Shear, view.Amount(Pin.TensileStrength, index) / view.Limit("pin-shear.factor", Dimension.Number, "", 5), Dimension.Pressure, "MPa", "pin.tensileStrength over 5");
}

/// <summary>Pressure of the pin in the small end.</summary>
public sealed class PinRodPressureCheck : PinCheck
{
    public override string Id => "pin-small-end";

    public override string Title => "Pressure in the small end";

    private protected override Judgement Examine(View view, string index, LoadedPin pin) => Judgement.AtMost(
        "mean pressure", pin.Stress(pin.Push.Load).RodPressure, view.Amount(Pin.RodPressureLimit, index), Dimension.Pressure, "MPa", "pin.rodPressureLimit");
}

/// <summary>Pressure of the pin in the piston's bosses.</summary>
public sealed class PinBossPressureCheck : PinCheck
{
    public override string Id => "pin-bosses";

    public override string Title => "Pressure in the piston's bosses";

    private protected override Judgement Examine(View view, string index, LoadedPin pin) => Judgement.AtMost(
        "mean pressure", pin.Stress(pin.Push.Load).BossPressure, view.Amount(Pin.BossPressureLimit, index), Dimension.Pressure, "MPa", "pin.bossPressureLimit");
}
