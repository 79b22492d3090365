using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Belts;

/// <summary>Setting a belt by the note of its span, and pulling a load with its teeth.</summary>
public static class BeltSetting
{
    private const string Strings = "Taut string in its first mode: Thomson, Theory of Vibration with Applications, ch. 9; belt makers' tension meters go by it";

    /// <summary>Frequency of a free span, Hz.</summary>
    /// <param name="tension">Tension of the span, N.</param>
    /// <param name="mass">Mass of the belt for its length, kg/m.</param>
    /// <param name="span">Free length of the span, m.</param>
    [Formula("belt span frequency", "f = sqrt(T / m) / (2 s)", Strings, Provenance = Provenance.FromMemory, Validity = "A belt at rest; a short span of a stiff belt sounds higher than this.")]
    [return: Quantity("frequency", Dimension.Frequency, "Hz", Symbol = "f")]
    public static double Frequency(
        [Quantity("tension", Dimension.Force, "N", Symbol = "T", Min = 0)] double tension,
        [Quantity("belt mass for its length", Dimension.LinearDensity, "kg/m", Symbol = "m", Above = 0)] double mass,
        [Quantity("free span", Dimension.Length, "mm", Symbol = "s", Above = 0)] double span) =>
        Math.Sqrt(tension / mass) / (2 * span);

    /// <summary>Tension of a span from its frequency, N.</summary>
    /// <param name="frequency">Frequency, Hz.</param>
    /// <param name="mass">Mass of the belt for its length, kg/m.</param>
    /// <param name="span">Free length of the span, m.</param>
    [Formula("belt tension from span frequency", "T = 4 m s^2 f^2", Strings, Provenance = Provenance.FromMemory, Validity = "A belt at rest; a short span of a stiff belt sounds higher, so that the tension is less than this.")]
    [return: Quantity("tension", Dimension.Force, "N", Symbol = "T")]
    public static double Tension(
        [Quantity("frequency", Dimension.Frequency, "Hz", Symbol = "f", Min = 0)] double frequency,
        [Quantity("belt mass for its length", Dimension.LinearDensity, "kg/m", Symbol = "m", Above = 0)] double mass,
        [Quantity("free span", Dimension.Length, "mm", Symbol = "s", Above = 0)] double span) =>
        4 * mass * span * span * frequency * frequency;

    /// <summary>Pitch diameter of a toothed pulley, m.</summary>
    /// <param name="teeth">Teeth.</param>
    /// <param name="pitch">Pitch of the belt, m.</param>
    [Formula("toothed pulley pitch diameter", "d = z p / π", "ISO 5294; geometry of the pitch line", Provenance = Provenance.Definition)]
    [return: Quantity("pitch diameter", Dimension.Length, "mm", Symbol = "d")]
    public static double PitchDiameter(
        [Quantity("teeth", Dimension.Number, Symbol = "z", Min = 6)] int teeth,
        [Quantity("pitch", Dimension.Length, "mm", Symbol = "p", Above = 0)] double pitch) =>
        teeth * pitch / Math.PI;

    /// <summary>Speed ratio of two pulleys, driven over driving, without slip.</summary>
    /// <param name="driver">Effective diameter of the driving pulley, m.</param>
    /// <param name="driven">Effective diameter of the driven pulley, m.</param>
    [Formula("pulley ratio", "i = d / D", "Kinematics", Provenance = Provenance.Definition)]
    [return: Quantity("speed ratio", Dimension.Number, Symbol = "i")]
    public static double Ratio(
        [Quantity("diameter of the driving pulley", Dimension.Length, "mm", Symbol = "d", Above = 0)] double driver,
        [Quantity("diameter of the driven pulley", Dimension.Length, "mm", Symbol = "D", Above = 0)] double driven) =>
        driver / driven;

