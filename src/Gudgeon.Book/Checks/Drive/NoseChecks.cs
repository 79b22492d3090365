using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Drive;

/// <summary>Fatigue of the spigot where it leaves its fit, and at its shoulder.</summary>
public sealed class NoseFatigueCheck : DriveCheck
{
    public override string Id => "nose-fatigue";

    public override string Title => "Fatigue of the drive spigot, bending and torsion";

    public override string Source => "Budynas & Nisbett, Shigley's Mechanical Engineering Design, 8th ed., ch. 6 and 7 (Goodman, 99 %); notches: DIN 743-2 for seats, Peterson for fillets (both from memory); 1.5: common practice, no source";

    public override string Caution => "A nose that breaks lets belt and pulley go at speed: guard on, nobody in the plane of the belt, and a crack test of the spigot after the first runs.";

    public override IEnumerable<string> Instances(View view) => base.Instances(view).Any() ? Sections(view) : [];

    public override Judgement Examine(View view, string index) =>
        Judgement.AtLeast("safety against fatigue", new LoadedNose(view).Safety(index).Fatigue, view.Limit("nose-fatigue.min", Dimension.Number, "", 1.5), Dimension.Number, "", "common practice, no source");

    protected override bool Applies(View view) => view.Knows(Nose.Overhang);

    private static IEnumerable<string> Sections(View view) => view.Knows(Nose.Fillet) ? [LoadedNose.Mouth, LoadedNose.Shoulder] : [LoadedNose.Mouth];
}

/// <summary>Misalignment in the outboard bearing.</summary>
public sealed class OutboardTiltCheck : DriveCheck
{
    public override string Id => "outboard-tilt";

    public override string Title => "Misalignment in the outboard bearing";

    public override string Source => "slender beam on the last two mains and the cover's spring, the bore off line by its offset the worst way round; limit by the maker, 2 to 10 minutes of arc for deep-groove ball bearings (from memory)";

    public override Judgement Examine(View view, string index)
    {
        var nose = new LoadedNose(view);
        return Judgement.AtMost("misalignment", nose.Misalignment(), nose.TiltLimit(), Dimension.Angle, "°", "outboard.tiltLimit, 4 minutes of arc when left out");
    }

    protected override bool Applies(View view) => view.Knows(Outboard.Distance);
}

/// <summary>Rating life of the outboard bearing over the run.</summary>
public sealed class OutboardLifeCheck : DriveCheck
{
    public override string Id => "outboard-life";

    public override string Title => "Life of the outboard bearing";

    public override string Source => "ISO 281:2007, basic rating life under the cubic mean of the loads; every speed of the run held as long as the next; 50 h: common practice, no source";

    public override Judgement Examine(View view, string index) =>
        Judgement.AtLeast("rating life", new LoadedNose(view).Life(), view.AmountOr(Outboard.LifeWanted, 50 * 3600), Dimension.Time, "h", "outboard.lifeWanted, 50 h when left out");

    protected override bool Applies(View view) => view.Knows(Outboard.Distance);
}
