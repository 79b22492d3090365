using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>Stress concentration in the fillet of a crank pin.</summary>
/// <param name="Bending">On the nominal bending stress of the web.</param>
/// <param name="Torsion">On the nominal torsional stress of the pin.</param>
public readonly record struct PinFilletFactors(
    [Quantity("stress concentration in bending", Dimension.Number, Symbol = "αB")] double Bending,
    [Quantity("stress concentration in torsion", Dimension.Number, Symbol = "αT")] double Torsion);

/// <summary>Stress concentration in the fillet of a main journal.</summary>
/// <param name="Bending">On the nominal bending stress of the web.</param>
/// <param name="Radial">On the nominal compression of the web by the radial force.</param>
/// <param name="Torsion">On the nominal torsional stress of the journal.</param>
public readonly record struct JournalFilletFactors(
    [Quantity("stress concentration in bending", Dimension.Number, Symbol = "βB")] double Bending,
    [Quantity("stress concentration under radial force", Dimension.Number, Symbol = "βQ")] double Radial,
    [Quantity("stress concentration in torsion", Dimension.Number, Symbol = "βT")] double Torsion);

/// <summary>Nominal stresses of a crank web.</summary>
/// <param name="Bending">Bending stress in the middle of the web, Pa.</param>
/// <param name="Radial">Stress by the radial force, Pa.</param>
public readonly record struct WebStress(
    [Quantity("nominal bending stress", Dimension.Pressure, "MPa", Symbol = "σB")] double Bending,
    [Quantity("nominal radial stress", Dimension.Pressure, "MPa", Symbol = "σQ")] double Radial);

/// <summary>Nominal stresses and stress concentration factors of crank throws by the classification societies' unified rule.</summary>
public static class CrankFillets
{
    private const string Rule = "IACS UR M53, Calculation of crankshafts for I.C. engines, Rev. 2, ";
    private const string Ranges = "S / D up to 0.5, W / D 0.2 to 0.8, B / D 1.1 to 2.2, R / D 0.03 to 0.13, bores up to 0.8 D, recesses up to R.";

    /// <summary>How far pin and journal overlap seen along the crank, m; negative when they do not.</summary>
    /// <param name="pin">Diameter of the crank pin, m.</param>
    /// <param name="journal">Diameter of the main journal, m.</param>
    /// <param name="radius">Crank radius, m.</param>
    [Formula("crank pin overlap", "S = (D + DG) / 2 - E", Rule + "M53.3.1", Provenance = Provenance.Definition)]
    [return: Quantity("overlap of pin and journal", Dimension.Length, "mm", Symbol = "S")]
    public static double Overlap(
        [Quantity("crank pin diameter", Dimension.Length, "mm", Symbol = "D", Above = 0, Max = 2)] double pin,
        [Quantity("main journal diameter", Dimension.Length, "mm", Symbol = "DG", Above = 0, Max = 2)] double journal,
        [Quantity("crank radius", Dimension.Length, "mm", Symbol = "E", Above = 0, Max = 2)] double radius) =>
        ((pin + journal) / 2) - radius;

    /// <summary>Nominal stresses of a web under a bending moment and a radial force.</summary>
    /// <param name="moment">Bending moment in the middle of the web, N·m.</param>
    /// <param name="radial">Radial force through the web, N.</param>
    /// <param name="width">Width of the web, m.</param>
    /// <param name="thickness">Thickness of the web, m.</param>
    [Formula("crank web stress", "σB = 6 M / (B W^2); σQ = Q / (B W)", Rule + "M53.2.1.2", Provenance = Provenance.FromMemory)]
    public static WebStress Web(
        [Quantity("bending moment", Dimension.Torque, "N·m", Symbol = "M", Min = 0)] double moment,
        [Quantity("radial force", Dimension.Force, "kN", Symbol = "Q", Min = 0)] double radial,
        [Quantity("web width", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 3)] double width,
        [Quantity("web thickness", Dimension.Length, "mm", Symbol = "W", Above = 0, Max = 2)] double thickness) =>
        new(6 * moment / (width * thickness * thickness), radial / (width * thickness));

    /// <summary>Torsional stress of a round pin with a bore, Pa.</summary>
    /// <param name="torque">Torque, N·m.</param>
    /// <param name="diameter">Diameter, m.</param>
    /// <param name="bore">Bore, m.</param>
    [Formula("torsion of a bored pin", "τ = 16 T D / (π (D^4 - d^4))", "Torsion of round bars", Provenance = Provenance.Definition)]
    [return: Quantity("torsional stress", Dimension.Pressure, "MPa", Symbol = "τ")]
    public static double Torsion(
        [Quantity("torque", Dimension.Torque, "N·m", Symbol = "T", Min = 0)] double torque,
        [Quantity("diameter", Dimension.Length, "mm", Symbol = "D", Above = 0, Max = 2)] double diameter,
        [Quantity("bore", Dimension.Length, "mm", Symbol = "d", Min = 0, Max = 2)] double bore = 0)
    {
        FormulaDomainException.Unless(bore <= 0.99 * diameter, "bore: must be less than the diameter");
        var (outer, inner) = (diameter * diameter, bore * bore);
        return 16 * torque * diameter / (Math.PI * ((outer * outer) - (inner * inner)));
    }

