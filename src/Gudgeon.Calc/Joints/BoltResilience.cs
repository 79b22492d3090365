using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Head of a bolt.</summary>
public enum BoltHead
{
    /// <summary>Hexagon head; deforms like 0.5 d of shank.</summary>
    Hexagon,

    /// <summary>Cylinder head with socket; deforms like 0.4 d of shank.</summary>
    Socket,

    /// <summary>No head: a stud whose far thread is accounted for separately.</summary>
    None,
}

/// <summary>What the bolt's thread is screwed into.</summary>
public enum MatingThread
{
    /// <summary>A tapped hole; the part deforms like 0.33 d.</summary>
    TappedHole,

    /// <summary>A nut; it deforms like 0.4 d.</summary>
    Nut,
}

/// <summary>Resilience of a bolt by its parts.</summary>
/// <param name="Head">Head, m/N.</param>
/// <param name="Shank">Unthreaded shank, m/N.</param>
/// <param name="Thread">Free thread, m/N.</param>
/// <param name="Engaged">Engaged thread of the bolt, m/N.</param>
/// <param name="Mating">Engaged thread of the nut or tapped hole, m/N.</param>
/// <param name="Total">Sum, m/N.</param>
/// <param name="Gauged">What a gauge over both ends of the bolt sees, m/N.</param>
public readonly record struct BoltResilienceParts(
    [Quantity("resilience of the head", Dimension.Compliance, "mm/N", Symbol = "δK")] double Head,
    [Quantity("resilience of the shank", Dimension.Compliance, "mm/N", Symbol = "δ1")] double Shank,
    [Quantity("resilience of the free thread", Dimension.Compliance, "mm/N", Symbol = "δG")] double Thread,
    [Quantity("resilience of the engaged thread", Dimension.Compliance, "mm/N", Symbol = "δ3")] double Engaged,
    [Quantity("resilience of the mating thread", Dimension.Compliance, "mm/N", Symbol = "δM")] double Mating,
    [Quantity("bolt resilience", Dimension.Compliance, "mm/N", Symbol = "δS")] double Total,
    [Quantity("resilience over both ends", Dimension.Compliance, "mm/N", Symbol = "δL", Help = "what a gauge over both ends of the bolt sees")] double Gauged);

/// <summary>How much a bolt gives per newton.</summary>
public static class BoltResilience
{
    private const string Expression = "δK = lK / (E AN); δ1 = l1 / (E A1); δG = lG / (E A3); δ3 = 0.5 d / (E A3); δM = lM / (EM AN); δL = δK + δ1 + δG + δ3; δS = δL + δM";
    private const string Source = "VDI 2230-1:2003, section 5.1.1";
    private const string Validity = "AN = π d^2 / 4, A3 at the thread root, A1 of the shank; lK 0.5 d hexagon, 0.4 d socket; lM 0.33 d tapped hole, 0.4 d nut";

