namespace Gudgeon.Simulation.Sprint;

/// <summary>What multiple of a torque curve gives a wanted quarter-mile time.</summary>
/// <param name="Scale">The multiple; NaN when no torque gives the time.</param>
/// <param name="BestTime">Time with torque without end, s: what grip, wheelie, clutch, shifts and rev limit leave.</param>
/// <param name="ChiefLimit">The limit that acts longest: in the run found, or in the best run when the time is out of reach.</param>
/// <param name="Run">The run found, or the best run when the time is out of reach.</param>
public sealed record SprintTorqueScale(double Scale, double BestTime, SprintLimit ChiefLimit, SprintResult Run)
{
    /// <summary>Whether there is such a torque curve.</summary>
    public bool Possible => !double.IsNaN(Scale);
}
