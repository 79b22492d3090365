namespace Gudgeon.Book.Sweeps;

/// <summary>A point that was tried.</summary>
/// <param name="At">Where: every coordinate 0 to 1.</param>
/// <param name="Value">What is to be as great as it can be; NaN where it is not known, and then the point is never chosen.</param>
/// <param name="Margin">How far what must hold is inside its limit; negative where it does not hold, without end where there is nothing to hold.</param>
public sealed record Trial(double[] At, double Value, double Margin = double.PositiveInfinity)
{
    /// <summary>Whether what must hold does.</summary>
    public bool Holds => Margin >= 0;

    /// <summary>
    /// Whether this one is to be chosen before another: what holds before what does not, then the greater value; of two
    /// that do not hold, the one that is less short.
    /// </summary>
    public bool Beats(Trial other)
    {
        // A gain less than this is the settling of a run.
        const double Same = 2e-6;
        if (double.IsNaN(Value) || double.IsNaN(other.Value))
        {
            return !double.IsNaN(Value);
        }

        var greater = Value > other.Value + (Same * Math.Abs(other.Value));
        return (Holds, other.Holds) switch
        {
            (true, true) => greater,
            (false, false) => Margin > other.Margin || (Margin == other.Margin && greater),
            _ => Holds,
        };
    }
}

/// <summary>What a search found.</summary>
/// <param name="Best">The best point.</param>
/// <param name="Trials">How many points were tried.</param>
/// <param name="Closed">Whether the steps had become as small as wanted; else the trials were used up.</param>
public sealed record SearchResult(Trial Best, int Trials, bool Closed);

/// <summary>
/// The greatest value of a function of up to six numbers between bounds, without derivatives and always the same way. First
/// a few points are spread evenly (the sequence of Halton, Numer. Math. 2 (1960) 84–90). From the best of them goes a direct
/// search: it tries the top of a <see cref="QuadraticModel"/> through the points about; when that is no better, steps both ways along the
/// axes and along a turned set of right-angled directions; it lengthens the step after a move and halves it when nothing is
/// better. The turned sets are mirrored from the same sequence and in time point everywhere, as in Abramson, Audet, Dennis and Le
/// Digabel, SIAM J. Optim. 20 (2009) 948–966, so that the search can slide along an edge that is not square to the axes; on
/// the halving of steps see Kolda, Lewis and Torczon, SIAM Review 45 (2003) 385–482. What must hold is kept by the ranking of Deb,
/// Comput. Methods Appl. Mech. Eng. 186 (2000) 311–338: what holds comes before what does not. It finds a best within its
/// steps near the best of the first points, which need not be the best of all.
/// </summary>
/// <param name="dimensions">How many numbers, 1 to 6.</param>
/// <param name="evaluate">The function.</param>
public sealed class BoxSearch(int dimensions, Func<double[], Trial> evaluate)
{
    private const double FirstStep = 1.0 / 8, LongestStep = 1.0 / 4;

    private static readonly int[] Primes = [2, 3, 5, 7, 11, 13];

    private readonly Dictionary<string, Trial> _tried = new(StringComparer.Ordinal);
    private int _turn;

    /// <summary>Most numbers.</summary>
    public static int MostDimensions => Primes.Length;

    /// <summary>Steps shorter than this share of a range are not tried.</summary>
    public double ShortestStep { get; init; } = 1.0 / 512;

    /// <summary>Most points that are tried.</summary>
    public int MostTrials { get; init; } = 60 + (60 * dimensions);

    /// <summary>Told the share of <see cref="MostTrials"/> that is used, 0 to 1.</summary>
    public IProgress<double>? Progress { get; init; }

    /// <summary>Stops the search between points.</summary>
    public CancellationToken Cancellation { get; init; }

    /// <summary>Searches.</summary>
    /// <param name="start">Where to start; it is tried first.</param>
    public SearchResult Run(double[] start)
    {
        var best = Spread(Inside(start));
        var step = FirstStep;
        var last = new double[dimensions];
        while (step >= ShortestStep && _tried.Count < MostTrials)
        {
            var next = ModelStep(best, step) ?? Poll(best, step, last);
            var moved = next is null ? 0 : Distance(next.At, best.At);
            last = next is null ? last : [.. next.At.Zip(best.At, (a, b) => a - b)];
            step = moved < step / 2 ? step / 2 : Math.Min(moved > step * 0.99 ? step * 2 : step, LongestStep);
            best = next ?? best;
        }

        Progress?.Report(1);
        return new SearchResult(best, _tried.Count, step < ShortestStep);
    }

