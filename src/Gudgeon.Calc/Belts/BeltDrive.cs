using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Belts;

/// <summary>Tensions and power of a belt at the edge of slip.</summary>
/// <param name="Ratio">Ratio of the tensions, centrifugal tension left out.</param>
/// <param name="Tight">Tension of the tight side with centrifugal tension, N.</param>
/// <param name="Slack">Tension of the slack side with centrifugal tension, N.</param>
/// <param name="Centrifugal">Centrifugal tension, N.</param>
/// <param name="Pull">Effective pull, N.</param>
/// <param name="Power">Power of all belts, W.</param>
public readonly record struct BeltPower(
    [Quantity("tension ratio", Dimension.Number, Symbol = "q")] double Ratio,
    [Quantity("tight side tension", Dimension.Force, "N", Symbol = "T1")] double Tight,
    [Quantity("slack side tension", Dimension.Force, "N", Symbol = "T2")] double Slack,
    [Quantity("centrifugal tension", Dimension.Force, "N", Symbol = "Tc")] double Centrifugal,
    [Quantity("effective pull of one belt", Dimension.Force, "N", Symbol = "F")] double Pull,
    [Quantity("power", Dimension.Power, "kW", Symbol = "P")] double Power);

/// <summary>What a belt needs to carry a power.</summary>
/// <param name="Pull">Effective pull, N.</param>
/// <param name="Ratio">Ratio of the tensions at the edge of slip.</param>
/// <param name="Tight">Working tension of the tight side at the edge of slip, without centrifugal tension, N.</param>
/// <param name="Slack">Working tension of the slack side, N.</param>
/// <param name="Centrifugal">Centrifugal tension on top of both, N.</param>
/// <param name="SetUp">Mean of the two working tensions: least set-up tension at rest, N.</param>
/// <param name="HubLoad">Load on the shaft from the working tensions, N.</param>
public readonly record struct BeltDemand(
    [Quantity("effective pull", Dimension.Force, "N", Symbol = "F")] double Pull,
    [Quantity("tension ratio", Dimension.Number, Symbol = "q")] double Ratio,
    [Quantity("tight side working tension", Dimension.Force, "N", Symbol = "T1")] double Tight,
    [Quantity("slack side working tension", Dimension.Force, "N", Symbol = "T2")] double Slack,
    [Quantity("centrifugal tension", Dimension.Force, "N", Symbol = "Tc")] double Centrifugal,
    [Quantity("mean working tension", Dimension.Force, "N", Symbol = "T0")] double SetUp,
    [Quantity("shaft load", Dimension.Force, "N", Symbol = "Fh")] double HubLoad);

/// <summary>Friction belts: flat, V and V-ribbed.</summary>
public static class BeltDrive
{
    private const string Source = "Khurmi & Gupta, Theory of Machines, 14th ed., ch. 11; Bevan, The Theory of Machines, 3rd ed., ch. 7";
    private const string Slip = "At the edge of slip: a working belt wants a reserve. A supercharger belt also carries the rotor's inertia when the engine speed jumps.";

    /// <summary>Ratio of belt tensions at the edge of slip.</summary>
    /// <param name="friction">Coefficient of friction.</param>
    /// <param name="wrap">Angle of wrap, rad.</param>
    /// <param name="groove">Included groove angle, rad; 180° for a flat belt.</param>
    [Formula("belt tension ratio", "q = exp(μ θ / sin(β / 2))", "Eytelwein's formula; " + Source)]
    [return: Quantity("tension ratio", Dimension.Number, Symbol = "q")]
    public static double TensionRatio(
        [Quantity("coefficient of friction", Dimension.Number, Symbol = "μ", Min = 0, Max = 2)] double friction,
        [Quantity("angle of wrap", Dimension.Angle, "°", Symbol = "θ", Min = 0, Max = 20)] double wrap,
        [Quantity("groove angle", Dimension.Angle, "°", Symbol = "β", Above = 0.17, Max = 3.141592653589794)] double groove = Math.PI) =>
        Math.Exp(friction * wrap / Math.Sin(groove / 2));

    /// <summary>Friction with which a belt in grooves slips at the ratio of tensions that it is designed for, not at the one that clean rubber would bear.</summary>
    /// <param name="ratio">Ratio of the tensions over half a turn of wrap.</param>
    /// <param name="groove">Included groove angle, rad; 180° for a flat belt.</param>
    [Formula(
        "belt design friction",
        "μ = ln(q) sin(β / 2) / π",
        "Eytelwein's formula turned round at half a turn of wrap; q = 4, for which makers rate V-ribbed belts (from memory)",
        Provenance = Provenance.FromMemory,
        Validity = "More or less wrap changes the ratio as Eytelwein has it: q^(θ / π).",
        Caution = Slip)]
    [return: Quantity("coefficient of friction", Dimension.Number, Symbol = "μ")]
    public static double DesignFriction(
        [Quantity("tension ratio over half a turn", Dimension.Number, Symbol = "q", Above = 1, Max = 50)] double ratio = 4,
        [Quantity("groove angle", Dimension.Angle, "°", Symbol = "β", Above = 0.17, Max = 3.141592653589794)] double groove = 40 * Math.PI / 180) =>
        Math.Log(ratio) * Math.Sin(groove / 2) / Math.PI;