    /// <summary>Resilience of a bolt with one plain shank.</summary>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="shankLength">Length of the unthreaded shank, m.</param>
    /// <param name="shankDiameter">Diameter of the shank, m.</param>
    /// <param name="threadLength">Free thread within the grip, m.</param>
    /// <param name="modulus">Young's modulus of the bolt, Pa.</param>
    /// <param name="matingModulus">Young's modulus of the nut or tapped part, Pa.</param>
    /// <param name="head">Head form.</param>
    /// <param name="mating">Nut or tapped hole.</param>
    [Formula("bolt resilience", Expression, Source, Provenance = Provenance.FromMemory, Validity = Validity)]
    public static BoltResilienceParts OfBolt(
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch,
        [Quantity("shank length", Dimension.Length, "mm", Symbol = "l1", Min = 0)] double shankLength,
        [Quantity("shank diameter", Dimension.Length, "mm", Symbol = "d1", Above = 0)] double shankDiameter,
        [Quantity("free thread length", Dimension.Length, "mm", Symbol = "lG", Min = 0)] double threadLength,
        [Quantity("elastic modulus of the bolt", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus,
        [Quantity("elastic modulus of the mating thread", Dimension.Pressure, "GPa", Symbol = "EM", Above = 0)] double matingModulus,
        [Quantity("head form", Dimension.Number)] BoltHead head = BoltHead.Hexagon,
        [Quantity("mating thread", Dimension.Number)] MatingThread mating = MatingThread.TappedHole) =>
        Parts(diameter, pitch, Bar(shankLength, modulus, shankDiameter), threadLength, modulus, matingModulus, head, mating);

    /// <summary>Resilience of a bolt whose shank has several diameters (waisted studs).</summary>
    /// <param name="diameter">Thread diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="shankLengths">Lengths of the shank's parts, m.</param>
    /// <param name="shankDiameters">Their diameters in the same order, m.</param>
    /// <param name="threadLength">Free thread within the grip, m.</param>
    /// <param name="modulus">Young's modulus of the bolt, Pa.</param>
    /// <param name="matingModulus">Young's modulus of the nut or tapped part, Pa.</param>
    /// <param name="head">Head form.</param>
    /// <param name="mating">Nut or tapped hole.</param>
    [Formula("stepped bolt resilience", Expression, Source, Provenance = Provenance.FromMemory, Validity = Validity + "; δ1 is the sum over the parts of the shank")]
    public static BoltResilienceParts OfSteppedBolt(
        [Quantity("thread diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch,
        [Quantity("shank lengths", Dimension.Length, "mm", Symbol = "l1", Min = 0)] double[] shankLengths,
        [Quantity("shank diameters", Dimension.Length, "mm", Symbol = "d1", Above = 0)] double[] shankDiameters,
        [Quantity("free thread length", Dimension.Length, "mm", Symbol = "lG", Min = 0)] double threadLength,
        [Quantity("elastic modulus of the bolt", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus,
        [Quantity("elastic modulus of the mating thread", Dimension.Pressure, "GPa", Symbol = "EM", Above = 0)] double matingModulus,
        [Quantity("head form", Dimension.Number)] BoltHead head = BoltHead.Hexagon,
        [Quantity("mating thread", Dimension.Number)] MatingThread mating = MatingThread.TappedHole)
    {
        FormulaDomainException.Unless(shankLengths.Length == shankDiameters.Length, "shank diameters: as many as shank lengths are wanted");
        var shank = 0.0;
        for (var i = 0; i < shankLengths.Length; i++)
        {
            shank += Bar(shankLengths[i], modulus, shankDiameters[i]);
        }

        return Parts(diameter, pitch, shank, threadLength, modulus, matingModulus, head, mating);
    }

    /// <summary>Stretch of a plain bar under load, m.</summary>
    /// <param name="load">Load, N.</param>
    /// <param name="length">Length, m.</param>
    /// <param name="area">Cross-section, m².</param>
    /// <param name="modulus">Young's modulus, Pa.</param>
    [Formula("bar stretch", "ΔL = F L / (A E)", "Hooke's law", Provenance = Provenance.Definition)]
    [return: Quantity("stretch", Dimension.Length, "mm", Symbol = "ΔL")]
    public static double Stretch(
        [Quantity("load", Dimension.Force, "kN", Symbol = "F")] double load,
        [Quantity("length", Dimension.Length, "mm", Symbol = "L", Min = 0)] double length,
        [Quantity("cross-section", Dimension.Area, "mm²", Symbol = "A", Above = 0)] double area,
        [Quantity("elastic modulus", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus = 205e9) =>
        load * length / (area * modulus);

    private static BoltResilienceParts Parts(double diameter, double pitch, double shank, double threadLength, double modulus, double matingModulus, BoltHead head, MatingThread mating)
    {
        var core = MetricThread.Sizes(diameter, pitch).CoreDiameter;
        var headLength = head switch
        {
            BoltHead.Hexagon => 0.5 * diameter,
            BoltHead.Socket => 0.4 * diameter,
            _ => 0,
        };
        var headPart = Bar(headLength, modulus, diameter);
        var thread = Bar(threadLength, modulus, core);
        var engaged = Bar(0.5 * diameter, modulus, core);
        var matingPart = Bar((mating == MatingThread.Nut ? 0.4 : 0.33) * diameter, matingModulus, diameter);

        // δ3 is what the bolt itself gives in the engaged thread, up to its end: its force dies out over about d, which is
        // 0.5 d of core under the whole of it. δM is how far the flanks and the nut or the tapped part give way beside it:
        // that moves the bolt as a whole and makes it no longer, so that a gauge over both ends does not see it.
        var gauged = headPart + shank + thread + engaged;
        return new BoltResilienceParts(headPart, shank, thread, engaged, matingPart, gauged + matingPart, gauged);
    }

    private static double Bar(double length, double modulus, double diameter) => length / (modulus * MetricThread.Circle(diameter));
}
