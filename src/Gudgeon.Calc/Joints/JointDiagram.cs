using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>How a working force divides between bolt and parts.</summary>
/// <param name="ConcentricFactor">Load factor for force applied under the head, ΦK.</param>
/// <param name="LoadFactor">Load factor at the real place of the force, Φn.</param>
/// <param name="AdditionalForce">What the bolt gets on top of its preload, N.</param>
/// <param name="PartsRelief">What the parts lose of their clamp, N.</param>
public readonly record struct LoadShare(
    [Quantity("concentric load factor", Dimension.Number, Symbol = "ΦK")] double ConcentricFactor,
    [Quantity("load factor", Dimension.Number, Symbol = "Φn")] double LoadFactor,
    [Quantity("additional bolt force", Dimension.Force, "N", Symbol = "FSA")] double AdditionalForce,
    [Quantity("clamp relieved", Dimension.Force, "N", Symbol = "FPA")] double PartsRelief);

/// <summary>Preload that a joint needs when it is put together.</summary>
/// <param name="Least">Least assembly preload, N.</param>
/// <param name="Greatest">Greatest assembly preload that the tightening method may give, N.</param>
public readonly record struct RequiredPreload(
    [Quantity("least assembly preload", Dimension.Force, "kN", Symbol = "FMmin")] double Least,
    [Quantity("greatest assembly preload", Dimension.Force, "kN", Symbol = "FMmax")] double Greatest);

/// <summary>The joint diagram: bolt and parts as two springs.</summary>
public static class JointDiagram
{
    /// <summary>Load factor and additional bolt force.</summary>
    /// <param name="boltResilience">Resilience of the bolt, m/N.</param>
    /// <param name="partResilience">Resilience of the clamped parts, m/N.</param>
    /// <param name="axialForce">Working force that pulls the joint apart, per bolt, N.</param>
    /// <param name="introduction">Load introduction factor n: 1 under the head, 0 in the parting plane.</param>
    [Formula("bolt load factor", "ΦK = δP / (δS + δP); Φn = n ΦK; FSA = Φn FA; FPA = FA - FSA", "VDI 2230-1:2003, R3", Provenance = Provenance.FromMemory, Validity = "until the joint opens")]
    public static LoadShare LoadFactor(
        [Quantity("bolt resilience", Dimension.Compliance, "mm/N", Symbol = "δS", Above = 0)] double boltResilience,
        [Quantity("resilience of the parts", Dimension.Compliance, "mm/N", Symbol = "δP", Above = 0)] double partResilience,
        [Quantity("axial force per bolt", Dimension.Force, "kN", Symbol = "FA")] double axialForce,
        [Quantity("load introduction factor", Dimension.Number, Symbol = "n", Min = 0, Max = 1)] double introduction = 1)
    {
        var concentric = partResilience / (boltResilience + partResilience);
        var factor = introduction * concentric;
        return new LoadShare(concentric, factor, factor * axialForce, (1 - factor) * axialForce);
    }

    /// <summary>Preload lost when rough faces bed in, N.</summary>
    /// <param name="embedding">Sum of the embedding of all faces and the thread, m.</param>
    /// <param name="boltResilience">Resilience of the bolt, m/N.</param>
    /// <param name="partResilience">Resilience of the clamped parts, m/N.</param>
    [Formula("embedding loss", "FZ = fZ / (δS + δP)", "VDI 2230-1:2003, R4", Provenance = Provenance.FromMemory)]
    [return: Quantity("preload lost", Dimension.Force, "N", Symbol = "FZ")]
    public static double EmbeddingLoss(
        [Quantity("embedding", Dimension.Length, "µm", Symbol = "fZ", Min = 0)] double embedding,
        [Quantity("bolt resilience", Dimension.Compliance, "mm/N", Symbol = "δS", Above = 0)] double boltResilience,
        [Quantity("resilience of the parts", Dimension.Compliance, "mm/N", Symbol = "δP", Above = 0)] double partResilience) =>
        embedding / (boltResilience + partResilience);

    /// <summary>Assembly preload that leaves the wanted clamp after relief, embedding and temperature.</summary>
    /// <param name="clamp">Clamp that must remain, N.</param>
    /// <param name="axialForce">Working force per bolt, N.</param>
    /// <param name="loadFactor">Load factor Φn.</param>
    /// <param name="embeddingLoss">Preload lost by embedding, N.</param>
    /// <param name="tighteningFactor">αA, greatest over least preload of the tightening method.</param>
    /// <param name="thermalLoss">Preload lost by temperature, N; negative for a gain.</param>
    [Formula("required assembly preload", "FMmin = FK + (1 - Φn) FA + FZ + FT; FMmax = αA FMmin", "VDI 2230-1:2003, R5 and R6", Provenance = Provenance.FromMemory)]
    public static RequiredPreload Required(
        [Quantity("clamp to remain", Dimension.Force, "kN", Symbol = "FK", Min = 0)] double clamp,
        [Quantity("axial force per bolt", Dimension.Force, "kN", Symbol = "FA", Min = 0)] double axialForce,
        [Quantity("load factor", Dimension.Number, Symbol = "Φn", Min = 0, Max = 1)] double loadFactor,
        [Quantity("embedding loss", Dimension.Force, "N", Symbol = "FZ", Min = 0)] double embeddingLoss,
        [Quantity("tightening factor", Dimension.Number, Symbol = "αA", Min = 1)] double tighteningFactor,
        [Quantity("thermal loss", Dimension.Force, "N", Symbol = "FT")] double thermalLoss = 0)
    {
        var least = clamp + ((1 - loadFactor) * axialForce) + embeddingLoss + thermalLoss;
        return new RequiredPreload(least, tighteningFactor * least);
    }

