using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Clamped parts of several materials and widths on one bolt: washers, sleeves, gaskets, castings.</summary>
public static class LayeredParts
{
    /// <summary>Resilience of layers around a concentric bolt, m/N.</summary>
    /// <param name="bearingDiameter">Outer diameter of the face under the head, m.</param>
    /// <param name="hole">Hole diameter, m.</param>
    /// <param name="thicknesses">Thickness of each layer from the head down, m.</param>
    /// <param name="moduli">Young's modulus of each, Pa.</param>
    /// <param name="diameters">Outside diameter of each, m.</param>
    /// <param name="form">Tapped or through joint.</param>
    [Formula("layered part resilience", "δP = sum(int(dz / (E π / 4 (D^2 - dh^2)))); D = dw + 2 z tanφ", "VDI 2230-1:2003, section 5.1.2.1", Provenance = Provenance.FromMemory, Validity = "D of the cone from each head or nut face, no wider than the layer's own diameter DA; a narrow layer starts the cone anew; tanφ as of one part of the grip lK = sum(l) with DA the mean over the layers by thickness (common practice)", Caution = "The cone angle is fitted to concentric joints of solid parts; a soft gasket gives more and creeps.")]
    [return: Quantity("resilience of the parts", Dimension.Compliance, "mm/N", Symbol = "δP")]
    public static double Resilience(
        [Quantity("bearing face diameter", Dimension.Length, "mm", Symbol = "dw", Above = 0)] double bearingDiameter,
        [Quantity("hole diameter", Dimension.Length, "mm", Symbol = "dh", Above = 0)] double hole,
        [Quantity("thicknesses", Dimension.Length, "mm", Symbol = "l", Above = 0)] double[] thicknesses,
        [Quantity("elastic moduli", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double[] moduli,
        [Quantity("outside diameters", Dimension.Length, "mm", Symbol = "DA", Above = 0)] double[] diameters,
        [Quantity("joint form", Dimension.Number)] JointForm form = JointForm.Tapped)
    {
        FormulaDomainException.Unless(moduli.Length == thicknesses.Length && diameters.Length == thicknesses.Length, "thicknesses, elastic moduli, outside diameters: as many of each are wanted");
        FormulaDomainException.Unless(bearingDiameter > hole && diameters.Min() > hole, "bearing face diameter, outside diameters: must be greater than the hole diameter");
        var grip = thicknesses.Sum();
        var mean = thicknesses.Zip(diameters, (l, d) => l * d).Sum() / grip;
        var tangent = ClampedParts.ConeTangent(bearingDiameter, mean, grip, form);
        FormulaDomainException.Unless(tangent > 0, "thicknesses: the grip is too short for the cone fit of the standard");
        var down = Starts(bearingDiameter, thicknesses, diameters, tangent);
        var up = form == JointForm.Through ? Starts(bearingDiameter, [.. thicknesses.Reverse()], [.. diameters.Reverse()], tangent) : null;
        var total = 0.0;
        for (var i = 0; i < thicknesses.Length; i++)
        {
            var layer = new Layer(thicknesses[i], diameters[i], down[i], up is null ? double.PositiveInfinity : up[^(i + 1)], 2 * tangent);
            total += layer.Inverse(hole) / (Math.PI / 4 * moduli[i]);
        }

        return total;
    }

    /// <summary>Change of preload when bolt and layers warm up, N.</summary>
    /// <param name="thicknesses">Thickness of each layer, m.</param>
    /// <param name="expansions">Expansion coefficient of each, 1/K.</param>
    /// <param name="rises">Temperature rise of each, K.</param>
    /// <param name="boltExpansion">Expansion coefficient of the bolt, 1/K.</param>
    /// <param name="boltRise">Temperature rise of the bolt, K.</param>
    /// <param name="boltResilience">Resilience of the bolt, m/N.</param>
    /// <param name="partResilience">Resilience of the clamped parts, m/N.</param>
    [Formula("layered thermal preload change", "ΔF = (sum(l αP ΔTP) - sum(l) αS ΔTS) / (δS + δP)", "VDI 2230-1:2003, section 5.4.2.3, moduli held constant", Provenance = Provenance.FromMemory)]
    [return: Quantity("preload change", Dimension.Force, "N", Symbol = "ΔF")]
    public static double ThermalChange(
        [Quantity("thicknesses", Dimension.Length, "mm", Symbol = "l", Above = 0)] double[] thicknesses,
        [Quantity("expansions of the parts", Dimension.ThermalExpansion, "1/K", Symbol = "αP")] double[] expansions,
        [Quantity("temperature rises of the parts", Dimension.TemperatureDifference, "K", Symbol = "ΔTP")] double[] rises,
        [Quantity("expansion of the bolt", Dimension.ThermalExpansion, "1/K", Symbol = "αS")] double boltExpansion,
        [Quantity("temperature rise of the bolt", Dimension.TemperatureDifference, "K", Symbol = "ΔTS")] double boltRise,
        [Quantity("bolt resilience", Dimension.Compliance, "mm/N", Symbol = "δS", Above = 0)] double boltResilience,
        [Quantity("resilience of the parts", Dimension.Compliance, "mm/N", Symbol = "δP", Min = 0)] double partResilience)
    {
        FormulaDomainException.Unless(expansions.Length == thicknesses.Length && rises.Length == thicknesses.Length, "thicknesses, expansions of the parts, temperature rises of the parts: as many of each are wanted");
        var growth = 0.0;
        for (var i = 0; i < thicknesses.Length; i++)
        {
            growth += thicknesses[i] * ((expansions[i] * rises[i]) - (boltExpansion * boltRise));
        }

        return growth / (boltResilience + partResilience);
    }

    /// <summary>Diameter of the cone where it enters each layer.</summary>
    private static double[] Starts(double bearing, double[] thicknesses, double[] diameters, double tangent)
    {
        var starts = new double[thicknesses.Length];
        var width = bearing;
        for (var i = 0; i < starts.Length; i++)
        {
            starts[i] = Math.Min(width, diameters[i]);
            width = Math.Min(starts[i] + (2 * tangent * thicknesses[i]), diameters[i]);
        }

        return starts;
    }

    /// <summary>One layer with the cones that come in from its two faces.</summary>
    /// <param name="Thickness">Thickness, m.</param>
    /// <param name="Edge">Outside diameter, m.</param>
    /// <param name="Top">Diameter of the cone from above at the upper face, m.</param>
    /// <param name="Foot">Diameter of the cone from below at the lower face, m; infinite where there is none.</param>
    /// <param name="Slope">Growth of the diameter per depth.</param>
    private readonly record struct Layer(double Thickness, double Edge, double Top, double Foot, double Slope)
    {
        /// <summary>Integral of dz / (D² - dh²), 1/m: bends lie where a cone meets the edge and where the two cones meet.</summary>
        public double Inverse(double hole)
        {
            double[] bends = [0, (Edge - Top) / Slope, Thickness - ((Edge - Foot) / Slope), ((Foot - Top) / Slope / 2) + (Thickness / 2), Thickness];
            Array.Sort(bends);
            var total = 0.0;
            for (var i = 1; i < bends.Length; i++)
            {
                var (from, to) = (Math.Clamp(bends[i - 1], 0, Thickness), Math.Clamp(bends[i], 0, Thickness));
                total += to > from ? Piece(Width(from), Width(to), to - from, hole) : 0;
            }

            return total;
        }

        private static double Piece(double from, double to, double length, double hole)
        {
            var slope = (to - from) / length;
            return Math.Abs(slope) < 1e-9
                ? length / ((from * from) - (hole * hole))
                : Math.Log((to - hole) * (from + hole) / ((to + hole) * (from - hole))) / (2 * hole * slope);
        }

        private double Width(double depth) => Math.Min(Edge, Math.Min(Top + (Slope * depth), Foot + (Slope * (Thickness - depth))));
    }
}
