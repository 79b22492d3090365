using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Springs;

/// <summary>Loads of a fitted valve spring and what is left before it binds.</summary>
/// <param name="SeatLoad">Load with the valve shut, N.</param>
/// <param name="OpenLoad">Load at full lift, N.</param>
/// <param name="SpacerGain">What the spacer adds to either load, N.</param>
/// <param name="CoilBindMargin">Travel left at full lift before the coils touch, m.</param>
public readonly record struct ValveSpringLoads(
    [Quantity("seat load", Dimension.Force, "N", Symbol = "F1")] double SeatLoad,
    [Quantity("open load", Dimension.Force, "N", Symbol = "F2")] double OpenLoad,
    [Quantity("load added by the spacer", Dimension.Force, "N", Symbol = "ΔF")] double SpacerGain,
    [Quantity("coil-bind margin", Dimension.Length, "mm", Symbol = "S")] double CoilBindMargin);

/// <summary>Loads of two valve springs on one valve.</summary>
/// <param name="Rate">Sum of both rates, N/m.</param>
/// <param name="SeatLoad">Load with the valve shut, N.</param>
/// <param name="OpenLoad">Load at full lift, N.</param>
/// <param name="SpacerGain">What the spacer under both springs adds to either load, N.</param>
/// <param name="CoilBindMargin">Travel left at full lift before the first of the two springs binds, m.</param>
public readonly record struct DualSpringLoads(
    [Quantity("rate of the pair", Dimension.ForcePerLength, "N/mm", Symbol = "R")] double Rate,
    [Quantity("seat load", Dimension.Force, "N", Symbol = "F1")] double SeatLoad,
    [Quantity("open load", Dimension.Force, "N", Symbol = "F2")] double OpenLoad,
    [Quantity("load added by the spacer", Dimension.Force, "N", Symbol = "ΔF")] double SpacerGain,
    [Quantity("coil-bind margin", Dimension.Length, "mm", Symbol = "S")] double CoilBindMargin);

