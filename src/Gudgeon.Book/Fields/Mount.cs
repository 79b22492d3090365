using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Where the engine is held: mount[front.left], mount[rear].</summary>
public static class Mount
{
    private static readonly Subject Subject = new("mount", "Engine mount", Indexing.Name);

    public static readonly Field X = Subject.Amount("x", "Place beside the crank", Dimension.Length, "mm", (-800, 800), "tape and square", "To the side that the crank pin moves to after top dead centre, square to cylinder 1.", signed: true);
    public static readonly Field Y = Subject.Amount("y", "Place along the cylinder", Dimension.Length, "mm", (-800, 800), "tape and square", "From the crank axis towards the head.", signed: true);
    public static readonly Field Position = Subject.Amount("position", "Place along the crank", Dimension.Length, "mm", (-800, 800), "tape and square", "From the mark that the cylinders count from.", signed: true);
}
