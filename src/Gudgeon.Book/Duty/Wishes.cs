namespace Gudgeon.Book.Duty;

/// <summary>What is tried in place of what the book holds; null leaves it as it is. SI.</summary>
public sealed record Wishes
{
    /// <summary>Blower pulley speed over crank speed.</summary>
    public double? DriveRatio { get; init; }

    /// <summary>Opening pressure of a turbocharger's wastegate, Pa gauge.</summary>
    public double? WastegateOpening { get; init; }

    /// <summary>Greatest boost of the run, Pa gauge; the drive ratio or opening pressure that gives it is sought, and another wish for it is not looked at.</summary>
    public double? Boost { get; init; }

    /// <summary>Angle of 50 % burned after TDC at 6000 rpm, rad; nothing to a burn that is placed for best torque.</summary>
    public double? Burned50 { get; init; }

    /// <summary>Mean compression ratio of the cylinders; what tells them apart stays.</summary>
    public double? CompressionRatio { get; init; }

    /// <summary>Fuel, by its name in the book.</summary>
    public string? Fuel { get; init; }

    /// <summary>Air over the air that the fuel can burn.</summary>
    public double? Lambda { get; init; }

    /// <summary>Whether everything stays as it is.</summary>
    public bool IsNothing => this == new Wishes();
}
