using Gudgeon.Book.Tracing;

namespace Gudgeon.Book.Joints;

/// <summary>The bolts of all joints, to order.</summary>
/// <param name="Lines">One for each joint.</param>
public sealed record BoltList(IReadOnlyList<BoltLine> Lines)
{
    /// <summary>What the lengths and masses rest on.</summary>
    public const string Remark = "Lengths are the standard ones next above grip and engagement; masses from usual head proportions, saved against steel of the same size. Not every length is made in every thread: ask before the case is drilled. Bolts of one joint come from one batch.";

    /// <summary>The list of the values that hold.</summary>
    public static BoltList Of(View view) => new([.. JointSheet.Keys(view).Select(k => BoltLine.Of(view, k))]);

    /// <summary>Mass of all bolts, kg; what is not known left out.</summary>
    public double Mass => Lines.Sum(l => l.MassAll ?? 0);

    /// <summary>Mass saved over steel, kg.</summary>
    public double MassSaved => Lines.Sum(l => l.MassSaved ?? 0);

    /// <summary>Price of all, in the shop's money; what is not known left out.</summary>
    public double Cost => Lines.Sum(l => l.Cost ?? 0);
}
