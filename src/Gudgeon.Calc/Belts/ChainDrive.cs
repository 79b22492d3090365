using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Belts;

/// <summary>Roller chains of ISO 606, series B.</summary>
public enum RollerChain
{
    /// <summary>08B, 1/2 in.</summary>
    B08,

    /// <summary>10B, 5/8 in.</summary>
    B10,

    /// <summary>12B, 3/4 in.</summary>
    B12,

    /// <summary>16B, 1 in.</summary>
    B16,

    /// <summary>20B, 1 1/4 in.</summary>
    B20,
}

/// <summary>Motorcycle chain sizes.</summary>
public enum MotorcycleChain
{
    /// <summary>420.</summary>
    Size420,

    /// <summary>428.</summary>
    Size428,

    /// <summary>520.</summary>
    Size520,

    /// <summary>525.</summary>
    Size525,

    /// <summary>530.</summary>
    Size530,
}

/// <summary>Size of a roller chain.</summary>
/// <param name="Pitch">Pitch, m.</param>
/// <param name="Roller">Roller diameter, m.</param>
/// <param name="InnerWidth">Width between inner plates, m.</param>
/// <param name="Strength">Least tensile strength of a simplex chain, N.</param>
public readonly record struct RollerChainSize(
    [Quantity("pitch", Dimension.Length, "mm", Symbol = "p")] double Pitch,
    [Quantity("roller diameter", Dimension.Length, "mm")] double Roller,
    [Quantity("inner width", Dimension.Length, "mm")] double InnerWidth,
    [Quantity("least tensile strength", Dimension.Force, "kN")] double Strength);

/// <summary>Size of a motorcycle chain.</summary>
/// <param name="Pitch">Pitch, m.</param>
/// <param name="InnerWidth">Width between inner plates, m.</param>
/// <param name="Roller">Roller diameter, m.</param>
public readonly record struct MotorcycleChainSize(
    [Quantity("pitch", Dimension.Length, "mm", Symbol = "p")] double Pitch,
    [Quantity("inner width", Dimension.Length, "mm")] double InnerWidth,
    [Quantity("roller diameter", Dimension.Length, "mm")] double Roller);

/// <summary>A chain carrying power.</summary>
/// <param name="Speed">Mean chain speed, m/s.</param>
/// <param name="Pull">Pull, N.</param>
/// <param name="Safety">Tensile strength over pull.</param>
public readonly record struct ChainLoad(
    [Quantity("chain speed", Dimension.Speed, "m/s", Symbol = "v")] double Speed,
    [Quantity("chain pull", Dimension.Force, "N", Symbol = "F")] double Pull,
    [Quantity("strength over pull", Dimension.Number, Symbol = "S")] double Safety);

/// <summary>Unevenness of chain speed from the polygon of the sprocket.</summary>
/// <param name="OverMean">Greatest less least speed over mean speed.</param>
/// <param name="OverGreatest">Greatest less least speed over greatest speed.</param>
public readonly record struct ChordalAction(
    [Quantity("speed variation over mean", Dimension.Number, "%")] double OverMean,
    [Quantity("speed variation over greatest", Dimension.Number, "%")] double OverGreatest);

/// <summary>Roller chains and sprockets.</summary>
public static class ChainDrive
{
    private const string Jindal = "Jindal, Machine Design, 1st ed., ch. 30";

    /// <summary>Pitch circle diameter of a sprocket, m.</summary>
    /// <param name="pitch">Chain pitch, m.</param>
    /// <param name="teeth">Teeth.</param>
    [Formula("sprocket pitch diameter", "D = p / sin(π / z)", "ISO 606; geometry of the polygon", Provenance = Provenance.Definition)]
    [return: Quantity("pitch diameter", Dimension.Length, "mm", Symbol = "D")]
    public static double PitchDiameter(
        [Quantity("chain pitch", Dimension.Length, "mm", Symbol = "p", Above = 0)] double pitch,
        [Quantity("teeth", Dimension.Number, Symbol = "z", Min = 6)] int teeth) =>
        pitch / Math.Sin(Math.PI / teeth);