    /// <summary>Pull that one rib of a V-ribbed belt carries, N.</summary>
    /// <param name="pull">Pull of the belt, N.</param>
    /// <param name="ribs">Ribs that run in grooves.</param>
    [Formula("belt pull of a rib", "Fr = F / z", "the pull even over the ribs", Provenance = Provenance.Definition, Validity = "Pulleys in line; out of line the outer ribs carry more.")]
    [return: Quantity("pull of a rib", Dimension.Force, "N", Symbol = "Fr")]
    public static double PullOfARib(
        [Quantity("pull of the belt", Dimension.Force, "N", Symbol = "F", Min = 0)] double pull,
        [Quantity("ribs", Dimension.Number, Symbol = "z", Min = 1)] int ribs) =>
        pull / ribs;

    /// <summary>Power of a belt whose tight side carries its greatest permitted tension.</summary>
    /// <param name="tight">Tension of the tight side of one belt with centrifugal tension, N.</param>
    /// <param name="friction">Coefficient of friction.</param>
    /// <param name="wrap">Angle of wrap on the smaller pulley, rad.</param>
    /// <param name="speed">Belt speed, m/s.</param>
    /// <param name="mass">Mass of one belt for its length, kg/m.</param>
    /// <param name="groove">Included groove angle, rad; 180° for a flat belt.</param>
    /// <param name="belts">Number of belts.</param>
    [Formula(
        "belt power from greatest tension",
        "Tc = m v^2; q = exp(μ θ / sin(β / 2)); T2 = Tc + (T1 - Tc) / q; F = T1 - T2; P = z F v",
        Source,
        Caution = Slip)]
    public static BeltPower FromGreatestTension(
        [Quantity("tight side tension", Dimension.Force, "N", Symbol = "T1", Above = 0)] double tight,
        [Quantity("coefficient of friction", Dimension.Number, Symbol = "μ", Min = 0, Max = 2)] double friction,
        [Quantity("angle of wrap", Dimension.Angle, "°", Symbol = "θ", Min = 0, Max = 20)] double wrap,
        [Quantity("belt speed", Dimension.Speed, "m/s", Symbol = "v", Min = 0)] double speed,
        [Quantity("belt mass for its length", Dimension.LinearDensity, "kg/m", Symbol = "m", Min = 0)] double mass = 0,
        [Quantity("groove angle", Dimension.Angle, "°", Symbol = "β", Above = 0.17, Max = 3.141592653589794)] double groove = Math.PI,
        [Quantity("number of belts", Dimension.Number, Symbol = "z", Min = 1)] int belts = 1)
    {
        var centrifugal = mass * speed * speed;
        FormulaDomainException.Unless(centrifugal < tight, "belt speed: the whole tension goes into centrifugal tension and nothing is left to drive");
        var ratio = TensionRatio(friction, wrap, groove);
        var slack = centrifugal + ((tight - centrifugal) / ratio);
        return new BeltPower(ratio, tight, slack, centrifugal, tight - slack, belts * (tight - slack) * speed);
    }

    /// <summary>Power of a belt set up with a tension at rest, on fixed centres.</summary>
    /// <param name="setUp">Set-up tension of each span at rest, N.</param>
    /// <param name="friction">Coefficient of friction.</param>
    /// <param name="wrap">Angle of wrap on the smaller pulley, rad.</param>
    /// <param name="speed">Belt speed, m/s.</param>
    /// <param name="mass">Mass of the belt for its length, kg/m.</param>
    /// <param name="groove">Included groove angle, rad; 180° for a flat belt.</param>
    [Formula(
        "belt power from set-up tension",
        "Tc = m v^2; q = exp(μ θ / sin(β / 2)); F = 2 (T0 - Tc) (q - 1) / (q + 1); P = F v",
        Source,
        Validity = "The mean of both spans stays at the set-up tension.",
        Caution = Slip)]
    public static BeltPower FromSetUpTension(
        [Quantity("set-up tension", Dimension.Force, "N", Symbol = "T0", Above = 0)] double setUp,
        [Quantity("coefficient of friction", Dimension.Number, Symbol = "μ", Min = 0, Max = 2)] double friction,
        [Quantity("angle of wrap", Dimension.Angle, "°", Symbol = "θ", Min = 0, Max = 20)] double wrap,
        [Quantity("belt speed", Dimension.Speed, "m/s", Symbol = "v", Min = 0)] double speed,
        [Quantity("belt mass for its length", Dimension.LinearDensity, "kg/m", Symbol = "m", Min = 0)] double mass = 0,
        [Quantity("groove angle", Dimension.Angle, "°", Symbol = "β", Above = 0.17, Max = 3.141592653589794)] double groove = Math.PI)
    {
        var centrifugal = mass * speed * speed;
        FormulaDomainException.Unless(centrifugal < setUp, "belt speed: the whole set-up tension goes into centrifugal tension and nothing is left to drive");
        var ratio = TensionRatio(friction, wrap, groove);
        var pull = 2 * (setUp - centrifugal) * (ratio - 1) / (ratio + 1);
        return new BeltPower(ratio, setUp + (pull / 2), setUp - (pull / 2), centrifugal, pull, pull * speed);
    }

