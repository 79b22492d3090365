using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Gas;

/// <summary>How the far end of a pipe is: what the wave meets there.</summary>
public enum PipeEnd
{
    /// <summary>Flush with a wall or a large plate.</summary>
    Flanged,

    /// <summary>Free-standing.</summary>
    Unflanged,
}

/// <summary>Sound in pipes and resonators: intake and exhaust tuning by small waves.</summary>
public static class Acoustics
{
    private const string Kinsler = "Kinsler, Frey, Coppens, Sanders, Fundamentals of Acoustics, 4th ed., ch. 10";

    /// <summary>Speed of sound in a perfect gas, m/s.</summary>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="gamma">Ratio of specific heats.</param>
    /// <param name="gasConstant">Gas constant, J/(kg·K).</param>
    [Formula("speed of sound", "a = sqrt(γ R T)", "ISO 2533:1975, eq. for the speed of sound")]
    [return: Quantity("speed of sound", Dimension.Speed, "m/s", Symbol = "a")]
    public static double SoundSpeed(
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Above = 0)] double temperature,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.4,
        [Quantity("gas constant", Dimension.SpecificHeat, "J/(kg·K)", Symbol = "R", Above = 0)] double gasConstant = PhysicalConstants.DryAirGasConstant) =>
        Math.Sqrt(gamma * gasConstant * temperature);

    /// <summary>Frequency of a pipe closed at one end and open at the other, Hz.</summary>
    /// <param name="length">Acoustic length, m, with its end correction.</param>
    /// <param name="soundSpeed">Speed of sound, m/s.</param>
    /// <param name="mode">1 is the lowest; the next are its odd multiples.</param>
    [Formula("quarter-wave pipe frequency", "f = (2 n - 1) a / (4 L)", Kinsler, Provenance = Provenance.FromMemory)]
    [return: Quantity("frequency", Dimension.Frequency, "Hz", Symbol = "f")]
    public static double QuarterWave(
        [Quantity("length", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length,
        [Quantity("speed of sound", Dimension.Speed, "m/s", Symbol = "a", Above = 0)] double soundSpeed,
        [Quantity("mode", Dimension.Number, Symbol = "n", Min = 1, Max = 1000)] int mode = 1) =>
        ((2 * mode) - 1) * soundSpeed / (4 * length);

    /// <summary>Frequency of a pipe open at both ends or closed at both, Hz.</summary>
    /// <param name="length">Acoustic length, m, with its end corrections.</param>
    /// <param name="soundSpeed">Speed of sound, m/s.</param>
    /// <param name="mode">1 is the lowest.</param>
    [Formula("half-wave pipe frequency", "f = n a / (2 L)", Kinsler, Provenance = Provenance.FromMemory)]
    [return: Quantity("frequency", Dimension.Frequency, "Hz", Symbol = "f")]
    public static double HalfWave(
        [Quantity("length", Dimension.Length, "mm", Symbol = "L", Above = 0)] double length,
        [Quantity("speed of sound", Dimension.Speed, "m/s", Symbol = "a", Above = 0)] double soundSpeed,
        [Quantity("mode", Dimension.Number, Symbol = "n", Min = 1, Max = 1000)] int mode = 1) =>
        mode * soundSpeed / (2 * length);

    /// <summary>Frequency of a Helmholtz resonator: a neck on a volume, Hz.</summary>
    /// <param name="neckArea">Area of the neck, m².</param>
    /// <param name="neckLength">Effective length of the neck, m, with end corrections.</param>
    /// <param name="volume">Volume, m³.</param>
    /// <param name="soundSpeed">Speed of sound, m/s.</param>
    [Formula("Helmholtz resonator frequency", "f = a / (2 π) sqrt(A / (V L))", "Kinsler, Frey, Coppens, Sanders, Fundamentals of Acoustics, 4th ed., section 10.8", Provenance = Provenance.FromMemory)]
    [return: Quantity("frequency", Dimension.Frequency, "Hz", Symbol = "f")]
    public static double Helmholtz(
        [Quantity("area of the neck", Dimension.Area, "mm²", Symbol = "A", Above = 0)] double neckArea,
        [Quantity("effective length of the neck", Dimension.Length, "mm", Symbol = "L", Above = 0)] double neckLength,
        [Quantity("volume", Dimension.Volume, "L", Symbol = "V", Above = 0)] double volume,
        [Quantity("speed of sound", Dimension.Speed, "m/s", Symbol = "a", Above = 0)] double soundSpeed) =>
        soundSpeed / (2 * Math.PI) * Math.Sqrt(neckArea / (volume * neckLength));

    /// <summary>Length to add to an open pipe end, m.</summary>
    /// <param name="radius">Inner radius of the pipe, m.</param>
    /// <param name="end">Flanged or free-standing.</param>
    [Formula("pipe end correction", "flanged ΔL = 8 r / (3 π); unflanged ΔL = 0.6133 r", "Kinsler, Frey, Coppens, Sanders, Fundamentals of Acoustics, 4th ed., section 10.2 (flanged); Levine and Schwinger, Phys. Rev. 73 (1948) 383 (unflanged)", Provenance = Provenance.FromMemory, Validity = "Wavelength much longer than the radius.")]
    [return: Quantity("end correction", Dimension.Length, "mm", Symbol = "ΔL")]
    public static double EndCorrection(
        [Quantity("radius", Dimension.Length, "mm", Symbol = "r", Min = 0)] double radius,
        [Quantity("end", Dimension.Number)] PipeEnd end = PipeEnd.Unflanged) =>
        (end == PipeEnd.Flanged ? 8 / (3 * Math.PI) : 0.6133) * radius;

    /// <summary>Length of pipe whose reflected wave comes back after a crank angle, m.</summary>
    /// <param name="soundSpeed">Speed of sound in the pipe, m/s.</param>
    /// <param name="speed">Crank speed, rad/s.</param>
    /// <param name="angle">Crank angle between the wave leaving and coming back, rad.</param>
    /// <param name="trips">How many times it goes to the end and back in that angle.</param>
    [Formula("pipe length for a reflected wave", "L = a θ / (2 n ω)", "travel there and back at the speed of sound", Provenance = Provenance.Definition, Caution = "Small waves at rest: gas velocity and finite amplitude shift the result; use the wave model to decide.")]
    [return: Quantity("length", Dimension.Length, "mm", Symbol = "L")]
    public static double ReflectedWaveLength(
        [Quantity("speed of sound", Dimension.Speed, "m/s", Symbol = "a", Above = 0)] double soundSpeed,
        [Quantity("crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "ω", Above = 0)] double speed,
        [Quantity("crank angle", Dimension.Angle, "°", Symbol = "θ", Above = 0)] double angle,
        [Quantity("trips", Dimension.Number, Symbol = "n", Min = 1, Max = 20)] int trips = 1) =>
        soundSpeed * angle / (2 * trips * speed);

    /// <summary>Crank speed at which an intake pipe rams the cylinder as a Helmholtz resonator, rad/s.</summary>
    /// <param name="displacement">Swept volume of the cylinder, m³.</param>
    /// <param name="compressionRatio">Compression ratio.</param>
    /// <param name="pipeArea">Area of the pipe, m².</param>
    /// <param name="pipeLength">Effective length of pipe and port, m.</param>
    /// <param name="soundSpeed">Speed of sound, m/s.</param>
    /// <param name="ratio">Resonator frequency over crank frequency at the tuned speed.</param>
    [Formula("Helmholtz intake tuning speed", "ω = a / k sqrt(A / (L Ve)); Ve = V (rc + 1) / (2 (rc - 1))", "Engelman, ASME 73-WA/DGP-2, 1973: k about 2.1, cylinder at half stroke", Provenance = Provenance.FromMemory)]
    [return: Quantity("tuned crank speed", Dimension.RotationalSpeed, "rpm", Symbol = "ω")]
    public static double IntakeTuningSpeed(
        [Quantity("swept volume of the cylinder", Dimension.Volume, "cm³", Symbol = "V", Above = 0)] double displacement,
        [Quantity("compression ratio", Dimension.Number, Symbol = "rc", Above = 1)] double compressionRatio,
        [Quantity("area of the pipe", Dimension.Area, "mm²", Symbol = "A", Above = 0)] double pipeArea,
        [Quantity("effective length of the pipe", Dimension.Length, "mm", Symbol = "L", Above = 0)] double pipeLength,
        [Quantity("speed of sound", Dimension.Speed, "m/s", Symbol = "a", Above = 0)] double soundSpeed,
        [Quantity("frequency ratio", Dimension.Number, Symbol = "k", Above = 0)] double ratio = 2.1)
    {
        var volume = displacement * (compressionRatio + 1) / (2 * (compressionRatio - 1));
        return soundSpeed / ratio * Math.Sqrt(pipeArea / (pipeLength * volume));
    }
}