    /// <summary>Stress concentration factors of the crank pin's fillet.</summary>
    /// <param name="pin">Diameter of the crank pin, m.</param>
    /// <param name="overlap">Overlap of pin and journal, m.</param>
    /// <param name="thickness">Thickness of the web, m.</param>
    /// <param name="width">Width of the web, m.</param>
    /// <param name="fillet">Radius of the pin's fillet, m.</param>
    /// <param name="pinBore">Bore of the pin, m.</param>
    /// <param name="journalBore">Bore of the journal, m.</param>
    /// <param name="pinRecess">How deep the pin's fillet is sunk into the web, m.</param>
    /// <param name="journalRecess">How deep the journal's fillet is sunk into the web, m.</param>
    [Formula(
        "crank pin fillet factors",
        "αB = 2.6914 f(s,w) f(w) f(b) f(r) f(dG) f(dH) f(recess); αT = 0.8 f(r,s) f(b) f(w); s = S / D, w = W / D, b = B / D, r = R / D",
        Rule + "M53.3.2 (from memory)",
        Provenance = Provenance.FromMemory,
        Validity = Ranges,
        Caution = "From measurements on engines far larger; for a small crank a screening.")]
    public static PinFilletFactors Pin(
        [Quantity("crank pin diameter", Dimension.Length, "mm", Symbol = "D", Above = 0, Max = 2)] double pin,
        [Quantity("overlap of pin and journal", Dimension.Length, "mm", Symbol = "S", Min = -2, Max = 2)] double overlap,
        [Quantity("web thickness", Dimension.Length, "mm", Symbol = "W", Above = 0, Max = 2)] double thickness,
        [Quantity("web width", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 3)] double width,
        [Quantity("fillet radius of the pin", Dimension.Length, "mm", Symbol = "R", Above = 0, Max = 0.2)] double fillet,
        [Quantity("bore of the pin", Dimension.Length, "mm", Symbol = "DBH", Min = 0, Max = 2)] double pinBore = 0,
        [Quantity("bore of the journal", Dimension.Length, "mm", Symbol = "DBG", Min = 0, Max = 2)] double journalBore = 0,
        [Quantity("recess of the pin's fillet", Dimension.Length, "mm", Symbol = "TH", Min = 0, Max = 0.2)] double pinRecess = 0,
        [Quantity("recess of the journal's fillet", Dimension.Length, "mm", Symbol = "TG", Min = 0, Max = 0.2)] double journalRecess = 0)
    {
        var t = Throw.Of(pin, overlap, thickness, width, fillet, pinBore, journalBore, pinRecess, journalRecess);
        var (w, b, dG, dH, u) = (t.W, t.B, t.JournalBore, t.PinBore, 1 - t.S);
        var shape = Poly(w, -4.1883, 29.2004, -77.5925, 91.9454, -40.0416)
            + (u * Poly(w, 9.5440, -58.3480, 159.3415, -192.5846, 85.2916))
            + (u * u * Poly(w, -3.8399, 25.0444, -70.5571, 87.0328, -39.1832));
        var bending = 2.6914 * shape * 2.1790 * Math.Pow(w, 0.7171) * Poly(b, 0.6840, -0.0077, 0.1473) * 0.2081 * Math.Pow(t.R, -0.5231)
            * Poly(dG, 0.9993, 0.27, -1.0211, 0.5306) * Poly(dH, 0.9978, 0.3145, -1.5241, 2.4147) * t.RecessFactor;
        return new PinFilletFactors(bending, InTorsion(t));
    }

