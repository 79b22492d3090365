using Gudgeon.Calc.Bearings;

namespace Gudgeon.Simulation.Bearings;

/// <summary>A journal in its film over a cycle, the oil as warm as the film makes it. SI.</summary>
/// <param name="Spec">The bearing.</param>
/// <param name="Speed">Crank speed, rad/s.</param>
/// <param name="Path">Where the journal stands at each angle of the loads.</param>
/// <param name="Film">Least film thickness at each angle, m.</param>
/// <param name="Pressure">Greatest film pressure at each angle, Pa.</param>
/// <param name="Temperature">Temperature of the film and of the oil that leaves it, K.</param>
/// <param name="Viscosity">Viscosity in the film, Pa·s.</param>
/// <param name="SideFlow">Oil that the film pumps out over its ends, mean of the cycle, m³/s.</param>
/// <param name="FeedFlow">Oil that its supply pressure pushes through, m³/s.</param>
/// <param name="Loss">Power that the film takes, mean of the cycle, W.</param>
/// <param name="Settled">Whether warmth and orbit came to rest, and a film was left all round.</param>
public sealed record FilmState(
    FilmSpec Spec,
    double Speed,
    OrbitPath Path,
    double[] Film,
    double[] Pressure,
    double Temperature,
    double Viscosity,
    double SideFlow,
    double FeedFlow,
    double Loss,
    bool Settled)
{
    /// <summary>Thinnest film of the cycle, m, and its place.</summary>
    public (double Film, int At) Least => Film.Select((h, i) => (h, i)).Min();

    /// <summary>Greatest film pressure of the cycle, Pa, and its place.</summary>
    public (double Pressure, int At) Peak => Pressure.Select((p, i) => (p, i)).Max();

    /// <summary>Oil that goes through, m³/s.</summary>
    public double Flow => SideFlow + FeedFlow;
}

/// <summary>
/// A shell bearing run through the loads of a cycle by the mobility method with films of finite length, its oil warmed by what
/// the film takes: all of it leaves with the oil, and the film is taken as warm as the oil that leaves (common practice; the
/// housing takes some of it away, so that this is on the hot side).
/// </summary>
public static class FilmRun
{
    private const int MostCycles = 8;
    private const double Closed = 1e-5;
    private const int MostTrials = 30;

    /// <summary>Temperatures are sought to this, K.</summary>
    private const double Sharp = 1e-3;

    /// <summary>Oil much hotter than this is no oil for long, K above the supply.</summary>
    private const double MostRise = 150;

    /// <summary>Runs it until orbit and warmth repeat.</summary>
    /// <param name="spec">The bearing.</param>
    /// <param name="course">Loads on the journal and entrainment over the cycle.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <exception cref="BearingSpecException">The bearing cannot be marched.</exception>
    public static FilmState Of(in FilmSpec spec, OrbitCourse course, double speed)
    {
        spec.Require();
        var trial = new FilmTrial(spec, course, speed);
        var (temperature, found) = Balance(trial);
        return trial.State(temperature, found);
    }

    /// <summary>The temperature at which the oil takes along what the film takes: by chords that keep it between their ends (Illinois).</summary>
    private static (double Temperature, bool Found) Balance(FilmTrial trial)
    {
        var (low, high) = (trial.Supply, trial.Supply + MostRise);
        var (atLow, atHigh) = (trial.Excess(low, MostCycles, Closed), -MostRise);
        var guess = low + Math.Min(atLow, MostRise / 8);
        var side = 0;
        for (var i = 0; i < MostTrials; i++)
        {
            var excess = trial.Excess(guess, MostCycles, Closed);
            if (Math.Abs(excess) < Sharp)
            {
                return (guess, true);
            }

            if (excess > 0)
            {
                (low, atLow, atHigh, side) = (guess, excess, side > 0 ? atHigh / 2 : atHigh, 1);
            }
            else
            {
                (high, atHigh, atLow, side) = (guess, excess, side < 0 ? atLow / 2 : atLow, -1);
            }

            guess = ((low * atHigh) - (high * atLow)) / (atHigh - atLow);
        }

        return (guess, false);
    }
}
