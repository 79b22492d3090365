using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.ValveTrain;
using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Book.Head;

/// <summary>Contact of cam and follower where the cam pushes hardest.</summary>
internal static class NoseContact
{
    private const double Steel = 206e9;

    private const double Poisson = 0.3;

    /// <summary>Greatest contact pressure, Pa; null where base circle, width or lobe are not known.</summary>
    public static double? Of(View view, string index, TrainMotion settled, CamMotion motion)
    {
        if (motion.Lobe is not { } lobe || view.AmountIf(Cam.BaseRadius, index) is not { } radius || view.AmountIf(Cam.Width, index) is not { } width)
        {
            return null;
        }

        var point = lobe.At(settled.GreatestCamForceAngle);
        var ratio = motion.Points.Lift.Max() / lobe.Lift.Max();
        var force = settled.GreatestCamForce * ratio;
        var (cam, follower) = (view.AmountOr(Cam.Modulus, Steel, index), view.AmountOr(Follower.Modulus, Steel, index));

        // The reduced modulus of two elastic bodies, Poisson's ratio alike: 2 / Er = (1 - ν²) (1 / E1 + 1 / E2).
        var reduced = 2 / ((1 - (Poisson * Poisson)) * ((1 / cam) + (1 / follower)));
        var curvature = view.Work(CamContact.RadiusOnFlat, radius, Math.Max(0, point.Lift), point.Curvature);
        if (!(force > 0 && curvature > 0))
        {
            return null;
        }

        return view.AmountIf(Follower.PadRadius, index) is { } pad
            ? view.Work(CamContact.PressureOnRound, force, width, curvature, pad, reduced).Peak
            : view.Work(CamContact.PressureOnFlat, force, width, curvature, reduced).Peak;
    }
}