    /// <summary>Stress concentration factors of the main journal's fillet.</summary>
    /// <param name="pin">Diameter of the crank pin, m.</param>
    /// <param name="overlap">Overlap of pin and journal, m.</param>
    /// <param name="thickness">Thickness of the web, m.</param>
    /// <param name="width">Width of the web, m.</param>
    /// <param name="fillet">Radius of the journal's fillet, m.</param>
    /// <param name="pinBore">Bore of the pin, m.</param>
    /// <param name="journalBore">Bore of the journal, m.</param>
    /// <param name="pinRecess">How deep the pin's fillet is sunk into the web, m.</param>
    /// <param name="journalRecess">How deep the journal's fillet is sunk into the web, m.</param>
    [Formula(
        "main journal fillet factors",
        "βB = 2.7146 fB(s,w) fB(w) fB(b) fB(r) fB(dG) fB(dH) f(recess); βQ = 3.0128 fQ(s) fQ(w) fQ(b) fQ(r) fQ(dH) f(recess); βT = 0.8 f(r,s) f(b) f(w); s = S / D, w = W / D, b = B / D, r = R / D",
        Rule + "M53.3.3 (from memory)",
        Provenance = Provenance.FromMemory,
        Validity = Ranges,
        Caution = "From measurements on engines far larger; for a small crank a screening.")]
    public static JournalFilletFactors Journal(
        [Quantity("crank pin diameter", Dimension.Length, "mm", Symbol = "D", Above = 0, Max = 2)] double pin,
        [Quantity("overlap of pin and journal", Dimension.Length, "mm", Symbol = "S", Min = -2, Max = 2)] double overlap,
        [Quantity("web thickness", Dimension.Length, "mm", Symbol = "W", Above = 0, Max = 2)] double thickness,
        [Quantity("web width", Dimension.Length, "mm", Symbol = "B", Above = 0, Max = 3)] double width,
        [Quantity("fillet radius of the journal", Dimension.Length, "mm", Symbol = "R", Above = 0, Max = 0.2)] double fillet,
        [Quantity("bore of the pin", Dimension.Length, "mm", Symbol = "DBH", Min = 0, Max = 2)] double pinBore = 0,
        [Quantity("bore of the journal", Dimension.Length, "mm", Symbol = "DBG", Min = 0, Max = 2)] double journalBore = 0,
        [Quantity("recess of the pin's fillet", Dimension.Length, "mm", Symbol = "TH", Min = 0, Max = 0.2)] double pinRecess = 0,
        [Quantity("recess of the journal's fillet", Dimension.Length, "mm", Symbol = "TG", Min = 0, Max = 0.2)] double journalRecess = 0)
    {
        var t = Throw.Of(pin, overlap, thickness, width, fillet, pinBore, journalBore, pinRecess, journalRecess);
        var (w, b, dG, dH, u) = (t.W, t.B, t.JournalBore, t.PinBore, 1 - t.S);
        var shape = Poly(w, -1.7625, 2.9821, -1.5276) + (u * Poly(w, 5.1169, -5.8089, 3.1391)) + (u * u * Poly(w, -2.1567, 2.3297, -1.2952));
        var bending = 2.7146 * shape * 2.2422 * Math.Pow(w, 0.7548) * Poly(b, 0.5616, 0.1197, 0.1176) * 0.1908 * Math.Pow(t.R, -0.5568)
            * Poly(dG, 1.0012, -0.6441, 1.2265) * Poly(dH, 1.0022, -0.1903, 0.0073) * t.RecessFactor;
        var radial = 3.0128 * Poly(u, 0.4368, 2.1630, -1.5212) * (w / (0.0637 + (0.9369 * w))) * (b - 0.5) * 0.5331 * Math.Pow(t.R, -0.2038)
            * Poly(dH, 0.9937, -1.1949, 1.7373) * t.RecessFactor;
        return new JournalFilletFactors(bending, radial, InTorsion(t));
    }

    private static double InTorsion(Throw t) =>
        0.8 * Math.Pow(t.R, -0.322 + (0.1015 * (1 - t.S))) * Poly(t.B, 7.8955, -10.654, 5.3482, -0.857) * Math.Pow(t.W, -0.145);

    private static double Poly(double x, params ReadOnlySpan<double> coefficients)
    {
        var sum = 0.0;
        for (var i = coefficients.Length - 1; i >= 0; i--)
        {
            sum = (sum * x) + coefficients[i];
        }

        return sum;
    }

    /// <summary>The throw's measures over the pin's diameter, inside the rule's ranges.</summary>
    private readonly record struct Throw(double S, double W, double B, double R, double PinBore, double JournalBore, double RecessFactor)
    {
        public static Throw Of(double pin, double overlap, double thickness, double width, double fillet, double pinBore, double journalBore, double pinRecess, double journalRecess)
        {
            Inside(overlap / pin, double.NegativeInfinity, 0.5, "overlap of pin and journal", "up to 0.5");
            Inside(thickness / pin, 0.2, 0.8, "web thickness", "0.2 to 0.8");
            Inside(width / pin, 1.1, 2.2, "web width", "1.1 to 2.2");
            Inside(fillet / pin, 0.03, 0.13, "fillet radius", "0.03 to 0.13");
            Inside(pinBore / pin, 0, 0.8, "bore of the pin", "up to 0.8");
            Inside(journalBore / pin, 0, 0.8, "bore of the journal", "up to 0.8");
            Inside((pinRecess + journalRecess) / pin, 0, 0.26, "recess of the fillets", "up to 0.26 together");

            // Without overlap the rule takes S / D no lower than -0.5, and no recess factor below 1.
            var s = Math.Max(overlap / pin, -0.5);
            return new Throw(s, thickness / pin, width / pin, fillet / pin, pinBore / pin, journalBore / pin, Math.Max(1, 1 + ((pinRecess + journalRecess) / pin * (1.8 + (3.2 * s)))));
        }

        private static void Inside(double ratio, double least, double most, string name, string range) =>
            FormulaDomainException.Unless(ratio >= least - 1e-9 && ratio <= most + 1e-9, $"{name}: the rule holds for {range} of the crank pin's diameter");
    }
}
