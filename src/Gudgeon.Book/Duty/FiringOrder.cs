using System.Globalization;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Duty;

/// <summary>Firing order and intervals turned into the crank angle at which each cylinder fires.</summary>
public static class FiringOrder
{
    /// <summary>Crank angle of each cylinder's firing TDC, degrees, in the order of the cylinder numbers; the first to fire at 0.</summary>
    /// <param name="cylinders">Number of cylinders.</param>
    /// <param name="order">"1-2"; empty for 1-2-3….</param>
    /// <param name="intervals">"360-360"; empty for even intervals.</param>
    /// <exception cref="BadInputException">Not every cylinder once, or intervals that do not add up to 720.</exception>
    public static double[] Angles(int cylinders, string order, string intervals)
    {
        var fires = order.Length == 0 ? [.. Enumerable.Range(1, cylinders).Select(n => (double)n)] : Numbers(Engine.FiringOrder, order);
        if (!fires.Order().SequenceEqual(Enumerable.Range(1, cylinders).Select(n => (double)n)))
        {
            throw new BadInputException($"{Engine.FiringOrder.Path}: given '{order}', which is no firing order of {cylinders} cylinders; wanted every number from 1 to {cylinders} once, such as {string.Join('-', Enumerable.Range(1, cylinders))}");
        }

        var gaps = intervals.Length == 0 ? [.. Enumerable.Repeat(720.0 / cylinders, cylinders)] : Numbers(Engine.FiringIntervals, intervals);
        if (gaps.Count != cylinders || gaps.Exists(g => g < 0) || Math.Abs(gaps.Sum() - 720) > 1e-6)
        {
            throw new BadInputException($"{Engine.FiringIntervals.Path}: given '{intervals}', wanted {cylinders} intervals that add up to 720");
        }

        var angles = new double[cylinders];
        var at = 0.0;
        for (var i = 0; i < cylinders; i++)
        {
            angles[(int)fires[i] - 1] = at;
            at += gaps[i];
        }

        return angles;
    }

    private static List<double> Numbers(Field field, string text) => [.. text.Split('-', StringSplitOptions.TrimEntries).Select(part =>
        double.TryParse(part, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)
            ? number
            : throw new BadInputException($"{field.Path}: given '{text}', wanted numbers with dashes between, such as 1-2"))];
}
