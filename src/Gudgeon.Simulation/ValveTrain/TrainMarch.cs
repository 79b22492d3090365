namespace Gudgeon.Simulation.ValveTrain;

/// <summary>
/// Marches a train over turns of its cam at one speed, each from the base circle over the lobe and back. Nothing is allocated
/// on the way.
/// </summary>
internal sealed class TrainMarch
{
    /// <summary>Explicit trials in one turn above which a stiff formula is tried, and how many explicit trials one of its own costs.</summary>
    private const int ManyTrials = 2000;
    private const double ImplicitCost = 2.5;
    private const double ShortestStep = 1e-13;

    /// <summary>How much of the base circle lies before the lobe in one turn; the valve has the rest to come to rest in.</summary>
    private const double BeforeLobe = 0.2;

    private readonly TrainLayout _layout;
    private readonly IStep _explicit;
    private readonly ImplicitStep _implicit;
    private readonly double _longest;
    private readonly double[] _perMeasure;
    private readonly double[] _before;
    private readonly bool _chooses;
    private double[] _now;
    private double[] _rates;
    private double[] _next;
    private double[] _nextRates;
    private IStep _stepper;
    private double _step;
    private int _explicitTrials;

    /// <param name="layout">The train.</param>
    /// <param name="speed">Cam speed, rad/s.</param>
    /// <param name="options">Step, tolerance, method.</param>
    public TrainMarch(TrainLayout layout, double speed, TrainOptions options)
    {
        var profile = layout.Spec.Profile;
        (_layout, Period) = (layout, 2 * Math.PI / speed);
        Forces = new TrainForces(layout, speed, BeginOf(profile));
        _perMeasure = new double[layout.Size];
        Array.Fill(_perMeasure, 1 / profile.FullLift, 0, layout.Bodies);
        Array.Fill(_perMeasure, 1 / (profile.GreatestSlope * speed), layout.Bodies, layout.Bodies);
        double[] perError = [.. _perMeasure.Select(m => m / options.Tolerance)];
        _explicit = new ExplicitStep(Forces, perError);
        _implicit = new ImplicitStep(layout, Forces, perError);
        _stepper = options.Method == TrainMethod.Implicit ? _implicit : _explicit;
        _chooses = options.Method == TrainMethod.Automatic;
        (_longest, _step) = (options.LongestStep / speed, options.LongestStep / speed / 4);
        (_now, _rates, _next, _nextRates, _before) = (NewState(), NewState(), NewState(), NewState(), NewState());
    }

    /// <summary>Time of one turn of the cam, s.</summary>
    public double Period { get; }

    public TrainForces Forces { get; }

    /// <summary>Where it is: travel and velocity of all bodies. A test may set it before a turn.</summary>
    public double[] State => _now;

    /// <summary>Trial steps of the last turn.</summary>
    public int Trials { get; private set; }

    /// <summary>Whether the last turn was stepped implicitly.</summary>
    public bool Stiffly => _stepper == _implicit;

    /// <summary>Cam angle from the nose at which a turn begins, rad.</summary>
    public static double BeginOf(LiftProfile profile) => profile.Start - (BeforeLobe * ((2 * Math.PI) - (profile.End - profile.Start)));

    /// <summary>
    /// One turn of the cam, told to <paramref name="watch"/> step by step if there is one. False when the steps became too
    /// short to go on.
    /// </summary>
    public bool Revolve(RevolutionWatch? watch = null)
    {
        _now.CopyTo(_before, 0);
        Forces.Rates(0, _now, _rates);
        Trials = 0;
        watch?.Begin(_now, _rates);
        var time = 0.0;
        while (time < Period * (1 - 1e-12))
        {
            var step = TryStep(time, watch is not null);
            if (step == 0)
            {
                return false;
            }

            watch?.Pass(time, step, _now, _rates, _next, _nextRates);
            time += step;
            (_now, _next, _rates, _nextRates) = (_next, _now, _nextRates, _rates);
        }

        ChooseStepper();
        return true;
    }

    /// <summary>
    /// Largest change of valve and springs over the last turn, over full lift and the cam's greatest lifting speed. A follower
    /// that lies loose in the lash is not looked at: where it lies, the valve does not feel.
    /// </summary>
    public double Change()
    {
        var change = 0.0;
        for (var i = 0; i < 2 * _layout.Bodies; i++)
        {
            if (i % _layout.Bodies != _layout.CamBody || _layout.CamBody == 0)
            {
                change = Math.Max(change, Math.Abs(_now[i] - _before[i]) * _perMeasure[i]);
            }
        }

        return change;
    }

    /// <summary>Takes the longest step whose estimated error is small enough and says how long it was, s; 0 when there is none.</summary>
    private double TryStep(double time, bool watched)
    {
        var left = Period - time;
        var step = Math.Min(_step, _longest);
        while (step > ShortestStep * Period)
        {
            step = step > 0.999 * left ? left : step;
            var error = Try(time, step);
            var factor = error > 0 ? Math.Clamp(0.9 * Math.Pow(error, -_stepper.Exponent), 0.2, 5) : 5;
            if (error <= 1)
            {
                // A last step cut short by the end of the turn says little about the next.
                _step = step == left ? Math.Max(_step, step * factor) : step * factor;
                return watched && Lands() ? Land(time, step) : step;
            }

            step *= double.IsNaN(error) ? 0.2 : Math.Min(factor, 0.9);
        }

        return 0;
    }

    private double Try(double time, double step)
    {
        Trials++;
        return _stepper.Try(time, step, _now, _rates, _next, _nextRates);
    }

    private bool Lands() => _now[0] > _layout.SeatRest && _next[0] < _layout.SeatRest;

    /// <summary>The step again, shorter, to the moment at which the valve touches its seat: false position (Illinois).</summary>
    private double Land(double time, double step)
    {
        var (low, atLow) = (0.0, _now[0] - _layout.SeatRest);
        var (high, atHigh) = (step, _next[0] - _layout.SeatRest);
        while (high - low > 1e-9 * _longest && atHigh < 0)
        {
            var middle = low + ((high - low) * Math.Clamp(atLow / (atLow - atHigh), 0.001, 0.999));
            Try(time, middle);
            var above = _next[0] - _layout.SeatRest;
            (low, atLow, high, atHigh) = above > 0 ? (middle, above, high, 0.5 * atHigh) : (low, 0.5 * atLow, middle, above);
        }

        Try(time, high);
        return high;
    }

    /// <summary>Where one turn took very many explicit steps, the next is tried implicitly, and so on if that was cheaper.</summary>
    private void ChooseStepper()
    {
        if (_chooses && !Stiffly && _explicitTrials == 0 && Trials > ManyTrials)
        {
            (_explicitTrials, _stepper) = (Trials, _implicit);
        }
        else if (_chooses && Stiffly && Trials * ImplicitCost > _explicitTrials)
        {
            _stepper = _explicit;
        }
    }

    private double[] NewState() => new double[_layout.Size];
}
