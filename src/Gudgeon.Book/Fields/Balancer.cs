using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Balance shafts that the crank drives: balancer[front], balancer[rear]. A shaft with two weights is written as two.</summary>
public static class Balancer
{
    private static readonly Subject Subject = new("balancer", "Balance shaft", Indexing.Name);

    public static readonly Field Unbalance = Subject.Amount("unbalance", "Unbalance: mass times radius", Dimension.Unbalance, "g·mm", (100, 200000), "balancing machine", "Or its mass and the radius of that.");
    public static readonly Field Mass = Subject.Amount("mass", "Mass of the weight", Dimension.Mass, "g", (10, 5000), "scale");
    public static readonly Field Radius = Subject.Amount("radius", "Radius of the weight's centre of mass", Dimension.Length, "mm", (2, 100));
    public static readonly Field Ratio = Subject.Amount("ratio", "Shaft speed over crank speed", Dimension.Number, "", (0.5, 2), "teeth of the gears", "1 when left out; 2 for secondary forces.");
    public static readonly Field Hand = Subject.Choice("hand", "Which way it turns", [With, Against], "Geared straight to the crank it turns against it; against when left out.");
    public static readonly Field Phase = Subject.Amount("phase", "Angle of its weight with cylinder 1 at TDC", Dimension.Angle, "°", (-360, 360), "degree wheel on the shaft, crank locked at TDC", "From the direction of cylinder 1 away from the crank, positive the way the crank turns; 180° points away from the cylinder. As the timing marks stand.", signed: true);
    public static readonly Field X = Subject.Amount("x", "Place of its axis beside the crank", Dimension.Length, "mm", (-400, 400), help: "To the side that the crank pin moves to after top dead centre; on the crank's own axis when left out.", signed: true);
    public static readonly Field Y = Subject.Amount("y", "Place of its axis along the cylinder", Dimension.Length, "mm", (-400, 400), help: "From the crank axis towards the head; level with it when left out.", signed: true);
    public static readonly Field Position = Subject.Amount("position", "Place of its weight along the crank", Dimension.Length, "mm", (-600, 600), help: "From the mark that the cylinders count from; in the middle between the end cylinders when left out.", signed: true);
    public static readonly Field Teeth = Subject.Count("teeth", "Teeth of its gear", (8, 120), help: "How far a tooth out turns it.");

    /// <summary>It turns as the crank does.</summary>
    internal const string With = "with the crank";

    /// <summary>It turns the other way.</summary>
    internal const string Against = "against the crank";
}
