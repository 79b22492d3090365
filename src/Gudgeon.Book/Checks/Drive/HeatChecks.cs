using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Drive;

/// <summary>Hottest oil of a tank that cools by walls and fins.</summary>
public sealed class OilTankCheck : DriveCheck
{
    public override string Id => "oil-tank";

    public override string Title => "Oil temperature with a tank in place of a cooler";

    public override string Source => "heat balance of runs and rests, flat plate in the wind and Churchill & Chu in still air, fin efficiency (Incropera & DeWitt, from memory); half of friction into the oil and 130 °C: common practice, no source";

    public override string Caution => "Oil at this heat burns the skin and lights on an exhaust: let it cool before a hose comes off, catch tank and breather away from the tyre.";

    public override Judgement Examine(View view, string index)
    {
        var tank = new TankHeat(view);
        return Judgement.AtMost("oil after a run", tank.Hottest(), tank.Limit(), Dimension.Temperature, "°C", "oilTank.limit, 130 °C when left out");
    }

    protected override bool Applies(View view) => view.Knows(OilTank.Area);
}

/// <summary>Effectiveness of the charge cooler from its size, against the one that the engine is run with.</summary>
public sealed class CoolerSizeCheck : DriveCheck
{
    public override string Id => "cooler-size";

    public override string Title => "Effectiveness of the charge cooler from its size";

    public override string Source => "transfer units (Incropera & DeWitt, from memory) at the greatest flow of the run; wanted is what the run is made with";

    public override Judgement Examine(View view, string index)
    {
        var (flow, speed) = view.Duty()?.Most(f => f.Blower?.Flow ?? double.NaN) ?? (double.NaN, double.NaN);
        return Judgement.AtLeast("effectiveness", new SizedCooler(view).Effectiveness(flow), view.Amount(Cooler.Effectiveness), Dimension.Number, "", "cooler.effectiveness") with { Remark = Motion.PeakPressureCheck.At(speed) };
    }

    protected override bool Applies(View view) => view.Knows(Cooler.Area);
}
