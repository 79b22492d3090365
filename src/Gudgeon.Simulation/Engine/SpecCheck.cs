namespace Gudgeon.Simulation.Engine;

/// <summary>Refuses an engine that cannot be simulated, in one sentence that names the part.</summary>
internal static class SpecCheck
{
    public static void Check(EngineSpec spec)
    {
        EngineSpecException.Unless(spec.Cylinders.Count is >= 1 and <= 16, $"cylinders: {spec.Cylinders.Count} given, 1 to 16 are wanted");
        for (var i = 0; i < spec.Cylinders.Count; i++)
        {
            CheckCylinder(spec.Cylinders[i], FormattableString.Invariant($"cylinder {i + 1}"));
        }

        CheckFiring(spec);
        Within(spec.Lambda, 0.5, 1.6, "lambda", "");
        CheckBurn(spec);
        CheckWalls(spec.Walls);
        CheckFriction(spec.Friction);
        CheckAmbient(spec.Ambient);
        if (spec.ImposedPorts is { } ports)
        {
            CheckImposed(ports);
        }
        else
        {
            CheckIntake(spec.Intake);
            CheckExhaust(spec.Exhaust);
            PipeworkCheck.Check(spec);
        }
    }

    /// <summary>Checks what a run asks for.</summary>
    public static void Check(RunOptions options)
    {
        EngineSpecException.Unless(options.Speeds.Count > 0, $"run: no speed given");
        Within(options.CrankStep, 0.05, 2, "run: crank step", "°");
        Within(options.MaxCycles, 3, 10_000, "run: greatest number of cycles", "");
        Within(options.Tolerance, 1e-12, 1e-2, "run: tolerance", "");
        EngineSpecException.Unless(options.DegreeOfParallelism is -1 or >= 1, $"run: {options.DegreeOfParallelism} points at a time, which must be at least 1, or −1 for every core");
        foreach (var speed in options.Speeds)
        {
            CheckSpeed(speed);
        }
    }

    /// <summary>Checks a crank speed, rad/s.</summary>
    public static void CheckSpeed(double speed) =>
        EngineSpecException.Unless(speed is >= 0.5 and <= 3200, $"run: crank speed {speed} rad/s, which must lie in 0.5 to 3200 rad/s (5 to 30 000 rpm)");

    private static void CheckFiring(EngineSpec spec)
    {
        var twice = spec.Cylinders.GroupBy(c => c.FiringAngle).FirstOrDefault(g => g.Count() > 1);
        EngineSpecException.Unless(twice is null || spec.FireTogether, $"cylinders: two fire at {twice?.Key}°, but firing angles must differ unless the cylinders fire together on purpose");
    }

    private static void CheckCylinder(CylinderSpec c, string name)
    {
        Within(c.Bore, 0.01, 0.5, name + ": bore", "m");
        Within(c.Stroke, 0.01, 0.6, name + ": stroke", "m");
        EngineSpecException.Unless(Math.Abs(c.PinOffset) < c.Stroke / 2, $"{name}: pin offset {c.PinOffset} m, which must be smaller than half the stroke");
        EngineSpecException.Unless(c.Rod > (c.Stroke / 2) + Math.Abs(c.PinOffset) && c.Rod < 2, $"{name}: rod {c.Rod} m, which must be longer than half the stroke and the pin offset together");
        EngineSpecException.Unless(c.CompressionRatio is null != c.ClearanceVolume is null, $"{name}: give either the compression ratio or the clearance volume");
        Within(c.CompressionRatio ?? 10, 3, 30, name + ": compression ratio", "");
        Within(c.ClearanceVolume ?? 1e-5, 1e-7, 1e-2, name + ": clearance volume", "m³");
        EngineSpecException.Unless(c.FiringAngle is >= 0 and < 720, $"{name}: firing angle {c.FiringAngle}°, which must lie in 0 to under 720°");
        Within(c.BlowByArea, 0, 1e-4, name + ": blow-by area", "m²");
        CheckValve(c.Inlet, name + ", inlet valve");
        CheckValve(c.Exhaust, name + ", exhaust valve");
        EngineSpecException.Unless(c.Inlet.Count * Square(c.Inlet.HeadDiameter) + (c.Exhaust.Count * Square(c.Exhaust.HeadDiameter)) <= 1.1 * c.Bore * c.Bore, $"{name}: the valve heads together are larger than the bore, {c.Bore} m");
        EngineSpecException.Unless(OpenFrom(c.Exhaust) > 20 && OpenFrom(c.Inlet) > 20, $"{name}: a valve is open at firing top dead centre; its angles must count from firing, not from exchange, top dead centre");
    }

