using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Web.Parts;

/// <summary>What an axis or a slider shows: a quantity in a metric unit and its counterpart.</summary>
/// <param name="Quantity">"power".</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Metric">Metric unit.</param>
/// <param name="Inch">Its counterpart.</param>
public sealed record Axis(string Quantity, Dimension Dimension, string Metric, string Inch)
{
    public static readonly Axis EngineSpeed = new("engine speed", Dimension.RotationalSpeed, "rpm", "rpm");
    public static readonly Axis Torque = new("torque", Dimension.Torque, "N·m", "lbf·ft");
    public static readonly Axis Power = new("power", Dimension.Power, "kW", "hp");
    public static readonly Axis Boost = new("boost", Dimension.Pressure, "bar", "psi");
    public static readonly Axis Pressure = new("pressure", Dimension.Pressure, "bar", "psi");
    public static readonly Axis AirFlow = new("air flow", Dimension.MassFlow, "g/s", "lb/min");
    public static readonly Axis FuelFlow = new("fuel flow", Dimension.MassFlow, "g/s", "lb/min");
    public static readonly Axis Temperature = new("temperature", Dimension.Temperature, "°C", "°F");
    public static readonly Axis Volume = new("cylinder volume", Dimension.Volume, "cm³", "in³");
    public static readonly Axis RoadSpeed = new("road speed", Dimension.Speed, "km/h", "mph");
    public static readonly Axis SpringHeight = new("height of the spring", Dimension.Length, "mm", "in");
    public static readonly Axis Load = new("load", Dimension.Force, "N", "lbf");
    public static readonly Axis Distance = new("distance", Dimension.Length, "m", "ft");

    /// <summary>The unit shown.</summary>
    public string Unit(bool imperial) => imperial ? Inch : Metric;

    /// <summary>"power, kW".</summary>
    public string Title(bool imperial) => $"{Quantity}, {Unit(imperial)}";

    /// <summary>An SI value in the unit shown.</summary>
    public double Shown(double si, bool imperial) => Units.Declared(Dimension, Unit(imperial)).FromSi(si);

    /// <summary>The SI value of what is shown.</summary>
    public double Si(double shown, bool imperial) => Units.Declared(Dimension, Unit(imperial)).ToSi(shown);

    /// <summary>SI values in the unit shown.</summary>
    public double[] Shown(IEnumerable<double> si, bool imperial)
    {
        var unit = Units.Declared(Dimension, Unit(imperial));
        return [.. si.Select(unit.FromSi)];
    }
}
