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

        (CellArea, PerFaceArea) = (Fresh(), Fresh());
        Array.Fill(CellArea, 1);
        Array.Fill(PerFaceArea, 1);
        for (var i = 0; i < duct.Cells; i++)
        {
            CellArea[i + 1] = duct.Volume[i] / duct.CellLength;
        }

        for (var i = 0; i <= duct.Cells; i++)
        {
            PerFaceArea[i] = 1 / duct.FaceArea[i];
        }

        CellArea[0] = Beyond(FaceArea[0], CellArea[1]);
        CellArea[duct.Cells + 1] = Beyond(FaceArea[duct.Cells], CellArea[duct.Cells]);
        Widening = Array.Exists(widening, w => w != 0) ? widening : null;
    }

    /// <summary>Area of a cell beyond an end, as if the taper went on.</summary>
    private static double Beyond(double face, double cell) => (2 * face) - cell > 0 ? (2 * face) - cell : face;

    /// <summary>Area of the face before each cell of index i + 1, m²: face i at index i.</summary>
    public double[] FaceArea { get; }

    /// <summary>1/m³.</summary>
    public double[] PerVolume { get; }

    /// <summary>1/m.</summary>
    public double[] PerDiameter { get; }

    /// <summary>Volume over length of each cell, m².</summary>
    public double[] CellArea { get; }

    /// <summary>One over the area of each face, 1/m².</summary>
    public double[] PerFaceArea { get; }

    /// <summary>(dA/dx)/A, 1/m; null for a straight pipe.</summary>
    public double[]? Widening { get; }
}
