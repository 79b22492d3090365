namespace Gudgeon.Calc.Belts;

/// <summary>A pulley in the plane of the belt.</summary>
/// <param name="X">Axis, m.</param>
/// <param name="Y">Axis, m.</param>
/// <param name="Radius">Radius of the pitch line, m; negative where the back of the belt runs on it and it turns the other way.</param>
public readonly record struct BeltPulley(double X, double Y, double Radius);

/// <summary>Free span of a belt from one pulley to the next.</summary>
/// <param name="FromX">Where the belt leaves, m.</param>
/// <param name="FromY">Where the belt leaves, m.</param>
/// <param name="ToX">Where it arrives, m.</param>
/// <param name="ToY">Where it arrives, m.</param>
/// <param name="Direction">Way it runs, rad from the first axis.</param>
/// <param name="Length">Length, m.</param>
public readonly record struct BeltSpan(double FromX, double FromY, double ToX, double ToY, double Direction, double Length)
{
    /// <summary>The span that a belt makes, running round positive pulleys anticlockwise.</summary>
    /// <exception cref="Catalogue.FormulaDomainException">The pulleys overlap.</exception>
    public static BeltSpan Between(BeltPulley from, BeltPulley to)
    {
        var (x, y, step) = (to.X - from.X, to.Y - from.Y, from.Radius - to.Radius);
        var distance = Math.Sqrt((x * x) + (y * y));
        Catalogue.FormulaDomainException.Unless(distance > Math.Abs(from.Radius) + Math.Abs(to.Radius), "centre distance: two pulleys of the belt overlap");
        var direction = Math.Atan2(y, x) + Math.Asin(step / distance);

        // The belt leaves a pulley where its radius is square to the span, to the right of the way it runs.
        var (right, down) = (Math.Sin(direction), -Math.Cos(direction));
        return new BeltSpan(
            from.X + (from.Radius * right),
            from.Y + (from.Radius * down),
            to.X + (to.Radius * right),
            to.Y + (to.Radius * down),
            direction,
            Math.Sqrt((distance * distance) - (step * step)));
    }

    /// <summary>Wrap on a pulley between the span that arrives and the one that leaves, rad.</summary>
    public static double Wrap(BeltPulley pulley, BeltSpan arrives, BeltSpan leaves)
    {
        var turned = (pulley.Radius < 0 ? -1 : 1) * (leaves.Direction - arrives.Direction);
        return turned - (Math.Tau * Math.Floor(turned / Math.Tau));
    }
}
