using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gas;

/// <summary>What a pipe's wall does to a steady flow through it: friction, heat and the loss where the pipe widens.</summary>
public static class PipeFriction
{
    /// <summary>Reynolds number below which the flow counts as laminar.</summary>
    public const double Laminar = 2300;

    private const double HighestReynolds = 1e9;

    /// <summary>Darcy's friction factor of a rough pipe, the implicit law solved to the last digit.</summary>
    /// <param name="reynolds">Reynolds number on the diameter.</param>
    /// <param name="roughness">Height of the roughness over the diameter.</param>
    [Formula("friction factor by Colebrook", "1/sqrt(f) = -2 log10(ε/3.7 + 2.51/(Re sqrt(f)))", "Colebrook, J. Inst. Civ. Eng. 11 (1939) 133", Provenance = Provenance.FromMemory, Validity = "Turbulent flow; f = 64/Re below Re 2300. Between Re 2300 and 4000 the flow may be either.")]
    [return: Quantity("Darcy friction factor", Dimension.Number, Symbol = "f")]
    public static double Colebrook(
        [Quantity("Reynolds number", Dimension.Number, Symbol = "Re", Above = 0, Max = HighestReynolds)] double reynolds,
        [Quantity("relative roughness", Dimension.Number, Symbol = "ε", Min = 0, Max = 0.05)] double roughness = 0)
    {
        if (reynolds < Laminar)
        {
            return 64 / reynolds;
        }

        // Newton's method on x = 1/sqrt(f): the law is concave in it, and Haaland's is close by.
        var (rough, smooth) = (roughness / 3.7, 2.51 / reynolds);
        var x = 1 / Math.Sqrt(Haaland(reynolds, roughness));
        for (var turn = 0; turn < 6; turn++)
        {
            var inside = rough + (smooth * x);
            x -= (x + (2 * Math.Log10(inside))) / (1 + (2 / Math.Log(10) * smooth / inside));
        }

        return 1 / (x * x);
    }

    /// <summary>Darcy's friction factor of a rough pipe by an explicit law, within some 1.5 % of Colebrook's.</summary>
    /// <param name="reynolds">Reynolds number on the diameter.</param>
    /// <param name="roughness">Height of the roughness over the diameter.</param>
    [Formula("friction factor by Haaland", "1/sqrt(f) = -1.8 log10((ε/3.7)^1.11 + 6.9/Re)", "Haaland, J. Fluids Eng. 105 (1983) 89", Provenance = Provenance.FromMemory, Validity = "Turbulent flow; f = 64/Re below Re 2300. Between Re 2300 and 4000 the flow may be either.")]
    [return: Quantity("Darcy friction factor", Dimension.Number, Symbol = "f")]
    public static double Haaland(
        [Quantity("Reynolds number", Dimension.Number, Symbol = "Re", Above = 0, Max = HighestReynolds)] double reynolds,
        [Quantity("relative roughness", Dimension.Number, Symbol = "ε", Min = 0, Max = 0.05)] double roughness = 0)
    {
        if (reynolds < Laminar)
        {
            return 64 / reynolds;
        }

        var x = -1.8 * Math.Log10(Math.Pow(roughness / 3.7, 1.11) + (6.9 / reynolds));
        return 1 / (x * x);
    }

    /// <summary>Heat transfer coefficient of a turbulent flow in a pipe from its friction, W/(m²·K).</summary>
    /// <param name="friction">Darcy's friction factor.</param>
    /// <param name="massFlux">Mass flow over area, kg/(m²·s).</param>
    /// <param name="heatCapacity">Heat capacity at constant pressure, J/(kg·K).</param>
    /// <param name="prandtl">Prandtl number of the gas.</param>
    [Formula("heat transfer coefficient by Chilton and Colburn", "h = f/8 G c Pr^(-2/3)", "Chilton, Colburn, Ind. Eng. Chem. 26 (1934) 1183", Provenance = Provenance.FromMemory, Validity = "Turbulent flow in a smooth or slightly rough pipe, Pr 0.6 to 60.")]
    [return: Quantity("heat transfer coefficient", Dimension.HeatTransferCoefficient, "W/(m²·K)", Symbol = "h")]
    public static double ChiltonColburn(
        [Quantity("Darcy friction factor", Dimension.Number, Symbol = "f", Min = 0)] double friction,
        [Quantity("mass flux", Dimension.MassFlux, "kg/(m²·s)", Symbol = "G", Min = 0)] double massFlux,
        [Quantity("heat capacity at constant pressure", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "c", Above = 0)] double heatCapacity,
        [Quantity("Prandtl number", Dimension.Number, Symbol = "Pr", Above = 0)] double prandtl = 0.7) =>
        friction / 8 * massFlux * heatCapacity * Math.Pow(prandtl, -2.0 / 3);

    /// <summary>Loss coefficient where a pipe widens at once, on the dynamic head in the narrower.</summary>
    /// <param name="narrow">Area before, m².</param>
    /// <param name="wide">Area after, m².</param>
    [Formula("sudden expansion loss", "K = (1 - A1/A2)^2", "Borda and Carnot: momentum over the widening; e.g. Idelchik, Handbook of Hydraulic Resistance, diagram 4-1", Validity = "Incompressible: Mach number up to about 0.3; turbulent flow. The loss is K ρ u²/2 with the velocity in the narrower pipe.")]
    [return: Quantity("loss coefficient", Dimension.Number, Symbol = "K")]
    public static double SuddenExpansion(
        [Quantity("area before", Dimension.Area, "mm²", Symbol = "A1", Above = 0)] double narrow,
        [Quantity("area after", Dimension.Area, "mm²", Symbol = "A2", Above = 0)] double wide)
    {
        FormulaDomainException.Unless(wide >= narrow, "area after: must not be smaller than the area before");
        var left = 1 - (narrow / wide);
        return left * left;
    }
}