    private static void CheckValve(ValveSpec v, string name)
    {
        EngineSpecException.Unless(v.Count is >= 1 and <= 5, $"{name}: {v.Count} valves, 1 to 5 are wanted");
        Within(v.HeadDiameter, 0.004, 0.2, name + ": head diameter", "m");
        CheckLift(v.Lift, v.HeadDiameter, name);
        CheckFlow(v.Flow, name);
    }

    private static void CheckLift(LiftCurve lift, double head, string name)
    {
        var (angles, lifts) = (lift.Angles, lift.Lifts);
        EngineSpecException.Unless(angles.Count == lifts.Count && angles.Count >= 3, $"{name}: lift curve with {angles.Count} angles and {lifts.Count} lifts, at least three of each and equally many are wanted");
        for (var i = 0; i < angles.Count; i++)
        {
            EngineSpecException.Unless(double.IsFinite(angles[i]) && (i == 0 || angles[i] > angles[i - 1]), $"{name}: lift curve goes from {angles[Math.Max(0, i - 1)]}° to {angles[i]}°, but angles must rise");
            EngineSpecException.Unless(lifts[i] >= 0 && lifts[i] < head, $"{name}: lift {lifts[i]} m at {angles[i]}°, which must be from 0 to under the head diameter");
        }

        EngineSpecException.Unless(angles[^1] - angles[0] < 720, $"{name}: lift curve spans {angles[^1] - angles[0]}°, which must be under 720°");
        EngineSpecException.Unless(lifts[0] == 0 && lifts[^1] == 0, $"{name}: lift curve begins at {lifts[0]} m and ends at {lifts[^1]} m, but it must close: both ends zero");
        EngineSpecException.Unless(lifts.Max() > 0, $"{name}: lift curve never opens");
    }

    private static void CheckFlow(FlowTable flow, string name)
    {
        var x = flow.LiftOverDiameter;
        EngineSpecException.Unless(x.Count >= 1 && flow.Forward.Count == x.Count && (flow.Reverse?.Count ?? x.Count) == x.Count, $"{name}: flow table needs one coefficient for each of its {x.Count} lifts");
        EngineSpecException.Unless(flow.Reference == FlowReference.Given == (flow.ReferenceArea is not null), $"{name}: a reference area is wanted when, and only when, the flow coefficients refer to a given area");
        Within(flow.ReferenceArea ?? 1e-3, 1e-6, 0.1, name + ": reference area", "m²");
        for (var i = 0; i < x.Count; i++)
        {
            EngineSpecException.Unless(x[i] is >= 0 and <= 1 && (i == 0 || x[i] > x[i - 1]), $"{name}: flow table at lift/diameter {x[i]}, which must rise within 0 to 1");
            CheckCoefficient(flow.Forward[i], x[i], name);
            CheckCoefficient(flow.Reverse?[i] ?? flow.Forward[i], x[i], name);
        }
    }

    private static void CheckCoefficient(double coefficient, double lift, string name) =>
        EngineSpecException.Unless(coefficient <= 1.2 && (coefficient > 0 || (coefficient == 0 && lift == 0)), $"{name}: flow coefficient {coefficient} at lift/diameter {lift}, which must lie above 0 and not above 1.2");

