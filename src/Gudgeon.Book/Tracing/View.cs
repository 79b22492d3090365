using System.Reflection;
using Gudgeon.Book.Build;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Bearings;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Bearings;
using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Book.Tracing;

/// <summary>
/// The only window through which checks and the engine run see a snapshot. It records every read, puts nudged values in
/// place of known ones, and works formulas so that their numbers can be shown. A value that is not known reads as NaN (or
/// null) and is noted as missing; the finding then says which fields are wanted.
/// </summary>
public sealed class View
{
    private readonly Snapshot _snapshot;
    private readonly IReadOnlyDictionary<string, double> _nudged;
    private readonly DutyDesk? _desk;

    /// <param name="snapshot">The values that hold.</param>
    /// <param name="desk">Where engine runs are made and kept; null when none is wanted.</param>
    /// <param name="nudged">SI values put in place of known ones, by the path under which those are written.</param>
    /// <param name="slightly">Whether they differ by no more than an uncertainty, so that an engine run at the telling speeds will do.</param>
    public View(Snapshot snapshot, DutyDesk? desk = null, IReadOnlyDictionary<string, double>? nudged = null, bool slightly = false)
    {
        Slightly = slightly;
        _snapshot = snapshot;
        _desk = desk;
        _nudged = nudged ?? new Dictionary<string, double>(StringComparer.Ordinal);
    }

    /// <summary>What has been read and worked so far.</summary>
    public Trace Trace { get; } = new();

    /// <summary>The values that hold.</summary>
    internal Snapshot Snapshot => _snapshot;

    /// <summary>Whether the nudges are no more than uncertainties.</summary>
    internal bool Slightly { get; }

    /// <summary>SI values put in place of known ones.</summary>
    internal IReadOnlyDictionary<string, double> Nudged => _nudged;

    /// <summary>SI amount of a field; NaN and noted as missing when it is not known.</summary>
    public double Amount(Field field, string index = "") => Number(field, index, null, double.NaN);

    /// <summary>SI amount of a field, or a customary value, SI, when it is not known.</summary>
    public double AmountOr(Field field, double fallback, string index = "") => Number(field, index, field.Print(fallback), fallback);

    /// <summary>SI amount of a field; null, and nothing missing, when it is not known.</summary>
    public double? AmountIf(Field field, string index = "")
    {
        var value = Number(field, index, "none", double.NaN);
        return double.IsNaN(value) ? null : value;
    }

    /// <summary>± of a field as it was written (expanded, k = 2), SI; nought when none was written or the field is not known, and nothing is missing.</summary>
    public double Spread(Field field, string index = "") => 2 * (Find(field, index, "none")?.Value.StandardUncertainty ?? 0);

    /// <summary>A whole number; 0 and noted as missing when it is not known.</summary>
    public int Count(Field field, string index = "") => Find(field, index, null)?.Value.Content is int count ? count : 0;

    /// <summary>A whole number, or a customary one when it is not known.</summary>
    public int CountOr(Field field, int fallback, string index = "") => Find(field, index, fallback.ToString(System.Globalization.CultureInfo.InvariantCulture))?.Value.Content is int count ? count : fallback;

    /// <summary>A word or text; null and noted as missing when it is not known.</summary>
    public string? Word(Field field, string index = "") => Find(field, index, null)?.Value.Content as string;

    /// <summary>A word or text, or a customary one when it is not known.</summary>
    public string WordOr(Field field, string fallback, string index = "") => Find(field, index, fallback)?.Value.Content as string ?? fallback;

    /// <summary>A word of an enumeration of Gudgeon.Calc; null and noted as missing when it is not known.</summary>
    public TEnum? Choice<TEnum>(Field field, string index = "")
        where TEnum : struct, Enum => Word(field, index) is { } word ? Chosen<TEnum>(word) : null;

    /// <summary>A word of an enumeration of Gudgeon.Calc, or a customary one when it is not known.</summary>
    public TEnum ChoiceOr<TEnum>(Field field, TEnum fallback, string index = "")
        where TEnum : struct, Enum => Chosen<TEnum>(WordOr(field, EnumWords.Of(fallback.ToString()), index));

    /// <summary>A day; null, and nothing missing, when it is not known.</summary>
    public DateOnly? DateIf(Field field, string index = "") => Find(field, index, "none")?.Value.Content is string day ? Days.Read(field.Label, day) : null;

    /// <summary>A table; null and noted as missing when it is not known.</summary>
    public Table? Table(Field field, string index = "") => Find(field, index, null)?.Value.Content as Table;

    /// <summary>A table; null, and nothing missing, when it is not known.</summary>
    public Table? TableIf(Field field, string index = "") => Find(field, index, "none")?.Value.Content as Table;

    /// <summary>Whether a field is known; nothing is missing when it is not.</summary>
    public bool Knows(Field field, string index = "") => Find(field, index, "none") is not null;

