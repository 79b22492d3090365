using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Metrology;

namespace Gudgeon.Book.Measuring;

/// <summary>An instrument of the shop as the book knows it now: what it measures, over which range, and how well. SI.</summary>
public sealed class ShopInstrument
{
    private readonly View _view;

    private ShopInstrument(View view, string name, InstrumentKind kind) => (_view, Name, Kind) = (view, name, kind);

    /// <summary>Its key: "mic-25".</summary>
    public string Name { get; }

    /// <summary>"instrument[mic-25]".</summary>
    public string Path => $"{Instrument.Kind.Subject.Path}[{Name}]";

    /// <summary>What it is.</summary>
    public InstrumentKind Kind { get; }

    /// <summary>What it measures.</summary>
    public Dimension Dimension => Measured(Kind).Dimension;

    /// <summary>Unit in which it is shown.</summary>
    public string Unit => Measured(Kind).Unit;

    /// <summary>Least reading that it shows; null when not said.</summary>
    public double? From => Reading(Instrument.From);

    /// <summary>Greatest reading that it shows; null when not said.</summary>
    public double? To => Reading(Instrument.To);

    /// <summary>Last day on which its calibration counts; null when not said.</summary>
    public DateOnly? Due => _view.DateIf(Instrument.Due, Name);

    /// <summary>Whose it is; empty when not said.</summary>
    public string Owner => Text(Instrument.Owner);

    /// <summary>Cost of a use, in the shop's own money; 0 when not said.</summary>
    public double Cost => _view.AmountOr(Instrument.Cost, 0, Name);

    /// <summary>Zero at the last check; null when none was made.</summary>
    public double? Zero => Error(Instrument.Zero);

    /// <summary>The standard to whose limit it is kept; null when not said.</summary>
    public InstrumentStandard? Standard => _view.Knows(Instrument.Standard, Name) ? _view.Choice<InstrumentStandard>(Instrument.Standard, Name) : null;

    /// <summary>The instruments of a book, in the order of their names.</summary>
    public static IReadOnlyList<ShopInstrument> All(Snapshot now)
    {
        var view = new View(now);
        return [.. from name in now.Indices(Instrument.Kind.Subject)
                   where view.Knows(Instrument.Kind, name)
                   select new ShopInstrument(view, name, view.Choice<InstrumentKind>(Instrument.Kind, name)!.Value)];
    }

