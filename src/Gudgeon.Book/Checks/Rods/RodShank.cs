using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Crank;

namespace Gudgeon.Book.Checks.Rods;

/// <summary>The shank of a rod at its least section: as given, else from the measures of an I. SI; NaN where it is not known.</summary>
/// <param name="view">The values.</param>
/// <param name="cylinder">Whose rod.</param>
internal sealed class RodShank(View view, string cylinder)
{
    /// <summary>Steel, Pa and kg/m³: from memory.</summary>
    public const double UsualModulus = 205e9, UsualDensity = 7850;

    /// <summary>Section, m².</summary>
    public double Area { get; } = view.Knows(Rod.Depth, cylinder) && !view.Knows(Rod.ShankArea, cylinder) ? Section(view, cylinder).Area : view.Amount(Rod.ShankArea, cylinder);

    /// <summary>Radius of gyration in the plane that the rod swings in, m.</summary>
    public double SwingGyration => view.AmountIf(Rod.SwingGyration, cylinder) ?? Section(view, cylinder).SwingGyration;

    /// <summary>Load at which it buckles in the plane that it swings in, hinged at both ends, N.</summary>
    public StrutLoad Swing() => Strut(SwingGyration, 1);

    /// <summary>Load at which it buckles along the crank, held by pin and crank pin at both ends, N.</summary>
    public StrutLoad Across() => Strut(view.AmountIf(Rod.AcrossGyration, cylinder) ?? Section(view, cylinder).AcrossGyration, 4);

    /// <summary>The lesser of both, N.</summary>
    public double Buckles() => Math.Min(Swing().Load, Across().Load);

    /// <summary>Section modulus in the plane that it swings in, m³.</summary>
    public double SwingModulus => 2 * Area * SwingGyration * SwingGyration / view.Amount(Rod.Depth, cylinder);

    /// <summary>Mass of a length of it, kg/m.</summary>
    public double MassPerLength => Area * view.AmountOr(Rod.Density, UsualDensity, cylinder);

    /// <summary>Bending by its own inertia as the textbooks have it, at the rev limit.</summary>
    public RodWhip Whip() => view.Work(
            RodSection.Whip,
            Area,
            SwingModulus,
            view.Amount(Rod.Length, cylinder),
            view.Amount(Crank.Stroke) / 2,
            view.Amount(Engine.RevLimit),
            view.AmountOr(Rod.Density, UsualDensity, cylinder));

    private StrutLoad Strut(double gyration, double ends) => view.Work(
            RodSection.Johnson, Area, gyration, view.Amount(Rod.Length, cylinder), ends, view.Amount(Rod.YieldStrength, cylinder), view.AmountOr(Rod.Modulus, UsualModulus, cylinder));

    private static ShankSection Section(View view, string cylinder) => view.Work(RodSection.OfI, view.Amount(Rod.Depth, cylinder), view.Amount(Rod.Width, cylinder), view.Amount(Rod.Web, cylinder), view.Amount(Rod.Flange, cylinder));
}
