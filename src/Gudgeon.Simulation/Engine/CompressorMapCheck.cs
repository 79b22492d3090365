namespace Gudgeon.Simulation.Engine;

/// <summary>Refuses compressor maps that could not be read without ambiguity.</summary>
internal static class CompressorMapCheck
{
    public static void Check(IReadOnlyList<SpeedLine> lines, double referencePressure, double referenceTemperature)
    {
        EngineSpecException.Unless(lines.Count > 0, $"compressor map: no speed line was given, at least one is wanted");
        EngineSpecException.Unless(referencePressure is > 1e4 and < 1e6, $"compressor map: reference pressure {referencePressure} Pa, which must lie in 10 to 1000 kPa");
        EngineSpecException.Unless(referenceTemperature is > 200 and < 400, $"compressor map: reference temperature {referenceTemperature} K, which must lie in 200 to 400 K");
        foreach (var line in lines)
        {
            CheckLine(line);
        }

        for (var i = 1; i < lines.Count; i++)
        {
            CheckNeighbours(lines[i - 1], lines[i]);
        }
    }

    private static void CheckLine(SpeedLine line)
    {
        EngineSpecException.Unless(line.CorrectedSpeed > 0 && double.IsFinite(line.CorrectedSpeed), $"compressor map: corrected speed {line.CorrectedSpeed} rad/s, which must be positive");
        EngineSpecException.Unless(line.Points.Count >= 2, $"compressor map, {Rpm(line)}: {line.Points.Count} points given, at least two from surge to choke are wanted");
        foreach (var p in line.Points)
        {
            EngineSpecException.Unless(p.CorrectedFlow > 0 && double.IsFinite(p.CorrectedFlow), $"compressor map, {Rpm(line)}: corrected flow {p.CorrectedFlow} kg/s, which must be positive");
            EngineSpecException.Unless(p.PressureRatio is >= 1 and < 20, $"compressor map, {Rpm(line)}: pressure ratio {p.PressureRatio}, which must lie in 1 to 20");
            EngineSpecException.Unless(p.Efficiency is > 0 and < 1, $"compressor map, {Rpm(line)}: efficiency {p.Efficiency}, which must lie between 0 and 1");
        }

        for (var i = 1; i < line.Points.Count; i++)
        {
            var (a, b) = (line.Points[i - 1], line.Points[i]);
            EngineSpecException.Unless(b.CorrectedFlow > a.CorrectedFlow, $"compressor map, {Rpm(line)}: flow goes from {a.CorrectedFlow} to {b.CorrectedFlow} kg/s, but it must rise from surge to choke");
            EngineSpecException.Unless(b.PressureRatio <= a.PressureRatio, $"compressor map, {Rpm(line)}: pressure ratio rises from {a.PressureRatio} to {b.PressureRatio}, but from surge to choke it must not rise");
        }
    }

    private static void CheckNeighbours(SpeedLine lower, SpeedLine upper)
    {
        EngineSpecException.Unless(upper.CorrectedSpeed > lower.CorrectedSpeed, $"compressor map: the line of {Rpm(upper)} comes after {Rpm(lower)}, but speeds must rise");
        foreach (var p in lower.Points.Where(p => !LiesUnder(p, upper.Points)))
        {
            throw Crossing(lower, upper, p);
        }

        foreach (var p in upper.Points.Where(p => LiesUnder(p, lower.Points)))
        {
            throw Crossing(lower, upper, p);
        }
    }

    /// <summary>Under and left of the line: at lower pressure ratio at the same flow, the line carried level to zero flow and down at choke.</summary>
    private static bool LiesUnder(CompressorPoint point, IReadOnlyList<CompressorPoint> line)
    {
        if (point.CorrectedFlow > line[^1].CorrectedFlow)
        {
            return false;
        }

        if (point.CorrectedFlow <= line[0].CorrectedFlow)
        {
            return point.PressureRatio < line[0].PressureRatio;
        }

        var i = 1;
        while (line[i].CorrectedFlow < point.CorrectedFlow)
        {
            i++;
        }

        var share = (point.CorrectedFlow - line[i - 1].CorrectedFlow) / (line[i].CorrectedFlow - line[i - 1].CorrectedFlow);
        return point.PressureRatio < line[i - 1].PressureRatio + (share * (line[i].PressureRatio - line[i - 1].PressureRatio));
    }

    private static EngineSpecException Crossing(SpeedLine lower, SpeedLine upper, CompressorPoint at) => new(FormattableString.Invariant(
        $"compressor map: the lines of {Rpm(lower)} and {Rpm(upper)} cross near {at.CorrectedFlow} kg/s and pressure ratio {at.PressureRatio}, but a faster line must lie wholly above and to the right of a slower one"));

    private static string Rpm(SpeedLine line) => FormattableString.Invariant($"{line.CorrectedSpeed * 30 / Math.PI:0} rpm");
}
