using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>A figure of a settled operating point: what tables, kept runs and sweeps show of it is made from this declaration.</summary>
/// <param name="Name">What it is: "peak pressure".</param>
/// <param name="Heading">Short name for the head of a column; empty where the unit says it.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Unit">Display unit, metric.</param>
/// <param name="Decimals">Decimals in a table, metric and in inch units.</param>
/// <param name="Of">The figure, SI; NaN where the point has none.</param>
public sealed record EngineFigure(string Name, string Heading, Dimension Dimension, string Unit, (int Metric, int Inch) Decimals, Func<PointFigures, double> Of)
{
    /// <summary>Whether the lesser is the better one.</summary>
    public bool LessIsBetter { get; init; }

    /// <summary>Whether a run has it to show; tables leave out a column that says nothing of their engine.</summary>
    public Func<EngineSpec, bool> IsOf { get; init; } = _ => true;

    /// <summary>Unit that a reader of one system is shown.</summary>
    public Unit Shown(bool imperial) => Figures.Shown(Dimension, Unit, imperial);

    /// <summary>Head of a column: "boost bar".</summary>
    public string Head(bool imperial) => $"{Heading} {Shown(imperial).Symbol}".Trim();

    /// <summary>Name with its unit: "torque, N·m".</summary>
    public string Label(bool imperial) => Shown(imperial).Symbol is { Length: > 0 } unit ? $"{Name}, {unit}" : Name;

    /// <summary>A figure in a table, without its unit; "-" where there is none.</summary>
    public string Cell(double si, bool imperial)
    {
        var decimals = imperial ? Decimals.Inch : Decimals.Metric;
        return double.IsNaN(si) ? "-" : Shown(imperial).FromSi(si).ToString("F" + decimals.ToString(System.Globalization.CultureInfo.InvariantCulture), System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>A figure with its unit: "165.2 kW".</summary>
    public string Print(double si, bool imperial) => $"{Cell(si, imperial)} {Shown(imperial).Symbol}".TrimEnd();
}

/// <summary>The figures of a run, in the order in which they are shown.</summary>
public static class EngineFigures
{
    /// <summary>Brake torque, blower drive taken off.</summary>
    public static readonly EngineFigure Torque = new("torque", "", Dimension.Torque, "N·m", (1, 1), f => f.Torque);

    /// <summary>Brake power, blower drive taken off.</summary>
    public static readonly EngineFigure Power = new("power", "", Dimension.Power, "kW", (1, 1), f => f.Power);

    /// <summary>Mean plenum pressure above ambient.</summary>
    public static readonly EngineFigure Boost = new("boost", "boost", Dimension.Pressure, "bar", (2, 1), f => f.Boost);

    /// <summary>Highest cylinder pressure of all.</summary>
    public static readonly EngineFigure PeakPressure = new("peak pressure", "peak", Dimension.Pressure, "bar", (1, 0), f => f.PeakPressure) { LessIsBetter = true };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<EngineFigure> All { get; } =
    [
        Torque,
        Power,
        Boost,
        new("air", "air", Dimension.MassFlow, "g/s", (1, 1), f => f.AirFlow),
        new("fuel", "fuel", Dimension.MassFlow, "g/s", (2, 2), f => f.FuelFlow) { LessIsBetter = true },
        new("volumetric efficiency", "VE", Dimension.Number, "%", (1, 1), f => f.VolumetricEfficiency),
        new("net IMEP", "IMEP", Dimension.Pressure, "bar", (2, 0), f => f.NetImep),
        new("friction MEP", "FMEP", Dimension.Pressure, "bar", (2, 0), f => f.FrictionMep) { LessIsBetter = true },
        new("fuel consumption", "", Dimension.SpecificFuelConsumption, "g/kWh", (0, 0), f => f.Bsfc ?? double.NaN) { LessIsBetter = true },
        PeakPressure,
        new("peak angle", "at", Dimension.Angle, "°", (1, 1), f => f.Cylinders.MaxBy(c => c.PeakPressure)!.PeakPressureAngle * Math.PI / 180),
        new("charge temperature", "charge", Dimension.Temperature, "°C", (0, 0), f => f.ChargeTemperature) { LessIsBetter = true },
        new("exhaust temperature", "exhaust", Dimension.Temperature, "°C", (0, 0), f => f.ExhaustTemperature) { LessIsBetter = true },
        new("residual gas", "residual", Dimension.Number, "%", (1, 1), f => f.Cylinders.Max(c => c.ResidualFraction)) { LessIsBetter = true },
        new("reverse flow at the inlet", "in back", Dimension.Number, "%", (1, 1), f => f.Cylinders.Max(c => c.InletReversal)) { LessIsBetter = true },
        new("reverse flow at the exhaust", "ex back", Dimension.Number, "%", (1, 1), f => f.Cylinders.Max(c => c.ExhaustReversal)) { LessIsBetter = true },
        new("knock", "knock", Dimension.Number, "", (2, 2), f => f.KnockIntegral) { LessIsBetter = true },
        new("50 % burned", "50 %", Dimension.Angle, "°", (1, 1), f => f.Burned50 * Math.PI / 180 ?? double.NaN) { IsOf = s => s.Combustion?.Search is not null },
        new("back pressure", "back", Dimension.Pressure, "bar", (2, 1), f => f.ExhaustBackPressure) { LessIsBetter = true, IsOf = IsTurbocharged },
        new("turbo speed", "turbo", Dimension.RotationalSpeed, "rpm", (0, 0), f => f.Blower?.Turbine is null ? double.NaN : f.Blower.Speed) { LessIsBetter = true, IsOf = IsTurbocharged },
        new("turbine power", "turbine", Dimension.Power, "kW", (1, 1), f => f.Blower?.Turbine?.Power ?? double.NaN) { IsOf = IsTurbocharged },
        new("wastegate share", "gate", Dimension.Number, "%", (0, 0), f => f.Blower?.Turbine?.WastegateShare ?? double.NaN) { IsOf = IsTurbocharged },
    ];

    /// <summary>Those that a run of this engine has to show.</summary>
    public static IReadOnlyList<EngineFigure> For(EngineSpec spec) => [.. All.Where(f => f.IsOf(spec))];

    /// <summary>The figure of this name; blanks may be hyphens.</summary>
    /// <exception cref="BadInputException">There is none.</exception>
    public static EngineFigure Find(string name) => All.FirstOrDefault(f => string.Equals(f.Name, name.Trim().Replace('-', ' '), StringComparison.OrdinalIgnoreCase))
        ?? throw new BadInputException($"there is no figure '{name}' of a run; there are {string.Join(", ", All.Select(f => f.Name))}");

    private static bool IsTurbocharged(EngineSpec spec) => spec.Intake.Induction is CentrifugalInduction { Turbine: not null };
}