    /// <summary>Chain length in pitches; round up to an even number.</summary>
    /// <param name="first">Teeth of one sprocket.</param>
    /// <param name="second">Teeth of the other.</param>
    /// <param name="pitch">Chain pitch, m.</param>
    /// <param name="centres">Centre distance, m.</param>
    [Formula("chain length", "X = 2 C / p + (z1 + z2) / 2 + ((z2 - z1) / (2 π))^2 p / C", Jindal + "; ISO 606 annex")]
    [return: Quantity("length in pitches", Dimension.Number, Symbol = "X")]
    public static double Length(
        [Quantity("teeth of one sprocket", Dimension.Number, Symbol = "z1", Min = 6)] int first,
        [Quantity("teeth of the other sprocket", Dimension.Number, Symbol = "z2", Min = 6)] int second,
        [Quantity("chain pitch", Dimension.Length, "mm", Symbol = "p", Above = 0)] double pitch,
        [Quantity("centre distance", Dimension.Length, "mm", Symbol = "C", Above = 0)] double centres)
    {
        var difference = (second - first) / Math.Tau;
        return (2 * centres / pitch) + ((first + second) / 2.0) + (difference * difference * pitch / centres);
    }

    /// <summary>Centre distance for a chain length, m.</summary>
    /// <param name="first">Teeth of one sprocket.</param>
    /// <param name="second">Teeth of the other.</param>
    /// <param name="pitch">Chain pitch, m.</param>
    /// <param name="links">Length in pitches.</param>
    [Formula("chain centre distance", "C = p / 4 (b + sqrt(b^2 - 8 ((z2 - z1) / (2 π))^2)); b = X - (z1 + z2) / 2", Jindal + "; chain length solved for the centre distance")]
    [return: Quantity("centre distance", Dimension.Length, "mm", Symbol = "C")]
    public static double CentreDistance(
        [Quantity("teeth of one sprocket", Dimension.Number, Symbol = "z1", Min = 6)] int first,
        [Quantity("teeth of the other sprocket", Dimension.Number, Symbol = "z2", Min = 6)] int second,
        [Quantity("chain pitch", Dimension.Length, "mm", Symbol = "p", Above = 0)] double pitch,
        [Quantity("length in pitches", Dimension.Number, Symbol = "X", Above = 0)] double links)
    {
        var b = links - ((first + second) / 2.0);
        var difference = (second - first) / Math.Tau;
        var square = (b * b) - (8 * difference * difference);
        FormulaDomainException.Unless(b > 0 && square >= 0, "length in pitches: too short to go round both sprockets");
        return pitch / 4 * (b + Math.Sqrt(square));
    }

    /// <summary>Speed, pull and safety of a chain carrying power.</summary>
    /// <param name="power">Power, W.</param>
    /// <param name="speed">Sprocket speed, rad/s.</param>
    /// <param name="teeth">Sprocket teeth.</param>
    /// <param name="pitch">Chain pitch, m.</param>
    /// <param name="strength">Tensile strength of the chain, N.</param>
    [Formula("chain load from power", "v = z p w / (2 π); F = P / v; S = Fu / F", Jindal, Validity = "Mean pull on the mean speed; the pull on the true pitch circle is a little less.")]
    public static ChainLoad FromPower(
        [Quantity("power", Dimension.Power, "kW", Symbol = "P", Above = 0)] double power,
        [Quantity("sprocket speed", Dimension.RotationalSpeed, "rpm", Symbol = "w", Above = 0)] double speed,
        [Quantity("sprocket teeth", Dimension.Number, Symbol = "z", Min = 6)] int teeth,
        [Quantity("chain pitch", Dimension.Length, "mm", Symbol = "p", Above = 0)] double pitch,
        [Quantity("tensile strength of the chain", Dimension.Force, "kN", Symbol = "Fu", Above = 0)] double strength)
    {
        var chainSpeed = teeth * pitch * speed / Math.Tau;
        var pull = power / chainSpeed;
        return new ChainLoad(chainSpeed, pull, strength / pull);
    }

