using Gudgeon.Book.Values;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>Places of the cycle in degrees after firing top dead centre, and in words.</summary>
internal static class CyclePlace
{
    /// <summary>"372° after firing TDC of cylinder 1".</summary>
    public static string Of(CrankLoads loads, int place) => $"{Figures.Number(Degrees(loads.Throws[0].Angle[place]), 3)}° after firing TDC of cylinder 1";

    /// <summary>Degrees after firing top dead centre to a tenth, 0 to 720.</summary>
    /// <param name="angle">Angle after it, any number of cycles, rad.</param>
    public static double Degrees(double angle)
    {
        var degrees = Math.Round(angle * 180 / Math.PI, 1);
        return degrees - (720 * Math.Floor(degrees / 720));
    }
}
