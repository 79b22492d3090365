using Gudgeon.Book.Fields;
using Gudgeon.Book.Head;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Chamber;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>Puts the engine model together from a snapshot. Values that only refine the model have customary stand-ins; the view shows which.</summary>
public static class EngineAssembly
{
    /// <summary>Share of burned gas in the charge of a sound engine at full load: common practice.</summary>
    private const double UsualResidual = 0.05;

    /// <summary>Share of knock and pressure limits that is kept off when the burn is placed: common practice.</summary>
    private const double UsualMargin = 0.05;

    /// <summary>The engine; null when something needed is not known, and then the view's trace says what.</summary>
    /// <param name="view">The values.</param>
    /// <param name="depth">Whether with its pipes; only then are they read, and only without them what stands in for them.</param>
    /// <exception cref="BadInputException">Values that make no engine: a firing order that does not exist, a map that crosses.</exception>
    public static EngineSpec? Build(View view, Depth depth = Depth.Lumped)
    {
        var angles = FiringAngles(view);
        var cylinders = Cylinders(view, angles);
        var fuel = view.Word(FuelSystem.Kind);
        var lambda = view.Amount(FuelSystem.Lambda);
        var intake = Intake(view, depth);
        var exhaust = depth == Depth.Wave ? new ExhaustSpec() : CollectorOf(view);
        var pipework = depth == Depth.Wave && angles.Length > 0 ? PipeworkAssembly.Build(view, angles) : null;
        var combustion = Combustion(view, depth);
        var delivery = Delivery(view, depth);
        var (walls, friction, ambient) = (Walls(view), Friction(view), Ambient(view));
        if (view.Trace.Missing.Any())
        {
            return null;
        }

        return new EngineSpec
        {
            Cylinders = cylinders!,
            Fuel = FuelNames.Of(fuel!),
            Lambda = lambda,
            Delivery = delivery,
            Combustion = combustion,
            Walls = walls,
            Friction = friction,
            Intake = intake!,
            Exhaust = exhaust,
            Pipework = pipework,
            Ambient = ambient,
        };
    }

    private static double[] FiringAngles(View view)
    {
        var count = view.Count(Engine.Cylinders);
        return count == 0 ? [] : FiringOrder.Angles(count, view.WordOr(Engine.FiringOrder, ""), view.WordOr(Engine.FiringIntervals, ""));
    }

    private static List<CylinderSpec>? Cylinders(View view, double[] angles)
    {
        var cylinders = new List<CylinderSpec>();
        for (var i = 1; i <= angles.Length; i++)
        {
            var index = i.ToString(System.Globalization.CultureInfo.InvariantCulture);
            var volume = ClearanceVolume(view, index);
            var (bore, stroke, rod) = (view.Amount(Cylinder.Bore, index), view.Amount(Crank.Stroke), view.Amount(Rod.Length, index));
            var inlet = ValveAssembly.Build(view, "inlet." + index);
            var exhaust = ValveAssembly.Build(view, "exhaust." + index);
            if (inlet is not null && exhaust is not null)
            {
                cylinders.Add(new CylinderSpec
                {
                    Bore = bore,
                    Stroke = stroke,
                    Rod = rod,
                    ClearanceVolume = volume,
                    FiringAngle = angles[i - 1],
                    Inlet = inlet,
                    Exhaust = exhaust,
                    BlowByArea = view.AmountOr(Cylinder.BlowByArea, 0.3e-6, index),
                });
            }
        }

        return cylinders;
    }

    /// <summary>Volume above the piston at TDC, m³.</summary>
    internal static double ClearanceVolume(View view, string cylinder) => view.Work(
        CompressionRatio.ByParts,
        view.Amount(Cylinder.Bore, cylinder),
        view.Amount(Crank.Stroke),
        view.Amount(Cylinder.ChamberVolume, cylinder),
        view.Amount(Cylinder.DomeVolume, cylinder),
        view.Amount(Cylinder.GasketBore, cylinder),
        view.Amount(Cylinder.GasketThickness, cylinder),
        view.Amount(Cylinder.DeckHeight, cylinder)).Clearance;

    private static IntakeSpec? Intake(View view, Depth depth)
    {
        var induction = InductionAssembly.Build(view, depth);
        var intake = new IntakeSpec
        {
            FilterArea = view.Amount(Fields.Intake.FilterArea),
            AirboxVolume = view.AmountOr(Fields.Intake.AirboxVolume, new IntakeSpec().AirboxVolume),
            Induction = induction,
            DeliveryVolume = induction is null ? new IntakeSpec().DeliveryVolume : view.AmountOr(Fields.Intake.DeliveryVolume, new IntakeSpec().DeliveryVolume),
            Cooler = view.AmountIf(Cooler.Effectiveness) is { } effectiveness
                ? new ChargeCooler
                {
                    Effectiveness = effectiveness,
                    CoolantTemperature = view.Amount(Cooler.CoolantTemperature),
                    EffectiveArea = view.Amount(Cooler.FlowArea),
                }
                : null,
            ThrottleArea = view.Amount(Fields.Intake.ThrottleArea),
            PlenumVolume = view.AmountOr(Fields.Intake.PlenumVolume, new IntakeSpec().PlenumVolume),
            Relief = view.AmountIf(Blower.ReliefPressure) is { } opening ? new ReliefValve(opening, 500e-6) : null,
        };
        return depth == Depth.Wave ? intake : intake with
        {
            PortVolume = view.AmountOr(Fields.Intake.PortVolume, intake.PortVolume),
            RunnerArea = view.Amount(Fields.Intake.RunnerArea),
        };
    }