/// <summary>A valve spring in its place: fitted height, lift, spacer under the seat.</summary>
public static class ValveSpring
{
    /// <summary>Seat and open load of a valve spring, with an optional spacer under it. Refuses a spring that binds.</summary>
    /// <param name="rate">Spring rate, N/m.</param>
    /// <param name="freeLength">Free length, m.</param>
    /// <param name="fittedHeight">Height with the valve shut and no spacer, m.</param>
    /// <param name="lift">Greatest valve lift, m.</param>
    /// <param name="solidLength">Solid length, m.</param>
    /// <param name="spacer">Spacer put under the spring, m.</param>
    [Formula("valve spring loads", "F1 = R (L0 - L1 + t); F2 = F1 + R h; ΔF = R t; S = L1 - t - h - Ls", "EN 13906-1:2013; definition of the rate", Provenance = Provenance.Definition, Validity = "down to the solid length; a spring that would bind is refused", Caution = "A valve spring under compression is a projectile: use a compressor with the keepers covered, and keep the face out of line.")]
    public static ValveSpringLoads Loads(
        [Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "R", Above = 0)] double rate,
        [Quantity("free length", Dimension.Length, "mm", Symbol = "L0", Above = 0)] double freeLength,
        [Quantity("fitted height", Dimension.Length, "mm", Symbol = "L1", Above = 0, Help = "valve shut, without the spacer")] double fittedHeight,
        [Quantity("valve lift", Dimension.Length, "mm", Symbol = "h", Min = 0)] double lift,
        [Quantity("solid length", Dimension.Length, "mm", Symbol = "Ls", Above = 0)] double solidLength,
        [Quantity("spacer thickness", Dimension.Length, "mm", Symbol = "t", Min = 0)] double spacer = 0)
    {
        var seatHeight = fittedHeight - spacer;
        return new ValveSpringLoads(
            SpringLoad.AtHeight(rate, freeLength, seatHeight, solidLength),
            SpringLoad.AtHeight(rate, freeLength, seatHeight - lift, solidLength),
            rate * spacer,
            CoilBindMargin(fittedHeight, lift, solidLength, spacer));
    }

    /// <summary>Travel left at full lift before the coils touch, m; negative when the spring would bind first.</summary>
    /// <param name="fittedHeight">Height with the valve shut and no spacer, m.</param>
    /// <param name="lift">Greatest valve lift, m.</param>
    /// <param name="solidLength">Solid length, m.</param>
    /// <param name="spacer">Spacer put under the spring, m.</param>
    [Formula("coil-bind margin", "S = L1 - t - h - Ls", "arithmetic of lengths", Provenance = Provenance.Definition, Caution = "The trade keeps 1 to 2 mm in hand for float and over-run; a negative margin means the spring binds before full lift.")]
    [return: Quantity("coil-bind margin", Dimension.Length, "mm", Symbol = "S")]
    public static double CoilBindMargin(
        [Quantity("fitted height", Dimension.Length, "mm", Symbol = "L1", Above = 0, Help = "valve shut, without the spacer")] double fittedHeight,
        [Quantity("valve lift", Dimension.Length, "mm", Symbol = "h", Min = 0)] double lift,
        [Quantity("solid length", Dimension.Length, "mm", Symbol = "Ls", Above = 0)] double solidLength,
        [Quantity("spacer thickness", Dimension.Length, "mm", Symbol = "t", Min = 0)] double spacer = 0) =>
        fittedHeight - spacer - lift - solidLength;

    /// <summary>Spacer that brings a spring to a wanted seat load, m; negative when the seat must be cut instead.</summary>
    /// <param name="load">Seat load now, N.</param>
    /// <param name="wantedLoad">Seat load wanted, N.</param>
    /// <param name="rate">Spring rate, N/m.</param>
    [Formula("spacer for a seat load", "t = (Fw - F1) / R", "definition of the rate", Provenance = Provenance.Definition, Caution = "The spacer takes its thickness from the coil-bind margin.")]
    [return: Quantity("spacer thickness", Dimension.Length, "mm", Symbol = "t")]
    public static double SpacerForSeatLoad(
        [Quantity("seat load now", Dimension.Force, "N", Symbol = "F1", Min = 0)] double load,
        [Quantity("seat load wanted", Dimension.Force, "N", Symbol = "Fw", Min = 0)] double wantedLoad,
        [Quantity("spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "R", Above = 0)] double rate) =>
        (wantedLoad - load) / rate;

    /// <summary>Loads of an outer and an inner valve spring on one retainer. Refuses a pair of which either spring binds.</summary>
    /// <param name="outerRate">Rate of the outer spring, N/m.</param>
    /// <param name="outerFree">Free length of the outer spring, m.</param>
    /// <param name="outerFitted">Fitted height of the outer spring, m.</param>
    /// <param name="outerSolid">Solid length of the outer spring, m.</param>
    /// <param name="innerRate">Rate of the inner spring, N/m.</param>
    /// <param name="innerFree">Free length of the inner spring, m.</param>
    /// <param name="innerFitted">Fitted height of the inner spring, m.</param>
    /// <param name="innerSolid">Solid length of the inner spring, m.</param>
    /// <param name="lift">Greatest valve lift, m.</param>
    /// <param name="spacer">Spacer under both springs, m.</param>
    [Formula("dual valve spring loads", "R = Ra + Rb; F1 = Ra (La0 - La1 + t) + Rb (Lb0 - Lb1 + t); F2 = F1 + R h; ΔF = R t; S = min(La1 - Las, Lb1 - Lbs) - t - h", "springs in parallel", Provenance = Provenance.Definition, Validity = "down to the solid length of either spring")]
    public static DualSpringLoads DualLoads(
        [Quantity("outer spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "Ra", Above = 0)] double outerRate,
        [Quantity("outer free length", Dimension.Length, "mm", Symbol = "La0", Above = 0)] double outerFree,
        [Quantity("outer fitted height", Dimension.Length, "mm", Symbol = "La1", Above = 0)] double outerFitted,
        [Quantity("outer solid length", Dimension.Length, "mm", Symbol = "Las", Above = 0)] double outerSolid,
        [Quantity("inner spring rate", Dimension.ForcePerLength, "N/mm", Symbol = "Rb", Above = 0)] double innerRate,
        [Quantity("inner free length", Dimension.Length, "mm", Symbol = "Lb0", Above = 0)] double innerFree,
        [Quantity("inner fitted height", Dimension.Length, "mm", Symbol = "Lb1", Above = 0)] double innerFitted,
        [Quantity("inner solid length", Dimension.Length, "mm", Symbol = "Lbs", Above = 0)] double innerSolid,
        [Quantity("valve lift", Dimension.Length, "mm", Symbol = "h", Min = 0)] double lift,
        [Quantity("spacer thickness", Dimension.Length, "mm", Symbol = "t", Min = 0)] double spacer = 0)
    {
        var outer = Loads(outerRate, outerFree, outerFitted, lift, outerSolid, spacer);
        var inner = Loads(innerRate, innerFree, innerFitted, lift, innerSolid, spacer);
        return new DualSpringLoads(
            outerRate + innerRate,
            outer.SeatLoad + inner.SeatLoad,
            outer.OpenLoad + inner.OpenLoad,
            outer.SpacerGain + inner.SpacerGain,
            Math.Min(outer.CoilBindMargin, inner.CoilBindMargin));
    }
}