    /// <summary>The instrument that somebody names, "mic-25" or "mic 25"; null when it is none of the book's.</summary>
    public static ShopInstrument? Find(Snapshot now, string with)
    {
        var name = with.Trim().Replace(' ', '-');
        return All(now).FirstOrDefault(i => string.Equals(i.Name, name, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>What a kind measures, and the unit in which it is shown.</summary>
    public static (Dimension Dimension, string Unit) Measured(InstrumentKind kind) => kind switch
    {
        InstrumentKind.TorqueWrench => (Dimension.Torque, "N·m"),
        InstrumentKind.Scale => (Dimension.Mass, "g"),
        InstrumentKind.Burette => (Dimension.Volume, "cm³"),
        InstrumentKind.SpringTester => (Dimension.Force, "N"),
        InstrumentKind.PressureGauge => (Dimension.Pressure, "bar"),
        InstrumentKind.DegreeWheel => (Dimension.Angle, "°"),
        InstrumentKind.Thermometer => (Dimension.Temperature, "°C"),
        _ => (Dimension.Length, "mm"),
    };

    /// <summary>Whether a reading lies in its range; one that it shows on the other side of nothing counts by its size.</summary>
    /// <param name="si">The reading.</param>
    public bool Reaches(double si) => Math.Abs(si) >= (From ?? 0) && Math.Abs(si) <= (To ?? double.PositiveInfinity);

    /// <summary>Whether a field is usually measured with such an instrument; where the field names none, whether it measures what the field is.</summary>
    public bool Suits(Field field)
    {
        var named = Enum.GetValues<InstrumentKind>().Where(k => field.Measured.Contains(EnumWords.Of(k.ToString()), StringComparison.OrdinalIgnoreCase)).ToList();
        return field.Dimension == Dimension && (named.Count == 0 || named.Contains(Kind));
    }

    /// <summary>Whether its calibration has run out on a day.</summary>
    public bool Overdue(DateOnly day) => Due is { } due && day > due;

    /// <summary>Uncertainty of one reading; null when neither calibration, permissible error nor a standard's limit is known.</summary>
    /// <param name="si">The reading.</param>
    /// <exception cref="BadInputException">What is written of it cannot be.</exception>
    public ReadingUncertainty? At(double si)
    {
        var calibration = Error(Instrument.CalibrationUncertainty);
        return (calibration is null ? LimitAt(Math.Abs(si)) : 0) is { } limit
            ? _view.Work(InstrumentBudget.Of, limit, calibration ?? 0, Error(Instrument.CalibrationError) ?? 0, Error(Instrument.Resolution) ?? 0, Zero ?? 0)
            : null;
    }

    /// <summary>Limit of error at a reading, plus or minus: as said, else by the standard; null when neither says it.</summary>
    public double? LimitAt(double si)
    {
        var own = Text(Instrument.Error);
        if (own.Length > 0)
        {
            // A share of a temperature says nothing: it would go by where the scale begins.
            return own.EndsWith('%') && Dimension != Dimension.Temperature ? si * Amount.Parse(Instrument.Error.At(Name), own, Dimension.Number, "%").Si : Error(Instrument.Error);
        }

        try
        {
            return ByStandard(si);
        }
        catch (FormulaDomainException e)
        {
            throw new BadInputException($"{Instrument.Standard.At(Name)}: {e.Message}");
        }
    }

    /// <summary>An amount of what it measures, in words.</summary>
    public string Print(double si, bool imperial = false, int digits = 4) => Figures.Print(si, Dimension, Unit, digits, imperial);

    /// <summary>An error or a ± of what it measures, in words: of a temperature, a difference.</summary>
    public string PrintError(double si, bool imperial = false, int digits = 4) => Figures.Print(si, Errors.Dimension, Errors.Unit, digits, imperial);

    /// <summary>Refuses what is written of it where it cannot be.</summary>
    /// <exception cref="BadInputException">The sentence names the field.</exception>
    internal void Verify()
    {
        if (Standard is { } standard && DimensionOf(standard) != Dimension)
        {
            throw new BadInputException($"{Instrument.Standard.At(Name)}: given '{EnumWords.Of(standard.ToString())}', which is for {DimensionOf(standard).Noun()}; {Path} measures {Dimension.Noun()}");
        }

        if (From is { } from && To is { } to && from >= to)
        {
            throw new BadInputException($"{Instrument.To.At(Name)}: given '{Text(Instrument.To)}', wanted more than the {Text(Instrument.From)} from which its range begins");
        }

        foreach (var field in (Field[])[Instrument.Error, Instrument.Resolution, Instrument.CalibrationUncertainty])
        {
            Unsigned(field);
        }

        At(To ?? From ?? 0);
        _ = Zero;
    }

    private void Unsigned(Field field)
    {
        // The command line hands on a minus for the hyphen that was typed.
        if (Text(field).Replace('−', '-') is ['-', ..] text)
        {
            throw new BadInputException($"{field.At(Name)}: given '{text}', wanted zero or more: it counts to either side");
        }
    }

    // Limits of DIN 863-1 and DIN 862 go by the end of the instrument's range, not by what it reads.
    private double? ByStandard(double si) => Standard switch
    {
        InstrumentStandard.Din863 => Length(LengthInstrument.Micrometer, To ?? si),
        InstrumentStandard.Din862 => Length(LengthInstrument.Calliper, To ?? si),
        InstrumentStandard.Din862Digital => Length(LengthInstrument.DigitalCalliper, To ?? si),
        InstrumentStandard.Din878 => Length(LengthInstrument.DialIndicator, si),
        InstrumentStandard.Iso6789 => si * InstrumentLimit.ForTorque(Math.Max(si, LeastOfRange), To ?? si).Limit,
        InstrumentStandard.Iso7500 => si * InstrumentLimit.LoadOfClassOne,
        _ => null,
    };

    /// <summary>Least torque at which a wrench keeps to ISO 6789: 20 % of its range.</summary>
    internal double LeastOfRange => Kind == InstrumentKind.TorqueWrench && To is { } to ? InstrumentLimit.LeastShareOfRange * to : 0;

    private double Length(LengthInstrument instrument, double length) =>
        InstrumentLimit.ForLength(instrument, length, Kind == InstrumentKind.DepthGauge ? CalliperUse.InsideOrDepth : CalliperUse.Outside).Limit;

    private static Dimension DimensionOf(InstrumentStandard standard) => standard switch
    {
        InstrumentStandard.Iso6789 => Dimension.Torque,
        InstrumentStandard.Iso7500 => Dimension.Force,
        _ => Dimension.Length,
    };

    private (Dimension Dimension, string Unit) Errors => Dimension == Dimension.Temperature ? (Dimension.TemperatureDifference, "K") : (Dimension, Unit);

    private double? Reading(Field field) => Si(field, Dimension, Unit);

    private double? Error(Field field) => Si(field, Errors.Dimension, Errors.Unit);

    private double? Si(Field field, Dimension dimension, string unit) => Text(field) is { Length: > 0 } text ? Amount.Parse(field.At(Name), text, dimension, unit).Si : null;

    private string Text(Field field) => _view.WordOr(field, "", Name);
}
