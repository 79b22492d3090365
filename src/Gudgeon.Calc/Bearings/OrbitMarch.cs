namespace Gudgeon.Calc.Bearings;

/// <summary>
/// A journal marched through the load of a cycle by the mobility method: d(eccentricity)/d(crank angle) is the mobility times
/// the load, and the turning of the oil with the mean speed of journal and shell. Fourth-order Runge-Kutta; a step in which
/// the journal would cross much of the film that is left is cut into smaller ones. Allocates nothing.
/// </summary>
/// <typeparam name="TMobility">The film.</typeparam>
/// <param name="course">What drives the journal.</param>
/// <param name="mobility">The film.</param>
/// <param name="perRadian">(c/R)²/(μ L D ω), 1/N: eccentricity in a radian for each newton and unit of mobility.</param>
public readonly struct OrbitMarch<TMobility>(OrbitCourse course, TMobility mobility, double perRadian)
    where TMobility : struct, IMobility
{
    /// <summary>Share of the film left that a step may cross.</summary>
    private const double Stride = 0.5;

    private const int MostParts = 64;

    /// <summary>Nearest that the journal is let to the shell: closer there is no film to speak of.</summary>
    private const double Nearest = 1 - 1e-5;

    /// <summary>Marches from where the path begins until it closes.</summary>
    /// <param name="path">Where the journal stands; its last place is where the march starts.</param>
    /// <param name="mostCycles">Most cycles.</param>
    /// <param name="closed">Drift from cycle to cycle at which it has closed.</param>
    public void UntilClosed(OrbitPath path, int mostCycles, double closed)
    {
        for (var i = 0; i < mostCycles; i++)
        {
            var (x, y) = (path.X[0], path.Y[0]);
            Cycle(path);
            path.Drift = Math.Sqrt(Square(path.X[0] - x) + Square(path.Y[0] - y));
            if (path.Drift <= closed)
            {
                return;
            }
        }
    }

    private void Cycle(OrbitPath path)
    {
        path.Touches = false;
        var (x, y) = (path.X[0], path.Y[0]);
        for (var i = 0; i < course.Count; i++)
        {
            var next = i + 1 == course.Count ? 0 : i + 1;
            path.Touches |= Interval(ref x, ref y, i, next);
            (path.X[next], path.Y[next]) = (x, y);
        }
    }

    /// <summary>From one angle of the course to the next; true when it touched.</summary>
    private bool Interval(ref double x, ref double y, int from, int to)
    {
        var (startX, startY) = Slope(x, y, from, to, 0);
        var room = Math.Max(1 - Math.Sqrt((x * x) + (y * y)), 1 - Nearest);
        var crossed = course.Step * Math.Sqrt((startX * startX) + (startY * startY)) / (Stride * room);
        var parts = crossed < 1 ? 1 : (int)Math.Min(MostParts, Math.Ceiling(crossed));
        var touched = false;
        for (var k = 0; k < parts; k++)
        {
            Advance(ref x, ref y, from, to, (double)k / parts, 1.0 / parts);
            touched |= Inside(ref x, ref y);
        }

        return touched;
    }

    private void Advance(ref double x, ref double y, int from, int to, double at, double part)
    {
        var step = course.Step * part;
        var a = Slope(x, y, from, to, at);
        var b = Slope(x + (step / 2 * a.X), y + (step / 2 * a.Y), from, to, at + (part / 2));
        var c = Slope(x + (step / 2 * b.X), y + (step / 2 * b.Y), from, to, at + (part / 2));
        var d = Slope(x + (step * c.X), y + (step * c.Y), from, to, at + part);
        x += step / 6 * (a.X + (2 * b.X) + (2 * c.X) + d.X);
        y += step / 6 * (a.Y + (2 * b.Y) + (2 * c.Y) + d.Y);
    }

    private (double X, double Y) Slope(double x, double y, int from, int to, double at)
    {
        var (loadX, loadY) = (Between(course.X[from], course.X[to], at), Between(course.Y[from], course.Y[to], at));
        var turn = Between(course.Entrainment[from], course.Entrainment[to], at);
        var size = Math.Sqrt((loadX * loadX) + (loadY * loadY));
        if (size == 0)
        {
            return (-turn * y, turn * x);
        }

        Inside(ref x, ref y);
        var (ux, uy) = (loadX / size, loadY / size);
        var moved = mobility.At((x * ux) + (y * uy), (y * ux) - (x * uy));
        var scale = size * perRadian;
        return (
            (scale * ((moved.Along * ux) - (moved.Across * uy))) - (turn * y),
            (scale * ((moved.Along * uy) + (moved.Across * ux))) + (turn * x));
    }

    /// <summary>Keeps the journal off the shell; true when it had to.</summary>
    private static bool Inside(ref double x, ref double y)
    {
        var eccentricity = Math.Sqrt((x * x) + (y * y));
        if (eccentricity <= Nearest)
        {
            return false;
        }

        (x, y) = (x * Nearest / eccentricity, y * Nearest / eccentricity);
        return true;
    }

    private static double Between(double from, double to, double share) => from + (share * (to - from));

    private static double Square(double x) => x * x;
}