    /// <summary>Belt speed of greatest power, m/s.</summary>
    /// <param name="tension">Greatest tension of the tight side, or the set-up tension, N.</param>
    /// <param name="mass">Mass of the belt for its length, kg/m.</param>
    [Formula("belt speed of greatest power", "v = sqrt(T / (3 m))", Source + ": a third of the tension is centrifugal")]
    [return: Quantity("belt speed", Dimension.Speed, "m/s", Symbol = "v")]
    public static double BestSpeed(
        [Quantity("greatest or set-up tension", Dimension.Force, "N", Symbol = "T", Above = 0)] double tension,
        [Quantity("belt mass for its length", Dimension.LinearDensity, "kg/m", Symbol = "m", Above = 0)] double mass) =>
        Math.Sqrt(tension / (3 * mass));

    /// <summary>Tensions and shaft load that carry a power at the edge of slip.</summary>
    /// <param name="power">Power, W.</param>
    /// <param name="speed">Belt speed, m/s.</param>
    /// <param name="friction">Coefficient of friction.</param>
    /// <param name="wrap">Angle of wrap on the smaller pulley, rad.</param>
    /// <param name="groove">Included groove angle, rad; 180° for a flat belt, 40° for V-ribbed.</param>
    /// <param name="mass">Mass of the belt for its length, kg/m.</param>
    [Formula(
        "belt tensions for a power",
        "F = P / v; q = exp(μ θ / sin(β / 2)); T1 = F q / (q - 1); T2 = F / (q - 1); Tc = m v^2; T0 = (T1 + T2) / 2; Fh = sqrt(T1^2 + T2^2 - 2 T1 T2 cos(θ))",
        Source,
        Caution = Slip)]
    public static BeltDemand ForPower(
        [Quantity("power", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("belt speed", Dimension.Speed, "m/s", Symbol = "v", Above = 0)] double speed,
        [Quantity("coefficient of friction", Dimension.Number, Symbol = "μ", Above = 0, Max = 2)] double friction,
        [Quantity("angle of wrap", Dimension.Angle, "°", Symbol = "θ", Above = 0, Max = 20)] double wrap,
        [Quantity("groove angle", Dimension.Angle, "°", Symbol = "β", Above = 0.17, Max = 3.141592653589794)] double groove = Math.PI,
        [Quantity("belt mass for its length", Dimension.LinearDensity, "kg/m", Symbol = "m", Min = 0)] double mass = 0)
    {
        var pull = power / speed;
        var ratio = TensionRatio(friction, wrap, groove);
        FormulaDomainException.Unless(ratio > 1 + 1e-9, "coefficient of friction: with so little friction and wrap no tension carries the power");
        var slack = pull / (ratio - 1);
        var tight = slack + pull;
        return new BeltDemand(pull, ratio, tight, slack, mass * speed * speed, (tight + slack) / 2, HubLoad(tight, slack, wrap));
    }

    /// <summary>Load on a shaft from the two spans of a belt, N.</summary>
    /// <param name="tight">Tension of the tight side, N.</param>
    /// <param name="slack">Tension of the slack side, N.</param>
    /// <param name="wrap">Angle of wrap, rad.</param>
    [Formula("shaft load of a belt", "Fh = sqrt(T1^2 + T2^2 - 2 T1 T2 cos(θ))", "Statics: vector sum of the two spans", Provenance = Provenance.Definition)]
    [return: Quantity("shaft load", Dimension.Force, "N", Symbol = "Fh")]
    public static double HubLoad(
        [Quantity("tight side tension", Dimension.Force, "N", Symbol = "T1", Min = 0)] double tight,
        [Quantity("slack side tension", Dimension.Force, "N", Symbol = "T2", Min = 0)] double slack,
        [Quantity("angle of wrap", Dimension.Angle, "°", Symbol = "θ", Min = 0)] double wrap) =>
        Math.Sqrt(Math.Max(0, (tight * tight) + (slack * slack) - (2 * tight * slack * Math.Cos(wrap))));
}
