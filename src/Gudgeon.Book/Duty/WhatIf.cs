using Gudgeon.Book.Build;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Rows;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>
/// What the engine would do with a few values other than the book's. The values are laid over the book as an edit would lay
/// them, so that what is tried is what would be had. Points start from the nearest run made so far, and gas tables serve
/// again, so that an answer comes while a slider moves.
/// </summary>
public sealed class WhatIf
{
    /// <summary>Speeds of a first look.</summary>
    public const int FewSpeeds = 6;

    /// <summary>A first look settles to less than can be seen in a curve; the whole run settles as every run does.</summary>
    private const double Roughly = 1e-4, Closely = 1e-6;

    private readonly BuildBook _book;
    private EngineDuty _near;
    private EngineModel? _model;

    /// <param name="book">The build.</param>
    /// <param name="now">Its run.</param>
    public WhatIf(BuildBook book, EngineDuty now)
    {
        _book = book;
        Now = _near = now;
    }

    /// <summary>The run of the book as it stands.</summary>
    public EngineDuty Now { get; }

    /// <summary>What the boost of the book is set by; null when there is nothing to set.</summary>
    public Field? Setting => BoostSetting.Field(Now.Spec);

    /// <summary>Drive ratio of the book; null without a blower on the crank.</summary>
    public double? DriveRatio => Setting == Blower.DriveRatio ? BoostSetting.Of(Now.Spec) : null;

    /// <summary>Opening pressure of the book's wastegate, Pa gauge; null when there is none.</summary>
    public double? WastegateOpening => Setting == Wastegate.OpeningPressure ? BoostSetting.Of(Now.Spec) : null;

    /// <summary>Mean compression ratio of the book.</summary>
    public double CompressionRatio => Now.Spec.Cylinders.Average(RatioOf);

    /// <summary>Angle of 50 % burned of the book at 6000 rpm, rad; null when the burn is placed for best torque.</summary>
    public double? Burned50 => Now.Spec.Combustion is { Search: null } burn ? burn.Burned50 * Math.PI / 180 : null;

    /// <summary>Mixture of the book.</summary>
    public double Lambda => Now.Spec.Lambda;

    /// <summary>Fuel of the book.</summary>
    public string Fuel => Now.Spec.Fuel.Name;

    /// <summary>A first look at few speeds: the ends, those at which something is at its most, and some between.</summary>
    /// <exception cref="BadInputException">What is wished cannot be had; the sentence says why.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public WhatIfAnswer Look(Wishes wishes, CancellationToken stop = default) => Told(() => At(wishes, Few(), null, stop));

