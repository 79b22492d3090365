using Spectre.Console.Cli;

namespace Gudgeon.Cli.Joints;

/// <summary>gudgeon joints: the sheets of bolted joints, under the same words as on the page.</summary>
internal static class JointVerbs
{
    public static void Add(IConfigurator<CommandSettings> joints)
    {
        joints.SetDescription("Bolted joints: preload, torque, tightening plans, head joint, other bolts, bolt list.");
        joints.AddCommand<BoltsCommand>("bolts").WithDescription("Preload, losses, stress, fatigue and clamp left of every joint. Exit code 3: not known yet, or refused.").WithExample("joints", "bolts", "heron.json", "--joint", "head", "--svg", "head.svg");
        joints.AddCommand<TorqueCommand>("torque").WithDescription("Torque and preload of a joint, on other lubricants too. Exit code 3: not known yet, or refused.").WithExample("joints", "torque", "heron.json", "--joint", "head");
        joints.AddCommand<PlanCommand>("plan").WithDescription("Tightening plan of a joint: stages, and the order of the bolts. Exit code 3: something in it is wrong or wanted.").WithExample("joints", "plan", "heron.json", "--joint", "head", "--svg", "plan.svg");
        joints.AddCommand<HeadJointCommand>("head").WithDescription("The head joint over the levels of boost: clamp left, line load, when it lifts. Exit code 3: refused.").WithExample("joints", "head", "heron.json");
        joints.AddCommand<SwapCommand>("swap").WithDescription("A joint with bolts of another material or size, beside the joint as it is. Exit code 3: it cannot be compared, or falls short.").WithExample("joints", "swap", "heron.json", "--joint", "mount", "--material", "titanium");
        joints.AddCommand<BoltListCommand>("list").WithDescription("The bolts of all joints to order, with lengths, mass and cost, as CSV or spreadsheet too.").WithExample("joints", "list", "heron.json", "--csv", "bolts.csv", "--xlsx", "bolts.xlsx");
    }
}
