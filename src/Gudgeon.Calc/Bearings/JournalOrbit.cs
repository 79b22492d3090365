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
        var loads = new LoadCycle(angles, loadX, loadY, cycle);
        var ratio = 2 * clearance / diameter;
        var film = new Film(loads, form, length / diameter, ratio * ratio / (viscosity * length * diameter * speed), entrainment);
        return film.MarchUntilClosed(cycle, clearance);
    }

    /// <summary>A load list read linearly and round the cycle.</summary>
    private sealed class LoadCycle
    {
        private readonly double[] _angles;
        private readonly double[] _x;
        private readonly double[] _y;
        private readonly double _cycle;
        private int _at;

        public LoadCycle(double[] angles, double[] x, double[] y, double cycle)
        {
            FormulaDomainException.Unless(angles.Length == x.Length && angles.Length == y.Length, "loads along x: one load along x and one along y for each angle");
            FormulaDomainException.Unless(angles.Length > 1 && angles[^1] - angles[0] < cycle, "crank angles: at least two, within one cycle");
            FormulaDomainException.Unless(angles.Zip(angles.Skip(1)).All(pair => pair.First < pair.Second), "crank angles: must rise");
            (_angles, _x, _y, _cycle) = (angles, x, y, cycle);
        }

        public (double X, double Y) At(double angle)
        {
            var local = angle - (Math.Floor((angle - _angles[0]) / _cycle) * _cycle);
            Seek(local);
            var next = (_at + 1) % _angles.Length;
            var end = next == 0 ? _angles[0] + _cycle : _angles[next];
            var share = (local - _angles[_at]) / (end - _angles[_at]);
            return (_x[_at] + (share * (_x[next] - _x[_at])), _y[_at] + (share * (_y[next] - _y[_at])));
        }

        private void Seek(double local)
        {
            if (local < _angles[_at])
            {
                _at = 0;
            }

            while (_at + 1 < _angles.Length && _angles[_at + 1] <= local)
            {
                _at++;
            }
        }
    }

    /// <summary>The journal in its film: d(eccentricity)/d(crank angle).</summary>
    private sealed class Film(LoadCycle loads, MobilityForm form, double slenderness, double perRadian, double entrainment)
    {
        public OrbitResult MarchUntilClosed(double cycle, double clearance)
        {
            double x = 0, y = 0, drift = 1;
            var result = default(OrbitResult);
            for (var i = 0; i < MaxCycles && drift > Closed; i++)
            {
                var (startX, startY) = (x, y);
                result = MarchCycle(ref x, ref y, cycle, clearance);
                drift = Math.Sqrt(((x - startX) * (x - startX)) + ((y - startY) * (y - startY)));
            }

            return result with { Drift = drift };
        }

        private OrbitResult MarchCycle(ref double x, ref double y, double cycle, double clearance)
        {
            var step = cycle / StepsPerCycle;
            double greatest = 0, at = 0, sum = 0;
            for (var i = 0; i < StepsPerCycle; i++)
            {
                Advance(ref x, ref y, i * step, step);
                var eccentricity = Math.Sqrt((x * x) + (y * y));
                FormulaDomainException.Unless(eccentricity < 1, "viscosity: the journal touches the shell under this load");
                sum += eccentricity;
                if (eccentricity > greatest)
                {
                    (greatest, at) = (eccentricity, (i + 1) * step);
                }
            }

            return new OrbitResult(clearance * (1 - greatest), at, greatest, sum / StepsPerCycle, 0);
        }

        private void Advance(ref double x, ref double y, double angle, double step)
        {
            var a = Slope(x, y, angle);
            var b = Slope(x + (step / 2 * a.X), y + (step / 2 * a.Y), angle + (step / 2));
            var c = Slope(x + (step / 2 * b.X), y + (step / 2 * b.Y), angle + (step / 2));
            var d = Slope(x + (step * c.X), y + (step * c.Y), angle + step);
            x += step / 6 * (a.X + (2 * b.X) + (2 * c.X) + d.X);
            y += step / 6 * (a.Y + (2 * b.Y) + (2 * c.Y) + d.Y);
        }

        private (double X, double Y) Slope(double x, double y, double angle)
        {
            var (loadX, loadY) = loads.At(angle);
            var size = Math.Sqrt((loadX * loadX) + (loadY * loadY));
            if (size == 0)
            {
                return (-entrainment * y, entrainment * x);
            }

            var (ux, uy) = (loadX / size, loadY / size);
            var along = (x * ux) + (y * uy);
            var across = (y * ux) - (x * uy);
            var mobility = form == MobilityForm.Exact ? Mobility.Exact(along, across, slenderness) : Mobility.ClosedForm(along, across, slenderness);
            var scale = size * perRadian;
            return (
                (scale * ((mobility.Along * ux) - (mobility.Across * uy))) - (entrainment * y),
                (scale * ((mobility.Along * uy) + (mobility.Across * ux))) + (entrainment * x));
        }
    }
}
