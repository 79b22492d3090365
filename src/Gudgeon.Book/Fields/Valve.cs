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
    public static readonly Field LiftTable = Subject.Table("liftTable", "Lift curve", "Lift at the valve, lash taken off, against crank angle after the cylinder's firing TDC: an exhaust valve opens near 130° and an inlet valve near 340°. Zero at both ends.", new Column("angle", Dimension.Angle, "°", Of: Shaft.Crank), new Column("lift", Dimension.Length, "mm"));
    public static readonly Field FlowTable = Subject.Table("flowTable", "Flow coefficients", "Coefficient on the valve curtain against lift; reverse flow when it was measured.", new Column("lift", Dimension.Length, "mm"), new Column("forward", Dimension.Number, ""), new Column("reverse", Dimension.Number, "", Optional: true));
    public static readonly Field BenchTable = Subject.Table("benchTable", "Flow bench readings", "Flow of one port (all its valves) against lift at the bench's test pressure.", new Column("lift", Dimension.Length, "mm"), new Column("flow", Dimension.VolumeFlow, "L/s"), new Column("reverse", Dimension.VolumeFlow, "L/s", Optional: true));
    public static readonly Field BenchPressure = Subject.Amount("benchPressure", "Test pressure of the flow bench", Dimension.Pressure, "inH2O", (3, 60), most: 45e3);
    public static readonly Field BenchTemperature = Subject.Amount("benchTemperature", "Air temperature that the bench's flow is stated at", Dimension.Temperature, "°C", (0, 40), help: "20 °C when left out. A bench that corrects its flow states the standard it corrects to.");
    public static readonly Field BenchAirPressure = Subject.Amount("benchAirPressure", "Air pressure that the bench's flow is stated at", Dimension.Pressure, "hPa", (850, 1050), help: "1013.25 hPa when left out.");
    public static readonly Field StemAngle = Subject.Amount("stemAngle", "Stem angle from the cylinder axis", Dimension.Angle, "°", (0, 45), "drawing, or protractor on the head face", zero: true, most: Math.PI / 3);
    public static readonly Field StemDiameter = Subject.Amount("stemDiameter", "Stem diameter", Dimension.Length, "mm", (3.5, 12), "micrometer, three heights");
    public static readonly Field ThroatDiameter = Subject.Amount("throatDiameter", "Throat diameter below the seat", Dimension.Length, "mm", (10, 65), "telescopic gauge");
    public static readonly Field SeatWidth = Subject.Amount("seatWidth", "Seat width", Dimension.Length, "mm", (0.5, 4), "marking blue and calliper");
    public static readonly Field SeatAngle = Subject.Amount("seatAngle", "Seat angle from the valve head's plane", Dimension.Angle, "°", (20, 60), help: "45° when left out.");
    public static readonly Field PistonClearance = Subject.Amount("pistonClearance", "Room to the piston at TDC, valve shut, along the stem", Dimension.Length, "mm", (1, 20), "push the valve down at TDC until it touches, dial gauge on the stem");
    public static readonly Field PocketDepth = Subject.Amount("pocketDepth", "Depth of the piston's valve pocket", Dimension.Length, "mm", (0.2, 15), "depth gauge, from the crown's edge, along the bore", "With the recess, deck height and gasket it gives the room to the piston where that was not read.", zero: true);
    public static readonly Field Recess = Subject.Amount("recess", "Valve head above the head face, valve shut", Dimension.Length, "mm", (-3, 20), "depth gauge along the bore", "Negative when it stands proud.", signed: true);
    public static readonly Field PocketDiameter = Subject.Amount("pocketDiameter", "Diameter of the valve pocket", Dimension.Length, "mm", (15, 80), "calliper");
    public static readonly Field ClayClearance = Subject.Amount("clayClearance", "Least room to the piston by clay or dial gauge", Dimension.Length, "mm", (0.3, 12), "clay on the crown, two turns by hand, its thinnest place; or a dial gauge with a light spring");
    public static readonly Field Shim = Subject.Amount("shim", "Lash shim fitted", Dimension.Length, "mm", (1, 6), "micrometer; the mark wears off");
    public static readonly Field LashMin = Subject.Amount("lashMin", "Least lash allowed", Dimension.Length, "mm", (0.02, 0.5), help: "By the maker of the cam.");
    public static readonly Field LashMax = Subject.Amount("lashMax", "Greatest lash allowed", Dimension.Length, "mm", (0.05, 0.6), help: "By the maker of the cam.");
    public static readonly Field LashWanted = Subject.Amount("lashWanted", "Lash wanted", Dimension.Length, "mm", (0.02, 0.6), help: "The middle of what is allowed when left out.");
    public static readonly Field SeatPressureLimit = Subject.Amount("seatPressureLimit", "Contact pressure allowed on the seat", Dimension.Pressure, "MPa", (50, 500), help: "By the maker of the seats.");
    public static readonly Field StemStressLimit = Subject.Amount("stemStressLimit", "Tension allowed in the stem, hot", Dimension.Pressure, "MPa", (50, 600), help: "By the maker of the valve, at the stem's running temperature and with his factor.");
    public static readonly Field SeatingSpeed = Subject.Amount("seatingSpeed", "Speed at which the valve meets its seat", Dimension.Speed, "m/s", (0.05, 2), help: "At the rev limit; from the closing ramp of the cam where height and length are known.");
}
