using Gudgeon.Simulation.Engine;

namespace Gudgeon.Simulation.Tests.Engine;

/// <summary>NASA's high-efficiency centrifugal compressor with the vaned diffuser: measured readings and the map made of them.</summary>
internal static class MeasuredMap
{
    public const double FullSpeed = 21_789 * Math.PI / 30;
    public const double ReferencePressure = 101_325;
    public const double ReferenceTemperature = 288.15;

    /// <summary>Readings: nominal percent of speed, flow kg/s, pressure ratio, temperature rise ratio, efficiency.</summary>
    public static IReadOnlyList<(int Percent, double Flow, double Ratio, double Rise, double Efficiency)> Readings { get; } =
        [.. MeasuredData.Rows("hecc-map.csv").Where(r => r[0] == "vaned").Select(r => (
            5 * (int)Math.Round(MeasuredData.Number(r[1]) / 5),
            MeasuredData.Number(r[3]),
            MeasuredData.Number(r[4]),
            MeasuredData.Number(r[5]),
            MeasuredData.Number(r[6])))];

    /// <summary>The map without some of the measured lines.</summary>
    public static CompressorMap Without(params int[] percents) => new(
        [.. Readings.Select(r => r.Percent).Distinct().Where(p => !percents.Contains(p)).Order().Select(Line)],
        ReferencePressure,
        ReferenceTemperature);

    /// <summary>
    /// A line fit to be read: on the choked part flows differ by less than their scatter, so there they are put in order
    /// of pressure ratio; towards surge the ratio is kept from falling again.
    /// </summary>
    public static SpeedLine Line(int percent)
    {
        var readings = Readings.Where(r => r.Percent == percent).ToArray();
        var choke = 0.996 * readings.Max(r => r.Flow);
        var free = readings.Where(r => r.Flow < choke).OrderBy(r => r.Flow).ToArray();
        var choked = readings.Where(r => r.Flow >= choke).OrderByDescending(r => r.Ratio).ToArray();
        var flows = choked.Select(r => r.Flow).Order().ToArray();
        var points = free.Select(r => new CompressorPoint(r.Flow, r.Ratio, r.Efficiency))
            .Concat(choked.Select((r, i) => new CompressorPoint(flows[i], r.Ratio, r.Efficiency)))
            .ToArray();
        for (var i = points.Length - 2; i >= 0; i--)
        {
            points[i] = points[i] with
            {
                PressureRatio = Math.Max(points[i].PressureRatio, points[i + 1].PressureRatio),
                CorrectedFlow = Math.Min(points[i].CorrectedFlow, points[i + 1].CorrectedFlow - 1e-5),
            };
        }

        return new SpeedLine(FullSpeed * percent / 100, points);
    }
}
