using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Book.Head;

/// <summary>A lobe on the flat face of a bucket, worked at its worst point.</summary>
internal static class LobeFace
{
    /// <summary>Whether a valve's follower is a bucket.</summary>
    public static bool IsBucket(View view, string index) => view.Knows(Follower.Kind, index) && view.Choice<FollowerKind>(Follower.Kind, index) is FollowerKind.Bucket;

    /// <summary>Least radius of curvature of a lobe, m; below zero where it is hollow.</summary>
    /// <param name="view">The values.</param>
    /// <param name="lobe">Lift of a flat follower.</param>
    /// <param name="baseRadius">Base circle radius, m.</param>
    public static double LeastRadius(View view, LiftPoints lobe, double baseRadius)
    {
        var worst = Enumerable.Range(0, lobe.Lift.Length).MinBy(i => lobe.Lift[i] + lobe.Curvature[i]);
        return view.Work(CamContact.RadiusOnFlat, baseRadius, Math.Max(0, lobe.Lift[worst]), lobe.Curvature[worst]);
    }

    /// <summary>Least diameter of the face on which the contact stays, m; that of its middle where the lobe's width is not known.</summary>
    /// <param name="view">The values.</param>
    /// <param name="index">"inlet.1.2".</param>
    /// <param name="lobe">Lift of a flat follower.</param>
    public static double LeastFace(View view, string index, LiftPoints lobe) =>
        view.Work(CamContact.BucketFace, lobe.Slope.Max(Math.Abs), view.AmountOr(Cam.Width, 0, index), 0.0);
}
