using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Metrology;

/// <summary>Resistance, reactance and impedance with their uncertainties and correlations.</summary>
/// <param name="Resistance">Resistance.</param>
/// <param name="Reactance">Reactance.</param>
/// <param name="Impedance">Impedance.</param>
/// <param name="ResistanceUncertainty">Standard uncertainty of the resistance.</param>
/// <param name="ReactanceUncertainty">Standard uncertainty of the reactance.</param>
/// <param name="ImpedanceUncertainty">Standard uncertainty of the impedance.</param>
/// <param name="ResistanceReactance">Correlation of resistance and reactance.</param>
/// <param name="ResistanceImpedance">Correlation of resistance and impedance.</param>
/// <param name="ReactanceImpedance">Correlation of reactance and impedance.</param>
public readonly record struct ImpedanceResult(
    [Quantity("resistance", Dimension.Number, Symbol = "R")] double Resistance,
    [Quantity("reactance", Dimension.Number, Symbol = "X")] double Reactance,
    [Quantity("impedance", Dimension.Number, Symbol = "Z")] double Impedance,
    [Quantity("standard uncertainty of the resistance", Dimension.Number)] double ResistanceUncertainty,
    [Quantity("standard uncertainty of the reactance", Dimension.Number)] double ReactanceUncertainty,
    [Quantity("standard uncertainty of the impedance", Dimension.Number)] double ImpedanceUncertainty,
    [Quantity("correlation of R and X", Dimension.Number)] double ResistanceReactance,
    [Quantity("correlation of R and Z", Dimension.Number)] double ResistanceImpedance,
    [Quantity("correlation of X and Z", Dimension.Number)] double ReactanceImpedance);

/// <summary>Readings taken together are correlated; leaving the correlation out changes the uncertainty.</summary>
public static class CorrelatedReadings
{
    /// <summary>Resistance, reactance and impedance from readings of voltage, current and phase taken in sets.</summary>
    /// <param name="voltages">Voltages, V.</param>
    /// <param name="currents">Currents, A.</param>
    /// <param name="phases">Phase angles, rad.</param>
    [Formula(
        "impedance from paired readings",
        "R = V / I cos(φ); X = V / I sin(φ); Z = V / I; u² = J S Jᵀ",
        "JCGM 100:2008 (GUM), H.2, Tables H.2 to H.4",
        Caution = "Shown because it is the published check of correlated inputs: without the correlation the answers are wrong by up to three times.")]
    public static ImpedanceResult Impedance(
        [Quantity("voltages, V", Dimension.Number, Symbol = "V", Above = 0)] double[] voltages,
        [Quantity("currents, A", Dimension.Number, Symbol = "I", Above = 0)] double[] currents,
        [Quantity("phase angles", Dimension.Angle, "rad", Symbol = "φ")] double[] phases)
    {
        FormulaDomainException.Unless(voltages.Length == currents.Length && voltages.Length == phases.Length, "currents: readings must come in complete sets");
        FormulaDomainException.Unless(voltages.Length > 1, "voltages: at least two sets are wanted");
        double[][] columns = [voltages, currents, phases];
        var (v, i, phase) = (voltages.Average(), currents.Average(), phases.Average());
        var (sin, cos) = Math.SinCos(phase);
        var z = v / i;
        double[][] slopes =
        [
            [cos / i, -z * cos / i, -z * sin],
            [sin / i, -z * sin / i, z * cos],
            [1 / i, -z / i, 0],
        ];
        var (rr, xx, zz) = (Covariance(slopes[0], slopes[0], columns), Covariance(slopes[1], slopes[1], columns), Covariance(slopes[2], slopes[2], columns));
        return new ImpedanceResult(
            z * cos,
            z * sin,
            z,
            Math.Sqrt(rr),
            Math.Sqrt(xx),
            Math.Sqrt(zz),
            Correlation(slopes[0], slopes[1], rr, xx, columns),
            Correlation(slopes[0], slopes[2], rr, zz, columns),
            Correlation(slopes[1], slopes[2], xx, zz, columns));
    }

    private static double Correlation(double[] a, double[] b, double varianceA, double varianceB, double[][] columns) =>
        varianceA > 0 && varianceB > 0 ? Covariance(a, b, columns) / Math.Sqrt(varianceA * varianceB) : 0;

    /// <summary>Covariance of two results from the scatter of the sets: each set moves both results together.</summary>
    private static double Covariance(double[] a, double[] b, double[][] columns)
    {
        var n = columns[0].Length;
        var means = Array.ConvertAll(columns, c => c.Average());
        var sum = 0.0;
        for (var k = 0; k < n; k++)
        {
            double moveA = 0, moveB = 0;
            for (var j = 0; j < columns.Length; j++)
            {
                var off = columns[j][k] - means[j];
                moveA += a[j] * off;
                moveB += b[j] * off;
            }

            sum += moveA * moveB;
        }

        return sum / (n * (n - 1.0));
    }
}