    /// <summary>Index keys that the book uses for a subject.</summary>
    public IReadOnlyList<string> Indices(Subject subject)
    {
        var indices = _snapshot.Indices(subject);
        Trace.AddIndices(subject, indices);
        return indices;
    }

    /// <summary>The limit of this name that the user has set, SI, or the check's own.</summary>
    /// <param name="name">Name of the limit, "squish.min".</param>
    /// <param name="dimension">What it limits.</param>
    /// <param name="unit">Its display unit.</param>
    /// <param name="usual">The check's own limit, SI; null when only the user or a maker can say.</param>
    public double Limit(string name, Dimension dimension, string unit, double? usual)
    {
        var set = _snapshot.Limits.GetValueOrDefault(name);
        Trace.AddLimit(name, set?.Text);
        if (set is not null)
        {
            return Values.Amount.Parse($"limit {name}", set.Text, dimension, unit).Si;
        }

        if (usual is null)
        {
            Trace.AddUnknown($"limit {name}");
        }

        return usual ?? double.NaN;
    }

    /// <summary>Says that something other than a field is wanted.</summary>
    public void Unknown(string what) => Trace.AddUnknown(what);

    /// <summary>Says that a value cannot be what it is given as, and that a better one is wanted.</summary>
    public void Refuse(string sentence)
    {
        Trace.AddRefused(sentence);
        Trace.AddUnknown(sentence);
    }

    /// <summary>What the engine does to its parts; null, and what it lacks noted as missing, when it could not be run.</summary>
    /// <param name="whole">Whether every speed is wanted: a run with slightly nudged values, which has few, then gives way to the run without.</param>
    public EngineDuty? Duty(bool whole = false)
    {
        if (_desk is null)
        {
            Trace.AddUnknown("an engine run");
            return null;
        }

        var (duty, trace) = _desk.Get(whole && Slightly ? new View(_snapshot) : this);
        Trace.AddDuty(trace);
        return duty;
    }

    /// <summary>
    /// What the engine does to its parts, for checks that follow whole cycles: values nudged by no more than an uncertainty do
    /// not move it, those of a family do. Null, and what it lacks noted as missing, when it could not be run.
    /// </summary>
    internal EngineDuty? SteadyDuty()
    {
        if (_desk is null)
        {
            Trace.AddUnknown("an engine run");
            return null;
        }

        var (duty, trace) = _desk.Get(Slightly ? new View(_snapshot) : this);
        Trace.AddDuty(trace, moved: false);
        return duty;
    }

    /// <summary>Something that is done without where what it takes is not known: its reads are noted, and nothing is missing.</summary>
    internal T Try<T>(Func<View, T> work)
    {
        var trial = new View(_snapshot, _desk, _nudged, Slightly);
        var result = work(trial);
        Trace.AddTrial(trial.Trace);
        return result;
    }

    /// <summary>The engine run without nudges, where there is one; null, and nothing missing, where the engine cannot be run.</summary>
    internal EngineDuty? DutyIf()
    {
        if (_desk is null)
        {
            return null;
        }

        var (duty, trace) = _desk.Get(new View(_snapshot));
        Trace.AddDuty(trace, wanted: false, moved: false);
        return duty;
    }

    /// <summary>The motion of a valve train at a cam speed, rad/s: one that was marched already is not marched again.</summary>
    internal TrainPoint Motion(TrainSpec spec, double speed) => _desk?.Motions.At(spec, speed) ?? new TrainModel(spec).At(speed, Head.MotionShelf.Options);

    /// <summary>A bearing run through its loads at a crank speed, rad/s: one that was run already is not run again.</summary>
    /// <exception cref="BadInputException">A bearing that cannot be run.</exception>
    internal FilmState Film(in FilmSpec spec, OrbitCourse course, double speed)
    {
        try
        {
            return _desk?.Films.At(spec, course, speed) ?? FilmRun.Of(spec, course, speed);
        }
        catch (BearingSpecException e)
        {
            throw new BadInputException(e.Message);
        }
    }

    /// <summary>Works a formula of Gudgeon.Calc and records it. An input that is not known gives an unknown result.</summary>
    public TResult Work<T1, TResult>(Func<T1, TResult> formula, T1 a) => Recorded(formula.Method, [a!], () => formula(a));

    /// <inheritdoc cref="Work{T1, TResult}"/>
    public TResult Work<T1, T2, TResult>(Func<T1, T2, TResult> formula, T1 a, T2 b) => Recorded(formula.Method, [a!, b!], () => formula(a, b));

    /// <inheritdoc cref="Work{T1, TResult}"/>
    public TResult Work<T1, T2, T3, TResult>(Func<T1, T2, T3, TResult> formula, T1 a, T2 b, T3 c) => Recorded(formula.Method, [a!, b!, c!], () => formula(a, b, c));

    /// <inheritdoc cref="Work{T1, TResult}"/>
    public TResult Work<T1, T2, T3, T4, TResult>(Func<T1, T2, T3, T4, TResult> formula, T1 a, T2 b, T3 c, T4 d) => Recorded(formula.Method, [a!, b!, c!, d!], () => formula(a, b, c, d));

