using Gudgeon.Book.Checks;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Sprint;

namespace Gudgeon.Book.Duty;

/// <summary>Runs for whoever cannot go on without them: what is missing is a refusal.</summary>
public static class Demand
{
    /// <summary>The engine at full load over its speeds.</summary>
    /// <exception cref="BadInputException">It cannot be run yet; the sentence says what is wanted.</exception>
    public static EngineDuty Engine(View view, bool whole = false) => view.Duty(whole) ?? throw Wanted.Refusal("the engine cannot be run", view.Trace);

    /// <summary>The machine and strip of a standing start.</summary>
    /// <param name="view">The values.</param>
    /// <param name="finish">Length of the run, m.</param>
    /// <exception cref="BadInputException">It cannot be computed yet; the sentence says what is wanted.</exception>
    public static SprintSpec Strip(View view, double finish) => SprintAssembly.Build(view, finish) ?? throw Wanted.Refusal("the run cannot be computed", view.Trace);

    /// <summary>The standing start over a mile.</summary>
    /// <exception cref="BadInputException">Something is missing or makes no machine.</exception>
    public static SprintResult Sprint(View view)
    {
        try
        {
            return StandingStart.Run(Strip(view, StripLength.Mile));
        }
        catch (SprintSpecException e)
        {
            throw new BadInputException(e.Message);
        }
    }
}
