using Gudgeon.Calc.Catalogue;
using MathNet.Numerics.RootFinding;

namespace Gudgeon.Calc.Belts;

/// <summary>Open belt over two pulleys.</summary>
/// <param name="Length">Belt length on the pitch line, m.</param>
/// <param name="SmallWrap">Wrap on the smaller pulley, rad.</param>
/// <param name="LargeWrap">Wrap on the larger pulley, rad.</param>
public readonly record struct OpenBelt(
    [Quantity("belt length", Dimension.Length, "mm", Symbol = "L")] double Length,
    [Quantity("wrap on the smaller pulley", Dimension.Angle, "°", Symbol = "θ1")] double SmallWrap,
    [Quantity("wrap on the larger pulley", Dimension.Angle, "°", Symbol = "θ2")] double LargeWrap);

/// <summary>Length, centre distance and wrap of belts.</summary>
public static class BeltGeometry
{
    /// <summary>Length and wrap of an open belt.</summary>
    /// <param name="first">Pitch diameter of one pulley, m.</param>
    /// <param name="second">Pitch diameter of the other, m.</param>
    /// <param name="centres">Centre distance, m.</param>
    [Formula(
        "open belt",
        "γ = asin((D - d) / (2 C)); θ1 = π - 2 γ; L = 2 C cos(γ) + D (π / 2 + γ) + d (π / 2 - γ)",
        "Exact geometry",
        Provenance = Provenance.Definition)]
    public static OpenBelt Open(
        [Quantity("pitch diameter of one pulley", Dimension.Length, "mm", Symbol = "d", Above = 0)] double first,
        [Quantity("pitch diameter of the other", Dimension.Length, "mm", Symbol = "D", Above = 0)] double second,
        [Quantity("centre distance", Dimension.Length, "mm", Symbol = "C", Above = 0)] double centres)
    {
        FormulaDomainException.Unless(centres > (first + second) / 2, "centre distance: the two pulleys overlap");
        var (small, large) = (Math.Min(first, second), Math.Max(first, second));
        var lean = Math.Asin((large - small) / (2 * centres));
        var length = (2 * centres * Math.Cos(lean)) + (large * ((Math.PI / 2) + lean)) + (small * ((Math.PI / 2) - lean));
        return new OpenBelt(length, Math.PI - (2 * lean), Math.PI + (2 * lean));
    }

    /// <summary>Centre distance for a belt length, m.</summary>
    /// <param name="first">Pitch diameter of one pulley, m.</param>
    /// <param name="second">Pitch diameter of the other, m.</param>
    /// <param name="length">Belt length on the pitch line, m.</param>
    [Formula("belt centre distance", "L(C) = L", "Exact geometry, solved for the centre distance", Provenance = Provenance.Definition)]
    [return: Quantity("centre distance", Dimension.Length, "mm", Symbol = "C")]
    public static double CentreDistance(
        [Quantity("pitch diameter of one pulley", Dimension.Length, "mm", Symbol = "d", Above = 0)] double first,
        [Quantity("pitch diameter of the other", Dimension.Length, "mm", Symbol = "D", Above = 0)] double second,
        [Quantity("belt length", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length)
    {
        var least = (first + second) / 2 * (1 + 1e-9);
        FormulaDomainException.Unless(length > Open(first, second, least).Length, "belt length: too short to go round both pulleys side by side");
        return Brent.FindRoot(c => Open(first, second, c).Length - length, least, length, length * 1e-14, 200);
    }

    /// <summary>Belt speed, m/s.</summary>
    /// <param name="diameter">Pitch diameter of a pulley, m.</param>
    /// <param name="speed">Its speed, rad/s.</param>
    [Formula("belt speed", "v = w d / 2", "Definition", Provenance = Provenance.Definition)]
    [return: Quantity("belt speed", Dimension.Speed, "m/s", Symbol = "v")]
    public static double Speed(
        [Quantity("pitch diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pulley speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Min = 0)] double speed) =>
        speed * diameter / 2;

    /// <summary>Teeth of a toothed pulley that are in mesh.</summary>
    /// <param name="teeth">Teeth of the pulley.</param>
    /// <param name="wrap">Angle of wrap, rad.</param>
    [Formula("toothed belt teeth in mesh", "zm = z θ / (2 π)", "Geometry; makers credit no more than whole teeth and derate below six", Provenance = Provenance.CommonPractice)]
    [return: Quantity("teeth in mesh", Dimension.Number, Symbol = "zm")]
    public static double TeethInMesh(
        [Quantity("teeth of the pulley", Dimension.Number, Symbol = "z", Min = 6)] int teeth,
        [Quantity("angle of wrap", Dimension.Angle, "°", Symbol = "θ", Above = 0, Max = 6.283185307179587)] double wrap) =>
        teeth * wrap / Math.Tau;
}
