using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Springs;

/// <summary>Whether the wire has been shot-peened.</summary>
public enum WireSurface
{
    /// <summary>Shot-peened.</summary>
    Peened,

    /// <summary>As coiled.</summary>
    Unpeened,
}

/// <summary>How mean stress eats into the amplitude that a spring bears.</summary>
public enum FatigueCriterion
{
    /// <summary>Straight line from endurance limit to ultimate strength.</summary>
    Goodman,

    /// <summary>Parabola from endurance limit to ultimate strength.</summary>
    Gerber,
}

/// <summary>Strength of spring wire for infinite life: one point of the fatigue diagram.</summary>
/// <param name="Amplitude">Shear-stress amplitude, Pa.</param>
/// <param name="Mean">Mean shear stress at which that amplitude is borne, Pa.</param>
public readonly record struct FatiguePoint(
    [Quantity("amplitude strength", Dimension.Pressure, "MPa", Symbol = "Ssa")] double Amplitude,
    [Quantity("mean strength", Dimension.Pressure, "MPa", Symbol = "Ssm")] double Mean);

/// <summary>Stresses and reserve of a spring that works between two loads.</summary>
/// <param name="Amplitude">Shear-stress amplitude, Pa.</param>
/// <param name="Mean">Mean shear stress, Pa.</param>
/// <param name="Endurance">Endurance limit in fully reversed shear, Pa.</param>
/// <param name="Safety">Safety factor against fatigue.</param>
public readonly record struct SpringFatigueResult(
    [Quantity("stress amplitude", Dimension.Pressure, "MPa", Symbol = "τa")] double Amplitude,
    [Quantity("mean stress", Dimension.Pressure, "MPa", Symbol = "τm")] double Mean,
    [Quantity("endurance limit in shear", Dimension.Pressure, "MPa", Symbol = "Sse")] double Endurance,
    [Quantity("fatigue safety", Dimension.Number, Symbol = "nf")] double Safety);

/// <summary>Fatigue of helical springs after Zimmerli's tests.</summary>
public static class SpringFatigue
{
    private const double Kpsi = 6.894757293168e6;

    /// <summary>Zimmerli's infinite-life strength components, the same for all wires under 10 mm.</summary>
    /// <param name="surface">Peened or not.</param>
    [Formula("Zimmerli spring strength", "Ssa, Ssm", "Zimmerli (1957), in Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., eq. 10-28 and 10-29", Provenance = Provenance.FromMemory, Validity = "peened 57.5 and 77.5 kpsi, unpeened 35 and 55 kpsi; steel wire under 10 mm, room temperature, no corrosion", Caution = "Super-clean valve-spring wire bears more: the maker's figure goes first.")]
    public static FatiguePoint Zimmerli(
        [Quantity("wire surface", Dimension.Number)] WireSurface surface = WireSurface.Peened) => surface == WireSurface.Peened
            ? new FatiguePoint(57.5 * Kpsi, 77.5 * Kpsi)
            : new FatiguePoint(35 * Kpsi, 55 * Kpsi);

