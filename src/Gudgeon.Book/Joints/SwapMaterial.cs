using System.Globalization;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Joints;
using Gudgeon.Calc.Materials;

namespace Gudgeon.Book.Joints;

/// <summary>What bolts may be made of instead.</summary>
/// <param name="Name">"titanium", "steel 12.9".</param>
/// <param name="Cautions">What to see to.</param>
public sealed record SwapMaterial(string Name, IReadOnlyList<string> Cautions)
{
    private static readonly string[] OnTitanium =
    [
        "Titanium galls on titanium, stainless steel and aluminium: anti-seize paste on thread and head, a hard washer under the head, and slow turning; a thread that squeaks is stopped at once.",
        "Titanium beside aluminium or magnesium eats the softer metal where water stands: paste or sealant in the hole, and no bare titanium in a magnesium case.",
        "No cadmium plating against titanium, and no chlorinated cleaner on it: both can crack it.",
        "Turned or ground titanium must keep a rolled thread and a radius under the head: a sharp corner halves what it bears.",
        "Grade 5 from a maker who gives its batch and its strength; bolts without papers are ornaments.",
    ];

    private static readonly string[] OnHardSteel =
    [
        "Class 12.9 does not bear acid or plating without the relief bake, nor a corroding place: it cracks by hydrogen days later.",
        "More preload wants more under the head and more thread: look at the pressure on the face and at the engagement.",
    ];

    private static readonly string[] OnAluminium = ["Aluminium bolts are for covers and brackets that hold themselves up: cold from 100 °C up they lose their preload."];

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<SwapMaterial> All =
    [
        new("titanium", OnTitanium) { Grade = MaterialGrade.TitaniumTi6Al4V, Lubricant = Calc.Joints.Lubricant.TitaniumPaste },
        new("steel 8.8", []) { Class = PropertyClass.Class8_8 },
        new("steel 10.9", []) { Class = PropertyClass.Class10_9 },
        new("steel 12.9", OnHardSteel) { Class = PropertyClass.Class12_9 },
        new("17-4 PH", ["Precipitation-hardened stainless galls like other stainless steel: paste, always."]) { Grade = MaterialGrade.Steel174PhH900, Lubricant = Calc.Joints.Lubricant.AntiSeize },
        new("nickel 718", OnHardSteel[1..]) { Grade = MaterialGrade.Nickel718, Lubricant = Calc.Joints.Lubricant.AntiSeize },
        new("aluminium 7075", OnAluminium) { Grade = MaterialGrade.Aluminium7075T6, Lubricant = Calc.Joints.Lubricant.AntiSeize },
    ];

    /// <summary>The material in the table; null for a steel of a property class.</summary>
    public MaterialGrade? Grade { get; init; }

    /// <summary>Property class; null for others.</summary>
    public PropertyClass? Class { get; init; }

    /// <summary>What it must run on; null where the book's lubricant stays.</summary>
    public Lubricant? Lubricant { get; init; }

    /// <summary>The material of this name.</summary>
    /// <exception cref="BadInputException">There is none.</exception>
    public static SwapMaterial Of(string name) => All.FirstOrDefault(m => string.Equals(m.Name, name, StringComparison.OrdinalIgnoreCase))
        ?? throw new BadInputException($"material: given '{name}', wanted one of {string.Join(", ", All.Select(m => m.Name))}");

    /// <summary>Values of a joint whose bolts are of it, by path.</summary>
    /// <param name="key">The joint.</param>
    /// <param name="diameter">Thread diameter, m.</param>
    public IReadOnlyDictionary<string, KnownValue> Values(string key, double diameter)
    {
        var values = new Dictionary<string, KnownValue>(StringComparer.Ordinal);
        void Set(Field field, string text) => values[field.At(key)] = KnownValue.Read(field, text);
        var (yield, tensile, modulus, expansion, density) = Strengths(diameter);
        Set(Joint.YieldStrength, Written(yield / 1e6, "MPa"));
        Set(Joint.TensileStrength, Written(tensile / 1e6, "MPa"));
        Set(Joint.Modulus, Written(modulus / 1e9, "GPa"));
        Set(Joint.Expansion, Written(expansion * 1e6, "µm/(m·K)"));
        Set(Joint.Density, Written(density, "kg/m³"));
        if (Class is not null)
        {
            Set(Joint.FatigueStrength, Written(BoltFatigue.RolledBefore(diameter) / 1e6, "MPa"));
        }

        if (Lubricant is { } lubricant)
        {
            var friction = Written(BoltFriction.Guide(lubricant).Usual, "");
            Set(Joint.Lubricant, EnumWords.Of(lubricant.ToString()));
            Set(Joint.ThreadFriction, friction);
            Set(Joint.HeadFriction, friction);
        }

        return values;
    }

    private (double Yield, double Tensile, double Modulus, double Expansion, double Density) Strengths(double diameter)
    {
        if (Grade is { } grade)
        {
            var metal = MaterialTable.Properties(grade);
            return (metal.Yield, metal.Tensile, metal.Modulus, metal.Expansion, metal.Density);
        }

        var steel = PropertyClasses.Strength(Class!.Value, diameter);
        return (steel.Yield, steel.Tensile, 205e9, 11.5e-6, 7850);
    }

    private static string Written(double value, string unit) => $"{value.ToString("0.######", CultureInfo.InvariantCulture)} {unit}".Trim();
}
