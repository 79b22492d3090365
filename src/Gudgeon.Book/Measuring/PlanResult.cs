using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Measuring;

/// <summary>
/// What the readings of a plan come to: form, and the mean at 20 °C with its uncertainty. The scatter of repeats is type A
/// (pooled over the places), instrument and temperatures are type B (JCGM 100:2008, 4.2, 4.3). SI.
/// </summary>
public sealed record PlanResult
{
    /// <summary>Form and scatter of the readings.</summary>
    public required Roundness Form { get; init; }

    /// <summary>Mean, brought to 20 °C where temperatures were said, m.</summary>
    public required double Mean { get; init; }

    /// <summary>Whether it was brought to 20 °C.</summary>
    public required bool Corrected { get; init; }

    /// <summary>Standard uncertainty of the mean by the scatter of repeats, m; 0 where nothing was read twice.</summary>
    public required double FromRepeats { get; init; }

    /// <summary>Standard uncertainty by the instrument, m; null when it is none of the book's or not known.</summary>
    public required double? FromInstrument { get; init; }

    /// <summary>Standard uncertainty by the temperatures, m.</summary>
    public required double FromTemperature { get; init; }

    /// <summary>Uncertainty of the mean by all of these, m.</summary>
    public RepeatedUncertainty Uncertainty => RepeatedUncertainty.Of(FromRepeats, Form.Freedom, FromInstrument ?? 0, FromTemperature);

    /// <summary>The readings of a plan as the book has them; null when it has none.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="now">The values that hold.</param>
    /// <param name="with">The instrument; that of the readings when empty.</param>
    /// <param name="at">Temperatures at which they were read; null when not said.</param>
    public static PlanResult? Of(MeasuringPlan plan, Snapshot now, string with = "", ReadAt? at = null)
    {
        if (now.Find(plan.Table) is not { Value.Content: Table table } found)
        {
            return null;
        }

        var form = new Roundness(table);
        var instrument = ShopInstrument.Find(now, with.Length > 0 ? with : found.Value.With);
        var brought = at?.Of(now, plan.Mean, form.Mean);
        return new PlanResult
        {
            Form = form,
            Mean = brought?.Corrected ?? form.Mean,
            Corrected = brought is not null,
            FromRepeats = form.Scatter / Math.Sqrt(form.Readings),
            FromInstrument = instrument is not null && instrument.Dimension == plan.Mean.Field.Dimension ? instrument.At(form.Mean)?.Standard : null,
            FromTemperature = brought?.Uncertainty ?? 0,
        };
    }

    /// <summary>The mean with its ± (k = 2), as a reading is written; to a tenth of a micrometre.</summary>
    /// <param name="plan">The plan.</param>
    public string Written(MeasuringPlan plan)
    {
        var amount = new Amount(Mean, Units.Declared(plan.Mean.Field.Dimension, plan.Mean.Field.Unit), Decimals: 4);
        return (Uncertainty.Kept is > 0 and var kept ? amount.Within(kept) : amount).ToString();
    }

    /// <summary>What stands beside the mean when it is kept as a reading.</summary>
    /// <param name="plan">The plan.</param>
    public string Note(MeasuringPlan plan) => string.Create(
        CultureInfo.InvariantCulture,
        $"mean of {Form.Readings} readings at {Form.Stations} {(Form.Stations == 1 ? "station" : "stations")} in two axes{(Corrected ? ", brought to 20 °C" : "")}; {Form.Words(si => plan.Mean.Field.Print(si))}");
}
