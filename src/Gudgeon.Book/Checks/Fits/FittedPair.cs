using Gudgeon.Book.Checks.Surfaces;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Fits;
using Gudgeon.Calc.Materials;
using Gudgeon.Calc.Metrology;

namespace Gudgeon.Book.Checks.Fits;

/// <summary>A shaft in its hole: cold, hot, turning, and going together. Interference is on the diameter; a clearance counts negative.</summary>
/// <param name="view">The values.</param>
/// <param name="index">The fit.</param>
internal sealed class FittedPair(View view, string index)
{
    private const double Room = ThermalLength.Reference;

    /// <summary>Share of the size that parts want as clearance to go together by hand.</summary>
    private const double Handling = 1e-3;

    /// <summary>Interference that is wanted: as asked for, else by the tolerance classes.</summary>
    public (double Least, double Greatest) Wanted()
    {
        var asked = (Least: view.AmountIf(Fit.InterferenceMin, index), Greatest: view.AmountIf(Fit.InterferenceMax, index));
        if (asked is ({ } least, { } greatest))
        {
            return (least, greatest);
        }

        var byClass = ByClass();
        return (asked.Least ?? byClass?.Least ?? double.NaN, asked.Greatest ?? byClass?.Greatest ?? double.NaN);
    }

    /// <summary>Interference by the tolerance classes; null, and what is wanted noted, without them.</summary>
    public FitLimits? ByClass()
    {
        var size = view.Amount(Fit.Size, index);
        var (hole, shaft) = (HoleClass(), ShaftClass());
        return hole is { } h && shaft is { } s && !double.IsNaN(size) ? view.Work(LimitsAndFits.Fit, size, h.Letter, h.Grade, s.Letter, s.Grade) : null;
    }

    /// <summary>Limits of the hole by its class; null without one.</summary>
    public SizeLimits? HoleLimits() => HoleClass() is { } hole && view.Amount(Fit.Size, index) is var size && !double.IsNaN(size) ? view.Work(LimitsAndFits.Hole, size, hole.Letter, hole.Grade) : null;

    /// <summary>Limits of the shaft by its class; null without one.</summary>
    public SizeLimits? ShaftLimits() => ShaftClass() is { } shaft && view.Amount(Fit.Size, index) is var size && !double.IsNaN(size) ? view.Work(LimitsAndFits.Shaft, size, shaft.Letter, shaft.Grade) : null;

    /// <summary>Hole as it will be fitted: as measured, less the coating still to come, m.</summary>
    public double Hole() => view.Amount(Fit.Hole, index) + (HoleBuildUp() ?? 0);

    /// <summary>Shaft as it will be fitted: as measured, with the coating still to come, m.</summary>
    public double Shaft() => view.Amount(Fit.Shaft, index) + (ShaftBuildUp() ?? 0);

    /// <summary>What the coating still to come makes of the hole's diameter, m, negative: it closes; null without one.</summary>
    public double? HoleBuildUp() => Coat(Fit.HoleCoating, Coating.Bore)?.Bore;

    /// <summary>What the coating still to come makes of the shaft's diameter, m; null without one.</summary>
    public double? ShaftBuildUp() => Coat(Fit.ShaftCoating, Coating.Shaft)?.Shaft;

    /// <summary>Interference at 20 °C from the parts as measured, m.</summary>
    public double Interference() => Shaft() - Hole();

    /// <summary>What is left of it once the peaks of both faces are pressed flat, m.</summary>
    public double Effective()
    {
        var interference = Interference();
        return view.AmountIf(Fit.HoleRoughness, index) is { } hole && view.AmountIf(Fit.ShaftRoughness, index) is { } shaft && interference > 0
            ? Math.Max(0, view.Work(PressFit.Smoothed, interference, hole, shaft))
            : interference;
    }

    /// <summary>Interference at running temperatures, m.</summary>
    public double Hot() => view.Work(
        ShrinkFit.WhenHot,
        Effective(),
        Size,
        Of(Fit.HubMaterial).Expansion,
        Of(Fit.ShaftMaterial).Expansion,
        view.Amount(Fit.HubTemperature, index) - Room,
        view.Amount(Fit.ShaftTemperature, index) - Room);

    /// <summary>Whether running temperatures are known.</summary>
    public bool RunsHot => view.Knows(Fit.HubTemperature, index) && view.Knows(Fit.ShaftTemperature, index);

    /// <summary>Pressures and stresses at rest with an interference, m; nothing where there is clearance.</summary>
    public PressFitStress Stress(double interference)
    {
        var (hub, shaft) = (Of(Fit.HubMaterial), Of(Fit.ShaftMaterial));
        return view.Work(PressFit.Stress, Math.Max(0, interference), Size, view.Amount(Fit.HubDiameter, index), hub.Modulus, shaft.Modulus, Bore, hub.Poisson, shaft.Poisson);
    }

    /// <summary>What of the interference heat takes away, m; negative where it adds to it.</summary>
    public double Lost() => Effective() - Hot();

    /// <summary>Pressure of the joint as it runs: hot where temperatures are known, turning where it turns, Pa.</summary>
    public double RunningPressure()
    {
        var interference = Math.Max(0, RunsHot ? Hot() : Effective());
        if (view.AmountIf(Fit.SpeedRatio, index) is not { } ratio)
        {
            return Stress(interference).Pressure;
        }

        var (hub, shaft) = (Of(Fit.HubMaterial), Of(Fit.ShaftMaterial));
        var speed = ratio * view.Amount(Engine.RevLimit);
        return view.Work(SpinningFit.Pressure, interference, Size, view.Amount(Fit.HubDiameter, index), speed, hub.Modulus, shaft.Modulus, Bore, hub.Poisson, shaft.Poisson, hub.Density, shaft.Density);
    }

