using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>What the boost of an engine is set by: the drive ratio of a blower on the crank, the opening pressure of a turbocharger's wastegate.</summary>
public static class BoostSetting
{
    /// <summary>The field; null without a blower, and with a turbine that has no wastegate.</summary>
    public static Field? Field(View view) => view.WordOr(Blower.Kind, BlowerKinds.None) switch
    {
        BlowerKinds.None => null,
        BlowerKinds.ExhaustDriven => WastegateArea(view) is null ? null : Wastegate.OpeningPressure,
        _ => Blower.DriveRatio,
    };

    /// <summary>The field of an engine that was put together; null when there is nothing to set.</summary>
    public static Field? Field(EngineSpec spec) => spec.Intake.Induction switch
    {
        null => null,
        CentrifugalInduction { Turbine: { } turbine } => turbine.WastegateArea > 0 ? Wastegate.OpeningPressure : null,
        _ => Blower.DriveRatio,
    };

    /// <summary>Its value, SI; null when there is nothing to set.</summary>
    public static double? Of(EngineSpec spec) => Field(spec) is not { } field ? null
        : field == Blower.DriveRatio ? spec.Intake.Induction!.DriveRatio : ((CentrifugalInduction)spec.Intake.Induction!).Turbine!.WastegateOpening;

    /// <summary>The same engine with another value of it, SI.</summary>
    public static EngineSpec With(EngineSpec spec, double value) => spec with
    {
        Intake = spec.Intake with
        {
            Induction = spec.Intake.Induction switch
            {
                CentrifugalInduction { Turbine: { } turbine } turbo => turbo with { Turbine = turbine with { WastegateOpening = value } },
                { } blower => blower with { DriveRatio = value },
                null => null,
            },
        },
    };

    /// <summary>Effective area of the wastegate, m²; null when there is none.</summary>
    internal static double? WastegateArea(View view) => view.AmountIf(Wastegate.Area) is { } area and > 0 ? area : null;
}
