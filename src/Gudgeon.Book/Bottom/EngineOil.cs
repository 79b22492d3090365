using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Bearings;
using Gudgeon.Simulation.Bearings;

namespace Gudgeon.Book.Bottom;

/// <summary>The oil of a book: by its maker's viscosities, else a middling oil of its grade.</summary>
internal static class EngineOil
{
    /// <summary>Density at 15 °C, kg/m³, and heat of a warm engine oil, J/(kg·K): common practice, no source.</summary>
    private const double UsualDensity = 870;
    private const double SpecificHeat = 2000;

    /// <summary>The oil; null, and what is missing noted, when neither viscosities nor grade are known.</summary>
    public static OilSpec? Of(View view)
    {
        var grade = view.Knows(Oil.Grade) ? view.Choice<OilGrade>(Oil.Grade) : null;
        if (grade is null && !(view.Knows(Oil.Cold) && view.Knows(Oil.Hot)))
        {
            view.Amount(Oil.Cold);
            view.Amount(Oil.Hot);
            return null;
        }

        var (cold, hot) = grade is { } known ? Middling(known) : (double.NaN, double.NaN);
        var least = grade is { } g ? EngineOilGrade.Hot(g).HighShear : double.NaN;
        return Sensible(new OilSpec(
            view.AmountIf(Oil.Cold) ?? cold,
            view.AmountIf(Oil.Hot) ?? hot,
            view.AmountIf(Oil.HighShear) ?? least,
            view.AmountOr(Oil.Density, UsualDensity),
            SpecificHeat));
    }

    /// <exception cref="BadInputException">An oil that does not thin when warm.</exception>
    private static OilSpec Sensible(OilSpec oil) => oil.Hot < oil.Cold
        ? oil
        : throw new BadInputException($"{Oil.Hot.Path}: given {Oil.Hot.Print(oil.Hot)}, wanted less than at 40 °C, {Oil.Cold.Print(oil.Cold)}");

    /// <summary>Viscosities at 40 °C and 100 °C of multigrade oils as they are sold (common practice, no source).</summary>
    private static (double Cold, double Hot) Middling(OilGrade grade)
    {
        var (cold, hot) = grade switch
        {
            OilGrade.Sae16 => (36.0, 7.0),
            OilGrade.Sae20 => (45.0, 8.2),
            OilGrade.Sae30 => (62.0, 10.7),
            OilGrade.Sae40Light => (84.0, 14.0),
            OilGrade.Sae40 => (105.0, 14.3),
            OilGrade.Sae50 => (135.0, 18.5),
            _ => (190.0, 24.0),
        };
        return (cold * 1e-6, hot * 1e-6);
    }
}
