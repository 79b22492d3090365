using Gudgeon.Book.Checks;
using Gudgeon.Book.Checks.Joints;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Joints;

/// <summary>The bolted joints of a build.</summary>
/// <param name="Joints">One for each, in the order of their names.</param>
public sealed record JointSheet(IReadOnlyList<JointFigures> Joints)
{
    /// <summary>What the figures rest on.</summary>
    public const string Remark = "By VDI 2230-1 for concentric joints of one bolt: bending is left out but for a factor of prying, and all bolts of a joint count alike. Least and greatest are by the scatter of the tightening; heat counts against the joint where it loosens and against the bolt where it tightens.";

    /// <summary>What can hurt.</summary>
    public static string Caution => new BoltPreloadCheck().Caution;

    /// <summary>The sheet of the values that hold.</summary>
    /// <param name="view">With a desk: the head takes an engine run.</param>
    public static JointSheet Of(View view) => new([.. Keys(view).Select(k => JointFigures.Of(view, k))]);

    /// <summary>The joints of a build.</summary>
    public static IReadOnlyList<string> Keys(View view) => [.. Instances.Named(view, Joint.Torque.Subject).Where(k => k.Length > 0)];

    /// <summary>The joint of this name, or the first when none is named.</summary>
    /// <exception cref="BadInputException">There is none of this name, or none at all.</exception>
    public static string Named(View view, string? key)
    {
        var keys = Keys(view);
        return keys.Count == 0 ? throw new BadInputException("the book has no joints yet; wanted fields such as joint[head].thread")
            : key is null ? keys[0]
            : keys.Contains(key) ? key
            : throw new BadInputException($"there is no joint '{key}'; wanted one of {string.Join(", ", keys)}");
    }
}
