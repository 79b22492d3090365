using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Measuring;

/// <summary>
/// How round and straight a bore or a journal is by readings at stations in two axes. A station that stands in several rows was
/// read several times: its mean counts, and the scatter is a measure of the reading, not of the part. SI.
/// </summary>
public sealed class Roundness
{
    private readonly IReadOnlyList<double[]> _places;

    /// <param name="table">Stations, and diameters in a first and a second axis.</param>
    public Roundness(Table table)
    {
        var rows = table["station"].Select((station, at) => (Station: station, First: table["first"][at], Second: table["second"][at])).GroupBy(r => r.Station).ToList();
        var (first, second) = (rows.ConvertAll(g => g.Select(r => r.First).ToArray()), rows.ConvertAll(g => g.Select(r => r.Second).ToArray()));
        var (a, b) = (first.ConvertAll(r => r.Average()), second.ConvertAll(r => r.Average()));
        _places = [.. first, .. second];
        Mean = a.Concat(b).Average();
        Least = Math.Min(a.Min(), b.Min());
        Greatest = Math.Max(a.Max(), b.Max());
        OutOfRound = a.Zip(b, (x, y) => Math.Abs(x - y)).Max();
        Stations = rows.Count;
        Taper = Stations < 2 ? null : Math.Max(a.Max() - a.Min(), b.Max() - b.Min());
    }

    /// <summary>Mean of all places, m.</summary>
    public double Mean { get; }

    /// <summary>Least place, m.</summary>
    public double Least { get; }

    /// <summary>Greatest place, m.</summary>
    public double Greatest { get; }

    /// <summary>Greatest difference of the two axes at a station, m.</summary>
    public double OutOfRound { get; }

    /// <summary>Greatest difference between stations of the same axis, m; null where one station alone was read.</summary>
    public double? Taper { get; }

    /// <summary>At how many stations was read.</summary>
    public int Stations { get; }

    /// <summary>"out of round 4 µm, taper 3 µm".</summary>
    /// <param name="print">A length in words.</param>
    public string Words(Func<double, string> print) => $"out of round {print(OutOfRound)}, taper {(Taper is { } taper ? print(taper) : "not known yet: a second station is wanted")}";

    /// <summary>How many readings it is of.</summary>
    public int Readings => _places.Sum(p => p.Length);

    /// <summary>Degrees of freedom of the scatter: readings less places; 0 where nothing was read twice.</summary>
    public int Freedom => Readings - _places.Count;

    /// <summary>Standard deviation of one reading, pooled over the places, m; 0 where nothing was read twice (JCGM 100:2008, H.3.6).</summary>
    public double Scatter => Freedom == 0 ? 0 : Math.Sqrt(_places.Sum(p => p.Sum(r => (r - p.Average()) * (r - p.Average()))) / Freedom);

    /// <summary>Of a table of readings; null when the book has none.</summary>
    public static Roundness? Of(View view, Field field, string index) => view.TableIf(field, index) is { } table ? new Roundness(table) : null;
}
