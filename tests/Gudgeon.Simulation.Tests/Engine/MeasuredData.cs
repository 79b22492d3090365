using System.Globalization;

namespace Gudgeon.Simulation.Tests.Engine;

/// <summary>Reads the measured traces and maps that lie beside the tests; each file names its source in its first line.</summary>
internal static class MeasuredData
{
    /// <summary>Rows of a file as cells, comments and heading left out.</summary>
    public static IReadOnlyList<string[]> Rows(string file)
    {
        using var stream = typeof(MeasuredData).Assembly.GetManifestResourceStream(file)
            ?? throw new InvalidOperationException($"no resource {file}");
        using var reader = new StreamReader(stream);
        return [.. reader.ReadToEnd().Split('\n').Where(l => l.Length > 0 && l[0] != '#').Skip(1).Select(l => l.Trim().Split(','))];
    }

    public static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
