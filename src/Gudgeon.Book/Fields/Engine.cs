using Gudgeon.Book.Duty;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>The engine as a whole.</summary>
public static class Engine
{
    private static readonly Subject Subject = new("engine", "Engine");

    public static readonly Field Cylinders = Subject.Count("cylinders", "Number of cylinders", (1, 6));
    public static readonly Field FiringOrder = Subject.Text("firingOrder", "Firing order", "Cylinder numbers in the order in which they fire, such as 1-2 or 1-3-4-2; every cylinder once.");
    public static readonly Field FiringIntervals = Subject.Text("firingIntervals", "Firing intervals", "Crank degrees from each firing to the next, such as 360-360 or 270-450; they add up to 720. Even when left out.");
    public static readonly Field RevLimit = Subject.Amount("revLimit", "Rev limit", Dimension.RotationalSpeed, "rpm", (3000, 16000), help: "The speed that the ignition will not let the engine pass.");
    public static readonly Field RunFrom = Subject.Amount("runFrom", "Lowest speed of a run", Dimension.RotationalSpeed, "rpm", (1000, 8000), help: "A run starts here when the command does not say.");
    public static readonly Field PistonSpeedLimit = Subject.Amount("pistonSpeedLimit", "Mean piston speed allowed", Dimension.Speed, "m/s", (15, 30), help: "By the maker of piston and rod; 25 m/s when left out.");
    public static readonly Field PistonAccelerationLimit = Subject.Amount("pistonAccelerationLimit", "Peak piston acceleration allowed", Dimension.Acceleration, "m/s²", (15000, 120000), help: "By the maker of piston, pin and rod bolts.");
    public static readonly Field Depth = Subject.Choice<Depth>("depth", "Depth of the engine model", "What figures and checks come from: volumes and restrictions (lumped, quick) or waves along the pipes (wave, which wants their lengths); lumped when left out.");
    public static readonly Field CellLength = Subject.Amount("cellLength", "Length of a pipe's cells in the wave model", Dimension.Length, "mm", (5, 60), help: "Shorter ones cost time and sharpen the waves; 15 mm when left out (common practice).");
    public static readonly Field PipeHeat = Subject.Amount("pipeHeat", "Heat between gas and pipe walls over that of a steady flow", Dimension.Number, "", (0, 3), zero: true, help: "Flow that pulsates gives more: 1.5 to 2 is customary in an exhaust; 1 when left out. Read by the wave depth.");
}
