namespace Gudgeon.Simulation.Pipes;

/// <summary>A stretch of pipe whose diameter runs evenly from one end to the other.</summary>
/// <param name="Length">m.</param>
/// <param name="From">Diameter where it begins, m.</param>
/// <param name="To">Diameter where it ends, m.</param>
public readonly record struct Taper(double Length, double From, double To)
{
    /// <summary>A straight stretch.</summary>
    public static Taper Straight(double length, double diameter) => new(length, diameter, diameter);
}

/// <summary>
/// The shape of a pipe cut into cells of even length: areas of the faces between them, volumes and wall areas. Tapers need
/// not end at a face; areas and volumes are those of the true shape.
/// </summary>
public sealed class Duct
{
    private readonly Taper[] _tapers;

    /// <param name="tapers">Stretches from the first end to the last.</param>
    /// <param name="cell">Wished length of a cell, m; the pipe is cut into at least three.</param>
    /// <exception cref="ArgumentException">No stretch, or one without length or width.</exception>
    public Duct(IReadOnlyList<Taper> tapers, double cell)
    {
        if (tapers.Count == 0 || tapers.Any(t => !(t.Length > 0 && t.From > 0 && t.To > 0)) || !(cell > 0))
        {
            throw new ArgumentException("wanted stretches of pipe with a length and diameters above zero, and a cell above zero", nameof(tapers));
        }

        _tapers = [.. tapers];
        Length = tapers.Sum(t => t.Length);
        Cells = Math.Max(3, (int)Math.Round(Length / cell));
        CellLength = Length / Cells;
        FaceArea = [.. Enumerable.Range(0, Cells + 1).Select(i => Area(i * CellLength))];
        Volume = [.. Enumerable.Range(0, Cells).Select(i => VolumeTo((i + 1) * CellLength) - VolumeTo(i * CellLength))];
        Diameter = [.. Volume.Select(v => Math.Sqrt(v / CellLength * 4 / Math.PI))];
    }

    /// <summary>m.</summary>
    public double Length { get; }

    /// <summary>How many cells.</summary>
    public int Cells { get; }

    /// <summary>m.</summary>
    public double CellLength { get; }

    /// <summary>Area of each face, the ends among them, m².</summary>
    public IReadOnlyList<double> FaceArea { get; }

    /// <summary>Volume of each cell, m³.</summary>
    public IReadOnlyList<double> Volume { get; }

    /// <summary>Diameter of a straight pipe with the cell's volume, m.</summary>
    public IReadOnlyList<double> Diameter { get; }

    private double Area(double x)
    {
        var (taper, at) = Find(x);
        var d = taper.From + ((taper.To - taper.From) * at / taper.Length);
        return Math.PI / 4 * d * d;
    }

    /// <summary>Volume from the first end to a place.</summary>
    private double VolumeTo(double x)
    {
        var (volume, begin) = (0.0, 0.0);
        foreach (var taper in _tapers)
        {
            var part = Math.Clamp(x - begin, 0, taper.Length);
            var d = taper.From + ((taper.To - taper.From) * part / taper.Length);
            volume += Math.PI / 12 * part * ((taper.From * taper.From) + (taper.From * d) + (d * d));
            begin += taper.Length;
        }

        return volume;
    }

    private (Taper Taper, double At) Find(double x)
    {
        var begin = 0.0;
        foreach (var taper in _tapers)
        {
            if (x <= begin + taper.Length)
            {
                return (taper, x - begin);
            }

            begin += taper.Length;
        }

        return (_tapers[^1], _tapers[^1].Length);
    }
}
