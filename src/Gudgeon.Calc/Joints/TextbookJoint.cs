using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Joints;

/// <summary>Member materials of the fitted stiffness formula.</summary>
public enum MemberMaterial
{
    /// <summary>Steel.</summary>
    Steel,

    /// <summary>Aluminium.</summary>
    Aluminium,

    /// <summary>Copper.</summary>
    Copper,

    /// <summary>Grey cast iron.</summary>
    GreyIron,

    /// <summary>One pair of constants for all of them.</summary>
    General,
}

/// <summary>Whether the joint will be taken apart again.</summary>
public enum JointUse
{
    /// <summary>Taken apart and put together: 0.75 of proof.</summary>
    Reused,

    /// <summary>Left together: 0.90 of proof.</summary>
    Permanent,
}

/// <summary>Safety factors of a preloaded bolt in tension.</summary>
/// <param name="LoadFactor">Working load could grow by this factor to proof stress.</param>
/// <param name="YieldFactor">Proof stress over bolt stress.</param>
/// <param name="SeparationFactor">Working load could grow by this factor to separation.</param>
public readonly record struct BoltSafety(
    [Quantity("load factor", Dimension.Number, Symbol = "nL")] double LoadFactor,
    [Quantity("yielding factor", Dimension.Number, Symbol = "np")] double YieldFactor,
    [Quantity("separation factor", Dimension.Number, Symbol = "n0")] double SeparationFactor);

/// <summary>Bolted joints the textbook way: stiffness of bolt and members, 30° pressure frusta, stiffness constant.</summary>
public static class TextbookJoint
{
    private const string Book = "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th ed., ";