    /// <summary>Chain pull from sprocket torque on the true pitch circle, N.</summary>
    /// <param name="torque">Torque on the sprocket, N·m.</param>
    /// <param name="teeth">Sprocket teeth.</param>
    /// <param name="pitch">Chain pitch, m.</param>
    [Formula("chain pull from torque", "F = 2 T sin(π / z) / p", "Statics on the pitch circle", Provenance = Provenance.Definition)]
    [return: Quantity("chain pull", Dimension.Force, "N", Symbol = "F")]
    public static double PullFromTorque(
        [Quantity("torque", Dimension.Torque, "N·m", Symbol = "T", Min = 0)] double torque,
        [Quantity("sprocket teeth", Dimension.Number, Symbol = "z", Min = 6)] int teeth,
        [Quantity("chain pitch", Dimension.Length, "mm", Symbol = "p", Above = 0)] double pitch) =>
        2 * torque / PitchDiameter(pitch, teeth);

    /// <summary>Variation of chain speed through one tooth.</summary>
    /// <param name="teeth">Sprocket teeth.</param>
    [Formula(
        "chordal speed variation",
        "over mean (π / z) (1 / sin(π / z) - 1 / tan(π / z)); over greatest 1 - cos(π / z)",
        "Budynas & Nisbett, Shigley's Mechanical Engineering Design, ch. 17",
        Provenance = Provenance.FromMemory)]
    public static ChordalAction Chordal([Quantity("sprocket teeth", Dimension.Number, Symbol = "z", Min = 6)] int teeth)
    {
        var half = Math.PI / teeth;
        return new ChordalAction(half * ((1 / Math.Sin(half)) - (1 / Math.Tan(half))), 1 - Math.Cos(half));
    }

    /// <summary>Size and least strength of a simplex roller chain.</summary>
    /// <param name="chain">Chain number.</param>
    [Formula("roller chain size", "table", "ISO 606, series B (strength recalled; makers state up to 1.5 % more)")]
    public static RollerChainSize Size([Quantity("chain number", Dimension.Number)] RollerChain chain)
    {
        var (pitch, roller, width, strength) = chain switch
        {
            RollerChain.B08 => (12.70, 8.51, 7.75, 17.8),
            RollerChain.B10 => (15.875, 10.16, 9.65, 22.2),
            RollerChain.B12 => (19.05, 12.07, 11.68, 28.9),
            RollerChain.B16 => (25.40, 15.88, 17.02, 60.0),
            _ => (31.75, 19.05, 19.56, 95.0),
        };
        return new RollerChainSize(pitch * 1e-3, roller * 1e-3, width * 1e-3, strength * 1e3);
    }

    /// <summary>Size of a motorcycle chain; its strength is the maker's.</summary>
    /// <param name="chain">Chain size.</param>
    [Formula("motorcycle chain size", "table", "Makers' tables; ISO 606 does not cover these, ISO 10190 does", Caution = "Strength differs by maker and series: take it from the chain's own sheet.")]
    public static MotorcycleChainSize MotorcycleSize([Quantity("chain size", Dimension.Number)] MotorcycleChain chain)
    {
        var (pitch, width, roller) = chain switch
        {
            MotorcycleChain.Size420 => (12.70, 6.35, 7.77),
            MotorcycleChain.Size428 => (12.70, 7.85, 8.51),
            MotorcycleChain.Size520 => (15.875, 6.35, 10.16),
            MotorcycleChain.Size525 => (15.875, 7.94, 10.16),
            _ => (15.875, 9.53, 10.16),
        };
        return new MotorcycleChainSize(pitch * 1e-3, width * 1e-3, roller * 1e-3);
    }
}