    /// <summary>A look made whole: every speed, settled as closely as any run.</summary>
    /// <exception cref="BadInputException">What is wished cannot be had; the sentence says why.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public WhatIfAnswer Whole(WhatIfAnswer look, CancellationToken stop = default) => Told(() =>
    {
        var speeds = Now.Points.Select(p => p.Speed).ToList();
        var whole = Finish(look, speeds, stop);
        return look.Wishes.Boost is { } boost && Math.Abs(Boost(whole.Duty) - boost) > 5e-3 * boost ? At(look.Wishes, speeds, whole.Duty, stop) : whole;
    });

    private static double Boost(EngineDuty duty) => duty.Most(f => f.Boost).Value;

    private static double RatioOf(CylinderSpec cylinder) => cylinder.CompressionRatio ?? 1 + (Swept(cylinder) / cylinder.ClearanceVolume!.Value);

    private static double Swept(CylinderSpec cylinder) => Calc.Chamber.CompressionRatio.SweptVolume(cylinder.Bore, cylinder.Stroke);

    /// <summary>Says in a sentence why values make no engine.</summary>
    internal static T Told<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (OutOfRangeException e)
        {
            throw new BadInputException(FormulaCall.Sentence(e));
        }
        catch (Exception e) when (e is EngineSpecException or FormulaDomainException)
        {
            throw new BadInputException(e.Message);
        }
    }

    private WhatIfAnswer At(Wishes wishes, IReadOnlyList<double> speeds, EngineDuty? near, CancellationToken stop)
    {
        var driven = wishes.Boost is { } boost ? SettingFor(boost, wishes, near ?? _near, stop) : wishes;
        var values = Values(driven);
        return Run(wishes, values, Assembled(values), speeds, near, near is null ? Roughly : Closely, stop);
    }

    private WhatIfAnswer Finish(WhatIfAnswer look, IReadOnlyList<double> speeds, CancellationToken stop)
    {
        var whole = Run(look.Wishes, look.Values, look.Duty.Spec, [.. speeds.Except(look.Unsettled)], look.Duty, Closely, stop);
        return whole with { Unsettled = [.. look.Unsettled, .. whole.Unsettled], IsWhole = true };
    }

    private WhatIfAnswer Run(Wishes wishes, IReadOnlyDictionary<string, string> values, EngineSpec spec, IReadOnlyList<double> speeds, EngineDuty? near, double tolerance, CancellationToken stop)
    {
        var model = Model(spec);
        var points = EngineRun.Run(model, speeds, near ?? _near, cancellation: stop, tolerance: tolerance);
        var settled = points.Where(p => p.Converged).OrderBy(p => p.Speed).ToList();
        if (settled.Count == 0)
        {
            throw new BadInputException("the engine run settles at no speed with these values");
        }

        var duty = new EngineDuty(settled, spec.Ambient, spec);
        _near = duty;
        return new WhatIfAnswer(wishes, duty, values, [.. points.Where(p => !p.Converged).Select(p => p.Speed)], IsWhole: speeds.Count == Now.Points.Count);
    }

    private EngineModel Model(EngineSpec spec) => _model = new EngineModel(spec, _model);

    private List<double> Few()
    {
        var all = Now.Points.Select(p => p.Speed).ToList();
        var few = new SortedSet<double>([all[0], all[^1], .. Now.TellingSpeeds]);
        while (few.Count < Math.Min(FewSpeeds, all.Count))
        {
            few.Add(all.Where(s => !few.Contains(s)).MaxBy(s => few.Min(f => Math.Abs(f - s))));
        }

        return [.. few];
    }

    /// <summary>The wishes with the drive ratio, or the opening pressure of the wastegate, that gives the boost wished for.</summary>
    private Wishes SettingFor(double boost, Wishes wishes, EngineDuty near, CancellationToken stop)
    {
        var spec = Assembled(Values(wishes with { DriveRatio = null, WastegateOpening = null }));
        if (boost <= 0 || BoostSetting.Field(spec) is not { } field)
        {
            throw new BadInputException(boost <= 0 ? "boost: wanted more than nothing" : spec.Intake.Induction is null ? "this engine has no blower to give boost" : "this turbocharger has no wastegate to set its boost by");
        }

        var value = SettingFor(boost, spec, field, near, stop);
        return field == Blower.DriveRatio ? wishes with { DriveRatio = value } : wishes with { WastegateOpening = value };
    }

    /// <summary>
    /// The secant rule on the logarithms, in which boost over what sets it is nearly a straight line, at the speed where boost is at its
    /// most. It goes about with the square of a drive ratio and with an opening pressure itself.
    /// </summary>
    private double SettingFor(double boost, EngineSpec spec, Field field, EngineDuty near, CancellationToken stop)
    {
        const double Close = 1e-3;
        var (start, speed) = near.Most(f => f.Boost);
        var (value, slope, last) = (BoostSetting.Of(near.Spec) ?? BoostSetting.Of(spec)!.Value, field == Blower.DriveRatio ? 2.0 : 1.0, (Value: 0.0, Boost: 0.0));
        var state = near.Points.First(p => p.Speed == speed).State;
        var (given, most) = (start, field.Plausible.High);
        for (var i = 0; i < 14; i++)
        {
            value = given > 0 ? Math.Clamp(value * Math.Pow(boost / given, 1 / slope), value / 1.6, value * 1.6) : value * 1.4;
            if (value > most)
            {
                break;
            }

            var point = Model(BoostSetting.With(spec, value)).RunPoint(speed, new RunOptions { Speeds = [speed], Tolerance = 1e-5, Cancellation = stop }, state);
            state = point.State ?? throw new BadInputException($"the engine run does not settle at {Words(field, value)}, on the way to this boost");
            given = point.Figures!.Boost;
            if (Math.Abs(given - boost) < Close * boost)
            {
                return value;
            }

            if (last.Boost > 0 && given > 0 && Math.Abs(value / last.Value - 1) > 1e-9)
            {
                slope = Math.Clamp(Math.Log(given / last.Boost) / Math.Log(value / last.Value), 0.3, 8);
            }

            last = (value, given);
        }

        throw new BadInputException($"a boost of {Blower.ReliefPressure.Print(boost)} is not reached: at {Words(field, last.Value > 0 ? last.Value : value)} the blower gives {Blower.ReliefPressure.Print(Math.Round(given / 100) * 100)}");
    }

    /// <summary>"a drive ratio of 1.32", "a wastegate that opens at 0.65 bar".</summary>
    private static string Words(Field field, double value) =>
        field == Blower.DriveRatio ? $"a drive ratio of {Figures.Number(value, 4)}" : $"a wastegate that opens at {Figures.Print(value, field.Dimension, field.Unit, 3)}";

    private EngineSpec Assembled(IReadOnlyDictionary<string, string> values)
    {
        var known = values.Select(v => (FieldCatalogue.Address(v.Key).Field, v.Key, v.Value)).ToDictionary(v => v.Key, v => KnownValue.Read(v.Field, v.Value), StringComparer.Ordinal);
        var view = new View(_book.Supposing(known).Now());
        return EngineAssembly.Build(view, Depths.Of(view)) ?? throw new BadInputException($"the engine cannot be run; wanted: {Checks.Wanted.Words(view.Trace.Missing)}");
    }

    /// <summary>Wishes as values of the book, in its units and with as many digits as people write.</summary>
    private Dictionary<string, string> Values(Wishes wishes)
    {
        var values = new Dictionary<string, string>(StringComparer.Ordinal);
        void Put(Field field, double? si)
        {
            if (si is { } amount)
            {
                values[field.Path] = field.Print(amount);
            }
        }

        Put(Blower.DriveRatio, wishes.DriveRatio);
        Put(Wastegate.OpeningPressure, wishes.WastegateOpening);
        Put(Combustion.Burned50, wishes.Burned50);
        Put(FuelSystem.Lambda, wishes.Lambda);
        if (wishes.Fuel is { } fuel)
        {
            values[FuelSystem.Kind.Path] = fuel;
        }

        foreach (var (path, text) in wishes.CompressionRatio is { } ratio ? Chambers(ratio) : [])
        {
            values[path] = text;
        }

        return values;
    }

    /// <summary>Chamber volumes that bring the mean ratio to the one wished; each cylinder's ratio keeps its share.</summary>
    private IEnumerable<(string Path, string Text)> Chambers(double ratio)
    {
        var view = new View(_book.Now());
        for (var i = 0; i < Now.Spec.Cylinders.Count; i++)
        {
            var (cylinder, index) = (Now.Spec.Cylinders[i], (i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture));
            var wished = RatioOf(cylinder) * ratio / CompressionRatio;
            var chamber = view.Amount(Cylinder.ChamberVolume, index) + view.Work(Calc.Chamber.CompressionRatio.ClearanceFor, Swept(cylinder), wished) - cylinder.ClearanceVolume!.Value;
            yield return (Cylinder.ChamberVolume.At(index), Cylinder.ChamberVolume.Print(chamber));
        }
    }
}