    /// <summary>The best of the start and of points spread over the box.</summary>
    private Trial Spread(double[] start)
    {
        var best = Try(start);
        for (var i = 1; i <= 1 + (4 * dimensions) && _tried.Count < MostTrials; i++)
        {
            var trial = Try(Halton(i));
            best = trial.Beats(best) ? trial : best;
        }

        return best;
    }

    /// <summary>The top of a model of the points about, if it proves better; null when it does not.</summary>
    private Trial? ModelStep(Trial from, double step)
    {
        var near = _tried.Values.Where(t => double.IsFinite(t.Value)).OrderBy(t => Distance(t.At, from.At)).Take(QuadraticModel.Coefficients(dimensions) + dimensions).ToList();
        if (double.IsNaN(from.Value) || near.Count <= 2 * dimensions)
        {
            return null;
        }

        var value = QuadraticModel.Fit(from.At, near.ConvertAll(t => t.At), near.ConvertAll(t => t.Value));
        var bound = near.Where(t => double.IsFinite(t.Margin)).ToList();
        var margin = bound.Count <= dimensions ? null : QuadraticModel.Fit(from.At, bound.ConvertAll(t => t.At), bound.ConvertAll(t => t.Margin));
        var at = new ModelTop(value, margin, Inside([.. from.At.Select(x => x - (2 * step))]), Inside([.. from.At.Select(x => x + (2 * step))])).Find(from.At);
        return Distance(at, from.At) >= ShortestStep / 4 && Try(at) is var trial && trial.Beats(from) ? trial : null;
    }

    /// <summary>The first better point a step away, the way of the last move first; null when there is none.</summary>
    private Trial? Poll(Trial from, double step, double[] last)
    {
        foreach (var direction in Directions().OrderByDescending(d => Math.Max(Dot(d, last), 0)))
        {
            if (_tried.Count >= MostTrials)
            {
                return null;
            }

            var trial = Try(Inside([.. from.At.Select((x, i) => x + (step * direction[i]))]));
            if (trial.Beats(from))
            {
                return trial;
            }
        }

        return null;
    }

    private IEnumerable<double[]> Directions()
    {
        var axes = Enumerable.Range(0, dimensions).Select(k => Enumerable.Range(0, dimensions).Select(i => i == k ? 1.0 : 0).ToArray());
        return (dimensions == 1 ? axes : axes.Concat(Turned())).ToList().SelectMany(d => new[] { d, [.. d.Select(x => -x)] });
    }

    /// <summary>The axes mirrored in a plane that is another one every time (Householder).</summary>
    private IEnumerable<double[]> Turned()
    {
        var normal = Halton(++_turn).Select(x => (2 * x) - 1).ToArray();
        var square = Dot(normal, normal);
        return square < 1e-6
            ? Turned()
            : Enumerable.Range(0, dimensions).Select(k => Enumerable.Range(0, dimensions).Select(i => (i == k ? 1 : 0) - (2 * normal[i] * normal[k] / square)).ToArray());
    }

    private Trial Try(double[] at)
    {
        var key = string.Join(' ', at.Select(x => x.ToString("F9", System.Globalization.CultureInfo.InvariantCulture)));
        if (!_tried.TryGetValue(key, out var trial))
        {
            Cancellation.ThrowIfCancellationRequested();
            _tried[key] = trial = evaluate(at);
            Progress?.Report((double)_tried.Count / (MostTrials + 1));
        }

        return trial;
    }

    private double[] Halton(int i) => [.. Primes.Take(dimensions).Select(p => RadicalInverse(i, p))];

    private static double RadicalInverse(int i, int prime)
    {
        var (inverse, share) = (0.0, 1.0 / prime);
        for (; i > 0; i /= prime, share /= prime)
        {
            inverse += share * (i % prime);
        }

        return inverse;
    }

    private static double[] Inside(double[] at) => [.. at.Select(x => Math.Clamp(x, 0, 1))];

    private static double Distance(double[] a, double[] b) => a.Zip(b, (x, y) => Math.Abs(x - y)).Max();

    private static double Dot(double[] a, double[] b) => a.Zip(b, (x, y) => x * y).Sum();
}
