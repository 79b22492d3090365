namespace Gudgeon.Simulation.Engine;

/// <summary>A compressor reading: corrected flow (kg/s), the line's own pressure ratio, temperature rise over inlet temperature, position 0 (surge) to 1 (choke).</summary>
internal readonly record struct CompressorReading(double CorrectedFlow, double TemperatureRiseRatio, double Position);

/// <summary>One line of constant corrected speed, sampled at even positions from surge (0) to choke (1).</summary>
public sealed class CompressorLine
{
    /// <summary>Exponent of the ideal head, (γ − 1)/γ of air at γ = 1.4, with which map efficiencies are customarily reduced.</summary>
    public const double HeadExponent = 0.4 / 1.4;

    private const int Intervals = 48;

    // A flat line gives no flow for a pressure ratio: for the inversion it is tilted by this share of its head over its length.
    private const double Tilt = 0.005;

    // Beyond the surge end the flow dies away over this share of the head.
    private const double SurgeBand = 0.10;

    private readonly double[] _flow;
    private readonly double[] _head;
    private readonly double[] _work;
    private readonly double[] _tiltedHead;

    private CompressorLine(double correctedSpeed, double[] flow, double[] head, double[] work, bool extrapolated)
    {
        CorrectedSpeed = correctedSpeed;
        Extrapolated = extrapolated;
        (_flow, _head, _work) = (flow, head, work);
        _tiltedHead = [.. head.Select((h, i) => h + (Tilt * head[0] * (0.5 - ((double)i / Intervals))))];
    }

    /// <summary>Corrected speed, rad/s.</summary>
    public double CorrectedSpeed { get; }

    /// <summary>Whether the line lies outside the measured speeds.</summary>
    public bool Extrapolated { get; }

    /// <summary>Corrected flow at the surge end, kg/s.</summary>
    public double SurgeFlow => _flow[0];

    /// <summary>Corrected flow at the choke end, kg/s.</summary>
    public double ChokeFlow => _flow[^1];

    /// <summary>Pressure ratio at the surge end.</summary>
    public double SurgePressureRatio => Ratio(_head[0]);

    /// <summary>The point at a position, 0 (surge) to 1 (choke).</summary>
    public CompressorPoint At(double position)
    {
        var head = Read(_head, position);
        return new(Read(_flow, position), Ratio(head), head / Read(_work, position));
    }

    /// <summary>The point at a pressure ratio, held at the ends.</summary>
    public CompressorPoint AtPressureRatio(double pressureRatio) => At(Against(pressureRatio).Position);

    /// <summary>The point at a corrected flow, kg/s, held at the ends.</summary>
    public CompressorPoint AtFlow(double correctedFlow)
    {
        var i = 1;
        while (i < Intervals && _flow[i] < correctedFlow)
        {
            i++;
        }

        var share = Math.Clamp((correctedFlow - _flow[i - 1]) / (_flow[i] - _flow[i - 1]), 0, 1);
        return At((i - 1 + share) / Intervals);
    }

    /// <summary>Total pressure over inlet pressure to an ideal head, (PR^κ − 1).</summary>
    internal static double Head(double pressureRatio) => Math.Pow(pressureRatio, HeadExponent) - 1;

    internal static CompressorLine Resample(SpeedLine line)
    {
        var points = line.Points;
        var along = Along(points);
        var (flow, head, work) = (new double[Intervals + 1], new double[Intervals + 1], new double[Intervals + 1]);
        for (int i = 0, j = 1; i <= Intervals; i++)
        {
            var position = (double)i / Intervals;
            while (j < points.Count - 1 && along[j] < position)
            {
                j++;
            }

            var share = Math.Clamp((position - along[j - 1]) / (along[j] - along[j - 1]), 0, 1);
            flow[i] = Blend(points[j - 1].CorrectedFlow, points[j].CorrectedFlow, share);
            head[i] = Blend(Head(points[j - 1].PressureRatio), Head(points[j].PressureRatio), share);
            work[i] = Blend(Work(points[j - 1]), Work(points[j]), share);
        }

        return new CompressorLine(line.CorrectedSpeed, flow, head, work, extrapolated: false);
    }

