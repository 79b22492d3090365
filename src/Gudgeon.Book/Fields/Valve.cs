using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>Valves, their cams and ports: valve[inlet], valve[exhaust.2], valve[inlet.1.2].</summary>
public static class Valve
{
    /// <summary>Sides of the head, the first part of an index.</summary>
    public static readonly IReadOnlyList<string> Sides = ["inlet", "exhaust"];

    private static readonly Subject Subject = new("valve", "Valve", Indexing.Valve);

    public static readonly Field Count = Subject.Count("count", "Valves per cylinder on this side", (1, 3));
    public static readonly Field HeadDiameter = Subject.Amount("headDiameter", "Head diameter", Dimension.Length, "mm", (12, 70), "micrometer");
    public static readonly Field Mass = Subject.Amount("mass", "Valve mass", Dimension.Mass, "g", (10, 200), "scale");
    public static readonly Field MovingMass = Subject.Amount("movingMass", "Mass that moves with the valve", Dimension.Mass, "g", (5, 300), "scale", "Follower or the valve side of the rocker, retainer, collets and shim, without the valve and the spring.");
    public static readonly Field Lash = Subject.Amount("lash", "Lash", Dimension.Length, "mm", (0.02, 0.6), "feeler gauge, cold, on the base circle");
    public static readonly Field Lift = Subject.Amount("lift", "Full lift at the valve", Dimension.Length, "mm", (3, 20), "dial gauge on the retainer, lash taken up");
    public static readonly Field Opens = Subject.Amount("opens", "Opens: inlet before TDC, exhaust before BDC", Dimension.Angle, "°", (-20, 110), "degree wheel", "Where the valve leaves or meets its seat, not at 1 mm; a lift curve says it better.", signed: true);
    public static readonly Field Closes = Subject.Amount("closes", "Closes: inlet after BDC, exhaust after TDC", Dimension.Angle, "°", (-20, 110), "degree wheel", "Where the valve leaves or meets its seat, not at 1 mm; a lift curve says it better.", signed: true);
    public static readonly Field LiftTable = Subject.Table("liftTable", "Lift curve", "Lift at the valve, lash taken off, against crank angle after the cylinder's firing TDC: an exhaust valve opens near 130° and an inlet valve near 340°. Zero at both ends.", new Column("angle", Dimension.Angle, "°"), new Column("lift", Dimension.Length, "mm"));
    public static readonly Field FlowTable = Subject.Table("flowTable", "Flow coefficients", "Coefficient on the valve curtain against lift; reverse flow when it was measured.", new Column("lift", Dimension.Length, "mm"), new Column("forward", Dimension.Number, ""), new Column("reverse", Dimension.Number, "", Optional: true));
    public static readonly Field BenchTable = Subject.Table("benchTable", "Flow bench readings", "Flow of one port (all its valves) against lift at the bench's test pressure.", new Column("lift", Dimension.Length, "mm"), new Column("flow", Dimension.VolumeFlow, "L/s"), new Column("reverse", Dimension.VolumeFlow, "L/s", Optional: true));
    public static readonly Field BenchPressure = Subject.Amount("benchPressure", "Test pressure of the flow bench", Dimension.Pressure, "inH2O", (3, 60));
}
