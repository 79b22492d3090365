namespace Gudgeon.Book.Head;

/// <summary>Lash and shim of one valve as measured, and what is wanted. SI.</summary>
/// <param name="Valve">Key of the valve: "inlet.1.2".</param>
/// <param name="Lash">Lash measured cold, m.</param>
/// <param name="Shim">Shim fitted, m.</param>
/// <param name="Least">Least lash allowed, m.</param>
/// <param name="Greatest">Greatest lash allowed, m.</param>
/// <param name="Wanted">Lash wanted, m.</param>
public sealed record MeasuredLash(string Valve, double Lash, double Shim, double Least, double Greatest, double Wanted)
{
    /// <summary>Lash with another shim, m.</summary>
    public double With(double shim) => Lash + Shim - shim;

    /// <summary>Whether a shim gives a lash that is allowed; the edges are.</summary>
    public bool Takes(double shim) => With(shim) is var lash && lash >= Least - (Assortment.Grain / 2) && lash <= Greatest + (Assortment.Grain / 2);

    /// <summary>How far off the wanted lash a shim leaves it, in tenths of a micrometre.</summary>
    internal long Off(double shim) => Assortment.Grains(Math.Abs(With(shim) - Wanted));
}

/// <summary>Shims that are sold.</summary>
/// <param name="Step">Step between the sizes, m.</param>
/// <param name="Thinnest">The thinnest, m.</param>
/// <param name="Thickest">The thickest, m.</param>
public sealed record ShimSeries(double Step, double Thinnest, double Thickest)
{
    /// <summary>The size that leaves a valve nearest to its wanted lash and inside what is allowed; null when none does.</summary>
    public double? For(MeasuredLash valve)
    {
        var at = Math.Round((valve.Lash + valve.Shim - valve.Wanted - Thinnest) / Step);
        var last = Math.Floor(((Thickest - Thinnest) / Step) + 1e-6);
        return Enumerable.Range(-1, 3)
            .Select(i => Thinnest + (Math.Clamp(at + i, 0, last) * Step))
            .Where(valve.Takes)
            .Select(t => (double?)t)
            .MinBy(t => (valve.Off(t!.Value), -t));
    }
}

/// <summary>What the shims are to be chosen from.</summary>
/// <param name="Valves">The valves.</param>
/// <param name="Stock">Shims on the bench, the fitted ones left out.</param>
/// <param name="Sold">Shims that can be bought; null for none.</param>
public sealed record ShimProblem(IReadOnlyList<MeasuredLash> Valves, IReadOnlyList<StockItem> Stock, ShimSeries? Sold);

/// <summary>Where a shim comes from.</summary>
public enum ShimFrom
{
    /// <summary>It is in there already.</summary>
    Stays,

    /// <summary>Out of another valve.</summary>
    Valve,

    /// <summary>Off the bench.</summary>
    Bench,

    /// <summary>To be bought.</summary>
    Bought,

    /// <summary>None was found.</summary>
    None,
}

/// <summary>The shim chosen for a valve.</summary>
/// <param name="Valve">The valve.</param>
/// <param name="Shim">Thickness, m; NaN when none was found.</param>
/// <param name="From">Where it comes from.</param>
/// <param name="Other">The valve that it comes out of; empty otherwise.</param>
public sealed record ShimChosen(MeasuredLash Valve, double Shim, ShimFrom From, string Other = "");
