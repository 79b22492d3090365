using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Springs;

namespace Gudgeon.Book.Checks.ValveTrain;

/// <summary>Loads of springs as fitted.</summary>
/// <param name="Seat">With the valve shut, N.</param>
/// <param name="Open">At full lift, N.</param>
internal readonly record struct FittedLoads(double Seat, double Open);

/// <summary>
/// One coil as fitted: by the tester where it was tested (a line through two readings, a curve through more), else by its
/// wire. NaN, and what is wanted noted in the view, where something is not known.
/// </summary>
/// <param name="view">Where it is read and worked.</param>
/// <param name="index">The valve.</param>
/// <param name="fields">The coil's fields: outer or inner.</param>
/// <param name="spacer">Spacer under it, m; the book's when null.</param>
internal sealed class Coil(View view, string index, CoilFields fields, double? spacer)
{
    /// <summary>"spring", "inner spring".</summary>
    public string Name => fields.Name;

    /// <summary>Wire diameter, m.</summary>
    public double Wire => view.Amount(fields.Wire, index);

    /// <summary>Mean coil diameter, m.</summary>
    public double MeanDiameter => view.Amount(fields.OutsideDiameter, index) - Wire;

    /// <summary>Active coils.</summary>
    public double ActiveCoils => view.Amount(fields.ActiveCoils, index);

    /// <summary>Tensile strength of the wire, Pa.</summary>
    public double TensileStrength => view.Amount(fields.TensileStrength, index);

    /// <summary>Mass, kg.</summary>
    public double Mass => view.Amount(fields.Mass, index);

    /// <summary>What its own seat and the retainer take from the outer spring's height, m.</summary>
    public double Step => fields == InnerSpring.Coil ? view.AmountOr(InnerSpring.SeatStep, 0, index) : 0;

    /// <summary>Readings of the tester, heights and loads, when there are three or more; null otherwise.</summary>
    public (double[] Heights, double[] Loads)? Readings => view.TableIf(fields.LoadTable, index) is { Rows.Count: >= 3 } table ? (table["height"], table["load"]) : null;

    private double Spacer => spacer ?? view.AmountOr(Spring.Spacer, 0, index);

    private double Installed => view.Amount(Spring.InstalledHeight, index) - Step;

    private double Shut => Installed - Spacer;

    /// <summary>Rate that wire, coil diameter and active coils give, N/m.</summary>
    public double RateOfWire()
    {
        var wire = Wire;
        return view.Work(HelicalSpring.Rate, wire, view.Amount(fields.OutsideDiameter, index) - wire, ActiveCoils, view.AmountOr(fields.ShearModulus, 79.3e9, index));
    }

    /// <summary>Rate, N/m, and free length, m, of the straight line: by the tester's outer two readings, else by the wire.</summary>
    public TestedSpring Straight()
    {
        if (view.TableIf(fields.LoadTable, index) is { Rows.Count: >= 2 } table)
        {
            var (loads, heights) = (table["load"], table["height"]);
            return view.Work(SpringLoad.FromTwoHeights, heights[0], loads[0], heights[^1], loads[^1]);
        }

        return new TestedSpring(RateOfWire(), view.Amount(fields.FreeLength, index));
    }

    /// <summary>Loads with the valve shut and at full lift, spacer counted.</summary>
    public FittedLoads Loads()
    {
        if (Readings is { } read)
        {
            var shut = Shut;
            return new FittedLoads(
                view.Work(SpringTable.Load, read.Heights, read.Loads, shut),
                view.Work(SpringTable.Load, read.Heights, read.Loads, shut - view.Amount(Valve.Lift, index)));
        }

        var spring = Straight();
        var loads = view.Work(
            ValveSpring.Loads,
            spring.Rate,
            spring.FreeLength,
            Installed,
            view.Amount(Valve.Lift, index),
            view.Amount(fields.SolidHeight, index),
            Spacer);
        return new FittedLoads(loads.SeatLoad, loads.OpenLoad);
    }

    /// <summary>Load when seat and retainer stand so far apart as the outer spring is high, N.</summary>
    public double LoadAt(double height)
    {
        if (Readings is { } read)
        {
            return view.Work(SpringTable.Load, read.Heights, read.Loads, height - Step);
        }

        var spring = Straight();
        return view.Work(SpringLoad.AtHeight, spring.Rate, spring.FreeLength, height - Step, view.Amount(fields.SolidHeight, index));
    }

    /// <summary>Rate with the valve shut, N/m; a progressive spring's least.</summary>
    public double RateShut() => Readings is { } read ? view.Work(SpringTable.Rate, read.Heights, read.Loads, Shut) : Straight().Rate;

    /// <summary>Margin before its coils touch at full lift, m; may be negative.</summary>
    public double CoilBindMargin() => view.Work(
        ValveSpring.CoilBindMargin,
        Installed,
        view.Amount(Valve.Lift, index),
        view.Amount(fields.SolidHeight, index),
        Spacer);

    /// <summary>Height of the outer spring at which this one's coils touch, m.</summary>
    public double BindsAt => view.Amount(fields.SolidHeight, index) + Step;

    /// <summary>Shear stress in the wire at full lift by Wahl, Pa.</summary>
    public double OpenStress()
    {
        var loads = Loads();
        return view.Work(HelicalSpring.ShearStress, loads.Open, Wire, MeanDiameter, CurvatureFactor.Wahl);
    }

    /// <summary>Safety against fatigue: Goodman line through Zimmerli's peened strength; NaN where something is not known.</summary>
    public double FatigueSafety()
    {
        var loads = Loads();
        var strength = view.Work(SpringFatigue.Zimmerli, WireSurface.Peened);
        return view.Work(SpringFatigue.Safety, loads.Seat, loads.Open, Wire, MeanDiameter, TensileStrength, strength.Amplitude, strength.Mean, CurvatureFactor.Wahl, FatigueCriterion.Goodman).Safety;
    }

    /// <summary>First frequency of its own vibration with the valve shut, Hz.</summary>
    public double SurgeFrequency() => view.Work(SpringSurge.FromMass, RateShut(), view.Work(SpringSurge.ActiveMass, Wire, MeanDiameter, ActiveCoils, 7850.0));
}
