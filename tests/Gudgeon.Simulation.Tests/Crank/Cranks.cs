using Gudgeon.Simulation.Crank;

namespace Gudgeon.Simulation.Tests.Crank;

/// <summary>Cranks of textbooks.</summary>
internal static class Cranks
{
    /// <summary>Alike cylinders on a crank.</summary>
    /// <param name="reciprocating">Mass that goes to and fro in each, kg.</param>
    /// <param name="radius">Crank radius, m.</param>
    /// <param name="rod">Rod length, m.</param>
    /// <param name="pitch">Distance between cylinders, m.</param>
    /// <param name="cylinders">Angle of the throw and of the cylinder's axis, degrees, in the direction of rotation.</param>
    public static CrankLine Of(double reciprocating, double radius, double rod, double pitch, params (double Throw, double Bank)[] cylinders) => new()
    {
        Radius = radius,
        BobWeight = 0,
        Throws =
        [
            .. cylinders.Select((c, i) => new CrankThrow
            {
                Pin = i,
                Bank = c.Bank * Math.PI / 180,
                Firing = (c.Bank - c.Throw) * Math.PI / 180,
                Position = i * pitch,
                Bore = 0.08,
                Rod = rod,
                Piston = reciprocating,
                SmallEnd = 0,
                BigEnd = 0,
            }),
        ],
    };

    /// <summary>In-line cylinders.</summary>
    public static CrankLine Inline(double reciprocating, double radius, double rod, double pitch, params double[] throws) => Of(reciprocating, radius, rod, pitch, [.. throws.Select(t => (t, 0.0))]);
}