    private static void CheckBurn(EngineSpec spec)
    {
        Within(spec.Delivery.EvaporatedInPort, 0, 1, "fuel delivery: share evaporated in the port", "");
        Within(spec.Delivery.EvaporationAngle, 5, 200, "fuel delivery: evaporation angle", "°");
        Within(spec.Delivery.FilmShare, 0, 1, "fuel delivery: share that lands on the wall", "");
        Within(spec.Delivery.FilmTime, 0.005, 10, "fuel delivery: time of the wall film", "s");
        Within(spec.Delivery.InjectorDistance, 0, 3, "fuel delivery: distance of the injector from the valve", "m");
        Within(spec.Delivery.Temperature, 230, 400, "fuel delivery: fuel temperature", "K");
        if (spec.Combustion is not { } burn)
        {
            return;
        }

        Within(burn.ReferenceSpeed, 10, 3200, "combustion: reference speed", "rad/s");
        Within(burn.Burned50, -30, 60, "combustion: angle of 50 % burned", "°");
        Within(burn.Burned50Slope, -0.2, 0.2, "combustion: change of the angle of 50 % burned with speed", "° per rad/s");
        Within(burn.Duration, 0.5, 120, "combustion: 10–90 % burn duration", "°");
        Within(burn.DurationSpeedExponent, -1, 1, "combustion: exponent of speed", "");
        Within(burn.QuickestLambda, 0.7, 1.1, "combustion: lambda of the quickest burn", "");
        Within(burn.DurationMixtureFactor, 0, 20, "combustion: mixture factor", "");
        Within(burn.WiebeA, 1, 10, "combustion: Wiebe a", "");
        Within(burn.WiebeM, 0.5, 6, "combustion: Wiebe m", "");
        if (burn.ReferenceResidual is { } residual)
        {
            Within(residual, 0, 0.25, "combustion: residual share at which the duration holds", "");
        }

        if (burn.Search is { } search)
        {
            Within(search.KnockLimit, 0.2, 3, "combustion: limit of the knock integral", "");
            EngineSpecException.Unless(search.PressureLimit > 5e5, $"combustion: pressure limit {search.PressureLimit} Pa, which must be above 5 bar");
            EngineSpecException.Unless(search.Earliest is >= -20 and <= 60 && search.Latest > search.Earliest && search.Latest <= 60, $"combustion: 50 % burned is to be looked for from {search.Earliest}° to {search.Latest}°, which must rise and lie in −20° to 60°");
        }

        EngineSpecException.Unless(burn.Efficiency is > 0 and <= 1, $"combustion: efficiency {burn.Efficiency}, which must lie above 0 and not above 1");
    }

    private static void CheckWalls(WallSpec walls)
    {
        Within(walls.Head, 250, 900, "walls: head temperature", "K");
        Within(walls.Piston, 250, 900, "walls: piston temperature", "K");
        Within(walls.Liner, 250, 900, "walls: liner temperature", "K");
        Within(walls.HeadAreaRatio, 0.8, 3, "walls: head area ratio", "");
        Within(walls.PistonAreaRatio, 0.8, 3, "walls: piston area ratio", "");
        Within(walls.WoschniScale, 0, 5, "walls: Woschni scale", "");
    }

    private static void CheckFriction(FrictionSpec friction)
    {
        Within(friction.Constant, 0, 1e6, "friction: constant A", "Pa");
        Within(friction.PeakPressure, 0, 0.1, "friction: factor B of peak pressure", "");
        Within(friction.PistonSpeed, 0, 1e5, "friction: factor C of mean piston speed", "Pa per m/s");
        Within(friction.PistonSpeedSquared, 0, 1e4, "friction: factor D of its square", "Pa per (m/s)²");
    }

    private static void CheckAmbient(AmbientSpec ambient)
    {
        Within(ambient.Pressure, 4e4, 1.2e5, "ambient: pressure", "Pa");
        Within(ambient.Temperature, 220, 340, "ambient: temperature", "K");
        Within(ambient.RelativeHumidity, 0, 1, "ambient: relative humidity", "");
    }

    private static void CheckIntake(IntakeSpec intake)
    {
        Within(intake.FilterArea, 1e-5, 1, "intake: filter area", "m²");
        Within(intake.AirboxVolume, 1e-4, 1, "intake: airbox volume", "m³");
        Within(intake.ThrottleArea, 1e-6, 0.1, "intake: throttle area", "m²");
        Within(intake.PlenumVolume, 5e-5, 0.2, "intake: plenum volume", "m³");
        Within(intake.PortVolume, 1e-5, 0.02, "intake: port volume", "m³");
        Within(intake.RunnerArea, 1e-5, 0.05, "intake: runner area", "m²");
        Within(intake.DeliveryVolume, 1e-4, 0.2, "intake: delivery volume", "m³");
        if (intake.Cooler is { } cooler)
        {
            Within(cooler.Effectiveness, 0, 1, "charge cooler: effectiveness", "");
            Within(cooler.CoolantTemperature, 220, 400, "charge cooler: coolant temperature", "K");
            Within(cooler.EffectiveArea, 1e-5, 0.1, "charge cooler: effective area", "m²");
        }

        if (intake.Relief is { } relief)
        {
            Within(relief.OpeningPressure, 1e3, 1e6, "relief valve: opening pressure", "Pa");
            Within(relief.Area, 1e-7, 1e-2, "relief valve: area", "m²");
        }

        if (intake.Induction is { } blower)
        {
            CheckBlower(blower);
        }
    }

