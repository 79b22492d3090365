using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>Durations and centres that follow from four valve events.</summary>
/// <param name="InletDuration">Crank angle, rad.</param>
/// <param name="ExhaustDuration">Crank angle, rad.</param>
/// <param name="InletCentre">After top dead centre, rad.</param>
/// <param name="ExhaustCentre">Before top dead centre, rad.</param>
/// <param name="Separation">Angle between the lobes on the cam, rad.</param>
/// <param name="Overlap">Crank angle with both valves open, rad; negative when there is none.</param>
public readonly record struct CamEvents(
    [Quantity("inlet duration", Dimension.Angle, "°", Symbol = "DI")] double InletDuration,
    [Quantity("exhaust duration", Dimension.Angle, "°", Symbol = "DE")] double ExhaustDuration,
    [Quantity("inlet lobe centre after TDC", Dimension.Angle, "°", Symbol = "CI")] double InletCentre,
    [Quantity("exhaust lobe centre before TDC", Dimension.Angle, "°", Symbol = "CE")] double ExhaustCentre,
    [Quantity("lobe separation", Dimension.Angle, "°", Symbol = "LS", Help = "cam degrees")] double Separation,
    [Quantity("overlap", Dimension.Angle, "°", Symbol = "OL")] double Overlap);

/// <summary>Opening and closing of one valve.</summary>
/// <param name="Opens">Inlet: before TDC. Exhaust: before BDC. rad.</param>
/// <param name="Closes">Inlet: after BDC. Exhaust: after TDC. rad.</param>
public readonly record struct ValveEvents(
    [Quantity("opens before dead centre", Dimension.Angle, "°", Symbol = "O")] double Opens,
    [Quantity("closes after dead centre", Dimension.Angle, "°", Symbol = "S")] double Closes);

/// <summary>Cam timing arithmetic, symmetric lobes, crank angles unless a name says cam.</summary>
public static class CamTiming
{
    /// <summary>Durations, lobe centres, separation and overlap from the four events.</summary>
    /// <param name="inletOpens">Before top dead centre, rad.</param>
    /// <param name="inletCloses">After bottom dead centre, rad.</param>
    /// <param name="exhaustOpens">Before bottom dead centre, rad.</param>
    /// <param name="exhaustCloses">After top dead centre, rad.</param>
    [Formula("cam timing", "DI = IO + π + IC; DE = EO + π + EC; CI = DI / 2 - IO; CE = DE / 2 - EC; LS = (CI + CE) / 2; OL = IO + EC", "arithmetic of crank angles", Provenance = Provenance.Definition, Validity = "all events at one check height; centres are those of symmetric lobes")]
    public static CamEvents FromEvents(
        [Quantity("inlet opens before TDC", Dimension.Angle, "°", Symbol = "IO", Min = -Math.PI, Max = Math.PI)] double inletOpens,
        [Quantity("inlet closes after BDC", Dimension.Angle, "°", Symbol = "IC", Min = -Math.PI, Max = Math.PI)] double inletCloses,
        [Quantity("exhaust opens before BDC", Dimension.Angle, "°", Symbol = "EO", Min = -Math.PI, Max = Math.PI)] double exhaustOpens,
        [Quantity("exhaust closes after TDC", Dimension.Angle, "°", Symbol = "EC", Min = -Math.PI, Max = Math.PI)] double exhaustCloses)
    {
        var inlet = inletOpens + Math.PI + inletCloses;
        var exhaust = exhaustOpens + Math.PI + exhaustCloses;
        var inletCentre = (inlet / 2) - inletOpens;
        var exhaustCentre = (exhaust / 2) - exhaustCloses;
        return new CamEvents(inlet, exhaust, inletCentre, exhaustCentre, (inletCentre + exhaustCentre) / 2, inletOpens + exhaustCloses);
    }

    /// <summary>Events of a symmetric inlet lobe from its centre and duration.</summary>
    /// <param name="centre">Lobe centre after top dead centre, rad.</param>
    /// <param name="duration">Duration, crank rad.</param>
    [Formula("inlet events from lobe centre", "O = D / 2 - C; S = D / 2 + C - π", "arithmetic of crank angles", Provenance = Provenance.Definition, Validity = "symmetric lobe")]
    public static ValveEvents InletEvents(
        [Quantity("inlet lobe centre after TDC", Dimension.Angle, "°", Symbol = "C", Min = 0, Max = Math.PI)] double centre,
        [Quantity("duration", Dimension.Angle, "°", Symbol = "D", Above = 0, Max = 3 * Math.PI)] double duration) =>
        new((duration / 2) - centre, (duration / 2) + centre - Math.PI);

    /// <summary>Events of a symmetric exhaust lobe from its centre and duration.</summary>
    /// <param name="centre">Lobe centre before top dead centre, rad.</param>
    /// <param name="duration">Duration, crank rad.</param>
    [Formula("exhaust events from lobe centre", "O = D / 2 + C - π; S = D / 2 - C", "arithmetic of crank angles", Provenance = Provenance.Definition, Validity = "symmetric lobe")]
    public static ValveEvents ExhaustEvents(
        [Quantity("exhaust lobe centre before TDC", Dimension.Angle, "°", Symbol = "C", Min = 0, Max = Math.PI)] double centre,
        [Quantity("duration", Dimension.Angle, "°", Symbol = "D", Above = 0, Max = 3 * Math.PI)] double duration) =>
        new((duration / 2) + centre - Math.PI, (duration / 2) - centre);

    /// <summary>Lobe centre from the two crank angles at which the lift is equal, rad.</summary>
    /// <param name="opening">Crank angle on the opening flank, rad.</param>
    /// <param name="closing">Crank angle on the closing flank at the same lift, rad.</param>
    [Formula("lobe centre from equal lift", "C = (A1 + A2) / 2", "mean of the two flanks", Provenance = Provenance.Definition, Validity = "symmetric lobe; for any other, note the lift at which it was read", Caution = "Turn the crank one way only, so that slack in the cam drive stays on one side.")]
    [return: Quantity("lobe centre", Dimension.Angle, "°", Symbol = "C")]
    public static double CentreFromEqualLift(
        [Quantity("angle on the opening flank", Dimension.Angle, "°", Symbol = "A1", Help = "after TDC")] double opening,
        [Quantity("angle on the closing flank", Dimension.Angle, "°", Symbol = "A2", Help = "after TDC")] double closing) =>
        (opening + closing) / 2;
}
