namespace Gudgeon.Book.Joints;

/// <summary>One line of a joint diagram: force against stretch.</summary>
/// <param name="Name">In the legend.</param>
/// <param name="Stretch">Stretch of the bolt, then squeeze of the parts after it, m.</param>
/// <param name="Force">Force, N.</param>
public sealed record DiagramLine(string Name, IReadOnlyList<double> Stretch, IReadOnlyList<double> Force)
{
    /// <summary>Name of the line of the working force.</summary>
    public const string WorkingForce = "working force";

    /// <summary>The lines of a joint: as tightened most, at the mean and least, what is left of the least when faces have settled and heat has taken its share, and the working force on it. None when it is not known.</summary>
    public static IReadOnlyList<DiagramLine> Of(JointFigures joint)
    {
        if (double.IsNaN(joint.Preload + joint.BoltResilience + joint.PartResilience))
        {
            return [];
        }

        var settled = joint.Least - joint.Embedding - Math.Max(0, -joint.Thermal);
        List<DiagramLine> lines = [Triangle(joint, "tightened, mean", joint.Preload), Triangle(joint, "tightened most", joint.Greatest), Triangle(joint, "tightened least", joint.Least)];
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
        [0, preload * joint.BoltResilience, preload * (joint.BoltResilience + joint.PartResilience)],
        [0, preload, 0]);

    /// <summary>The working force: its foot is the clamp left, its top the bolt's force.</summary>
    private static IEnumerable<DiagramLine> Working(JointFigures joint, double settled)
    {
        if (joint.Force > 0)
        {
            var (top, foot) = (settled + (joint.LoadFactor * joint.Force), settled - ((1 - joint.LoadFactor) * joint.Force));
            yield return new DiagramLine(WorkingForce, [top * joint.BoltResilience, top * joint.BoltResilience], [Math.Max(foot, 0), Math.Max(top, Math.Max(foot, 0) + joint.Force)]);
        }
    }
}
