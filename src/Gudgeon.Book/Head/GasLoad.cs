using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Book.Head;

/// <summary>Gas on a valve over the cycle, from the engine run at its highest speed.</summary>
internal static class GasLoad
{
    /// <summary>The course of the force; null when the engine cannot be run, which leaves the train without gas.</summary>
    public static GasForce? On(View view, string index, CamMotion motion)
    {
        if (view.DutyIf()?.TopCycle is not { } cycle || double.IsNaN(motion.Centre) || view.AmountIf(Valve.HeadDiameter, index) is not { } head)
        {
            return null;
        }

        var cylinder = int.TryParse(ValveRoom.Cylinder(index), System.Globalization.CultureInfo.InvariantCulture, out var number) ? number - 1 : 0;
        var trace = cycle.Trace.Cylinders[cylinder];
        var port = index.StartsWith("inlet", StringComparison.Ordinal) ? trace.InletPressure : trace.ExhaustPressure;
        var points = cycle.After(cylinder)
            .Select(a => (Cam: ((a.Angle * Math.PI / 180) - motion.Centre) / 2, Force: Math.PI / 4 * head * head * (port[a.At] - trace.Pressure[a.At])))
            .DistinctBy(p => p.Cam).ToList();
        while (points[^1].Cam - points[0].Cam >= (2 * Math.PI) - 1e-9)
        {
            points.RemoveAt(points.Count - 1);
        }

        return new GasForce(points.ConvertAll(p => p.Cam), points.ConvertAll(p => Acting(motion, p.Cam, p.Force)));
    }

    /// <summary>
    /// A curve read at the valve has no lash, and so no room between cam and follower while the valve is shut: what presses
    /// the valve on its seat then would come out at the cam, where in the engine there is lash.
    /// </summary>
    private static double Acting(CamMotion motion, double cam, double force)
    {
        var turned = Math.IEEERemainder(cam, 2 * Math.PI);
        return motion.Lash == 0 && motion.Points.At(turned).Lift <= 0 ? Math.Max(0, force) : force;
    }
}
