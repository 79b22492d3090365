using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Fuel;

/// <summary>Share of the time that the injectors must be open at full load.</summary>
public sealed class InjectorDutyCheck : Check
{
    public override string Id => "injector-duty";

    public override string Title => "Injector duty";

    public override string Family => "fuel";

    public override string Source => "fuel flow of the engine run over the flow of all injectors held open; 85 %: common practice, no source";

    public override string Caution => "Fuel under pressure: prove lines and rails with the spark off, ventilated, an extinguisher at hand; methanol burns without a visible flame.";

    public override Judgement Examine(View view, string index)
    {
        var (flow, speed) = view.Duty()?.Most(f => f.FuelFlow) ?? (double.NaN, double.NaN);
        var duty = flow / (view.Count(FuelSystem.Injectors) * view.Amount(FuelSystem.InjectorFlow));
        return Judgement.AtMost("injector duty", duty, view.AmountOr(FuelSystem.InjectorDutyMax, 0.85), Dimension.Number, "%", "fuel.injectorDutyMax, else common practice") with { Remark = Motion.PeakPressureCheck.At(speed) };
    }
}

/// <summary>Knock integral of the end gas over the run.</summary>
public sealed class KnockCheck : Check
{
    public override string Id => "knock";

    public override string Title => "Knock margin";

    public override string Family => "fuel";

    public override string Source => "Livengood & Wu 1955 with the delay of Douaud & Eyzat, SAE 780080; 0.9 of the onset: common practice, no source";

    public override string Caution => "The correlation is a guide within about 15 %; begin with less advance and more fuel, and listen.";

    public override Judgement Examine(View view, string index)
    {
        var duty = view.Duty();
        var (worst, speed) = duty?.Most(f => f.KnockIntegral) ?? (double.NaN, double.NaN);
        if (duty is not null && duty.Figures.Any(p => !p.Figures.KnockValid && p.Figures.KnockIntegral < 1))
        {
            view.Unknown("a knock limit for end gas above 1050 K, where the correlation does not hold");
        }

        return Judgement.AtMost("knock integral", worst, view.AmountOr(Combustion.KnockLimit, Combustion.UsualKnockLimit), Dimension.Number, "", "combustion.knockLimit, else common practice") with { Remark = Motion.PeakPressureCheck.At(speed) };
    }
}
