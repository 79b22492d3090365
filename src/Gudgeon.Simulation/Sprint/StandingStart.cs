namespace Gudgeon.Simulation.Sprint;

/// <summary>The standing-start run: from rest at the stage to the end of the strip.</summary>
public static class StandingStart
{
    /// <summary>Runs the strip.</summary>
    /// <exception cref="SprintSpecException">The spec makes no machine that can be run; the sentence names the quantity.</exception>
    public static SprintResult Run(SprintSpec spec) => throw new SprintSpecException("not yet");
}
