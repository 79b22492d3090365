using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.ValveTrain;

namespace Gudgeon.Book.Fields;

/// <summary>Camshaft lobes and their timing: cam[inlet], cam[exhaust.2].</summary>
public static class Cam
{
    private static readonly Subject Subject = new("cam", "Cam", Indexing.Valve);

    public static readonly Field LiftTable = Subject.Table("liftTable", "Lobe lift curve", "Lift of a flat-ended gauge on the lobe against the cam's own angle from the nose, negative while it opens; the middle of its half lift is what cam.centre places. Zero at both ends.", new Column("angle", Dimension.Angle, "°", Of: Shaft.Cam), new Column("lift", Dimension.Length, "mm"));
    public static readonly Field SmoothingBound = Subject.Amount("smoothingBound", "How far smoothing may move a lift", Dimension.Length, "mm", (0.001, 0.05), help: "Before a measured curve is differentiated; what the dial gauge can be read to. 0.01 mm when left out (common practice).", zero: true);
    public static readonly Field Law = Subject.Choice<LobeLaw>("law", "Law of the lobe", "Makes a lobe from duration and lift where none has been measured.");
    public static readonly Field Duration = Subject.Amount("duration", "Duration of the lobe, crank degrees", Dimension.Angle, "°", (150, 360), help: "Between the tops of the ramps.", most: 4 * Math.PI);
    public static readonly Field Lift = Subject.Amount("lift", "Lift of the lobe, ramp counted", Dimension.Length, "mm", (3, 16), "dial gauge on the base circle and the nose");
    public static readonly Field RampHeight = Subject.Amount("rampHeight", "Height of the ramp", Dimension.Length, "mm", (0.05, 0.6), help: "Takes up the lash at an even, low speed.");
    public static readonly Field RampAngle = Subject.Amount("rampAngle", "Length of the ramp, crank degrees", Dimension.Angle, "°", (10, 80));
    public static readonly Field Centre = Subject.Amount("centre", "Lobe centre from overlap TDC, crank degrees", Dimension.Angle, "°", (80, 130), "degree wheel, equal lift on both flanks", "Inlet after, exhaust before TDC. Places a lobe; a lift curve read at the valve has its place already.");
    public static readonly Field CentreWanted = Subject.Amount("centreWanted", "Lobe centre wanted, crank degrees", Dimension.Angle, "°", (80, 130), help: "By the maker of the cam.");
    public static readonly Field CentreTolerance = Subject.Amount("centreTolerance", "Lobe centre tolerance, crank degrees", Dimension.Angle, "°", (0.2, 5), help: "How far chain, sprocket and reading may leave the cam off its place; 2° when left out.");
    public static readonly Field Advance = Subject.Amount("advance", "Cam advanced against its lift curve, crank degrees", Dimension.Angle, "°", (-15, 15), help: "Earlier counts positive; for sprockets moved after the curve was read.", signed: true);
    public static readonly Field WheelTable = Subject.Table("wheelTable", "Degree-wheel readings", "Crank angle from overlap TDC (before it negative) at which the valve passes a lift, opening and closing: 1 mm at 20° at 190°. One lift or several.", new Column("lift", Dimension.Length, "mm"), new Column("opening", Dimension.Angle, "°"), new Column("closing", Dimension.Angle, "°"));
    public static readonly Field WheelZero = Subject.Amount("wheelZero", "Degree wheel off true TDC, crank degrees", Dimension.Angle, "°", (-3, 3), "positive stop, both sides", "0° ± 0.5° says how well TDC was found; its ± goes into the lobe centre. Positive when the wheel reads too much.", signed: true);
    public static readonly Field WheelReading = Subject.Amount("wheelReading", "Reading of the degree wheel, ±", Dimension.Angle, "°", (0.1, 3), help: "How well one angle can be read, TDC apart; 0.5° when left out (common practice).");
    public static readonly Field SprocketTeeth = Subject.Count("sprocketTeeth", "Teeth of the cam sprocket", (16, 60), 2);
    public static readonly Field SlotRadius = Subject.Amount("slotRadius", "Radius of the sprocket's slots", Dimension.Length, "mm", (10, 60));
    public static readonly Field SlotTravel = Subject.Amount("slotTravel", "Travel of the sprocket's slots, each way", Dimension.Length, "mm", (0.5, 10));
    public static readonly Field VernierHub = Subject.Count("vernierHub", "Holes of the cam's hub", (3, 40), 2, "A vernier sprocket has another number of holes than its hub; one pair in line sets the cam.");
    public static readonly Field VernierSprocket = Subject.Count("vernierSprocket", "Holes of the vernier sprocket", (3, 40), 2);
    public static readonly Field BaseRadius = Subject.Amount("baseRadius", "Base circle radius", Dimension.Length, "mm", (8, 30), "micrometer over the base circle");
    public static readonly Field Width = Subject.Amount("width", "Width of the lobe", Dimension.Length, "mm", (5, 25), "calliper");
    public static readonly Field Modulus = Subject.Amount("modulus", "Young's modulus of the cam", Dimension.Pressure, "GPa", (90, 220), help: "Steel 206, chilled iron about 170 GPa; 206 GPa when left out.");
    public static readonly Field ContactLimit = Subject.Amount("contactLimit", "Contact pressure allowed on cam and follower", Dimension.Pressure, "MPa", (500, 2000), help: "By the maker of cam and follower.");
}
