using Gudgeon.Book.Build;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Metrology;

namespace Gudgeon.Book.Measuring;

/// <summary>
/// What the readings of a plan come to: form, and the mean at 20 °C with its uncertainty. The scatter of repeats is type A
/// (pooled over the places), instrument and temperatures are type B; effective degrees of freedom by Welch and Satterthwaite, and
/// the coverage factor that goes with them (JCGM 100:2008, 4.2, 5.1.2, G.4). SI.
/// </summary>
public sealed record PlanResult
{
    /// <summary>Coverage probability of the expanded uncertainty.</summary>
    public const double Coverage = 0.95;

    // A ± in a book is of k = 2 where few repeats do not ask for more.
    private double Ordinary => Math.Max(2, Factor);

    // From there on a Student factor is the normal one to six digits.
    private const double Certain = 1e6;

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

    /// <summary>Combined standard uncertainty, m.</summary>
    public double Combined { get; private init; }

    /// <summary>Effective degrees of freedom; without end where nothing was read twice.</summary>
    public double Freedom { get; private init; }

    /// <summary>Coverage factor for <see cref="Coverage"/>.</summary>
    public double Factor { get; private init; }

    /// <summary>Expanded uncertainty for <see cref="Coverage"/>, m.</summary>
    public double Expanded => Factor * Combined;

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
        }.Summed();
    }

    /// <summary>The mean with its ± (k = 2), as a reading is written; to a tenth of a micrometre.</summary>
    /// <param name="plan">The plan.</param>
    public string Written(MeasuringPlan plan)
    {
        var amount = new Amount(Mean, Units.Declared(plan.Mean.Field.Dimension, plan.Mean.Field.Unit), Decimals: 4);
        return (Combined > 0 ? amount.Within(Ordinary * Combined) : amount).ToString();
    }

    /// <summary>What stands beside the mean when it is kept as a reading.</summary>
    /// <param name="plan">The plan.</param>
    public string Note(MeasuringPlan plan) => string.Create(
        System.Globalization.CultureInfo.InvariantCulture,
        $"mean of {Form.Readings} readings at {plan.Stations.Count} stations in two axes{(Corrected ? ", brought to 20 °C" : "")}; out of round {plan.Mean.Field.Print(Form.OutOfRound)}, taper {plan.Mean.Field.Print(Form.Taper)}");

    private PlanResult Summed()
    {
        double[] parts = [FromRepeats, FromInstrument ?? 0, FromTemperature];
        if (parts.All(p => p == 0))
        {
            return this with { Freedom = double.PositiveInfinity, Factor = CombinedUncertainty.Student(Certain, Coverage) };
        }

        var sum = CombinedUncertainty.WelchSatterthwaite(parts, [Math.Max(1, Form.Freedom), double.MaxValue, double.MaxValue]);
        return this with
        {
            Combined = sum.Combined,
            Freedom = FromRepeats == 0 ? double.PositiveInfinity : sum.Freedom,
            Factor = CombinedUncertainty.Student(Math.Clamp(sum.Truncated, 1, Certain), Coverage),
        };
    }
}
