using Gudgeon.Book.Bottom;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Bearings;

/// <summary>Clearance with housing, shells and journal as warm as they run.</summary>
public sealed class HotClearanceCheck : Check
{
    private const string Unsourced = "0.0005 to 0.002 of the journal: common practice, no source";

    public override string Id => "bearing-clearance-hot";

    public override string Title => "Shell bearing clearance, hot";

    public override string Family => "bearings";

    public override string Source => "thermal expansion of housing, shells and journal from 20 °C; limits: " + Unsourced;

    /// <summary>Where the temperature of the oil is known: without it nothing says how warm anything runs.</summary>
    public override IEnumerable<string> Instances(View view) => view.Knows(Oil.Temperature) ? BearingFit.Keys(view) : [];

    public override Judgement Examine(View view, string index)
    {
        var journal = BearingFit.Journal(view, index);
        return Judgement.Between(
            "diametral clearance, hot",
            WarmBearing.Of(view, index).Clearance(view, index),
            view.Limit("bearing-clearance-hot.min", Dimension.Length, "mm", 0.0005 * journal),
            view.Limit("bearing-clearance-hot.max", Dimension.Length, "mm", 0.002 * journal),
            Dimension.Length,
            "mm",
            Unsourced);
    }
}

/// <summary>Whether the shells still press on their housing when it is warm.</summary>
public sealed class CrushCheck : ShellGripCheck
{
    private const string Unsourced = "5 MPa: common practice, no source";

    public override string Id => "shell-crush";

    public override string Title => "Shells held by their crush, hot";

    public override string Source => "excess of the shells over the bore less what the housing grows away; shell and housing as rings in a press fit (Lamé); limit: " + Unsourced;

    public override string Caution => "Shells without crush turn in their housing, close the oil hole and seize. Never file caps to get it.";

    public override Judgement Examine(View view, string index)
    {
        var excess = view.Knows(Oil.Temperature) ? WarmBearing.Of(view, index).Excess(view, index) : view.Amount(Bearing.Excess, index);
        return Judgement.AtLeast(
            "pressure of the shells on the housing",
            Press(view, index, excess).Pressure,
            view.Limit("shell-crush.min", Dimension.Pressure, "MPa", 5e6),
            Dimension.Pressure,
            "MPa",
            Unsourced) with { Remark = double.IsNaN(excess) ? "" : $"with an excess of {Bearing.Excess.Print(excess)} left" };
    }
}

/// <summary>What the crush of the shells does to the housing.</summary>
public sealed class HousingStressCheck : ShellGripCheck
{
    public override string Id => "bearing-housing-stress";

    public override string Title => "Hoop stress in the bearing housing";

    public override string Source => "shell and housing as rings in a press fit (Lamé), cold, when the excess is greatest; limit by the maker of the material";

    public override IEnumerable<string> Instances(View view) => base.Instances(view).Where(i => view.Knows(Bearing.HousingStressLimit, i));

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "hoop stress in the housing",
        Press(view, index, view.Amount(Bearing.Excess, index)).HubHoop,
        view.Amount(Bearing.HousingStressLimit, index),
        Dimension.Pressure,
        "MPa",
        "bearing.housingStressLimit");
}
