namespace Gudgeon.Simulation.Engine;

/// <summary>Isentropic flow through a restriction, choked or not.</summary>
internal static class FlowFunction
{
    /// <summary>
    /// Relative pressure difference below which the flow goes over from the square root to a straight line through zero,
    /// so that its slope stays finite: 0.4 %. At twice this the flow is 0.8 % low, at four times 0.05 %.
    /// </summary>
    public const double Softening = 0.004;

    private const double Softening4 = Softening * Softening * Softening * Softening;

    /// <summary>Mass flow, kg/s, from upstream conditions to a lower pressure; Heywood 1988, eqs C.8 and C.9.</summary>
    /// <param name="area">Effective area, m².</param>
    /// <param name="pressure">Upstream pressure, Pa.</param>
    /// <param name="gasConstantTemperature">Upstream R·T, J/kg.</param>
    /// <param name="gamma">Upstream ratio of specific heats.</param>
    /// <param name="downstream">Downstream pressure, Pa, not above the upstream one.</param>
    public static double MassFlow(double area, double pressure, double gasConstantTemperature, double gamma, double downstream)
    {
        var ratio = downstream / pressure;
        var difference = 1 - ratio;
        if (difference <= 0)
        {
            return 0;
        }

        var exponent = (gamma - 1) / gamma;
        var temperatureRatio = Math.Pow(ratio, exponent);
        var critical = 2 / (gamma + 1);
        var densityRatio = ratio / temperatureRatio;
        if (temperatureRatio < critical)
        {
            temperatureRatio = critical;
            densityRatio = Math.Pow(critical, 1 / (gamma - 1));
        }

        var flow = area * pressure * densityRatio * Math.Sqrt(2 / exponent * (1 - temperatureRatio) / gasConstantTemperature);
        return difference > 30 * Softening ? flow : flow * Softened(difference);
    }

    private static double Softened(double difference)
    {
        var square = difference * difference;
        var fourth = square * square;
        return Math.Sqrt(Math.Sqrt(Math.Sqrt(fourth / (fourth + Softening4))));
    }
}
