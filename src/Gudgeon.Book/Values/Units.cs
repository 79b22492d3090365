using System.Collections.Concurrent;
using System.Globalization;
using System.Resources;
using System.Text;
using Gudgeon.Calc.Catalogue;
using UnitsNet;

namespace Gudgeon.Book.Values;

/// <summary>
/// The units of every dimension, taken from UnitsNet, with the spellings of the workshop added. Spelling is forgiving
/// (N·m, Nm, N*m; mm², mm2, mm^2; µm, um), the dimension is not.
/// </summary>
public static class Units
{
    private static readonly ConcurrentDictionary<Dimension, Dictionary<string, Unit>> Tables = new();

    /// <summary>What a dimension is called in UnitsNet; those that it lacks are made of <see cref="Own"/> alone.</summary>
    private static readonly Dictionary<Dimension, string> QuantityNames = new()
    {
        [Dimension.Number] = nameof(Ratio),
        [Dimension.MomentOfInertia] = nameof(MassMomentOfInertia),
        [Dimension.Time] = nameof(Duration),
        [Dimension.SpecificHeat] = nameof(SpecificEntropy),
        [Dimension.MolarHeat] = nameof(MolarEntropy),
        [Dimension.ThermalExpansion] = nameof(CoefficientOfThermalExpansion),
        [Dimension.SpecificFuelConsumption] = nameof(BrakeSpecificFuelConsumption),
        [Dimension.TemperatureDifference] = "",
        [Dimension.Unbalance] = "",
        [Dimension.Compliance] = "",
    };