    /// <summary>The exhaust as one volume; with a turbine its nozzle is the way out of it.</summary>
    private static ExhaustSpec CollectorOf(View view)
    {
        var collector = new ExhaustSpec { CollectorVolume = view.Amount(Exhaust.CollectorVolume) };
        return InductionAssembly.IsTurbocharged(view) ? collector : collector with { OutletArea = view.Amount(Exhaust.OutletArea) };
    }

    private static FuelDelivery Delivery(View view, Depth depth)
    {
        var usual = new FuelDelivery();
        var delivery = usual with
        {
            EvaporatedInPort = view.AmountOr(FuelSystem.EvaporatedInPort, usual.EvaporatedInPort),
            Temperature = view.AmountOr(FuelSystem.Temperature, usual.Temperature),
        };
        if (depth == Depth.Lumped)
        {
            return delivery;
        }

        var share = view.AmountOr(FuelSystem.FilmShare, usual.FilmShare);
        return delivery with
        {
            InjectorDistance = view.AmountOr(FuelSystem.InjectorDistance, usual.InjectorDistance),
            FilmShare = share,
            FilmTime = share > 0 ? view.AmountOr(FuelSystem.FilmTime, usual.FilmTime) : usual.FilmTime,
        };
    }

    private static CombustionSpec Combustion(View view, Depth depth)
    {
        var usual = new CombustionSpec();
        return usual with
        {
            Burned50 = view.AmountOr(Fields.Combustion.Burned50, usual.Burned50 * Math.PI / 180) * 180 / Math.PI,
            Burned50Slope = view.AmountOr(Fields.Combustion.Burned50Slope, 0) * 180 / Math.PI / (1000 * Math.PI / 30),
            Duration = view.AmountOr(Fields.Combustion.Duration, usual.Duration * Math.PI / 180) * 180 / Math.PI,
            ReferenceResidual = depth == Depth.Wave ? view.AmountOr(Fields.Combustion.ResidualReference, UsualResidual) : view.AmountIf(Fields.Combustion.ResidualReference),
            Search = view.WordOr(Fields.Combustion.Placing, BurnPlacings.AsGiven) == BurnPlacings.BestTorque ? Search(view) : null,
        };
    }

    /// <summary>A distance is kept from the limits that checks hold the run to, so that a placed burn does not stand at the edge of them.</summary>
    private static BurnSearch Search(View view)
    {
        var share = 1 - view.AmountOr(Fields.Combustion.PlacingMargin, UsualMargin);
        return new BurnSearch
        {
            KnockLimit = share * view.AmountOr(Fields.Combustion.KnockLimit, Fields.Combustion.UsualKnockLimit),
            PressureLimit = share * (view.AmountIf(Piston.CompressionLimit) ?? double.PositiveInfinity),
        };
    }

    private static WallSpec Walls(View view)
    {
        var usual = new WallSpec();
        return usual with
        {
            Head = view.AmountOr(Fields.Combustion.HeadTemperature, usual.Head),
            Piston = view.AmountOr(Fields.Combustion.PistonTemperature, usual.Piston),
            Liner = view.AmountOr(Fields.Combustion.LinerTemperature, usual.Liner),
        };
    }

    private static FrictionSpec Friction(View view)
    {
        var usual = new FrictionSpec();
        return usual with
        {
            Constant = view.AmountOr(Fields.Combustion.FrictionConstant, usual.Constant),
            PeakPressure = view.AmountOr(Fields.Combustion.FrictionPeakPressure, usual.PeakPressure),
            PistonSpeed = view.AmountOr(Fields.Combustion.FrictionSpeed, usual.PistonSpeed),
            PistonSpeedSquared = view.AmountOr(Fields.Combustion.FrictionSpeedSquared, usual.PistonSpeedSquared),
        };
    }

    /// <summary>The air that the engine stands in; where the book does not say, the usual.</summary>
    internal static AmbientSpec Ambient(View view)
    {
        var usual = new AmbientSpec();
        return usual with
        {
            Pressure = view.AmountOr(Weather.Pressure, usual.Pressure),
            Temperature = view.AmountOr(Weather.Temperature, usual.Temperature),
            RelativeHumidity = view.AmountOr(Weather.Humidity, usual.RelativeHumidity),
        };
    }
}
