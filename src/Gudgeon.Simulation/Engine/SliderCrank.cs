namespace Gudgeon.Simulation.Engine;

/// <summary>Cylinder volume against crank angle, pin or cylinder offset included.</summary>
internal sealed class SliderCrank
{
    private readonly double _crank;
    private readonly double _rod;
    private readonly double _offset;
    private readonly double _highest;
    private readonly double _bore;

    public SliderCrank(CylinderSpec cylinder)
    {
        (_crank, _rod, _offset, _bore) = (cylinder.Stroke / 2, cylinder.Rod, cylinder.PinOffset, cylinder.Bore);
        _highest = Math.Sqrt(((_rod + _crank) * (_rod + _crank)) - (_offset * _offset));
        var lowest = Math.Sqrt(((_rod - _crank) * (_rod - _crank)) - (_offset * _offset));
        Travel = _highest - lowest;
        SweptVolume = Area * Travel;
        ClearanceVolume = cylinder.ClearanceVolume ?? SweptVolume / (cylinder.CompressionRatio!.Value - 1);
    }

    /// <summary>Bore area, m².</summary>
    public double Area => Math.PI / 4 * _bore * _bore;

    /// <summary>Piston travel, m; a little more than the stroke when offset.</summary>
    public double Travel { get; }

    /// <summary>m³.</summary>
    public double SweptVolume { get; }

    /// <summary>m³.</summary>
    public double ClearanceVolume { get; }

    /// <summary>Distance of the piston below its highest point, m, at a crank angle in degrees.</summary>
    public double Depth(double angle)
    {
        var (sin, cos) = Math.SinCos(angle * Math.PI / 180);
        var across = (_crank * sin) - _offset;
        return _highest - (_crank * cos) - Math.Sqrt((_rod * _rod) - (across * across));
    }

    /// <summary>Cylinder volume, m³, at a piston depth in m.</summary>
    public double Volume(double depth) => ClearanceVolume + (Area * depth);
}
