using Gudgeon.Calc.Bearings;

namespace Gudgeon.Simulation.Bearings;

/// <summary>One bearing at one speed with its film at a temperature that is tried; the orbit of one trial is where the next one starts.</summary>
internal sealed class FilmTrial
{
    private readonly FilmSpec _spec;
    private readonly OrbitCourse _course;
    private readonly OrbitCourse _share;
    private readonly double _speed;
    private readonly FiniteMobility _mobility;
    private readonly OrbitPath _path;
    private double _viscosity, _sideFlow, _feedFlow, _loss;

    public FilmTrial(in FilmSpec spec, OrbitCourse course, double speed)
    {
        (_spec, _course, _speed) = (spec, course, speed);
        var lands = spec.Lands;
        _share = lands == 1 ? course : course with { X = Array.ConvertAll(course.X, f => f / lands), Y = Array.ConvertAll(course.Y, f => f / lands) };
        _mobility = new FiniteMobility(spec.Land / spec.Diameter);
        _path = new OrbitPath(course.Count);
    }

    /// <summary>Temperature of the oil that comes in, K.</summary>
    public double Supply => _spec.SupplyTemperature;

    /// <summary>(c/R)²/(μ L D), 1/(N·s): what mobility and load make eccentricity in a second of.</summary>
    private double Rate => 4 * _spec.Clearance * _spec.Clearance / (_viscosity * _spec.Land * _spec.Diameter * _spec.Diameter * _spec.Diameter);

    /// <summary>How much hotter the oil would leave than was tried, K.</summary>
    public double Excess(double temperature, int mostCycles, double closed)
    {
        _viscosity = _spec.Oil.ViscosityAt(temperature);
        new OrbitMarch<FiniteMobility>(_share, _mobility, Rate / _speed).UntilClosed(_path, mostCycles, closed);
        Sum();
        return Supply + (_loss / (_spec.Oil.DensityAt(temperature) * _spec.Oil.SpecificHeat * (_sideFlow + _feedFlow))) - temperature;
    }

    /// <summary>What the last trial came to.</summary>
    public FilmState State(double temperature, bool found)
    {
        var (film, pressure) = (new double[_course.Count], new double[_course.Count]);
        for (var i = 0; i < film.Length; i++)
        {
            var (size, along, across) = Place(i);
            film[i] = _spec.Clearance * (1 - _path.Eccentricity(i));
            pressure[i] = size == 0 ? 0 : size / (_spec.Land * _spec.Diameter) * _mobility.Film(along, across).Peak;
        }

        return new FilmState(_spec, _speed, _path, film, pressure, temperature, _viscosity, _sideFlow, _feedFlow, _loss, found && !_path.Touches);
    }

    /// <summary>Flows and loss, means of the cycle.</summary>
    private void Sum()
    {
        double side = 0, loss = 0, square = 0;
        var radius = _spec.Diameter / 2;
        var shear = Math.Tau * _viscosity * radius * radius * radius * _spec.Land / _spec.Clearance;
        for (var i = 0; i < _course.Count; i++)
        {
            var (size, along, across) = Place(i);
            var eccentricity = Math.Min(0.9999, _path.Eccentricity(i));
            var slip = 2 * _speed * (1 - _course.Entrainment[i]);
            loss += shear * slip * slip / Math.Sqrt(1 - (eccentricity * eccentricity));
            square += eccentricity * eccentricity;
            if (size > 0)
            {
                var mobility = _mobility.At(along, across);
                var sinks = size * Rate * _spec.Clearance;
                loss += size * sinks * mobility.Along;
                side += sinks * Math.Sqrt((mobility.Along * mobility.Along) + (mobility.Across * mobility.Across)) * _mobility.Film(along, across).SideFlow;
            }
        }

        var each = (double)_spec.Lands / _course.Count;
        _loss = each * loss;
        _sideFlow = each * side * _spec.Land * _spec.Diameter;
        _feedFlow = _spec.FeedFlow(_viscosity, Math.Sqrt(square / _course.Count));
    }

    /// <summary>Load of one land, N, and the eccentricity along and across it.</summary>
    private (double Size, double Along, double Across) Place(int i)
    {
        var (x, y) = (_share.X[i], _share.Y[i]);
        var size = Math.Sqrt((x * x) + (y * y));
        return size == 0 ? (0, 0, 0) : (size, ((_path.X[i] * x) + (_path.Y[i] * y)) / size, ((_path.Y[i] * x) - (_path.X[i] * y)) / size);
    }
}