    /// <inheritdoc cref="Work{T1, TResult}"/>
    public TResult Work<T1, T2, T3, T4, T5, TResult>(Func<T1, T2, T3, T4, T5, TResult> formula, T1 a, T2 b, T3 c, T4 d, T5 e) => Recorded(formula.Method, [a!, b!, c!, d!, e!], () => formula(a, b, c, d, e));

    /// <inheritdoc cref="Work{T1, TResult}"/>
    public TResult Work<T1, T2, T3, T4, T5, T6, TResult>(Func<T1, T2, T3, T4, T5, T6, TResult> formula, T1 a, T2 b, T3 c, T4 d, T5 e, T6 f) => Recorded(formula.Method, [a!, b!, c!, d!, e!, f!], () => formula(a, b, c, d, e, f));

    /// <inheritdoc cref="Work{T1, TResult}"/>
    public TResult Work<T1, T2, T3, T4, T5, T6, T7, TResult>(Func<T1, T2, T3, T4, T5, T6, T7, TResult> formula, T1 a, T2 b, T3 c, T4 d, T5 e, T6 f, T7 g) => Recorded(formula.Method, [a!, b!, c!, d!, e!, f!, g!], () => formula(a, b, c, d, e, f, g));

    /// <inheritdoc cref="Work{T1, TResult}"/>
    public TResult Work<T1, T2, T3, T4, T5, T6, T7, T8, TResult>(Func<T1, T2, T3, T4, T5, T6, T7, T8, TResult> formula, T1 a, T2 b, T3 c, T4 d, T5 e, T6 f, T7 g, T8 h) => Recorded(formula.Method, [a!, b!, c!, d!, e!, f!, g!, h!], () => formula(a, b, c, d, e, f, g, h));

    /// <inheritdoc cref="Work{T1, TResult}"/>
    public TResult Work<T1, T2, T3, T4, T5, T6, T7, T8, T9, TResult>(Func<T1, T2, T3, T4, T5, T6, T7, T8, T9, TResult> formula, T1 a, T2 b, T3 c, T4 d, T5 e, T6 f, T7 g, T8 h, T9 i) => Recorded(formula.Method, [a!, b!, c!, d!, e!, f!, g!, h!, i!], () => formula(a, b, c, d, e, f, g, h, i));

    /// <inheritdoc cref="Work{T1, TResult}"/>
    public TResult Work<T1, T2, T3, T4, T5, T6, T7, T8, T9, T10, TResult>(Func<T1, T2, T3, T4, T5, T6, T7, T8, T9, T10, TResult> formula, T1 a, T2 b, T3 c, T4 d, T5 e, T6 f, T7 g, T8 h, T9 i, T10 j) => Recorded(formula.Method, [a!, b!, c!, d!, e!, f!, g!, h!, i!, j!], () => formula(a, b, c, d, e, f, g, h, i, j));

    /// <inheritdoc cref="Work{T1, TResult}"/>
    public TResult Work<T1, T2, T3, T4, T5, T6, T7, T8, T9, T10, T11, TResult>(Func<T1, T2, T3, T4, T5, T6, T7, T8, T9, T10, T11, TResult> formula, T1 a, T2 b, T3 c, T4 d, T5 e, T6 f, T7 g, T8 h, T9 i, T10 j, T11 k) => Recorded(formula.Method, [a!, b!, c!, d!, e!, f!, g!, h!, i!, j!, k!], () => formula(a, b, c, d, e, f, g, h, i, j, k));

    private static TEnum Chosen<TEnum>(string word)
        where TEnum : struct, Enum => Enum.GetValues<TEnum>().First(v => EnumWords.Of(v.ToString()) == word);

    private TResult Recorded<TResult>(MethodInfo method, object[] arguments, Func<TResult> work)
    {
        var formula = Formulas.Of(method);
        if (arguments.Any(a => a is double.NaN || (a is double[] list && (list.Length == 0 || list.Any(double.IsNaN)))))
        {
            return Unknown<TResult>.Value;
        }

        try
        {
            for (var i = 0; i < arguments.Length; i++)
            {
                Formula.Check(formula.Inputs[i], arguments[i]);
            }

            var result = work();
            Trace.AddStep(new Step(formula, arguments, formula.Flatten(result!)));
            return result;
        }
        catch (Exception e) when (e is FormulaDomainException or OutOfRangeException)
        {
            Trace.AddRefused(Refusal.Sentence(formula, arguments, e));
            throw;
        }
    }

    private double Number(Field field, string index, string? fallbackText, double fallback)
    {
        var found = Find(field, index, fallbackText);
        if (found is null)
        {
            return fallback;
        }

        return _nudged.TryGetValue(found.Source, out var nudged) ? nudged : found.Value.Si;
    }

    private Found? Find(Field field, string index, string? fallback)
    {
        var address = new FieldAddress(field, index);
        var found = _snapshot.Find(address);
        Trace.Add(new Read(address, found, fallback));
        return found;
    }
}
