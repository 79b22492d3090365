using Gudgeon.Book.Build;
using Gudgeon.Book.Checks.Drive;
using Gudgeon.Book.Drawings;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Drive;

/// <summary>The charge cooler at one engine speed. SI.</summary>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="Flow">Air, kg/s.</param>
/// <param name="Delivery">Temperature from the blower, K.</param>
/// <param name="Effectiveness">From its size.</param>
/// <param name="Outlet">Temperature behind it, K.</param>
/// <param name="Heat">Heat taken from the charge, W.</param>
public sealed record CoolerRow(double Speed, double Flow, double Delivery, double Effectiveness, double Outlet, double Heat);

/// <summary>Heat of oil tank and charge cooler.</summary>
/// <param name="Steps">Its numbers.</param>
/// <param name="Oil">Oil after a run over the air speed, m/s and K; empty when it is not known.</param>
/// <param name="Limit">Hottest that the oil may be, K.</param>
/// <param name="Rows">The cooler over the engine run.</param>
/// <param name="Missing">What is wanted.</param>
public sealed record HeatSheet(IReadOnlyList<DriveStep> Steps, IReadOnlyList<(double AirSpeed, double Temperature)> Oil, double Limit, IReadOnlyList<CoolerRow> Rows, string Missing) : IDriveSheet
{
    /// <inheritdoc/>
    public IReadOnlyList<string> Refused { get; init; } = [];

    /// <summary>What it leaves out.</summary>
    public const string Remark = "The tank's wall is as hot as its oil, the wind runs along walls and fins, nothing is radiated; a run lets no heat out. Heat capacity of oil 2100 J/(kg·K) at 820 kg/m³ (from memory). The cooler's coefficient stays the same over the flow, so that small flows are cooled less than this says.";

    private const string HotOil = "Hot oil burns and lights on an exhaust: cool before a hose comes off, catch tank on the breather, gloves.";
    private const string Ice = "Iced water runs out when a hose lets go: fit it so that none comes before the rear tyre.";
    private const int Points = 31;

    /// <summary>The sheet of the values that hold.</summary>
    public static HeatSheet Of(Snapshot now, DutyDesk? desk)
    {
        if (DriveWords.Without(now) is { Length: > 0 } none)
        {
            return new HeatSheet([], [], double.NaN, [], none);
        }

        var view = new View(now, desk);
        var tank = new TankHeat(view);
        var (mean, rise) = (Sketch.Known(tank.Mean), Sketch.Known(tank.Rise));
        IReadOnlyList<CoolerRow> rows = view.Knows(Cooler.Area) ? [.. Cooling(view)] : [];
        return new HeatSheet(
            [.. view.Knows(OilTank.Area) ? Tank(view, tank) : [], .. Charge(view, rows)],
            mean is { } heat && rise is { } more && Sketch.Known(() => tank.Temperature(heat, 0)) is not null ? [.. Enumerable.Range(0, Points).Select(i => ((double)i, tank.Temperature(heat, i) + more))] : [],
            tank.Limit(),
            rows,
            DriveWords.Missing(view))
        {
            Refused = view.Trace.Refused,
        };
    }

    private static IEnumerable<DriveStep> Tank(View view, TankHeat tank)
    {
        var (air, speed) = (view.Amount(Weather.Temperature), view.Amount(OilTank.AirSpeed));
        return DriveWords.Step(
            "Oil tank in place of a cooler",
            HotOil,
            new Fact("heat into the oil at full load", Sketch.Known(tank.Full), Dimension.Power, "kW") { Remark = "its share of friction, and what the drive of the blower loses" },
            new Fact("mean of runs and rests", Sketch.Known(tank.Mean), Dimension.Power, "W") { InchUnit = "hp" },
            new Fact("heat transfer coefficient", Sketch.Known(() => tank.Coefficient(air, 60, speed)), Dimension.HeatTransferCoefficient, "W/(m²·K)") { RemarkIn = imperial => imperial ? "108 °F above the air" : "60 K above the air" },
            new Fact("oil between runs, in the wind", Sketch.Known(() => tank.Temperature(tank.Mean(), speed)), Dimension.Temperature, "°C"),
            new Fact("oil between runs, standing still", Sketch.Known(() => tank.Temperature(tank.Mean(), 0)), Dimension.Temperature, "°C"),
            new Fact("what a run adds", Sketch.Known(tank.Rise), Dimension.TemperatureDifference, "K") { InchUnit = "°F" },
            new Fact("oil after a run", Sketch.Known(tank.Hottest), Dimension.Temperature, "°C") { RemarkIn = imperial => $"{OilTank.Limit.Print(tank.Limit(), imperial)} allowed" });
    }

    private static IEnumerable<DriveStep> Charge(View view, IReadOnlyList<CoolerRow> rows)
    {
        if (rows.Count == 0)
        {
            return [];
        }

        var (cooler, most, time) = (new SizedCooler(view), rows.MaxBy(r => r.Heat)!, view.AmountIf(OilTank.RunTime));
        return DriveWords.Step(
            "Charge cooler",
            Ice,
            new Fact("greatest heat taken from the charge", most.Heat, Dimension.Power, "kW") { Remark = $"at {Engine.RevLimit.Print(most.Speed)}" },
            new Fact("effectiveness from its size", most.Effectiveness, Dimension.Number, "") { Remark = view.AmountIf(Cooler.Effectiveness) is { } assumed ? $"the run is made with {Figures.Number(assumed, 3)}" : "" },
            new Fact("charge behind it", most.Outlet, Dimension.Temperature, "°C"),
            new Fact("its tank warms in a run by", time is { } t && view.Knows(Cooler.TankWater) ? Sketch.Known(() => cooler.TankRise(most.Heat, t)) : null, Dimension.TemperatureDifference, "K") { InchUnit = "°F", Remark = "what ice there is melts first" });
    }

    private static IEnumerable<CoolerRow> Cooling(View view)
    {
        var cooler = new SizedCooler(view);
        foreach (var (speed, blower) in BlowerDuty.Points(view.Duty()).Select(f => (f.Speed, f.Figures.Blower!)))
        {
            if (Sketch.Known(() => cooler.Heat(blower)) is { } heat)
            {
                yield return new CoolerRow(speed, blower.Flow, blower.DeliveryTemperature, cooler.Effectiveness(blower.Flow), cooler.Outlet(blower), heat);
            }
        }
    }
}
