namespace Gudgeon.Simulation.ValveTrain;

/// <summary>The motion within one step: for each body the quintic that meets travel, velocity and acceleration at both ends.</summary>
internal sealed class StepCurve(TrainLayout layout)
{
    private const int Terms = 6;
    private readonly double[] _terms = new double[Terms * layout.Bodies];
    private double _perStep;

    /// <summary>Fits the curve to a step.</summary>
    public void Fit(double step, double[] from, double[] fromRates, double[] to, double[] toRates)
    {
        var n = layout.Bodies;
        _perStep = 1 / step;
        for (var i = 0; i < n; i++)
        {
            Quintic.Fit(new(from[i], from[n + i], fromRates[n + i]), new(to[i], to[n + i], toRates[n + i]), step, _terms.AsSpan(Terms * i, Terms));
        }
    }

    /// <summary>Fills in the state at a share of the step.</summary>
    public void At(double share, double[] state)
    {
        for (var i = 0; i < layout.Bodies; i++)
        {
            var point = Quintic.At(_terms.AsSpan(Terms * i, Terms), share, _perStep);
            (state[i], state[layout.Bodies + i]) = (point.Lift, point.Slope);
        }
    }
}