    /// <summary>Blends flow with speed, head and temperature rise with speed squared, at equal positions.</summary>
    internal static CompressorLine Between(CompressorLine lower, CompressorLine upper, double speed)
    {
        var (a, b) = (lower.CorrectedSpeed, upper.CorrectedSpeed);
        var share = (speed - a) / (b - a);
        var squareShare = ((speed * speed) - (a * a)) / ((b * b) - (a * a));
        return new CompressorLine(
            speed,
            [.. lower._flow.Zip(upper._flow, (x, y) => Blend(x, y, share))],
            [.. lower._head.Zip(upper._head, (x, y) => Blend(x, y, squareShare))],
            [.. lower._work.Zip(upper._work, (x, y) => Blend(x, y, squareShare))],
            extrapolated: false);
    }

    /// <summary>The same line at another speed by the fan laws.</summary>
    internal CompressorLine Scaled(double speed)
    {
        var scale = speed / CorrectedSpeed;
        return new CompressorLine(speed, [.. _flow.Select(f => f * scale)], [.. _head.Select(h => h * scale * scale)], [.. _work.Select(w => w * scale * scale)], extrapolated: true);
    }

    /// <summary>
    /// The flow that the line passes against a pressure ratio. Above the surge end the flow dies away to nothing over a
    /// tenth of the head; below the choke end it stays, and so does the temperature rise, since the blades still do the work.
    /// </summary>
    internal CompressorReading Against(double pressureRatio)
    {
        var head = Head(Math.Max(pressureRatio, 1));
        if (head >= _tiltedHead[0])
        {
            var beyond = (head - _tiltedHead[0]) / (SurgeBand * Math.Max(_head[0], 1e-3));
            return new(_flow[0] / (1 + (beyond * (1 + beyond))), _work[0], -beyond);
        }

        if (head <= _tiltedHead[^1])
        {
            return new(_flow[^1], _work[^1], 1 + (_tiltedHead[^1] - head));
        }

        var (low, high) = (0, Intervals);
        while (high - low > 1)
        {
            var middle = (low + high) >> 1;
            (low, high) = _tiltedHead[middle] > head ? (middle, high) : (low, middle);
        }

        var share = (_tiltedHead[low] - head) / (_tiltedHead[low] - _tiltedHead[high]);
        return new(Blend(_flow[low], _flow[high], share), Blend(_work[low], _work[high], share), (low + share) / Intervals);
    }

    private static double[] Along(IReadOnlyList<CompressorPoint> points)
    {
        var flowExtent = points[^1].CorrectedFlow - points[0].CorrectedFlow;
        var headExtent = Math.Max(points[0].PressureRatio - points[^1].PressureRatio, 1e-9);
        var along = new double[points.Count];
        for (var i = 1; i < points.Count; i++)
        {
            var dx = (points[i].CorrectedFlow - points[i - 1].CorrectedFlow) / flowExtent;
            var dy = (points[i].PressureRatio - points[i - 1].PressureRatio) / headExtent;
            along[i] = along[i - 1] + Math.Sqrt((dx * dx) + (dy * dy));
        }

        return [.. along.Select(s => s / along[^1])];
    }

    private static double Read(double[] table, double position)
    {
        var x = Math.Clamp(position, 0, 1) * Intervals;
        var i = Math.Min((int)x, Intervals - 1);
        return Blend(table[i], table[i + 1], x - i);
    }

    /// <summary>Temperature rise over inlet temperature.</summary>
    private static double Work(CompressorPoint p) => Head(p.PressureRatio) / p.Efficiency;

    private static double Ratio(double head) => Math.Pow(1 + head, 1 / HeadExponent);

    private static double Blend(double a, double b, double share) => a + (share * (b - a));
}
