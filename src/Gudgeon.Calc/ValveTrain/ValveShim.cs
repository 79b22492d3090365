using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>A shim picked from stock.</summary>
/// <param name="Wanted">Thickness that would give the wanted lash, m.</param>
/// <param name="Shim">Nearest thickness in stock, m.</param>
/// <param name="Lash">Lash that it gives, m.</param>
public readonly record struct ShimChoice(
    [Quantity("thickness wanted", Dimension.Length, "mm", Symbol = "tw")] double Wanted,
    [Quantity("shim to fit", Dimension.Length, "mm", Symbol = "t")] double Shim,
    [Quantity("lash with that shim", Dimension.Length, "mm", Symbol = "c")] double Lash);

/// <summary>Lash shims of direct-acting valve trains.</summary>
public static class ValveShim
{
    private const string Cold = "Measure cold, the lobe away from the bucket; turn the engine over by hand afterwards and measure again.";

    /// <summary>Shim that gives the wanted lash, m.</summary>
    /// <param name="fitted">Shim fitted now, m; measure it, the mark wears off.</param>
    /// <param name="measured">Lash measured with it, m.</param>
    /// <param name="wanted">Lash wanted, m.</param>
    [Formula("valve shim", "t = t0 + c0 - cw", "arithmetic of lengths, as in workshop manuals", Provenance = Provenance.Definition, Caution = Cold)]
    [return: Quantity("shim thickness", Dimension.Length, "mm", Symbol = "t")]
    public static double Thickness(
        [Quantity("shim fitted", Dimension.Length, "mm", Symbol = "t0", Above = 0)] double fitted,
        [Quantity("lash measured", Dimension.Length, "mm", Symbol = "c0", Min = 0)] double measured,
        [Quantity("lash wanted", Dimension.Length, "mm", Symbol = "cw", Min = 0)] double wanted)
    {
        var thickness = fitted + measured - wanted;
        FormulaDomainException.Unless(thickness > 0, "lash wanted: no shim gives it, the valve stem or the seat must be corrected");
        return thickness;
    }

    /// <summary>Nearest shim of a stocked series and the lash that it gives.</summary>
    /// <param name="fitted">Shim fitted now, m.</param>
    /// <param name="measured">Lash measured with it, m.</param>
    /// <param name="wanted">Lash wanted, m.</param>
    /// <param name="step">Step of the series, m: 0.05 or 0.025 mm in service, 0.01 at the factory.</param>
    /// <param name="start">A thickness of the series, m; 0 when the series are whole multiples of the step.</param>
    [Formula("valve shim from stock", "tw = t0 + c0 - cw; t = nearest of the series to tw; c = t0 + c0 - t", "arithmetic of lengths, as in workshop manuals", Provenance = Provenance.Definition, Validity = "lash off by up to half a step; half-way cases take the thinner shim, the greater lash", Caution = Cold)]
    public static ShimChoice FromStock(
        [Quantity("shim fitted", Dimension.Length, "mm", Symbol = "t0", Above = 0)] double fitted,
        [Quantity("lash measured", Dimension.Length, "mm", Symbol = "c0", Min = 0)] double measured,
        [Quantity("lash wanted", Dimension.Length, "mm", Symbol = "cw", Min = 0)] double wanted,
        [Quantity("step of the series", Dimension.Length, "mm", Above = 0)] double step = 0.05e-3,
        [Quantity("a thickness of the series", Dimension.Length, "mm", Min = 0)] double start = 0)
    {
        var thickness = Thickness(fitted, measured, wanted);

        // A billionth of a step keeps decimal half-way cases on the thinner side despite binary rounding.
        var shim = start + (Math.Ceiling(((thickness - start) / step) - 0.5 - 1e-9) * step);
        FormulaDomainException.Unless(shim > 0, "step of the series: too coarse for this shim");
        return new ShimChoice(thickness, shim, fitted + measured - shim);
    }
}