    /// <summary>Torque at which the joint slips as it runs, N·m: by its friction, or by that of its taper.</summary>
    public double SlipTorque()
    {
        var friction = view.AmountOr(Fit.Friction, 0.12, index);
        if (view.AmountIf(Fit.Taper, index) is { } taper)
        {
            return view.Work(TaperFit.Grip, taper, Size, view.Amount(Fit.Length, index), view.Amount(Fit.NutForce, index), friction).Torque;
        }

        var grip = view.Work(PressFit.Grip, RunningPressure(), Size, view.Amount(Fit.Length, index), friction);
        return view.AmountIf(Fit.AxialForce, index) is { } axial
            ? axial >= grip.AxialForce ? 0 : view.Work(PressFit.TorqueUnderAxial, grip.AxialForce, axial, Size)
            : grip.Torque;
    }

    /// <summary>Temperature of the hub for assembly with the shaft as cold as it is made, K.</summary>
    public double HubTemperature()
    {
        var interference = Math.Max(0, Interference() - ShaftShrinks());
        return view.Work(ShrinkFit.HubTemperature, interference, Clearance(), Of(Fit.HubMaterial).Expansion, Size, Room);
    }

    /// <summary>Clearance wanted while the parts go together, m.</summary>
    public double Clearance() => view.AmountOr(Fit.HandlingClearance, Handling * Size, index);

    /// <summary>Temperature at which hub and shaft, heated alike, come loose; NaN when heat does not loosen them.</summary>
    public double LossTemperature()
    {
        var (hub, shaft) = (Of(Fit.HubMaterial), Of(Fit.ShaftMaterial));
        return hub.Expansion > shaft.Expansion && Effective() is > 0 and var interference
            ? view.Work(ShrinkFit.LossTemperature, interference, Size, hub.Expansion, shaft.Expansion, Room)
            : double.NaN;
    }

    /// <summary>Speed at which the hub lifts off its shaft, of the joint itself, rad/s.</summary>
    public double LiftOffSpeed()
    {
        var (hub, shaft) = (Of(Fit.HubMaterial), Of(Fit.ShaftMaterial));
        return view.Work(SpinningFit.LiftOffSpeed, Math.Max(0, Effective()), Size, view.Amount(Fit.HubDiameter, index), hub.Modulus, shaft.Modulus, Bore, hub.Poisson, shaft.Poisson, hub.Density, shaft.Density);
    }

    /// <summary>Pressures and shear of the key with all of the torque on it.</summary>
    public KeyStress Key()
    {
        var section = view.Work(ParallelKey.Section, Size);
        return view.Work(
            ParallelKey.Stress,
            view.Amount(Fit.Torque, index),
            Size,
            section.Width,
            section.Height,
            view.Amount(Fit.KeyLength, index),
            section.ShaftDepth,
            view.ChoiceOr(Fit.KeyEnds, KeyEnds.Round, index));
    }

    /// <summary>Yield strength of the hub, Pa.</summary>
    public double HubYield => Of(Fit.HubMaterial).Yield;

    /// <summary>Yield strength of the shaft, Pa.</summary>
    public double ShaftYield => Of(Fit.ShaftMaterial).Yield;

    private double Size => view.Amount(Fit.Size, index);

    private double Bore => view.AmountOr(Fit.ShaftBore, 0, index);

    private double ShaftShrinks() => view.AmountIf(Fit.ShaftColdest, index) is { } cold ? (Room - cold) * Of(Fit.ShaftMaterial).Expansion * Size : 0;

    /// <summary>The coating still to come: as the fit has it, else that of the treatment that names the fit.</summary>
    private SizeChange? Coat(Field field, string where) => view.AmountIf(field, index) is { } thickness
        ? view.Work(CoatingBuildUp.Change, thickness, view.AmountOr(Fit.CoatingOutward, 1, index))
        : TreatedPart.CoatToCome(view, index, where);

    /// <summary>Properties at the section that counts: the wall of the hub, the thickness of the shaft.</summary>
    private MaterialProperties Of(Field field)
    {
        if (view.Choice<MaterialGrade>(field, index) is not { } grade)
        {
            return Unknown<MaterialProperties>.Value;
        }

        var size = Size;
        var section = field == Fit.ShaftMaterial ? size - Bore : ((view.AmountIf(Fit.HubDiameter, index) ?? (2 * size)) - size) / 2;
        return view.Work(MaterialTable.Properties, grade, Math.Max(section, 1e-3));
    }

    private (HoleDeviation Letter, int Grade)? HoleClass() => Class(Fit.HoleClass, IsoClass.Hole, IsoClass.HoleWords);

    private (ShaftDeviation Letter, int Grade)? ShaftClass() => Class(Fit.ShaftClass, IsoClass.Shaft, IsoClass.ShaftWords);

    private T? Class<T>(Field field, Func<string, T?> read, string wanted)
        where T : struct
    {
        if (view.Word(field, index) is not { } text)
        {
            return null;
        }

        if (read(text) is { } known)
        {
            return known;
        }

        view.Refuse($"{field.At(index)}: given '{text}', wanted {wanted}");
        return null;
    }
}
