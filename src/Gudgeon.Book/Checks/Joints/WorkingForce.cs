using Gudgeon.Book.Checks.Rods;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Checks.Joints;

/// <summary>What pulls at one bolt of a joint at work.</summary>
/// <param name="Greatest">Greatest force along the bolt, N; pulling the joint apart is positive.</param>
/// <param name="Least">Least force along it, N.</param>
/// <param name="From">Where the greatest comes from, for people: "at 9700 rpm"; empty when it is as the book has it.</param>
internal readonly record struct WorkingForce(double Greatest, double Least, string From)
{
    /// <summary>
    /// The force on a joint: the gas of the engine run for one that holds cylinders; the pull of the rod for the cap of one,
    /// where the engine tells it; else as the book has it. Prying is counted for all but the gas, which pulls between its bolts.
    /// </summary>
    public static WorkingForce On(View view, string index)
    {
        if (WorkingJoint.Holds(view, index))
        {
            var (pressure, speed) = WorkingJoint.Peak(view);
            return new(view.Work(HeadJoint.PressureLoad, view.Amount(Joint.SealDiameter, index), pressure, WorkingJoint.BoltsPerCylinder(view, index)), 0, Motion.PeakPressureCheck.At(speed));
        }

        var rod = RodBolts.Joins(index);
        if (rod && RodBolts.KnownPull(view, index) is { } pull)
        {
            return new(pull, 0, "pull of the rod at overlap, rev limit, prying counted");
        }

        var prying = view.AmountOr(Joint.Eccentric, 1, index);
        return new(prying * view.Amount(Joint.AxialForce, index), prying * view.AmountOr(Joint.AxialForceLeast, 0, index), rod ? $"by {Joint.AxialForce.At(index)}: the engine's pull is not known" : "");
    }
}
