namespace Gudgeon.Book.Head;

/// <summary>Where a lift curve passes a lift, going up and coming down.</summary>
/// <param name="Opens">Angle at which it passes it first, rad.</param>
/// <param name="Closes">Angle at which it passes it last, rad.</param>
public readonly record struct LiftCrossings(double Opens, double Closes)
{
    /// <summary>Angle between the two, rad.</summary>
    public double Duration => Closes - Opens;

    /// <summary>Middle of the two, rad.</summary>
    public double Middle => (Opens + Closes) / 2;

    /// <summary>The crossings of a lift, straight between the points; null when the curve does not reach it. At no lift, where it leaves the seat and comes back.</summary>
    /// <param name="angles">Angles, rad, rising.</param>
    /// <param name="lifts">Lifts, m.</param>
    /// <param name="lift">The lift, m.</param>
    public static LiftCrossings? Of(double[] angles, double[] lifts, double lift)
    {
        var (first, last) = (Array.FindIndex(lifts, l => l > lift), Array.FindLastIndex(lifts, l => l > lift));
        if (first <= 0 || last == lifts.Length - 1)
        {
            return null;
        }

        double Between(int low, int high) => angles[low] + ((lift - lifts[low]) / (lifts[high] - lifts[low]) * (angles[high] - angles[low]));
        return new LiftCrossings(Between(first - 1, first), Between(last + 1, last));
    }

    /// <summary>The lobe centre of a curve: the middle of where it passes half of its lift, rad.</summary>
    public static double Centre(double[] angles, double[] lifts) => Of(angles, lifts, lifts.Max() / 2)?.Middle ?? double.NaN;
}
