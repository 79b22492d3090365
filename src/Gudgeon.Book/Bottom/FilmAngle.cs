using Gudgeon.Book.Values;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>Places of the cycle in words.</summary>
internal static class FilmAngle
{
    /// <summary>"372° after the first cylinder fires".</summary>
    public static string Of(CrankLoads loads, int place) => $"{Figures.Number(Degrees(loads, place), 3)}° after firing TDC of cylinder 1";

    /// <summary>Degrees after firing top dead centre of the first cylinder, 0 to 720.</summary>
    public static double Degrees(CrankLoads loads, int place)
    {
        var degrees = Math.Round(loads.Throws[0].Angle[place] * 180 / Math.PI, 1);
        return degrees - (720 * Math.Floor(degrees / 720));
    }
}
