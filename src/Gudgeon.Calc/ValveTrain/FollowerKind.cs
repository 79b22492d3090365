namespace Gudgeon.Calc.ValveTrain;

/// <summary>What the cam pushes.</summary>
public enum FollowerKind
{
    /// <summary>A bucket straight above the valve, flat on the cam.</summary>
    Bucket,

    /// <summary>A finger: pivot at one end, the cam between pivot and valve.</summary>
    Finger,

    /// <summary>A rocker: pivot between cam and valve.</summary>
    Rocker,
}
