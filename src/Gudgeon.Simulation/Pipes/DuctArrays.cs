using System.Numerics;

namespace Gudgeon.Simulation.Pipes;

/// <summary>The shape of a duct as the march reads it: cell i at index i + 1, padded with zeros for whole vectors.</summary>
internal sealed class DuctArrays
{
    public DuctArrays(Duct duct)
    {
        double[] Fresh() => new double[duct.Cells + 2 + Vector<double>.Count];
        (FaceArea, PerVolume, PerDiameter) = (Fresh(), Fresh(), Fresh());
        duct.FaceArea.ToArray().CopyTo(FaceArea, 0);
        var widening = Fresh();
        for (var i = 0; i < duct.Cells; i++)
        {
            (PerVolume[i + 1], PerDiameter[i + 1]) = (1 / duct.Volume[i], 1 / duct.Diameter[i]);
            widening[i + 1] = (duct.FaceArea[i + 1] - duct.FaceArea[i]) / duct.Volume[i];
        }

        Widening = Array.Exists(widening, w => w != 0) ? widening : null;
    }

    /// <summary>Area of the face before each cell of index i + 1, m²: face i at index i.</summary>
    public double[] FaceArea { get; }

    /// <summary>1/m³.</summary>
    public double[] PerVolume { get; }

    /// <summary>1/m.</summary>
    public double[] PerDiameter { get; }

    /// <summary>(dA/dx)/A, 1/m; null for a straight pipe.</summary>
    public double[]? Widening { get; }
}