    /// <summary>Stiffness of a bolt within the grip, N/m.</summary>
    /// <param name="shankArea">Area of the shank, m².</param>
    /// <param name="threadArea">Tensile stress area of the thread, m².</param>
    /// <param name="shankLength">Shank in the grip, m.</param>
    /// <param name="threadLength">Thread in the grip, m.</param>
    /// <param name="modulus">Young's modulus, Pa.</param>
    [Formula("textbook bolt stiffness", "kb = Ad At E / (Ad lt + At ld)", Book + "eq. 8-17")]
    [return: Quantity("bolt stiffness", Dimension.ForcePerLength, "kN/mm", Symbol = "kb")]
    public static double BoltStiffness(
        [Quantity("shank area", Dimension.Area, "mm²", Symbol = "Ad", Above = 0)] double shankArea,
        [Quantity("thread area", Dimension.Area, "mm²", Symbol = "At", Above = 0)] double threadArea,
        [Quantity("shank length", Dimension.Length, "mm", Symbol = "ld", Min = 0)] double shankLength,
        [Quantity("thread length", Dimension.Length, "mm", Symbol = "lt", Min = 0)] double threadLength,
        [Quantity("elastic modulus", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus = 207e9)
    {
        FormulaDomainException.Unless(shankLength + threadLength > 0, "shank length: the grip is empty");
        return shankArea * threadArea * modulus / ((shankArea * threadLength) + (threadArea * shankLength));
    }

    /// <summary>Stiffness of one 30° frustum of the pressure cone, N/m.</summary>
    /// <param name="diameter">Bolt diameter, m.</param>
    /// <param name="thickness">Thickness of the frustum, m.</param>
    /// <param name="faceDiameter">Its smaller diameter, m; 1.5 d under a head.</param>
    /// <param name="modulus">Young's modulus, Pa.</param>
    [Formula("frustum stiffness", "k = 0.5774 π E d / ln((1.155 t + D - d) (D + d) / ((1.155 t + D + d) (D - d)))", Book + "eq. 8-20", Validity = "half apex angle 30°")]
    [return: Quantity("stiffness", Dimension.ForcePerLength, "kN/mm", Symbol = "k")]
    public static double Frustum(
        [Quantity("bolt diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("thickness", Dimension.Length, "mm", Symbol = "t", Above = 0)] double thickness,
        [Quantity("face diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double faceDiameter,
        [Quantity("elastic modulus", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus = 207e9)
    {
        FormulaDomainException.Unless(faceDiameter > diameter, "face diameter: must be greater than the bolt diameter");
        var widened = (1.155 * thickness) + faceDiameter;
        return 0.5774 * Math.PI * modulus * diameter
            / Math.Log((widened - diameter) * (faceDiameter + diameter) / ((widened + diameter) * (faceDiameter - diameter)));
    }

    /// <summary>Stiffness of members of one material under a head of 1.5 d, N/m.</summary>
    /// <param name="diameter">Bolt diameter, m.</param>
    /// <param name="grip">Grip, m.</param>
    /// <param name="modulus">Young's modulus of the members, Pa.</param>
    [Formula("textbook member stiffness", "km = 0.5774 π E d / (2 ln(5 (0.5774 l + 0.5 d) / (0.5774 l + 2.5 d)))", Book + "eq. 8-22", Validity = "both members of one material, washer face 1.5 d, half apex angle 30°")]
    [return: Quantity("member stiffness", Dimension.ForcePerLength, "kN/mm", Symbol = "km")]
    public static double MemberStiffness(
        [Quantity("bolt diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("grip", Dimension.Length, "mm", Symbol = "l", Above = 0)] double grip,
        [Quantity("elastic modulus of the members", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus) =>
        0.5774 * Math.PI * modulus * diameter
        / (2 * Math.Log(5 * ((0.5774 * grip) + (0.5 * diameter)) / ((0.5774 * grip) + (2.5 * diameter))));

    /// <summary>Stiffness of members from a fit to finite-element results, N/m.</summary>
    /// <param name="material">Material, which picks the constants.</param>
    /// <param name="diameter">Bolt diameter, m.</param>
    /// <param name="grip">Grip, m.</param>
    /// <param name="modulus">Young's modulus of the members, Pa.</param>
    [Formula("textbook member stiffness, fitted", "km = E d A exp(B d / l)", Book + "eq. 8-23 and table 8-8 (Wileman, Choudhury and Green 1991)", Validity = "fitted for d / l from 0.1 to 2, refused above 10; A and B: steel 0.78715, 0.62873; aluminium 0.79670, 0.63816; copper 0.79568, 0.63553; grey iron 0.77871, 0.61616; general 0.78952, 0.62914")]
    [return: Quantity("member stiffness", Dimension.ForcePerLength, "kN/mm", Symbol = "km")]
    public static double FittedMemberStiffness(
        [Quantity("member material", Dimension.Number)] MemberMaterial material,
        [Quantity("bolt diameter", Dimension.Length, "mm", Symbol = "d", Above = 0)] double diameter,
        [Quantity("grip", Dimension.Length, "mm", Symbol = "l", Above = 0)] double grip,
        [Quantity("elastic modulus of the members", Dimension.Pressure, "GPa", Symbol = "E", Above = 0)] double modulus)
    {
        FormulaDomainException.Unless(diameter <= 10 * grip, "grip: too short for the fitted formula, less than a tenth of the bolt diameter");
        var (a, b) = material switch
        {
            MemberMaterial.Steel => (0.78715, 0.62873),
            MemberMaterial.Aluminium => (0.79670, 0.63816),
            MemberMaterial.Copper => (0.79568, 0.63553),
            MemberMaterial.GreyIron => (0.77871, 0.61616),
            _ => (0.78952, 0.62914),
        };
        return modulus * diameter * a * Math.Exp(b * diameter / grip);
    }

    /// <summary>Stiffness of elements in series, N/m.</summary>
    /// <param name="stiffnesses">Stiffness of each, N/m.</param>
    [Formula("stiffness in series", "1 / k = sum(1 / ki)", Book + "eq. 8-18", Provenance = Provenance.Definition)]
    [return: Quantity("stiffness", Dimension.ForcePerLength, "kN/mm", Symbol = "k")]
    public static double InSeries(
        [Quantity("stiffnesses", Dimension.ForcePerLength, "kN/mm", Symbol = "ki", Above = 0)] double[] stiffnesses) =>
        1 / stiffnesses.Sum(k => 1 / k);

    /// <summary>Share of the working load that the bolt takes.</summary>
    /// <param name="boltStiffness">Bolt stiffness, N/m.</param>
    /// <param name="memberStiffness">Member stiffness, N/m.</param>
    [Formula("joint stiffness constant", "C = kb / (kb + km)", Book + "eq. 8-24(f)")]
    [return: Quantity("stiffness constant", Dimension.Number, Symbol = "C")]
    public static double StiffnessConstant(
        [Quantity("bolt stiffness", Dimension.ForcePerLength, "kN/mm", Symbol = "kb", Above = 0)] double boltStiffness,
        [Quantity("member stiffness", Dimension.ForcePerLength, "kN/mm", Symbol = "km", Above = 0)] double memberStiffness) =>
        boltStiffness / (boltStiffness + memberStiffness);

    /// <summary>Recommended preload, N.</summary>
    /// <param name="stressArea">Tensile stress area, m².</param>
    /// <param name="proofStress">Proof stress, Pa.</param>
    /// <param name="use">Reused or permanent joint.</param>
    [Formula("textbook preload", "Fi = 0.75 At Sp", Book + "eq. 8-31", Validity = "reused joints as written; permanent joints 0.90")]
    [return: Quantity("preload", Dimension.Force, "kN", Symbol = "Fi")]
    public static double Preload(
        [Quantity("stress area", Dimension.Area, "mm²", Symbol = "At", Above = 0)] double stressArea,
        [Quantity("proof stress", Dimension.Pressure, "MPa", Symbol = "Sp", Above = 0)] double proofStress,
        [Quantity("use", Dimension.Number)] JointUse use = JointUse.Reused) =>
        (use == JointUse.Reused ? 0.75 : 0.90) * stressArea * proofStress;

    /// <summary>Bolt stress over preload and share of the working load, Pa.</summary>
    /// <param name="stiffnessConstant">Stiffness constant C.</param>
    /// <param name="stressArea">Tensile stress area, m².</param>
    /// <param name="preload">Preload, N.</param>
    /// <param name="load">Working load per bolt, N.</param>
    [Formula("textbook bolt stress", "σb = (C P + Fi) / At", Book + "eq. 8-24 and 8-25", Validity = "until the joint opens")]
    [return: Quantity("bolt stress", Dimension.Pressure, "MPa", Symbol = "σb")]
    public static double Stress(
        [Quantity("stiffness constant", Dimension.Number, Symbol = "C", Min = 0, Max = 1)] double stiffnessConstant,
        [Quantity("stress area", Dimension.Area, "mm²", Symbol = "At", Above = 0)] double stressArea,
        [Quantity("preload", Dimension.Force, "kN", Symbol = "Fi", Min = 0)] double preload,
        [Quantity("load per bolt", Dimension.Force, "kN", Symbol = "P", Min = 0)] double load = 0) =>
        ((stiffnessConstant * load) + preload) / stressArea;

    /// <summary>Safety of a preloaded bolt against proof load, yielding and separation.</summary>
    /// <param name="stiffnessConstant">Stiffness constant C.</param>
    /// <param name="stressArea">Tensile stress area, m².</param>
    /// <param name="proofStress">Proof stress, Pa.</param>
    /// <param name="preload">Preload, N.</param>
    /// <param name="load">Working load per bolt, N.</param>
    [Formula("textbook bolt safety", "nL = (Sp At - Fi) / (C P); np = Sp At / (C P + Fi); n0 = Fi / (P (1 - C))", Book + "eq. 8-28 to 8-30")]
    public static BoltSafety Safety(
        [Quantity("stiffness constant", Dimension.Number, Symbol = "C", Above = 0, Below = 1)] double stiffnessConstant,
        [Quantity("stress area", Dimension.Area, "mm²", Symbol = "At", Above = 0)] double stressArea,
        [Quantity("proof stress", Dimension.Pressure, "MPa", Symbol = "Sp", Above = 0)] double proofStress,
        [Quantity("preload", Dimension.Force, "kN", Symbol = "Fi", Min = 0)] double preload,
        [Quantity("load per bolt", Dimension.Force, "kN", Symbol = "P", Above = 0)] double load)
    {
        var proofLoad = proofStress * stressArea;
        var boltShare = stiffnessConstant * load;
        return new BoltSafety((proofLoad - preload) / boltShare, proofLoad / (boltShare + preload), preload / (load * (1 - stiffnessConstant)));
    }

    /// <summary>Bolts that a joint needs for a wanted load factor; round up.</summary>
    /// <param name="stiffnessConstant">Stiffness constant C.</param>
    /// <param name="stressArea">Tensile stress area, m².</param>
    /// <param name="proofStress">Proof stress, Pa.</param>
    /// <param name="preload">Preload per bolt, N.</param>
    /// <param name="load">Working load of the whole joint, N.</param>
    /// <param name="loadFactor">Load factor wanted.</param>
    [Formula("bolts for a load factor", "N = C nL P / (Sp At - Fi)", Book + "eq. 8-28 solved for the number of bolts")]
    [return: Quantity("bolts", Dimension.Number, Symbol = "N")]
    public static double BoltsNeeded(
        [Quantity("stiffness constant", Dimension.Number, Symbol = "C", Above = 0, Below = 1)] double stiffnessConstant,
        [Quantity("stress area", Dimension.Area, "mm²", Symbol = "At", Above = 0)] double stressArea,
        [Quantity("proof stress", Dimension.Pressure, "MPa", Symbol = "Sp", Above = 0)] double proofStress,
        [Quantity("preload per bolt", Dimension.Force, "kN", Symbol = "Fi", Min = 0)] double preload,
        [Quantity("load on the joint", Dimension.Force, "kN", Symbol = "P", Above = 0)] double load,
        [Quantity("load factor", Dimension.Number, Symbol = "nL", Above = 0)] double loadFactor = 2)
    {
        FormulaDomainException.Unless(preload < proofStress * stressArea, "preload per bolt: must be less than the proof load");
        return stiffnessConstant * loadFactor * load / ((proofStress * stressArea) - preload);
    }
}