    private static void CheckBlower(Induction blower)
    {
        Within(blower.DriveRatio, 0.05, 50, "blower: drive ratio", "");
        Within(blower.BeltSlip, 0, 0.2, "blower: belt slip", "");
        Within(blower.MechanicalEfficiency, 0.3, 1, "blower: mechanical efficiency", "");
        switch (blower)
        {
            case CentrifugalInduction centrifugal:
                Within(centrifugal.StepUp, 0.1, 50, "blower: step-up", "");
                CheckTurbine(centrifugal.Turbine);
                break;
            case PositiveDisplacementInduction displacement:
                Within(displacement.Displacement, 1e-5, 0.1, "blower: displacement", "m³");
                Within(displacement.LeakArea, 0, 1e-3, "blower: leak area", "m²");
                Within(displacement.InternalCompression, 1, 3, "blower: internal compression", "");
                Within(displacement.Efficiency, 0.2, 1, "blower: efficiency", "");
                break;
        }
    }

    private static void CheckTurbine(TurbineSpec? turbine)
    {
        if (turbine is null)
        {
            return;
        }

        Within(turbine.ThroatArea, 1e-5, 0.02, "turbine: throat area", "m²");
        Within(turbine.RotorDiameter, 0.01, 0.3, "turbine: rotor diameter", "m");
        Within(turbine.Efficiency, 0.2, 0.9, "turbine: efficiency", "");
        Within(turbine.BestSpeedRatio, 0.3, 1, "turbine: best speed ratio", "");
        Within(turbine.VoluteVolume, 1e-5, 0.02, "turbine: volute volume", "m³");
        Within(turbine.WastegateArea, 0, 0.02, "turbine: wastegate area", "m²");
        Within(turbine.WastegateOpening, 0, 5e5, "turbine: wastegate opening pressure", "Pa");
        Within(turbine.WastegateBand, 1e3, 2e5, "turbine: wastegate band", "Pa");
    }

    private static void CheckExhaust(ExhaustSpec exhaust)
    {
        Within(exhaust.CollectorVolume, 1e-4, 0.2, "exhaust: collector volume", "m³");
        Within(exhaust.OutletArea, 1e-5, 0.1, "exhaust: outlet area", "m²");
        Within(exhaust.WallLossFraction, 0, 0.6, "exhaust: wall loss fraction", "");
    }

    private static void CheckImposed(ImposedPorts ports)
    {
        Within(ports.InletTemperature, 220, 500, "imposed inlet port: temperature", "K");
        Within(ports.ExhaustTemperature, 220, 1500, "imposed exhaust port: temperature", "K");
        CheckTrace(ports.Inlet, "imposed inlet port");
        CheckTrace(ports.Exhaust, "imposed exhaust port");
    }

    private static void CheckTrace(PressureTrace trace, string name)
    {
        var angles = trace.Angles;
        EngineSpecException.Unless(angles.Count >= 1 && angles.Count == trace.Pressures.Count, $"{name}: {angles.Count} angles and {trace.Pressures.Count} pressures, equally many are wanted");
        for (var i = 0; i < angles.Count; i++)
        {
            EngineSpecException.Unless(i == 0 || (angles[i] > angles[i - 1] && angles[i] < angles[0] + 720), $"{name}: the trace goes from {angles[Math.Max(0, i - 1)]}° to {angles[i]}°, but angles must rise within 720°");
            Within(trace.Pressures[i], 1e4, 1e6, name + ": pressure", "Pa");
        }
    }

    /// <summary>Degrees between firing top dead centre and the nearest lift.</summary>
    private static double OpenFrom(ValveSpec valve)
    {
        var area = new ValveArea(valve);
        return Enumerable.Range(0, 181).FirstOrDefault(a => area.Lift(a) > 0 || area.Lift(-a) > 0, 180);
    }

    private static double Square(double x) => x * x;

    internal static void Within(double value, double low, double high, string what, string unit) =>
        EngineSpecException.Unless(value >= low && value <= high, unit.Length == 0 ? (FormattableString)$"{what} {value}, which must lie in {low} to {high}" : $"{what} {value} {unit}, which must lie in {low} to {high} {unit}");
}
