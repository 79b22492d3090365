using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Bearings;

/// <summary>Which mobility the orbit is marched with.</summary>
public enum MobilityForm
{
    /// <summary>Booker's closed form.</summary>
    ClosedForm,

    /// <summary>The exact short film.</summary>
    Exact,
}

/// <summary>Path of a journal under a load that changes through the cycle.</summary>
/// <param name="LeastFilm">Least film thickness of the cycle, m.</param>
/// <param name="Angle">Crank angle at which it occurs, rad.</param>
/// <param name="GreatestEccentricity">Greatest eccentricity ratio.</param>
/// <param name="MeanEccentricity">Mean eccentricity ratio over the cycle.</param>
/// <param name="Drift">Distance between the ends of the last two cycles, in clearances: small when the orbit has closed.</param>
public readonly record struct OrbitResult(
    [Quantity("least film thickness", Dimension.Length, "µm", Symbol = "h0")] double LeastFilm,
    [Quantity("crank angle of the least film", Dimension.Angle, "°", Symbol = "θh")] double Angle,
    [Quantity("greatest eccentricity ratio", Dimension.Number, Symbol = "ε")] double GreatestEccentricity,
    [Quantity("mean eccentricity ratio", Dimension.Number)] double MeanEccentricity,
    [Quantity("drift of the orbit from cycle to cycle", Dimension.Number)] double Drift);

/// <summary>Journal orbit by the mobility method.</summary>
public static class JournalOrbit
{
    private const int StepsPerCycle = 7200;
    private const int MaxCycles = 12;
    private const double Closed = 1e-6;

    /// <summary>Orbit of a journal through a repeating load, marched until it closes.</summary>
    /// <param name="angles">Crank angles of the load list, rad, rising, within one cycle.</param>
    /// <param name="loadX">Load on the journal along x, N, one for each angle; linear in between and round the cycle.</param>
    /// <param name="loadY">Load on the journal along y, N.</param>
    /// <param name="diameter">Journal diameter, m.</param>
    /// <param name="length">Bearing length, m.</param>
    /// <param name="clearance">Radial clearance, m.</param>
    /// <param name="viscosity">Dynamic viscosity, Pa·s.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="cycle">Crank angle of one cycle, rad; two turns for a four-stroke.</param>
    /// <param name="entrainment">Mean speed of journal and shell relative to the axes of the load list over crank speed: ½ for a main bearing in fixed axes.</param>
    /// <param name="form">Which mobility to march with.</param>
    [Formula(
        "journal orbit",
        "de/dt = F (c / R)^2 / (μ L D) M + k w × e",
        "Booker, ASME J. Basic Eng. 87 (1965) 537; Flores, Claro & Ambrosio (2006), analytical mobility method",
        Validity = "Short film, isoviscous, rigid; fourth-order Runge-Kutta, 7200 steps a cycle.")]
    public static OrbitResult March(
        [Quantity("crank angles", Dimension.Angle, "°", Symbol = "θ")] double[] angles,
        [Quantity("loads along x", Dimension.Force, "N", Symbol = "Fx")] double[] loadX,
        [Quantity("loads along y", Dimension.Force, "N", Symbol = "Fy")] double[] loadY,
        [Quantity("journal diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double diameter,
        [Quantity("bearing length", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length,
        [Quantity("radial clearance", Dimension.Length, "µm", Symbol = "c", Above = 0)] double clearance,
        [Quantity("dynamic viscosity", Dimension.DynamicViscosity, "mPa·s", Symbol = "μ", Above = 0)] double viscosity,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Above = 0)] double speed,
        [Quantity("angle of one cycle", Dimension.Angle, "°", Above = 0)] double cycle = 4 * Math.PI,
        [Quantity("entrainment over crank speed", Dimension.Number, Symbol = "k")] double entrainment = 0.5,
        [Quantity("mobility form", Dimension.Number)] MobilityForm form = MobilityForm.ClosedForm)
    {
        var course = Course(angles, loadX, loadY, cycle, entrainment);
        var ratio = 2 * clearance / diameter;
        var perRadian = ratio * ratio / (viscosity * length * diameter * speed);
        var path = new OrbitPath(StepsPerCycle);
        if (form == MobilityForm.Exact)
        {
            new OrbitMarch<ExactShortFilm>(course, new ExactShortFilm(length / diameter), perRadian).UntilClosed(path, MaxCycles, Closed);
        }
        else
        {
            new OrbitMarch<ClosedShortFilm>(course, new ClosedShortFilm(length / diameter), perRadian).UntilClosed(path, MaxCycles, Closed);
        }

        FormulaDomainException.Unless(!path.Touches, "viscosity: the journal touches the shell under this load");
        var (greatest, at) = path.Greatest();
        var mean = Enumerable.Range(0, path.X.Length).Average(path.Eccentricity);
        return new OrbitResult(clearance * (1 - greatest), at == 0 ? cycle : at * course.Step, greatest, mean, path.Drift);
    }

    /// <summary>A load list read linearly and round the cycle, at even angles.</summary>
    private static OrbitCourse Course(double[] angles, double[] x, double[] y, double cycle, double entrainment)
    {
        FormulaDomainException.Unless(angles.Length == x.Length && angles.Length == y.Length, "loads along x: one load along x and one along y for each angle");
        FormulaDomainException.Unless(angles.Length > 1 && angles[^1] - angles[0] < cycle, "crank angles: at least two, within one cycle");
        FormulaDomainException.Unless(angles.Zip(angles.Skip(1)).All(pair => pair.First < pair.Second), "crank angles: must rise");
        var course = new OrbitCourse(new double[StepsPerCycle], new double[StepsPerCycle], new double[StepsPerCycle], cycle);
        for (var i = 0; i < StepsPerCycle; i++)
        {
            var angle = i * course.Step;
            var local = angle - (Math.Floor((angle - angles[0]) / cycle) * cycle);
            var at = Array.FindLastIndex(angles, a => a <= local);
            var next = (at + 1) % angles.Length;
            var share = (local - angles[at]) / ((next == 0 ? angles[0] + cycle : angles[next]) - angles[at]);
            course.X[i] = x[at] + (share * (x[next] - x[at]));
            course.Y[i] = y[at] + (share * (y[next] - y[at]));
            course.Entrainment[i] = entrainment;
        }

        return course;
    }

    private readonly struct ClosedShortFilm(double slenderness) : IMobility
    {
        public MobilityVector At(double along, double across) => Mobility.ClosedForm(along, across, slenderness);
    }

    private readonly struct ExactShortFilm(double slenderness) : IMobility
    {
        public MobilityVector At(double along, double across) => Mobility.Exact(along, across, slenderness);
    }
}