    private static readonly (Dimension Dimension, string Symbol, double Factor, double Offset)[] Own =
    [
        (Dimension.Number, "", 1, 0),
        (Dimension.Length, "thou", 25.4e-6, 0),
        (Dimension.Length, "\"", 0.0254, 0),
        (Dimension.Volume, "cc", 1e-6, 0),
        (Dimension.Volume, "ml", 1e-6, 0),
        (Dimension.Volume, "mL", 1e-6, 0),
        (Dimension.Volume, "L", 1e-3, 0),
        (Dimension.Volume, "cu in", 1.6387064e-5, 0),
        (Dimension.VolumeFlow, "cfm", 4.719474432e-4, 0),
        (Dimension.VolumeFlow, "cc/min", 1e-6 / 60, 0),
        (Dimension.VolumeFlow, "mL/min", 1e-6 / 60, 0),
        (Dimension.VolumeFlow, "L/s", 1e-3, 0),
        (Dimension.VolumeFlow, "L/min", 1e-3 / 60, 0),
        (Dimension.VolumeFlow, "mm³/s", 1e-9, 0),
        (Dimension.Area, "sq in", 6.4516e-4, 0),
        (Dimension.Angle, "deg", Math.PI / 180, 0),
        (Dimension.RotationalSpeed, "rpm", Math.PI / 30, 0),
        (Dimension.RotationalSpeed, "1/min", Math.PI / 30, 0),
        (Dimension.RotationalSpeed, "rev/s", 2 * Math.PI, 0),
        (Dimension.RotationalSpeed, "1/s", 1, 0),
        (Dimension.RotationalSpeed, "kHz", 2000 * Math.PI, 0),
        (Dimension.RotationalSpeed, "Hz", 2 * Math.PI, 0),
        (Dimension.Speed, "mph", 0.44704, 0),
        (Dimension.Force, "lb", 4.4482216152605, 0),
        (Dimension.Force, "lbs", 4.4482216152605, 0),
        (Dimension.Force, "kip", 4448.2216152605, 0),
        (Dimension.Mass, "lbs", 0.45359237, 0),
        (Dimension.MassFlow, "lb/min", 0.45359237 / 60, 0),
        (Dimension.MassFlow, "lb/s", 0.45359237, 0),
        (Dimension.Torque, "lb·ft", 1.3558179483314004, 0),
        (Dimension.Torque, "ft·lb", 1.3558179483314004, 0),
        (Dimension.Torque, "ft·lbf", 1.3558179483314004, 0),
        (Dimension.Torque, "in·lb", 0.1129848290276167, 0),
        (Dimension.Torque, "in·lbf", 0.1129848290276167, 0),
        (Dimension.Torque, "lb·in", 0.1129848290276167, 0),
        (Dimension.Torque, "N·mm", 1e-3, 0),
        (Dimension.ForcePerLength, "lb/in", 4.4482216152605 / 0.0254, 0),
        (Dimension.ForcePerLength, "lbf/in", 4.4482216152605 / 0.0254, 0),
        (Dimension.Pressure, "inHg", 3386.389, 0),
        (Dimension.Pressure, "inH2O", 249.08891, 0),
        (Dimension.Pressure, "mmH2O", 9.80665, 0),
        (Dimension.Pressure, "hPa", 100, 0),
        (Dimension.Pressure, "psi", 6894.757293168361, 0),
        (Dimension.Pressure, "ksi", 6894757.293168361, 0),
        (Dimension.Pressure, "kpsi", 6894757.293168361, 0),
        (Dimension.Pressure, "Mpsi", 6894757293.168361, 0),
        (Dimension.Pressure, "N/mm²", 1e6, 0),
        (Dimension.Power, "hp", 745.6998715822702, 0),
        (Dimension.Power, "PS", 735.49875, 0),
        (Dimension.Temperature, "degC", 1, 273.15),
        (Dimension.Temperature, "C", 1, 273.15),
        (Dimension.Temperature, "degF", 5.0 / 9, 273.15 - (32 * 5.0 / 9)),
        (Dimension.Temperature, "F", 5.0 / 9, 273.15 - (32 * 5.0 / 9)),
        (Dimension.TemperatureDifference, "K", 1, 0),
        (Dimension.TemperatureDifference, "°C", 1, 0),
        (Dimension.TemperatureDifference, "degC", 1, 0),
        (Dimension.TemperatureDifference, "°F", 5.0 / 9, 0),
        (Dimension.TemperatureDifference, "degF", 5.0 / 9, 0),
        (Dimension.ThermalExpansion, "1/K", 1, 0),
        (Dimension.ThermalExpansion, "µm/(m·K)", 1e-6, 0),
        (Dimension.ThermalExpansion, "1/°C", 1, 0),
        (Dimension.ThermalExpansion, "/°C", 1, 0),
        (Dimension.Unbalance, "kg·m", 1, 0),
        (Dimension.Unbalance, "kg·mm", 1e-3, 0),
        (Dimension.Unbalance, "g·m", 1e-3, 0),
        (Dimension.Unbalance, "g·mm", 1e-6, 0),
        (Dimension.Unbalance, "oz·in", 7.200778e-4, 0),
        (Dimension.Compliance, "m/N", 1, 0),
        (Dimension.Compliance, "mm/N", 1e-3, 0),
        (Dimension.Compliance, "µm/N", 1e-6, 0),
        (Dimension.Compliance, "µm/kN", 1e-9, 0),
        (Dimension.Compliance, "mm/kN", 1e-6, 0),
        (Dimension.Compliance, "in/lbf", 0.0254 / 4.4482216152605, 0),
        (Dimension.MomentOfInertia, "g·mm²", 1e-9, 0),
        (Dimension.MomentOfInertia, "kg·mm²", 1e-6, 0),
        (Dimension.MomentOfInertia, "kg·cm²", 1e-4, 0),
        (Dimension.RotationalStiffness, "N·m/rad", 1, 0),
        (Dimension.RotationalStiffness, "kN·m/rad", 1e3, 0),
        (Dimension.RotationalStiffness, "MN·m/rad", 1e6, 0),
        (Dimension.RotationalStiffness, "N·m/deg", 180 / Math.PI, 0),
        (Dimension.Jerk, "m/s³", 1, 0),
        (Dimension.MassFlux, "kg/(m²·s)", 1, 0),
        (Dimension.MassFlux, "g/(cm²·s)", 10, 0),
        (Dimension.LinearDensity, "kg/m", 1, 0),
        (Dimension.LinearDensity, "lb/ft", 0.45359237 / 0.3048, 0),
        (Dimension.SpecificEnergy, "J/kg", 1, 0),
        (Dimension.SpecificEnergy, "kJ/kg", 1e3, 0),
        (Dimension.SpecificEnergy, "MJ/kg", 1e6, 0),
        (Dimension.SpecificEnergy, "Btu/lb", 2326, 0),
        (Dimension.SpecificHeat, "cal/(g·K)", 4184, 0),
        (Dimension.Density, "g/cm³", 1000, 0),
        (Dimension.Density, "lb/in³", 27679.904710191, 0),
        (Dimension.Density, "kg/L", 1000, 0),
        (Dimension.DynamicViscosity, "mPa·s", 1e-3, 0),
        (Dimension.DynamicViscosity, "reyn", 6894.757293168361, 0),
        (Dimension.KinematicViscosity, "mm²/s", 1e-6, 0),
        (Dimension.SpecificFuelConsumption, "g/kWh", 1e-3 / 3.6e6, 0),
        (Dimension.HeatTransferCoefficient, "W/(m²·K)", 1, 0),
        (Dimension.Acceleration, "gn", 9.80665, 0),
        (Dimension.RotationalAcceleration, "rad/s²", 1, 0),
        (Dimension.MolarEnergy, "kJ/mol", 1e3, 0),
        (Dimension.MolarHeat, "J/(mol·K)", 1, 0),
        (Dimension.MolarMass, "g/mol", 1e-3, 0),
        (Dimension.Mass, "ton", 2240 * 0.45359237, 0),
    ];

