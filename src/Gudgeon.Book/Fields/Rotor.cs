using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>
/// Rotors of the torsional line: rotor[throw1], rotor[primary], rotor[blower]. Each hangs on another by a joint: a crank
/// throw, a shaft, a belt.
/// </summary>
public static class Rotor
{
    private static readonly Subject Subject = new("rotor", "Rotor of the torsional line", Indexing.Name);

    public static readonly Field Inertia = Subject.Amount("inertia", "Moment of inertia on its own shaft", Dimension.MomentOfInertia, "kg·mm²", (5, 200000), "swung on two wires, or from the drawing", "Of a crank throw without rod and piston: those are added where it has a cylinder.");
    public static readonly Field On = Subject.Text("on", "Rotor that it hangs on", "Its name, such as throw1; left out for one rotor, from which all others hang.");
    public static readonly Field Ratio = Subject.Amount("ratio", "Its speed over the crank's", Dimension.Number, "", (0.2, 20), help: "1 when left out.");
    public static readonly Field Stiffness = Subject.Amount("stiffness", "Torsional stiffness of its joint", Dimension.RotationalStiffness, "kN·m/rad", (0.01, 2000), "twisted with a known torque", "To the rotor that it hangs on, as felt on its own shaft; of a belt, the stiffness of its spans times the square of the pulley's radius. Worked from the sizes when left out.");
    public static readonly Field Loss = Subject.Amount("loss", "Loss factor of its joint", Dimension.Number, "", (0.002, 0.5), help: "Twice the share of critical damping at resonance; 0.03 for a crank in its bearings, 0.1 for a belt when left out: common practice, no source.", most: 1);
    public static readonly Field Cylinder = Subject.Count("cylinder", "Cylinder whose rod is on it", (1, 6), help: "For a crank throw.");
    public static readonly Field Diameter = Subject.Amount("diameter", "Shaft or main journal diameter of its joint", Dimension.Length, "mm", (8, 90), "micrometer", "The least; stress is counted there.");
    public static readonly Field Length = Subject.Amount("length", "Length of the shaft or main journal", Dimension.Length, "mm", (2, 500), "calliper");
    public static readonly Field PinDiameter = Subject.Amount("pinDiameter", "Crank pin diameter of its joint", Dimension.Length, "mm", (15, 80), "micrometer", "For a joint that is a crank throw: with the pin's length and the web's sizes it takes the place of a plain shaft.");
    public static readonly Field PinLength = Subject.Amount("pinLength", "Crank pin length", Dimension.Length, "mm", (8, 100), "calliper");
    public static readonly Field WebThickness = Subject.Amount("webThickness", "Web thickness along the crank", Dimension.Length, "mm", (6, 60), "calliper");
    public static readonly Field WebWidth = Subject.Amount("webWidth", "Web width across the throw", Dimension.Length, "mm", (25, 200), "calliper");
    public static readonly Field StressLimit = Subject.Amount("stressLimit", "Vibratory torsional stress allowed in its joint", Dimension.Pressure, "MPa", (10, 400), help: "Nominal, without notches; 50 MPa for a steel crank when left out: common practice, no source.");
}
