namespace Gudgeon.Book.Head;

/// <summary>A lobe against a flat face: kinematics of the flat follower, contact at ds/dφ, radius of curvature Rb + s + s''.</summary>
internal static class LobeFace
{
    /// <summary>Least radius of curvature of a lobe, m; below zero where it is hollow.</summary>
    /// <param name="lobe">Lift of a flat follower.</param>
    /// <param name="baseRadius">Base circle radius, m.</param>
    public static double LeastRadius(LiftPoints lobe, double baseRadius) => baseRadius + lobe.Lift.Zip(lobe.Curvature, (s, c) => s + c).Min();

    /// <summary>How far the contact wanders from the middle of the face, m.</summary>
    public static double Wander(LiftPoints lobe) => lobe.Slope.Max(Math.Abs);
}
