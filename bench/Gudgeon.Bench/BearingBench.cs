using Gudgeon.Simulation.Bearings;

namespace Gudgeon.Bench;

/// <summary>Oil films of bearings: the table of mobilities.</summary>
internal static class BearingBench
{
    /// <summary>Makes the table of mobilities afresh.</summary>
    public static void Table(string file) => File.WriteAllText(file, string.Join('\n', FiniteMobility.Make()) + "\n");
}
