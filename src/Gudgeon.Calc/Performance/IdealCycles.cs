using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Performance;

/// <summary>Corner states of an ideal cycle over the state at the start of compression, and what it yields.</summary>
/// <param name="CompressionPressure">p2/p1.</param>
/// <param name="CompressionTemperature">T2/T1.</param>
/// <param name="PeakPressure">p3/p1.</param>
/// <param name="PeakTemperature">T3/T1.</param>
/// <param name="ExpandedTemperature">T4/T1, which is p4/p1 too.</param>
/// <param name="Efficiency">Work over heat.</param>
/// <param name="MeanPressure">imep/p1.</param>
/// <param name="MeanOverPeakPressure">imep/p3.</param>
public readonly record struct IdealCycle(
    [Quantity("compression pressure p2/p1", Dimension.Number, Symbol = "p2")] double CompressionPressure,
    [Quantity("compression temperature T2/T1", Dimension.Number, Symbol = "T2")] double CompressionTemperature,
    [Quantity("peak pressure p3/p1", Dimension.Number, Symbol = "p3")] double PeakPressure,
    [Quantity("peak temperature T3/T1", Dimension.Number, Symbol = "T3")] double PeakTemperature,
    [Quantity("temperature after expansion T4/T1", Dimension.Number, Symbol = "T4")] double ExpandedTemperature,
    [Quantity("indicated efficiency", Dimension.Number, Symbol = "η")] double Efficiency,
    [Quantity("mean pressure imep/p1", Dimension.Number, Symbol = "imep")] double MeanPressure,
    [Quantity("mean over peak pressure imep/p3", Dimension.Number)] double MeanOverPeakPressure);

/// <summary>
/// Ideal gas cycles with constant specific heats. Heat is given per kilogram of charge over cv T1, T1 being the temperature at
/// the start of compression.
/// </summary>
public static class IdealCycles
{
    private const string Heywood = "Heywood, Internal Combustion Engine Fundamentals, 1st ed., section 5.4 and table 5.2";

    /// <summary>Efficiency of the constant-volume cycle.</summary>
    /// <param name="compressionRatio">Compression ratio.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("Otto cycle efficiency", "η = 1 - rc^(1 - γ)", "Heywood, Internal Combustion Engine Fundamentals, 1st ed., eq. 5.31", Provenance = Provenance.FromMemory)]
    [return: Quantity("indicated efficiency", Dimension.Number, Symbol = "η")]
    public static double OttoEfficiency(
        [Quantity("compression ratio", Dimension.Number, Symbol = "rc", Above = 1, Max = 100)] double compressionRatio,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.3) =>
        1 - Math.Pow(compressionRatio, 1 - gamma);

    /// <summary>All heat at constant volume.</summary>
    /// <param name="compressionRatio">Compression ratio.</param>
    /// <param name="heat">Q/(cv T1).</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("constant-volume cycle", "T3 = T2 + q; T4 = T3 rc^(1 - γ); η = 1 - (T4 - 1) / q; imep = η q / (γ - 1) rc / (rc - 1)", Heywood, Provenance = Provenance.FromMemory)]
    public static IdealCycle ConstantVolume(
        [Quantity("compression ratio", Dimension.Number, Symbol = "rc", Above = 1, Max = 100)] double compressionRatio,
        [Quantity("heat over cv T1", Dimension.Number, Symbol = "q", Above = 0)] double heat,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.3) =>
        Cycle(compressionRatio, heat, heat, gamma);

    /// <summary>All heat at constant pressure.</summary>
    /// <param name="compressionRatio">Compression ratio.</param>
    /// <param name="heat">Q/(cv T1).</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("constant-pressure cycle", "T3 = T2 + q / γ; T4 = (T3 / T2)^γ; η = 1 - (T4 - 1) / q; imep = η q / (γ - 1) rc / (rc - 1)", Heywood, Provenance = Provenance.FromMemory)]
    public static IdealCycle ConstantPressure(
        [Quantity("compression ratio", Dimension.Number, Symbol = "rc", Above = 1, Max = 100)] double compressionRatio,
        [Quantity("heat over cv T1", Dimension.Number, Symbol = "q", Above = 0)] double heat,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.3)
    {
        var cycle = Cycle(compressionRatio, heat, 0, gamma);
        FormulaDomainException.Unless(cycle.PeakTemperature / cycle.CompressionTemperature <= compressionRatio, "heat: so much that the gas would still burn at the end of the stroke");
        return cycle;
    }

    /// <summary>Heat at constant volume up to a pressure limit, the rest at constant pressure.</summary>
    /// <param name="compressionRatio">Compression ratio.</param>
    /// <param name="heat">Q/(cv T1).</param>
    /// <param name="peakPressure">Pressure limit over p1, from the compression pressure to that of the constant-volume cycle.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    [Formula("limited-pressure cycle", "T3a = T2 p3/p2; T3 = T3a + (q - (T3a - T2)) / γ; T4 = T3 (T3 / (T3a rc))^(γ - 1); η = 1 - (T4 - 1) / q; imep = η q / (γ - 1) rc / (rc - 1)", Heywood, Provenance = Provenance.FromMemory)]
    public static IdealCycle LimitedPressure(
        [Quantity("compression ratio", Dimension.Number, Symbol = "rc", Above = 1, Max = 100)] double compressionRatio,
        [Quantity("heat over cv T1", Dimension.Number, Symbol = "q", Above = 0)] double heat,
        [Quantity("peak pressure p3/p1", Dimension.Number, Symbol = "p3", Above = 1, Help = "The limit that is held.")] double peakPressure,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.3)
    {
        var compressed = Math.Pow(compressionRatio, gamma);
        var first = Math.Pow(compressionRatio, gamma - 1) * ((peakPressure / compressed) - 1);
        FormulaDomainException.Unless(first >= 0, "pressure limit: below the compression pressure");
        FormulaDomainException.Unless(first <= heat, "pressure limit: above the peak pressure of the constant-volume cycle, so nothing is limited");
        return Cycle(compressionRatio, heat, first, gamma);
    }

    /// <summary>The general cycle: <paramref name="first"/> of the heat at constant volume, the rest at constant pressure.</summary>
    private static IdealCycle Cycle(double rc, double heat, double first, double gamma)
    {
        var t2 = Math.Pow(rc, gamma - 1);
        var p2 = t2 * rc;
        var t3a = t2 + first;
        var t3 = t3a + ((heat - first) / gamma);
        var p3 = p2 * t3a / t2;
        var t4 = t3 * Math.Pow(t3 / (t3a * rc), gamma - 1);
        var efficiency = 1 - ((t4 - 1) / heat);
        var mean = efficiency * heat / (gamma - 1) * rc / (rc - 1);
        return new(p2, t2, p3, t3, t4, efficiency, mean, mean / p3);
    }
}
