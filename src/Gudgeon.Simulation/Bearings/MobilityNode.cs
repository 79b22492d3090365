using Gudgeon.Calc.Bearings;

namespace Gudgeon.Simulation.Bearings;

/// <summary>
/// What a film of finite length does where the journal stands, as shares of a closed form, so that they vary little over the
/// clearance: mobility along and across the load, greatest pressure, side flow.
/// </summary>
/// <param name="Along">Mobility along the load over that of <see cref="ClosedAlong"/>.</param>
/// <param name="Across">Mobility across the load over that of <see cref="ClosedAcross"/>.</param>
/// <param name="Peak">Greatest pressure over load by projected area, times the root of what is left of the clearance along the load.</param>
/// <param name="SideFlow">Oil that leaves over the ends over what the journal sweeps: 1 in a short bearing.</param>
public readonly record struct MobilityNode(double Along, double Across, double Peak, double SideFlow)
{
    /// <summary>Nearest that the load points to the line of centres: there and beyond the mobility across it is nought over nought.</summary>
    private const double Edge = Math.PI / 180;

    private const int Fine = 720, Coarse = 360;

    /// <summary>
    /// Closed form that the shares are of, along the load: of a short film where the bearing is short, after Moes where it is
    /// long (Childs, Moes &amp; van Leeuwen, J. Lubr. Technol. 99 (1977) 198; from memory).
    /// </summary>
    public static double ClosedAlong(double along, double slenderness)
    {
        var (room, square) = (1 - along, slenderness * slenderness);
        return room * Math.Sqrt(room) * (room + (square / 2.12)) / (Math.PI * square);
    }

    /// <summary>The same across the load.</summary>
    public static double ClosedAcross(double along, double across, double slenderness)
    {
        var (room, square) = (1 - along, slenderness * slenderness);
        return -4 * across * Math.Sqrt(room) * (room + (square / 3.60)) / (Math.PI * Math.PI * square);
    }

    /// <summary>The shares at a place, by solving the film afresh.</summary>
    /// <param name="eccentricity">Eccentricity ratio.</param>
    /// <param name="angle">Angle of the journal from the load, rad, 0 to π.</param>
    /// <param name="slenderness">Length over diameter; 0 for the limit of a short bearing.</param>
    public static MobilityNode Solve(double eccentricity, double angle, double slenderness)
    {
        var inside = Math.Clamp(angle, Edge, Math.PI - Edge);
        var (sin, cos) = Math.SinCos(inside);
        var (along, across) = (eccentricity * cos, eccentricity * sin);
        return slenderness == 0 ? Short(along, across, eccentricity, inside) : Finite(along, across, eccentricity, inside, slenderness);
    }

    private static MobilityNode Finite(double along, double across, double eccentricity, double angle, double slenderness)
    {
        var film = new SqueezeFilm(eccentricity, slenderness, eccentricity > 0.85 ? Fine : Coarse);
        double Miss(double velocity)
        {
            film.Solve(velocity);
            return Math.Atan2(Math.Max(0, film.Sideways), film.Along) - angle;
        }

        // The film pushes back nearer to the line of centres than the journal moves.
        var direction = MathNet.Numerics.RootFinding.Brent.FindRoot(Miss, Math.Max(0, angle - 0.05), Math.PI, 1e-6, 60);
        Miss(direction);
        var load = Math.Sqrt((film.Along * film.Along) + (film.Sideways * film.Sideways));
        var (sin, cos) = Math.SinCos(angle - direction);
        return new MobilityNode(
            2 / load * cos / ClosedAlong(along, slenderness),
            2 / load * sin / ClosedAcross(along, across, slenderness),
            2 * film.Peak / load * Math.Sqrt(1 - along),
            film.SideFlow);
    }

    private static MobilityNode Short(double along, double across, double eccentricity, double angle)
    {
        var mobility = Mobility.Exact(along, across, 1);
        var velocity = Math.Atan2(mobility.Across, mobility.Along);
        var size = Math.Sqrt((mobility.Along * mobility.Along) + (mobility.Across * mobility.Across));
        double steepest = 0;
        for (var i = -900; i <= 900; i++)
        {
            var at = velocity + (i * Math.PI / 1800);
            var film = 1 - (eccentricity * Math.Cos(at - angle));
            steepest = Math.Max(steepest, Math.Cos(at - velocity) / (film * film * film));
        }

        var closed = Mobility.ClosedForm(along, across, 1);
        return new MobilityNode(mobility.Along / closed.Along, mobility.Across / closed.Across, 6 * size * steepest * Math.Sqrt(1 - along), 1);
    }
}
