namespace Gudgeon.Book.Checks.Surfaces;

/// <summary>What can hurt while surfaces are treated, beside the step that it belongs to.</summary>
internal static class SurfaceCautions
{
    /// <summary>Peening and blasting (US 29 CFR 1910.94(a) and 1910.1053, UK COSHH; AMS-S-13165 3.1.3).</summary>
    public const string Peening = "Closed cabinet, interlocked door, extraction running, eye and hearing protection; never silica sand. Broken beads are replaced: glass dust is still dust. Peening of parts on which a life hangs is for a qualified peener; the agreed specification goes first.";

    /// <summary>Dust of light metals in the cabinet (NFPA 484, from memory).</summary>
    public const string LightMetal = "Dust of titanium, magnesium and aluminium burns: clean the cabinet and its filter of other metals first, no sparks, dry sand or class D powder at hand, no water and no CO₂.";

    /// <summary>The bowl itself.</summary>
    public const string Vibratory = "Keep hands out of a running bowl; skin and eye protection against compound and slurry, and a waste contractor for the sludge.";

    /// <summary>Acid vibratory compounds (EH40: oxalic acid 1 mg/m³, from memory).</summary>
    public const string Acid = "Acid compound, oxalic or phosphoric: gloves, goggles, ventilation, a waste contractor, the supplier's data sheet read. Rinse and inhibit at once, then treat the part as full of hydrogen.";

    /// <summary>Hydrogen (ASTM B850, ISO 9588, ISO 4042).</summary>
    public const string Hydrogen = "Hydrogen makes hard steel brittle. No bake rescues a cracked part and no bake guarantees freedom: crack-test afterwards. Springs and class 12.9 bolts are not plated in house. The oven and the part burn: gloves, and nothing with oil on it goes in.";

    /// <summary>Baths.</summary>
    public const string Bath = "Acids, alkalis and chromates of plating and anodising burn and poison: a plater with a licence does this, not the bench. No fume of a bath near bearings or bores.";

    /// <summary>Hot coats.</summary>
    public const string HotCoat = "Parts go in clean, dry and free of plating, and come out hot; trapped oil flashes.";
}
