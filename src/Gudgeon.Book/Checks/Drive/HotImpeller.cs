using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Boost;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Materials;

namespace Gudgeon.Book.Checks.Drive;

/// <summary>The impeller as it bears its speed with hot air behind it. What is not known reads as NaN.</summary>
/// <param name="view">The values.</param>
internal sealed class HotImpeller(View view)
{
    /// <summary>Its temperature at full load, K: as given, else that of the air that the blower delivers where it is hottest.</summary>
    public double Temperature() => view.AmountIf(Impeller.Temperature)
        ?? view.Duty()?.Most(f => f.Blower?.DeliveryTemperature ?? double.NaN).Value ?? double.NaN;

    /// <summary>Its tensile strength, Pa: as given, else by the handbook, of aluminium at its temperature.</summary>
    public double Strength()
    {
        if (view.AmountIf(Impeller.HotStrength) is { } given)
        {
            return given;
        }

        return view.Choice<MaterialGrade>(Impeller.Material) is { } grade
            ? MaterialTable.Properties(grade).Tensile * (HotStrength.Knows(grade) ? view.Work(HotStrength.Share, grade, Temperature()) : 1)
            : double.NaN;
    }

    /// <summary>Burst speed, rad/s.</summary>
    public double Burst() => view.Choice<MaterialGrade>(Impeller.Material) is { } grade
        ? view.Work(DriveShock.BurstSpeed, view.AmountOr(Impeller.Bore, 0) / 2, view.Amount(Impeller.Diameter) / 2, Strength(), MaterialTable.Properties(grade).Density, 0.85)
        : double.NaN;

    /// <summary>What strength it was worked with: "strength at 128 °C".</summary>
    /// <param name="imperial">Whether in inch units.</param>
    public string StrengthWords(bool imperial)
    {
        if (view.Knows(Impeller.HotStrength))
        {
            return "strength as given";
        }

        return view.Choice<MaterialGrade>(Impeller.Material) is { } grade && HotStrength.Knows(grade)
            ? Temperature() is var hot && !double.IsNaN(hot) ? $"strength at {Figures.Print(hot, Dimension.Temperature, "°C", 3, imperial)}" : ""
            : "strength at room temperature: what heat leaves of this material is not known here";
    }
}