    /// <summary>Endurance limit in fully reversed shear, from one tested point of amplitude and mean, Pa.</summary>
    /// <param name="amplitudeStrength">Amplitude borne at the tested mean stress, Pa.</param>
    /// <param name="meanStrength">Mean stress of the test, Pa.</param>
    /// <param name="shearStrength">Ultimate shear strength, Pa; 0.67 of the tensile strength for spring wire.</param>
    /// <param name="criterion">Goodman line or Gerber parabola.</param>
    [Formula("spring endurance limit", "Sse = Ssa / (1 - Ssm / Ssu)", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., section 10-9", Validity = "Goodman as written; Gerber has (Ssm / Ssu)^2")]
    [return: Quantity("endurance limit in shear", Dimension.Pressure, "MPa", Symbol = "Sse")]
    public static double Endurance(
        [Quantity("amplitude strength", Dimension.Pressure, "MPa", Symbol = "Ssa", Above = 0)] double amplitudeStrength,
        [Quantity("mean strength", Dimension.Pressure, "MPa", Symbol = "Ssm", Min = 0)] double meanStrength,
        [Quantity("ultimate shear strength", Dimension.Pressure, "MPa", Symbol = "Ssu", Above = 0)] double shearStrength,
        [Quantity("criterion", Dimension.Number)] FatigueCriterion criterion = FatigueCriterion.Goodman)
    {
        FormulaDomainException.Unless(meanStrength < shearStrength, "mean strength: must be less than the ultimate shear strength");
        var share = meanStrength / shearStrength;
        return amplitudeStrength / (1 - (criterion == FatigueCriterion.Goodman ? share : share * share));
    }

    /// <summary>Stress amplitude at failure when amplitude and mean grow together, Pa.</summary>
    /// <param name="endurance">Endurance limit in fully reversed shear, Pa.</param>
    /// <param name="shearStrength">Ultimate shear strength, Pa.</param>
    /// <param name="loadLine">Amplitude over mean.</param>
    /// <param name="criterion">Goodman line or Gerber parabola.</param>
    [Formula("spring amplitude strength on a load line", "Ssa = r Sse Ssu / (r Ssu + Sse)", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., tables 6-6 and 6-7", Validity = "Goodman as written; Gerber Ssa = (r Ssu)^2 / (2 Sse) (sqrt(1 + (2 Sse / (r Ssu))^2) - 1)")]
    [return: Quantity("amplitude strength", Dimension.Pressure, "MPa", Symbol = "Ssa")]
    public static double AmplitudeStrength(
        [Quantity("endurance limit in shear", Dimension.Pressure, "MPa", Symbol = "Sse", Above = 0)] double endurance,
        [Quantity("ultimate shear strength", Dimension.Pressure, "MPa", Symbol = "Ssu", Above = 0)] double shearStrength,
        [Quantity("amplitude over mean", Dimension.Number, Symbol = "r", Above = 0)] double loadLine,
        [Quantity("criterion", Dimension.Number)] FatigueCriterion criterion = FatigueCriterion.Goodman)
    {
        var slope = loadLine * shearStrength;
        if (criterion == FatigueCriterion.Goodman)
        {
            return slope * endurance / (slope + endurance);
        }

        // Written without the difference of near-equal numbers that the textbook form has for steep load lines.
        var q = 2 * endurance / slope;
        return 2 * endurance / (1 + Math.Sqrt(1 + (q * q)));
    }

    /// <summary>Fatigue safety of a spring that works between two loads.</summary>
    /// <param name="leastLoad">Least load, N: the seat load.</param>
    /// <param name="greatestLoad">Greatest load, N: the open load.</param>
    /// <param name="wire">Wire diameter, m.</param>
    /// <param name="meanDiameter">Mean coil diameter, m.</param>
    /// <param name="tensileStrength">Tensile strength of the wire, Pa.</param>
    /// <param name="amplitudeStrength">Amplitude borne at the tested mean stress, Pa.</param>
    /// <param name="meanStrength">Mean stress of the test, Pa.</param>
    /// <param name="curvature">Correction for curvature.</param>
    /// <param name="criterion">Goodman line or Gerber parabola.</param>
    [Formula("spring fatigue", "τa = K 8 D (F2 - F1) / (2 π d^3); τm = K 8 D (F2 + F1) / (2 π d^3); Sse = Ssa / (1 - Ssm / (0.67 Rm)); nf = 1 / (τa / Sse + τm / (0.67 Rm))", "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., section 10-9; ultimate shear strength 0.67 Rm, eq. 10-30", Validity = "Goodman as written; Gerber scales the working point along its load line to the parabola")]
    public static SpringFatigueResult Safety(
        [Quantity("least load", Dimension.Force, "N", Symbol = "F1", Min = 0)] double leastLoad,
        [Quantity("greatest load", Dimension.Force, "N", Symbol = "F2", Above = 0)] double greatestLoad,
        [Quantity("wire diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double wire,
        [Quantity("mean coil diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double meanDiameter,
        [Quantity("tensile strength", Dimension.Pressure, "MPa", Symbol = "Rm", Above = 0)] double tensileStrength,
        [Quantity("amplitude strength", Dimension.Pressure, "MPa", Symbol = "Ssa", Above = 0)] double amplitudeStrength = 57.5 * Kpsi,
        [Quantity("mean strength", Dimension.Pressure, "MPa", Symbol = "Ssm", Min = 0)] double meanStrength = 77.5 * Kpsi,
        [Quantity("curvature factor", Dimension.Number, Symbol = "K")] CurvatureFactor curvature = CurvatureFactor.Wahl,
        [Quantity("criterion", Dimension.Number)] FatigueCriterion criterion = FatigueCriterion.Goodman)
    {
        FormulaDomainException.Unless(greatestLoad > leastLoad, "greatest load: must be greater than the least load");
        var low = HelicalSpring.ShearStress(leastLoad, wire, meanDiameter, curvature);
        var high = HelicalSpring.ShearStress(greatestLoad, wire, meanDiameter, curvature);
        var amplitude = (high - low) / 2;
        var mean = (high + low) / 2;
        var shearStrength = 0.67 * tensileStrength;
        var endurance = Endurance(amplitudeStrength, meanStrength, shearStrength, criterion);
        var bearable = AmplitudeStrength(endurance, shearStrength, amplitude / mean, criterion);
        return new SpringFatigueResult(amplitude, mean, endurance, bearable / amplitude);
    }
}
