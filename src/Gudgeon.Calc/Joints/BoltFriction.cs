using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>What a thread and its head run on.</summary>
public enum Lubricant
{
    /// <summary>Clean and dry, bright or phosphated.</summary>
    Dry,

    /// <summary>As delivered, lightly oiled.</summary>
    AsDelivered,

    /// <summary>Engine oil.</summary>
    EngineOil,

    /// <summary>Paste with molybdenum disulphide.</summary>
    MolybdenumPaste,

    /// <summary>Copper or nickel anti-seize paste.</summary>
    AntiSeize,

    /// <summary>Wax or dry film with solid lubricant.</summary>
    Wax,

    /// <summary>Anaerobic thread lock, wet.</summary>
    ThreadLock,

    /// <summary>Titanium with anti-seize paste.</summary>
    TitaniumPaste,

    /// <summary>Austenitic stainless steel, oiled.</summary>
    StainlessOil,
}

/// <summary>Friction of bolts to expect.</summary>
/// <param name="Least">Least, which gives the greatest preload.</param>
/// <param name="Usual">To work with.</param>
/// <param name="Greatest">Greatest, which gives the least preload.</param>
public readonly record struct FrictionRange(
    [Quantity("least friction", Dimension.Number, Symbol = "µmin")] double Least,
    [Quantity("usual friction", Dimension.Number, Symbol = "µ")] double Usual,
    [Quantity("greatest friction", Dimension.Number, Symbol = "µmax")] double Greatest);

/// <summary>Friction in thread and under the head by lubricant.</summary>
public static class BoltFriction
{
    /// <summary>Friction by lubricant: the range of its friction class and a usual value within it.</summary>
    /// <param name="lubricant">What thread and head run on.</param>
    [Formula("bolt friction guide", "µmin ≤ µ ≤ µmax", "ranges: friction classes A to D of VDI 2230-1, table A5, as reprinted in a fastener catalogue; usual values: common practice, no source; thread lock and titanium: common practice, no source", Validity = "thread and head alike, room temperature, first tightening", Caution = "A guide: friction of the bolts in hand is found on a torque tester. Oil on a torque meant for dry threads can break the bolt.")]
    public static FrictionRange Guide(
        [Quantity("lubricant", Dimension.Number)] Lubricant lubricant) => lubricant switch
        {
            Lubricant.Dry => new FrictionRange(0.14, 0.19, 0.24),
            Lubricant.AsDelivered => new FrictionRange(0.14, 0.16, 0.24),
            Lubricant.EngineOil => new FrictionRange(0.08, 0.13, 0.16),
            Lubricant.MolybdenumPaste => new FrictionRange(0.08, 0.10, 0.16),
            Lubricant.AntiSeize => new FrictionRange(0.08, 0.12, 0.16),
            Lubricant.Wax => new FrictionRange(0.04, 0.08, 0.10),
            Lubricant.ThreadLock => new FrictionRange(0.12, 0.16, 0.20),
            Lubricant.TitaniumPaste => new FrictionRange(0.10, 0.15, 0.20),
            _ => new FrictionRange(0.20, 0.25, 0.35),
        };
}
