using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Fits;

/// <summary>Ends of a parallel key.</summary>
public enum KeyEnds
{
    /// <summary>Form A: round ends, which do not carry.</summary>
    Round,

    /// <summary>Form B: square ends.</summary>
    Square,
}

/// <summary>Section of a parallel key and depths of its seats.</summary>
/// <param name="Width">Width b, m.</param>
/// <param name="Height">Height h, m.</param>
/// <param name="ShaftDepth">Depth in the shaft t1, m.</param>
/// <param name="HubDepth">Depth in the hub t2, m.</param>
public readonly record struct KeySection(
    [Quantity("width", Dimension.Length, "mm", Symbol = "b")] double Width,
    [Quantity("height", Dimension.Length, "mm", Symbol = "h")] double Height,
    [Quantity("depth in the shaft", Dimension.Length, "mm", Symbol = "t1")] double ShaftDepth,
    [Quantity("depth in the hub", Dimension.Length, "mm", Symbol = "t2")] double HubDepth);

/// <summary>Pressures on a key and shear in it.</summary>
/// <param name="LoadedLength">Length that carries, m.</param>
/// <param name="HubPressure">Pressure on the hub's seat, Pa.</param>
/// <param name="ShaftPressure">Pressure on the shaft's seat, Pa.</param>
/// <param name="Shear">Shear stress in the key, Pa.</param>
/// <param name="HalfHeightPressure">Pressure when half of the height is taken to carry, Pa.</param>
public readonly record struct KeyStress(
    [Quantity("loaded length", Dimension.Length, "mm", Symbol = "lt")] double LoadedLength,
    [Quantity("pressure on the hub", Dimension.Pressure, "MPa", Symbol = "ph")] double HubPressure,
    [Quantity("pressure on the shaft", Dimension.Pressure, "MPa", Symbol = "ps")] double ShaftPressure,
    [Quantity("shear in the key", Dimension.Pressure, "MPa", Symbol = "τ")] double Shear,
    [Quantity("pressure on half the height", Dimension.Pressure, "MPa", Symbol = "p")] double HalfHeightPressure);

/// <summary>Parallel keys.</summary>
public static class ParallelKey
{
    /// <summary>Shaft diameter up to and including; then b, h, t1, t2 in mm (DIN 6885-1).</summary>
    private static readonly (double UpTo, double B, double H, double T1, double T2)[] Table =
    [
        (8, 2, 2, 1.2, 1.0), (10, 3, 3, 1.8, 1.4), (12, 4, 4, 2.5, 1.8), (17, 5, 5, 3.0, 2.3), (22, 6, 6, 3.5, 2.8),
        (30, 8, 7, 4.0, 3.3), (38, 10, 8, 5.0, 3.3), (44, 12, 8, 5.0, 3.3), (50, 14, 9, 5.5, 3.8), (58, 16, 10, 6.0, 4.3),
        (65, 18, 11, 7.0, 4.4), (75, 20, 12, 7.5, 4.9), (85, 22, 14, 9.0, 5.4), (95, 25, 14, 9.0, 5.4), (110, 28, 16, 10.0, 6.4), (130, 32, 18, 11.0, 7.4),
    ];

    /// <summary>Section of the parallel key for a shaft.</summary>
    /// <param name="shaftDiameter">Shaft diameter, m; over 6 up to 130 mm.</param>
    [Formula("parallel key section", "b, h, t1, t2", "DIN 6885-1, high form", Validity = "shafts over 6 up to and including 130 mm")]
    public static KeySection Section(
        [Quantity("shaft diameter", Dimension.Length, "mm", Symbol = "d", Above = 6e-3, Max = 0.13)] double shaftDiameter)
    {
        var millimetres = shaftDiameter * 1e3;
        var row = Array.Find(Table, r => millimetres <= r.UpTo + 1e-9);
        FormulaDomainException.Unless(row.UpTo > 0, "shaft diameter: outside 6 to 130 mm");
        return new KeySection(row.B * 1e-3, row.H * 1e-3, row.T1 * 1e-3, row.T2 * 1e-3);
    }

    /// <summary>Pressures and shear of one parallel key.</summary>
    /// <param name="torque">Torque, N·m.</param>
    /// <param name="shaftDiameter">Shaft diameter, m.</param>
    /// <param name="width">Key width b, m.</param>
    /// <param name="height">Key height h, m.</param>
    /// <param name="length">Key length over all, m.</param>
    /// <param name="shaftDepth">Depth in the shaft t1, m.</param>
    /// <param name="ends">Round (form A) or square ends.</param>
    [Formula("parallel key stress", "ph = 2 T / (d (h - t1) lt); ps = 2 T / (d t1 lt); τ = 2 T / (d b lt); p = 2 T / (d h / 2 lt)", "DIN 6892, method C", Provenance = Provenance.FromMemory, Validity = "one key; loaded length lt = l - b with round ends, l with square ends")]
    public static KeyStress Stress(
        [Quantity("torque", Dimension.Torque, "N·m", Symbol = "T", Min = 0)] double torque,
        [Quantity("shaft diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double shaftDiameter,
        [Quantity("key width", Dimension.Length, "mm", Symbol = "b", Above = 0)] double width,
        [Quantity("key height", Dimension.Length, "mm", Symbol = "h", Above = 0)] double height,
        [Quantity("key length", Dimension.Length, "mm", Symbol = "l", Above = 0)] double length,
        [Quantity("key depth in the shaft", Dimension.Length, "mm", Symbol = "t1", Above = 0)] double shaftDepth,
        [Quantity("key ends", Dimension.Number)] KeyEnds ends = KeyEnds.Round)
    {
        var loaded = ends == KeyEnds.Round ? length - width : length;
        FormulaDomainException.Unless(loaded > 0, "key length: must be greater than the key width with round ends");
        FormulaDomainException.Unless(height > shaftDepth, "key height: must be greater than the depth in the shaft");
        var line = 2 * torque / (shaftDiameter * loaded);
        return new KeyStress(loaded, line / (height - shaftDepth), line / shaftDepth, line / width, line / (height / 2));
    }
}
