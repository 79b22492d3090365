namespace Gudgeon.Simulation.ValveTrain;

/// <summary>A set of ordinary differential equations.</summary>
internal interface IMotion
{
    /// <summary>Length of a state array: a whole number of vectors, the last entries nought where there are fewer equations.</summary>
    int Size { get; }

    /// <summary>Fills <paramref name="rates"/> with the time derivatives of a state.</summary>
    void Rates(double time, double[] state, double[] rates);
}

/// <summary>One trial step of a pair of formulas of neighbouring orders.</summary>
internal interface IStep
{
    /// <summary>Power of the error with which the step is made shorter or longer.</summary>
    double Exponent { get; }

    /// <summary>
    /// Goes from a state over a step, s, and fills in the state there and its rates; gives back the estimated error in
    /// measures of what is allowed.
    /// </summary>
    double Try(double time, double step, double[] from, double[] fromRates, double[] to, double[] toRates);
}
