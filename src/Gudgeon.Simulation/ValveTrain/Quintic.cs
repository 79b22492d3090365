namespace Gudgeon.Simulation.ValveTrain;

/// <summary>The polynomial of degree five that has given value, slope and curvature at both ends of an interval.</summary>
internal static class Quintic
{
    /// <summary>Terms of rising power in the share of the interval.</summary>
    public static void Fit(LiftPoint left, LiftPoint right, double width, Span<double> terms)
    {
        var (slope, curve) = (left.Slope * width, 0.5 * left.Curvature * width * width);
        var rise = right.Lift - left.Lift - slope - curve;
        var turn = (right.Slope * width) - slope - (2 * curve);
        var bend = (0.5 * right.Curvature * width * width) - curve;
        (terms[0], terms[1], terms[2]) = (left.Lift, slope, curve);
        terms[3] = (10 * rise) - (4 * turn) + bend;
        terms[4] = (-15 * rise) + (7 * turn) - (2 * bend);
        terms[5] = (6 * rise) - (3 * turn) + bend;
    }

    /// <summary>Value and derivatives at a share <paramref name="u"/> of the interval; <paramref name="perUnit"/> is one over its width.</summary>
    public static LiftPoint At(ReadOnlySpan<double> c, double u, double perUnit) => new(
        c[0] + (u * (c[1] + (u * (c[2] + (u * (c[3] + (u * (c[4] + (u * c[5]))))))))),
        perUnit * (c[1] + (u * ((2 * c[2]) + (u * ((3 * c[3]) + (u * ((4 * c[4]) + (u * 5 * c[5])))))))),
        perUnit * perUnit * ((2 * c[2]) + (u * ((6 * c[3]) + (u * ((12 * c[4]) + (u * 20 * c[5])))))));
}