    /// <summary>Pull that a toothed belt carries at its speed, N.</summary>
    /// <param name="allowed">Greatest working tension of this width by the maker, N.</param>
    /// <param name="inMesh">Teeth in mesh on the pulley that has fewer.</param>
    /// <param name="mass">Mass of the belt for its length, kg/m.</param>
    /// <param name="speed">Belt speed, m/s.</param>
    [Formula(
        "toothed belt pull",
        "F = k Fa - m v^2; k = 1 - 0.2 (6 - zm), from zm = 6 k = 1, never below 0",
        "ISO 5295, power of synchronous belts: teeth-in-mesh factor and centrifugal term",
        Provenance = Provenance.FromMemory,
        Caution = "A belt that jumps a tooth or breaks at speed whips: guard it, and nobody in its plane. The maker's sheet goes first.")]
    [return: Quantity("pull", Dimension.Force, "N", Symbol = "F")]
    public static double ToothedPull(
        [Quantity("greatest working tension", Dimension.Force, "N", Symbol = "Fa", Above = 0)] double allowed,
        [Quantity("teeth in mesh", Dimension.Number, Symbol = "zm", Above = 0)] double inMesh,
        [Quantity("belt mass for its length", Dimension.LinearDensity, "kg/m", Symbol = "m", Min = 0)] double mass,
        [Quantity("belt speed", Dimension.Speed, "m/s", Symbol = "v", Min = 0)] double speed) =>
        Math.Max(0, (Math.Clamp(1 - (0.2 * (6 - Math.Floor(inMesh))), 0, 1) * allowed) - (mass * speed * speed));

    /// <summary>Pull at which a toothed belt on fixed centres comes near to jumping a tooth, N: its slack span holds it in the teeth no more.</summary>
    /// <param name="setUp">Set-up tension of each span at rest, N.</param>
    /// <param name="mass">Mass of the belt for its length, kg/m.</param>
    /// <param name="speed">Belt speed, m/s.</param>
    /// <param name="ratio">Greatest tension of the tight span over that of the slack one, both as they press on the pulleys.</param>
    /// <returns>Pull, N; nought where the belt's own turning takes all of the tension.</returns>
    [Formula(
        "toothed belt jump pull",
        "F = 2 (T0 - m v^2) (q - 1) / (q + 1)",
        "Statics: T1 + T2 = 2 (T0 - m v^2), F = T1 - T2, T1 = q T2; q = 8, the tension ratio for which belt makers have toothed belts set up (from memory)",
        Provenance = Provenance.CommonPractice,
        Validity = "The mean of both spans stays at the set-up tension, six teeth or more in mesh; with a large q the pull at which the slack span hangs.",
        Caution = "A belt that jumps at speed strips its teeth and whips: guard it, and nobody in its plane.")]
    [return: Quantity("pull", Dimension.Force, "N", Symbol = "F")]
    public static double JumpPull(
        [Quantity("set-up tension", Dimension.Force, "N", Symbol = "T0", Min = 0)] double setUp,
        [Quantity("belt mass for its length", Dimension.LinearDensity, "kg/m", Symbol = "m", Min = 0)] double mass,
        [Quantity("belt speed", Dimension.Speed, "m/s", Symbol = "v", Min = 0)] double speed,
        [Quantity("tight over slack span", Dimension.Number, Symbol = "q", Above = 1)] double ratio = 8) =>
        2 * Math.Max(0, setUp - (mass * speed * speed)) * (ratio - 1) / (ratio + 1);

    /// <summary>Set-up tension at which a toothed belt bears a pull without coming near to jumping a tooth, N: <see cref="JumpPull"/> turned round.</summary>
    /// <param name="pull">Pull, N.</param>
    /// <param name="mass">Mass of the belt for its length, kg/m.</param>
    /// <param name="speed">Belt speed, m/s.</param>
    /// <param name="ratio">Greatest tension of the tight span over that of the slack one, both as they press on the pulleys.</param>
    [Formula(
        "toothed belt set-up tension against jumping",
        "T0 = F (q + 1) / (2 (q - 1)) + m v^2",
        "Statics: T1 + T2 = 2 (T0 - m v^2), F = T1 - T2, T1 = q T2; q = 8, the tension ratio for which belt makers have toothed belts set up (from memory)",
        Provenance = Provenance.CommonPractice,
        Validity = "The mean of both spans stays at the set-up tension, six teeth or more in mesh.",
        Caution = "A belt that jumps at speed strips its teeth and whips: guard it, and nobody in its plane.")]
    [return: Quantity("set-up tension", Dimension.Force, "N", Symbol = "T0")]
    public static double JumpTension(
        [Quantity("pull", Dimension.Force, "N", Symbol = "F", Min = 0)] double pull,
        [Quantity("belt mass for its length", Dimension.LinearDensity, "kg/m", Symbol = "m", Min = 0)] double mass,
        [Quantity("belt speed", Dimension.Speed, "m/s", Symbol = "v", Min = 0)] double speed,
        [Quantity("tight over slack span", Dimension.Number, Symbol = "q", Above = 1)] double ratio = 8) =>
        (pull * (ratio + 1) / (2 * (ratio - 1))) + (mass * speed * speed);
}