    /// <summary>Angle from a snug preload to the target, rad.</summary>
    /// <param name="snug">Preload at snug torque, N.</param>
    /// <param name="target">Preload wanted, N.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="boltResilience">Resilience of the bolt, m/N.</param>
    /// <param name="partResilience">Resilience of the clamped parts, m/N.</param>
    [Formula("tightening angle from snug", "θ = 2 π (F - F0) (δS + δP) / P", "joint diagram and one pitch per turn; VDI 2230-1:2003", Provenance = Provenance.Definition, Validity = "while bolt and parts stay elastic")]
    [return: Quantity("tightening angle", Dimension.Angle, "°", Symbol = "θ")]
    public static double Angle(
        [Quantity("snug preload", Dimension.Force, "kN", Symbol = "F0", Min = 0)] double snug,
        [Quantity("preload wanted", Dimension.Force, "kN", Symbol = "F", Min = 0)] double target,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "P", Above = 0)] double pitch,
        [Quantity("bolt resilience", Dimension.Compliance, "mm/N", Symbol = "δS", Above = 0)] double boltResilience,
        [Quantity("resilience of the parts", Dimension.Compliance, "mm/N", Symbol = "δP", Min = 0)] double partResilience)
    {
        FormulaDomainException.Unless(target >= snug, "preload wanted: must not be less than the snug preload");
        return 2 * Math.PI * (target - snug) * (boltResilience + partResilience) / pitch;
    }

    /// <summary>Stretch of a bolt under preload, m.</summary>
    /// <param name="preload">Bolt force, N.</param>
    /// <param name="boltResilience">Resilience of the bolt, m/N.</param>
    [Formula("bolt stretch", "fS = F δS", "definition of resilience; VDI 2230-1:2003, section 5.1.1", Provenance = Provenance.Definition, Caution = "For what a gauge over both ends reads take the resilience without the mating thread.")]
    [return: Quantity("bolt stretch", Dimension.Length, "mm", Symbol = "fS")]
    public static double Stretch(
        [Quantity("preload", Dimension.Force, "kN", Symbol = "F", Min = 0)] double preload,
        [Quantity("bolt resilience", Dimension.Compliance, "mm/N", Symbol = "δS", Above = 0)] double boltResilience) =>
        preload * boltResilience;

    /// <summary>Preload from a measured stretch, N.</summary>
    /// <param name="stretch">Stretch, m.</param>
    /// <param name="boltResilience">Resilience of the bolt, m/N.</param>
    [Formula("preload from stretch", "F = fS / δS", "definition of resilience; VDI 2230-1:2003, section 5.1.1", Provenance = Provenance.Definition, Caution = "For a stretch read over both ends take the resilience without the mating thread, which the gauge does not see.")]
    [return: Quantity("preload", Dimension.Force, "kN", Symbol = "F")]
    public static double FromStretch(
        [Quantity("bolt stretch", Dimension.Length, "mm", Symbol = "fS", Min = 0)] double stretch,
        [Quantity("bolt resilience", Dimension.Compliance, "mm/N", Symbol = "δS", Above = 0)] double boltResilience) =>
        stretch / boltResilience;

    /// <summary>Change of preload when bolt and parts warm up, N.</summary>
    /// <param name="grip">Clamped length, m.</param>
    /// <param name="partExpansion">Expansion coefficient of the parts, 1/K.</param>
    /// <param name="boltExpansion">Expansion coefficient of the bolt, 1/K.</param>
    /// <param name="partRise">Temperature rise of the parts, K.</param>
    /// <param name="boltRise">Temperature rise of the bolt, K.</param>
    /// <param name="boltResilience">Resilience of the bolt, m/N.</param>
    /// <param name="partResilience">Resilience of the clamped parts, m/N.</param>
    [Formula("thermal preload change", "ΔF = lK (αP ΔTP - αS ΔTS) / (δS + δP)", "VDI 2230-1:2003, section 5.4.2.3, moduli held constant", Provenance = Provenance.FromMemory)]
    [return: Quantity("preload change", Dimension.Force, "N", Symbol = "ΔF")]
    public static double ThermalChange(
        [Quantity("grip", Dimension.Length, "mm", Symbol = "lK", Above = 0)] double grip,
        [Quantity("expansion of the parts", Dimension.ThermalExpansion, "1/K", Symbol = "αP")] double partExpansion,
        [Quantity("expansion of the bolt", Dimension.ThermalExpansion, "1/K", Symbol = "αS")] double boltExpansion,
        [Quantity("temperature rise of the parts", Dimension.TemperatureDifference, "K", Symbol = "ΔTP")] double partRise,
        [Quantity("temperature rise of the bolt", Dimension.TemperatureDifference, "K", Symbol = "ΔTS")] double boltRise,
        [Quantity("bolt resilience", Dimension.Compliance, "mm/N", Symbol = "δS", Above = 0)] double boltResilience,
        [Quantity("resilience of the parts", Dimension.Compliance, "mm/N", Symbol = "δP", Min = 0)] double partResilience) =>
        grip * ((partExpansion * partRise) - (boltExpansion * boltRise)) / (boltResilience + partResilience);
}
