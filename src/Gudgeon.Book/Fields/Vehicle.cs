using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>The motorcycle and its rider.</summary>
public static class Vehicle
{
    private static readonly Subject Subject = new("vehicle", "Motorcycle");

    public static readonly Field Mass = Subject.Amount("mass", "Machine ready to run, without rider", Dimension.Mass, "kg", (60, 500), "two scales");
    public static readonly Field RiderMass = Subject.Amount("riderMass", "Rider in full gear", Dimension.Mass, "kg", (40, 130), "scale");
    public static readonly Field Wheelbase = Subject.Amount("wheelbase", "Wheelbase", Dimension.Length, "mm", (1100, 2600), "tape");
    public static readonly Field CentreHeight = Subject.Amount("centreHeight", "Centre of gravity above ground, rider aboard", Dimension.Length, "mm", (300, 900), "lift the front, read the scales");
    public static readonly Field CentreAhead = Subject.Amount("centreAhead", "Centre of gravity ahead of the rear contact, rider aboard", Dimension.Length, "mm", (400, 1400), "two scales");
    public static readonly Field DragArea = Subject.Amount("dragArea", "Drag area (Cd × A)", Dimension.Area, "m²", (0.2, 0.8), "coast-down run");
    public static readonly Field DragHeight = Subject.Amount("dragHeight", "Height of the centre of drag", Dimension.Length, "mm", (300, 900));
    public static readonly Field RollingResistance = Subject.Amount("rollingResistance", "Rolling resistance over weight", Dimension.Number, "", (0.005, 0.04));
    public static readonly Field TyreCircumference = Subject.Amount("tyreCircumference", "Rolling circumference of the rear tyre", Dimension.Length, "mm", (1500, 2400), "roll out one turn with the rider aboard");
    public static readonly Field TyreFriction = Subject.Amount("tyreFriction", "Grip of the rear tyre", Dimension.Number, "", (0.7, 2), help: "Drive force over load on the surface of the run; airfield asphalt about 1.0 to 1.2, a prepared strip more.");
    public static readonly Field RearWheelInertia = Subject.Amount("rearWheelInertia", "Rear wheel inertia", Dimension.MomentOfInertia, "kg·m²", (0.2, 2));
    public static readonly Field FrontWheelInertia = Subject.Amount("frontWheelInertia", "Front wheel inertia", Dimension.MomentOfInertia, "kg·m²", (0.2, 1.5));
    public static readonly Field WheelieBar = Subject.Amount("wheelieBar", "Reach of the wheelie bar behind the rear contact", Dimension.Length, "mm", (0, 2500), zero: true, help: "0 when there is none.");
}

/// <summary>Primary drive, gearbox and final drive.</summary>
public static class Driveline
{
    private static readonly Subject Subject = new("driveline", "Driveline");

    public static readonly Field Primary = Subject.Amount("primary", "Primary ratio", Dimension.Number, "", (1, 3), "count teeth");
    public static readonly Field Gears = Subject.Table("gears", "Gearbox ratios", "Input turns per output turn, first gear to top.", new Column("ratio", Dimension.Number, ""));
    public static readonly Field Final = Subject.Amount("final", "Final drive ratio", Dimension.Number, "", (1.5, 5), "count teeth");
    public static readonly Field Efficiency = Subject.Amount("efficiency", "Driveline efficiency", Dimension.Number, "", (0.8, 0.98), most: 1);
    public static readonly Field ShiftTime = Subject.Amount("shiftTime", "Time without drive at a shift", Dimension.Time, "ms", (10, 600));
    public static readonly Field LaunchSpeed = Subject.Amount("launchSpeed", "Engine speed held at the launch", Dimension.RotationalSpeed, "rpm", (2000, 12000));
}
