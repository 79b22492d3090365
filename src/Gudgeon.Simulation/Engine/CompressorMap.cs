namespace Gudgeon.Simulation.Engine;

/// <summary>One measured point of a compressor.</summary>
/// <param name="CorrectedFlow">Mass flow at the map's reference conditions, ṁ √(T/Tref) / (p/pref), kg/s.</param>
/// <param name="PressureRatio">Total pressure out over total pressure in.</param>
/// <param name="Efficiency">Isentropic total-to-total efficiency, 0 to 1.</param>
public readonly record struct CompressorPoint(double CorrectedFlow, double PressureRatio, double Efficiency);

/// <summary>One line of constant corrected speed, from surge to choke.</summary>
/// <param name="CorrectedSpeed">Impeller speed at the reference temperature, n / √(T/Tref), rad/s.</param>
/// <param name="Points">At least two points from surge to choke: flow rising, pressure ratio not rising.</param>
public sealed record SpeedLine(double CorrectedSpeed, IReadOnlyList<CompressorPoint> Points);

/// <summary>
/// A centrifugal compressor map: lines of constant corrected speed, checked when it is made. Between two lines it is read
/// at the same relative position along both, position being the length along the line when flow and pressure ratio are
/// scaled with the line's own extent; flow is blended with speed, head and temperature rise with its square.
/// </summary>
public sealed class CompressorMap
{
    /// <summary>Lowest corrected speed that is extrapolated to, as a share of the lowest line.</summary>
    public const double LowestSpeedShare = 0.3;

    /// <summary>Highest corrected speed that is extrapolated to, as a share of the highest line.</summary>
    public const double HighestSpeedShare = 1.1;

    private readonly CompressorLine[] _lines;

    /// <summary>Checks and resamples the lines.</summary>
    /// <param name="lines">Lines in rising speed.</param>
    /// <param name="referencePressure">Pressure the corrected flow refers to, Pa; maps differ, so it must be said.</param>
    /// <param name="referenceTemperature">Temperature that flow and speed refer to, K.</param>
    /// <exception cref="EngineSpecException">A line is out of order or two lines cross.</exception>
    public CompressorMap(IReadOnlyList<SpeedLine> lines, double referencePressure, double referenceTemperature)
    {
        CompressorMapCheck.Check(lines, referencePressure, referenceTemperature);
        Lines = lines;
        ReferencePressure = referencePressure;
        ReferenceTemperature = referenceTemperature;
        _lines = [.. lines.Select(CompressorLine.Resample)];
    }

    /// <summary>The lines as given.</summary>
    public IReadOnlyList<SpeedLine> Lines { get; }

    /// <summary>Reference pressure, Pa.</summary>
    public double ReferencePressure { get; }

    /// <summary>Reference temperature, K.</summary>
    public double ReferenceTemperature { get; }

    /// <summary>
    /// The line at a corrected speed, rad/s. Outside the measured speeds the end line is scaled: flow with speed, head
    /// with its square, no further than <see cref="LowestSpeedShare"/> and <see cref="HighestSpeedShare"/>; the line is
    /// then marked extrapolated.
    /// </summary>
    public CompressorLine At(double correctedSpeed)
    {
        var lowest = _lines[0];
        var highest = _lines[^1];
        if (correctedSpeed < lowest.CorrectedSpeed)
        {
            return lowest.Scaled(Math.Max(correctedSpeed, LowestSpeedShare * lowest.CorrectedSpeed));
        }

        if (correctedSpeed > highest.CorrectedSpeed)
        {
            return highest.Scaled(Math.Min(correctedSpeed, HighestSpeedShare * highest.CorrectedSpeed));
        }

        var upper = Math.Max(1, Array.FindIndex(_lines, l => l.CorrectedSpeed >= correctedSpeed));
        return _lines.Length == 1 ? lowest : CompressorLine.Between(_lines[upper - 1], _lines[upper], correctedSpeed);
    }
}
