namespace Gudgeon.Simulation.Engine;

/// <summary>Effective flow area of the inlet or exhaust valves of a cylinder against its crank angle.</summary>
/// <param name="valve">The valves.</param>
public sealed class ValveArea(ValveSpec valve)
{
    /// <summary>Lift, m, at a crank angle after firing top dead centre, degrees.</summary>
    public double Lift(double angle) => valve.Lift.At(angle);

    /// <summary>Effective area, m², into the cylinder for an inlet valve, out of it for an exhaust valve.</summary>
    public double Forward(double lift) => Area(lift, valve.Flow.Forward);

    /// <summary>Effective area the other way, m².</summary>
    public double Reverse(double lift) => Area(lift, valve.Flow.Reverse ?? valve.Flow.Forward);

    /// <summary>An angle brought into 0 ≤ angle &lt; 720.</summary>
    public static double Wrap(double angle)
    {
        var wrapped = angle - (720 * Math.Floor(angle / 720));
        return wrapped >= 720 ? 0 : wrapped;
    }

    private double Area(double lift, IReadOnlyList<double> coefficients)
    {
        if (lift <= 0)
        {
            return 0;
        }

        var d = valve.HeadDiameter;
        var reference = valve.Flow.Reference switch
        {
            FlowReference.Curtain => Math.PI * d * lift,
            FlowReference.Head => Math.PI / 4 * d * d,
            _ => valve.Flow.ReferenceArea!.Value,
        };
        return valve.Count * reference * Table.Read(valve.Flow.LiftOverDiameter, coefficients, lift / d);
    }
}
