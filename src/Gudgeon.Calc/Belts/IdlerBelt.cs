using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Belts;

/// <summary>Which face of the belt runs on an idler.</summary>
public enum IdlerSide
{
    /// <summary>The back: the idler presses the span inwards and adds wrap.</summary>
    [TradeName("on the back")]
    Back,

    /// <summary>The inside: the idler pushes the span outwards and takes wrap away.</summary>
    [TradeName("on the inside")]
    Inside,
}

/// <summary>Course of a belt over two pulleys and an idler on its slack span.</summary>
/// <param name="Length">Belt length on the pitch line, m.</param>
/// <param name="DriverWrap">Wrap on the driving pulley, rad.</param>
/// <param name="DrivenWrap">Wrap on the driven pulley, rad.</param>
/// <param name="IdlerWrap">Wrap on the idler, rad.</param>
/// <param name="TightSpan">Free length of the tight span, m.</param>
/// <param name="FirstSlack">Free length from the driving pulley to the idler, m.</param>
/// <param name="SecondSlack">Free length from the idler to the driven pulley, m.</param>
public readonly record struct IdlerCourse(
    [Quantity("belt length", Dimension.Length, "mm", Symbol = "L")] double Length,
    [Quantity("wrap on the driving pulley", Dimension.Angle, "°", Symbol = "θ1")] double DriverWrap,
    [Quantity("wrap on the driven pulley", Dimension.Angle, "°", Symbol = "θ2")] double DrivenWrap,
    [Quantity("wrap on the idler", Dimension.Angle, "°", Symbol = "θi")] double IdlerWrap,
    [Quantity("tight span", Dimension.Length, "mm", Symbol = "s")] double TightSpan,
    [Quantity("slack span before the idler", Dimension.Length, "mm", Symbol = "s1")] double FirstSlack,
    [Quantity("slack span behind the idler", Dimension.Length, "mm", Symbol = "s2")] double SecondSlack);

/// <summary>A belt over two pulleys and an idler.</summary>
public static class IdlerBelt
{
    /// <summary>Length, wraps and free spans with an idler on the slack span.</summary>
    /// <param name="driver">Pitch diameter of the driving pulley, m.</param>
    /// <param name="driven">Pitch diameter of the driven pulley, m.</param>
    /// <param name="centres">Centre distance of the two, m.</param>
    /// <param name="idler">Diameter of the idler to the belt's pitch line, m.</param>
    /// <param name="along">Axis of the idler from the driving axis along the line of centres, m.</param>
    /// <param name="across">Axis of the idler from the line of centres towards the slack span, m.</param>
    /// <param name="side">Face of the belt that runs on it.</param>
    [Formula(
        "belt with an idler",
        "each span sqrt(c^2 - (r1 ∓ r2)^2), c between the axes at (0, 0), (C, 0), (x, y), r = d / 2, D / 2, di / 2; L = s + s1 + s2 + θ1 d / 2 + θ2 D / 2 + θi di / 2; less where the idler runs on the back",
        "Exact geometry",
        Provenance = Provenance.Definition)]
    public static IdlerCourse Course(
        [Quantity("pitch diameter of the driving pulley", Dimension.Length, "mm", Symbol = "d", Above = 0)] double driver,
        [Quantity("pitch diameter of the driven pulley", Dimension.Length, "mm", Symbol = "D", Above = 0)] double driven,
        [Quantity("centre distance", Dimension.Length, "mm", Symbol = "C", Above = 0)] double centres,
        [Quantity("diameter of the idler", Dimension.Length, "mm", Symbol = "di", Above = 0)] double idler,
        [Quantity("idler along the line of centres", Dimension.Length, "mm", Symbol = "x")] double along,
        [Quantity("idler across the line of centres", Dimension.Length, "mm", Symbol = "y")] double across,
        [Quantity("face on the idler", Dimension.Number)] IdlerSide side = IdlerSide.Back)
    {
        var pulleys = Pulleys(driver, driven, centres, idler, along, across, side);
        var (first, second, tight) = (BeltSpan.Between(pulleys[0], pulleys[1]), BeltSpan.Between(pulleys[1], pulleys[2]), BeltSpan.Between(pulleys[2], pulleys[0]));
        var (wrap1, wrapI, wrap2) = (BeltSpan.Wrap(pulleys[0], tight, first), BeltSpan.Wrap(pulleys[1], first, second), BeltSpan.Wrap(pulleys[2], second, tight));
        FormulaDomainException.Unless(wrapI < Math.PI, "idler across the line of centres: the idler does not touch the slack span there");
        var arcs = (wrap1 * driver / 2) + (wrap2 * driven / 2) + (wrapI * idler / 2);
        return new IdlerCourse(first.Length + second.Length + tight.Length + arcs, wrap1, wrap2, wrapI, tight.Length, first.Length, second.Length);
    }

    /// <summary>Driving pulley, idler and driven pulley as the belt meets them, the slack span below the line of centres.</summary>
    public static IReadOnlyList<BeltPulley> Pulleys(double driver, double driven, double centres, double idler, double along, double across, IdlerSide side) =>
        [new(0, 0, driver / 2), new(along, -across, (side == IdlerSide.Back ? -1 : 1) * idler / 2), new(centres, 0, driven / 2)];
}
