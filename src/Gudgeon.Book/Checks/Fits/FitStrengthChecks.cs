using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Fits;

/// <summary>Torque at which a joint slips as it runs.</summary>
public sealed class FitGripCheck : FitCheck
{
    public override string Id => "fit-grip";

    public override string Title => "Slip torque of the joint, running";

    public override string Source => "friction on cylinder or taper (DIN 7190-1, from memory), hot and turning; half as much again as the greatest torque: common practice, no source";

    public override Judgement Examine(View view, string index) => Judgement.AtLeast(
        "slip torque",
        new FittedPair(view, index).SlipTorque(),
        view.Limit("fit-grip.factor", Dimension.Number, "", 1.5) * view.Amount(Fit.Torque, index),
        Dimension.Torque,
        "N·m",
        "1.5 times fit.torque");

    protected override bool Applies(View view, string index) => view.Knows(Fit.Torque, index) && (view.Knows(Fit.Hole, index) || view.Knows(Fit.Taper, index));
}

/// <summary>Stress in the hub of a tight joint, cold, where its interference is all there.</summary>
public sealed class FitHubStressCheck : FitCheck
{
    public override string Id => "fit-hub-stress";

    public override string Title => "Stress in the hub of a tight fit";

    public override string Source => "Lamé (Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 3-49 to 3-57), von Mises at the bore against yield";

    public override string Caution => "A hub that is split by its shaft flies apart when it turns: eye protection, guards, and a crack test after the first fitting.";

    public override Judgement Examine(View view, string index)
    {
        var pair = new FittedPair(view, index);
        return Judgement.AtMost("stress at the bore of the hub", pair.Stress(pair.Interference()).HubMises, pair.HubYield, Dimension.Pressure, "MPa", "yield strength of the hub");
    }

    protected override bool Applies(View view, string index) => view.Knows(Fit.HubMaterial, index) && view.Knows(Fit.Hole, index) && new FittedPair(view, index).Wanted().Greatest > 0;
}

/// <summary>Stress in the hollow shaft of a tight joint.</summary>
public sealed class FitShaftStressCheck : FitCheck
{
    public override string Id => "fit-shaft-stress";

    public override string Title => "Stress in the hollow shaft of a tight fit";

    public override string Source => "Lamé (Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 3-49 to 3-57), squeeze at the bore against yield";

    public override Judgement Examine(View view, string index)
    {
        var pair = new FittedPair(view, index);
        return Judgement.AtMost("squeeze at the bore of the shaft", -pair.Stress(pair.Interference()).ShaftHoop, pair.ShaftYield, Dimension.Pressure, "MPa", "yield strength of the shaft");
    }

    protected override bool Applies(View view, string index) => view.Knows(Fit.ShaftBore, index) && view.Knows(Fit.ShaftMaterial, index) && view.Knows(Fit.Shaft, index) && new FittedPair(view, index).Wanted().Greatest > 0;
}

/// <summary>How hot a hub must be made to go on, against what its temper takes.</summary>
public sealed class FitHeatCheck : FitCheck
{
    public override string Id => "fit-heat";

    public override string Title => "Hub temperature for assembly";

    public override string Source => "linear expansion over interference and handling clearance (DIN 7190-1); limit by the temper of the hub";

    public override string Caution => "Hot parts burn and dry ice freezes the skin: gloves, visor, an aired room. Parts that grip half-way stay there: a guide, a stop, and a dry run cold.";

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "hub temperature", new FittedPair(view, index).HubTemperature(), view.Amount(Fit.HeatLimit, index), Dimension.Temperature, "°C", "fit.heatLimit");

    protected override bool Applies(View view, string index) => view.Knows(Fit.HeatLimit, index) && view.Knows(Fit.Hole, index) && new FittedPair(view, index).Wanted().Greatest > 0;
}

/// <summary>Pressure on the flank of a key with all of the torque on it.</summary>
public sealed class KeyPressureCheck : FitCheck
{
    public override string Id => "fit-key";

    public override string Title => "Pressure on the key, all torque through it";

    public override string Source => "DIN 6892, method C (from memory); section by DIN 6885-1; the friction of the fit left out";

    public override Judgement Examine(View view, string index)
    {
        var key = new FittedPair(view, index).Key();
        return Judgement.AtMost("pressure on the key's flank", Math.Max(key.HubPressure, key.ShaftPressure), view.Amount(Fit.KeyPressureLimit, index), Dimension.Pressure, "MPa", "fit.keyPressureLimit");
    }

    protected override bool Applies(View view, string index) => view.Knows(Fit.KeyLength, index);
}
