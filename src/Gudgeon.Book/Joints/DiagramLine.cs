namespace Gudgeon.Book.Joints;

/// <summary>
/// One line of a joint diagram: force against stretch, parted where the working force enters. What lies above that place, the
/// bolt and the share 1 - n of the parts, is stretched by it; the share n below it, n δP = Φn (δS + δP), is relieved. So drawn
/// the working force stands between both lines by Φn (VDI 2230-1:2003, joint diagram for n under 1, from memory).
/// </summary>
/// <param name="Name">In the legend.</param>
/// <param name="Stretch">Stretch above the place where the force enters, then squeeze below it, m.</param>
/// <param name="Force">Force, N.</param>
public sealed record DiagramLine(string Name, IReadOnlyList<double> Stretch, IReadOnlyList<double> Force)
{
    /// <summary>Name of the line of the working force.</summary>
    public const string WorkingForce = "working force";

    /// <summary>The lines of a joint: as tightened most, with what heat adds, at the mean and least, what is left of the least when faces have settled and heat has taken its share, and the working force on it. None when it is not known.</summary>
    public static IReadOnlyList<DiagramLine> Of(JointFigures joint)
    {
        if (double.IsNaN(joint.Preload + joint.BoltResilience + joint.PartResilience + joint.LoadFactor))
        {
            return [];
        }

        var settled = joint.Least - joint.Embedding - Math.Max(0, -joint.Thermal);
        List<DiagramLine> lines = [Triangle(joint, "tightened, mean", joint.Preload), Triangle(joint, "tightened most", joint.Greatest), Triangle(joint, "tightened least", joint.Least)];
        if (joint.Thermal > 0)
        {
            lines.Add(Triangle(joint, "most, heat added", joint.Greatest + joint.Thermal));
        }

        if (settled > 0)
        {
            lines.Add(Triangle(joint, "least, losses off", settled));
            lines.AddRange(Working(joint, settled));
        }

        return [.. lines.Where(l => l.Force.All(double.IsFinite))];
    }

    /// <summary>Up the bolt to its preload and down the parts behind it.</summary>
    private static DiagramLine Triangle(JointFigures joint, string name, double preload) => new(
        name,
        [0, preload * Above(joint), preload * (joint.BoltResilience + joint.PartResilience)],
        [0, preload, 0]);

    /// <summary>Resilience of what the working force stretches, m/N: δS + (1 - n) δP.</summary>
    private static double Above(JointFigures joint) => (1 - joint.LoadFactor) * (joint.BoltResilience + joint.PartResilience);

    /// <summary>The working force: its foot is the clamp left, its top the bolt's force.</summary>
    private static IEnumerable<DiagramLine> Working(JointFigures joint, double settled)
    {
        if (joint.Force > 0)
        {
            // Once the joint has opened the bolt carries all of the force, and the foot stands on the axis.
            var foot = Math.Max(0, settled - ((1 - joint.LoadFactor) * joint.Force));
            var top = foot + joint.Force;
            yield return new DiagramLine(WorkingForce, [top * Above(joint), top * Above(joint)], [foot, top]);
        }
    }
}
