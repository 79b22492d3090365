namespace Gudgeon.Simulation.ValveTrain;

/// <summary>Energy of a train and what it loses, from its state.</summary>
internal static class TrainBooks
{
    /// <summary>Kinetic energy and what is stored in contacts and springs, J.</summary>
    public static double Stored(TrainLayout layout, TrainForces forces, double[] state)
    {
        var (spec, n) = (layout.Spec, layout.Bodies);
        var energy = Squeezed(spec.SeatStiffness, layout.SeatRest - state[0]) + Squeezed(spec.CamStiffness, forces.CamLift - state[layout.CamBody]);
        energy += layout.CamBody == 1 ? Squeezed(layout.TrainStiffness, state[1] - state[0]) : 0;
        for (var i = 0; i < n; i++)
        {
            energy += 0.5 * layout.Masses[i] * state[n + i] * state[n + i];
        }

        foreach (var spring in layout.Springs)
        {
            for (var e = 0; e < spring.Elements; e++)
            {
                var squeeze = Squeeze(spring, e, state, 0);
                var preload = spring.ShutLoad / spring.Stiffness;
                var end = e == 0 || e == spring.Elements - 1;
                energy += end ? Squeezed(spring.Stiffness, preload + squeeze) : 0.5 * spring.Stiffness * (preload + squeeze) * (preload + squeeze);
                energy += double.IsFinite(spring.Room) ? Squeezed(spring.ClashStiffness, squeeze - spring.Room) : 0;
            }
        }

        return energy;
    }

    /// <summary>Power lost in contacts, springs and guide, W. <paramref name="forces"/> have just been evaluated in the state.</summary>
    public static double Loss(TrainLayout layout, TrainForces forces, double[] state)
    {
        var (spec, n, cam) = (layout.Spec, layout.Bodies, layout.CamBody);
        var speed = state[n];
        var loss = Lost(spec.SeatStiffness * (layout.SeatRest - state[0]), layout.SeatDamping, -speed)
            + Lost(spec.CamStiffness * (forces.CamLift - state[cam]), layout.CamDamping, forces.CamVelocity - state[n + cam])
            + (spec.GuideFriction * Math.Clamp(speed / TrainForces.FrictionSpeed, -1, 1) * speed);
        loss += cam == 1 ? Lost(layout.TrainStiffness * (state[1] - state[0]), layout.TrainDamping, state[n + 1] - speed) : 0;
        foreach (var spring in layout.Springs)
        {
            for (var e = 0; e < spring.Elements; e++)
            {
                var rate = Squeeze(spring, e, state, n);
                var end = e == 0 || e == spring.Elements - 1;
                loss += end
                    ? Lost(spring.ShutLoad + (spring.Stiffness * Squeeze(spring, e, state, 0)), spring.Damping, rate)
                    : spring.Damping * rate * rate;
            }
        }

        return loss;
    }

    /// <summary>How far an element of a spring is squeezed beyond what it is with the valve shut, or how quickly (<paramref name="from"/> the velocities).</summary>
    public static double Squeeze(ColumnLayout spring, int element, double[] state, int from)
    {
        var upper = element == spring.Elements - 1 ? state[from] : state[from + spring.First + element];
        return upper - (element == 0 ? 0 : state[from + spring.First + element - 1]);
    }

    private static double Squeezed(double stiffness, double overlap) => overlap > 0 ? 0.5 * stiffness * overlap * overlap : 0;

    /// <summary>What a contact does not give back: all of its force beyond the elastic one, and the elastic one too where it is held back from pulling.</summary>
    private static double Lost(double elastic, double damping, double closing) =>
        elastic > 0 ? (TrainForces.Push(elastic, damping * closing) - elastic) * closing : 0;
}