    /// <summary>The unit of <paramref name="dimension"/> written as <paramref name="symbol"/>, or null.</summary>
    public static Unit? Find(Dimension dimension, string symbol) =>
        Tables.GetOrAdd(dimension, Build).GetValueOrDefault(Spelling(symbol));

    /// <summary>The unit that a declaration names.</summary>
    /// <exception cref="InvalidOperationException">A declaration names a unit that its dimension does not have.</exception>
    public static Unit Declared(Dimension dimension, string symbol)
    {
        var unit = Find(dimension, symbol)
            ?? throw new InvalidOperationException($"'{symbol}' is not a unit of {dimension}");
        return unit with { Symbol = symbol };
    }

    /// <summary>Every dimension that has a unit written as <paramref name="symbol"/>.</summary>
    public static IEnumerable<Dimension> DimensionsOf(string symbol) =>
        Enum.GetValues<Dimension>().Where(d => Find(d, symbol) is not null);

    private static Dictionary<string, Unit> Build(Dimension dimension)
    {
        var table = new Dictionary<string, Unit>(StringComparer.Ordinal);
        foreach (var own in Own.Where(o => o.Dimension == dimension))
        {
            table.TryAdd(Spelling(own.Symbol), new Unit(own.Symbol, dimension, own.Factor, own.Offset));
        }

        var name = QuantityNames.GetValueOrDefault(dimension, dimension.ToString());
        // Straight to the one quantity: the library's own lists and caches make ready all of them, half a second at every start.
        var info = typeof(UnitsNet.Length).Assembly.GetType("UnitsNet." + name)?.GetProperty("Info")?.GetValue(null) as QuantityInfo;
        if (info is not null)
        {
            AddFromUnitsNet(table, dimension, info);
        }

        return table;
    }

    private static void AddFromUnitsNet(Dictionary<string, Unit> table, Dimension dimension, QuantityInfo info)
    {
        var symbolsOf = new ResourceManager("UnitsNet.GeneratedCode.Resources." + info.Name, info.GetType().Assembly);
        var abbreviations = info.UnitInfos.Select(u => (Info: u, Symbols: Abbreviations(symbolsOf, u))).ToList();
        var si = abbreviations.FirstOrDefault(a => a.Symbols.Any(s => Spelling(s) == Spelling(dimension.SiUnit()))).Info ?? info.BaseUnitInfo;
        foreach (var (unit, symbols) in abbreviations)
        {
            var zero = ToSi(0, unit, si);
            var factor = ToSi(1, unit, si) - zero;
            foreach (var symbol in symbols)
            {
                table.TryAdd(Spelling(symbol), new Unit(symbol, dimension, factor, zero));
            }
        }
    }

    private static string[] Abbreviations(ResourceManager symbolsOf, UnitInfo unit) =>
        symbolsOf.GetString(unit.PluralName, CultureInfo.InvariantCulture)?.Split(',') ?? [];

    private static double ToSi(double value, UnitInfo unit, UnitInfo si) =>
        (double)Quantity.From(value, unit.Value).ToUnit(si.Value).Value;

    /// <summary>One spelling for all the ways in which a unit is typed.</summary>
    private static string Spelling(string symbol)
    {
        var spelt = new StringBuilder(symbol.Length);
        var slash = false;
        foreach (var c in symbol)
        {
            switch (c)
            {
                case '·' or '*' or '⋅' or '^' or '(' or ')' or ' ' or '-' or '.':
                    break;
                case '/' when slash:
                    break;
                case '/':
                    slash = true;
                    spelt.Append(c);
                    break;
                case '²':
                    spelt.Append('2');
                    break;
                case '³':
                    spelt.Append('3');
                    break;
                case 'µ' or 'μ':
                    spelt.Append('u');
                    break;
                default:
                    spelt.Append(c);
                    break;
            }
        }

        return spelt.ToString();
    }
}
