using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Performance;

/// <summary>Autoignition integral over a pressure ramp.</summary>
/// <param name="Integral">Value at the end of the ramp; 1 is knock.</param>
/// <param name="Onset">Time at which it would reach 1 if the ramp went on, s.</param>
/// <param name="EndTemperature">End-gas temperature at the end of the ramp, K.</param>
public readonly record struct KnockRamp(
    [Quantity("autoignition integral", Dimension.Number, Symbol = "I")] double Integral,
    [Quantity("time of autoignition", Dimension.Time, "ms", Symbol = "t")] double Onset,
    [Quantity("end-gas temperature at the end", Dimension.Temperature, "°C", Symbol = "T2")] double EndTemperature);

/// <summary>Autoignition of the end gas.</summary>
public static class Knock
{
    private const string Limits = "Octane 80-100. Above about 1050 K it is too slow by a factor of 2 and more against shock-tube data; do not use it there.";
    private const string Source = "Douaud and Eyzat, SAE 780080; Heywood, Internal Combustion Engine Fundamentals, 1st ed., eq. 9.35";

    /// <summary>Delay to autoignition of petrol-like fuels, s.</summary>
    /// <param name="octane">Octane number.</param>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="temperature">Temperature, K.</param>
    [Formula("autoignition delay", "τ = 17.68 ms (ON / 100)^3.402 (p / 1 atm)^-1.7 exp(3800 K / T)", Source, Provenance = Provenance.FromMemory, Validity = Limits)]
    [return: Quantity("autoignition delay", Dimension.Time, "ms", Symbol = "τ")]
    public static double Delay(
        [Quantity("octane number", Dimension.Number, Symbol = "ON", Above = 0, Max = 130)] double octane,
        [Quantity("pressure", Dimension.Pressure, "bar", Symbol = "p", Above = 0)] double pressure,
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 100)] double temperature) =>
        17.68e-3 * Math.Pow(octane / 100, 3.402) * Math.Pow(pressure / 101325, -1.7) * Math.Exp(3800 / temperature);

    /// <summary>Autoignition integral of a gas held at one state.</summary>
    /// <param name="octane">Octane number.</param>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="time">Time, s.</param>
    [Formula("autoignition integral at constant state", "I = t / τ; τ = 17.68 ms (ON / 100)^3.402 (p / 1 atm)^-1.7 exp(3800 K / T)", "Livengood and Wu, 5th Symp. (Int.) on Combustion, 1955, 347; " + Source, Provenance = Provenance.FromMemory, Validity = Limits)]
    [return: Quantity("autoignition integral", Dimension.Number, Symbol = "I")]
    public static double ConstantState(
        [Quantity("octane number", Dimension.Number, Symbol = "ON", Above = 0, Max = 130)] double octane,
        [Quantity("pressure", Dimension.Pressure, "bar", Symbol = "p", Above = 0)] double pressure,
        [Quantity("temperature", Dimension.Temperature, "°C", Symbol = "T", Min = 100)] double temperature,
        [Quantity("time", Dimension.Time, "ms", Symbol = "t", Min = 0)] double time) =>
        time / Delay(octane, pressure, temperature);

    /// <summary>Autoignition integral while the pressure rises evenly and the end gas is compressed without heat loss.</summary>
    /// <param name="octane">Octane number.</param>
    /// <param name="startPressure">Pressure at the start, Pa.</param>
    /// <param name="endPressure">Pressure at the end, Pa; not below the start.</param>
    /// <param name="startTemperature">End-gas temperature at the start, K.</param>
    /// <param name="duration">Time from start to end, s.</param>
    /// <param name="gamma">Ratio of specific heats of the end gas.</param>
    [Formula("autoignition integral on a pressure ramp", "I = ∫ dt / τ; p = p1 + (p2 - p1) t / d; T = T1 (p / p1)^((γ - 1) / γ); τ = 17.68 ms (ON / 100)^3.402 (p / 1 atm)^-1.7 exp(3800 K / T)", "Livengood and Wu, 5th Symp. (Int.) on Combustion, 1955, 347; " + Source, Provenance = Provenance.FromMemory, Validity = Limits)]
    public static KnockRamp Ramp(
        [Quantity("octane number", Dimension.Number, Symbol = "ON", Above = 0, Max = 130)] double octane,
        [Quantity("pressure at the start", Dimension.Pressure, "bar", Symbol = "p1", Above = 0)] double startPressure,
        [Quantity("pressure at the end", Dimension.Pressure, "bar", Symbol = "p2", Above = 0)] double endPressure,
        [Quantity("temperature at the start", Dimension.Temperature, "°C", Symbol = "T1", Min = 100)] double startTemperature,
        [Quantity("duration", Dimension.Time, "ms", Symbol = "d", Above = 0)] double duration,
        [Quantity("ratio of specific heats", Dimension.Number, Symbol = "γ", Above = 1, Max = 5.0 / 3)] double gamma = 1.32)
    {
        FormulaDomainException.Unless(endPressure >= startPressure, "pressure at the end: must not be below the pressure at the start");
        var ramp = new PressureRamp(octane, startPressure, (endPressure - startPressure) / duration, startTemperature, (gamma - 1) / gamma);
        return new(ramp.Integral(0, duration), ramp.Onset(duration), ramp.Temperature(duration));
    }

    /// <summary>Change of the octane number an engine asks for when its settings change.</summary>
    /// <param name="sparkAdvance">More spark advance, rad.</param>
    /// <param name="intakeTemperature">Warmer intake, K.</param>
    /// <param name="intakePressure">More intake pressure, Pa.</param>
    /// <param name="compressionRatio">More compression ratio.</param>
    /// <param name="coolantTemperature">Warmer coolant, K.</param>
    /// <param name="backPressure">More exhaust back pressure, Pa.</param>
    /// <param name="perPressure">Octane per 10 kPa of intake pressure: 3 to 4.</param>
    [Formula("change of octane requirement", "ΔON = A / 1° + T / 7 K + k p / 10 kPa + 5 r + C / 10 K + b / 30 kPa", "SAE 960497, 1996, abstract: 1 per degree, 1 per 7 K, 3 to 4 per 10 kPa, 5 per unit of compression ratio, 1 per 10 K of coolant, 1 per 30 kPa of back pressure", Validity = "Small changes about the setting; one engine with production heads.")]
    [return: Quantity("change of octane requirement", Dimension.Number, Symbol = "ΔON")]
    public static double OctaneRequirement(
        [Quantity("spark advance", Dimension.Angle, "°", Symbol = "A")] double sparkAdvance = 0,
        [Quantity("intake temperature", Dimension.TemperatureDifference, "K", Symbol = "T")] double intakeTemperature = 0,
        [Quantity("intake pressure", Dimension.Pressure, "kPa", Symbol = "p")] double intakePressure = 0,
        [Quantity("compression ratio", Dimension.Number, Symbol = "r")] double compressionRatio = 0,
        [Quantity("coolant temperature", Dimension.TemperatureDifference, "K", Symbol = "C")] double coolantTemperature = 0,
        [Quantity("exhaust back pressure", Dimension.Pressure, "kPa", Symbol = "b")] double backPressure = 0,
        [Quantity("octane per 10 kPa of intake pressure", Dimension.Number, Symbol = "k", Min = 0)] double perPressure = 3.5) =>
        (sparkAdvance * 180 / Math.PI) + (intakeTemperature / 7) + (perPressure * intakePressure / 1e4) + (5 * compressionRatio) + (coolantTemperature / 10) + (backPressure / 3e4);

    private readonly record struct PressureRamp(double Octane, double Start, double Rise, double StartTemperature, double Exponent)
    {
        private const int Steps = 64;

        internal double Temperature(double t) => StartTemperature * Math.Pow((Start + (Rise * t)) / Start, Exponent);

        /// <summary>Gauss-Legendre with three points on even steps.</summary>
        internal double Integral(double from, double to)
        {
            var half = 0.5 * (to - from) / Steps;
            var off = Math.Sqrt(0.6) * half;
            var sum = 0.0;
            for (var i = 0; i < Steps; i++)
            {
                var middle = from + (half * ((2 * i) + 1));
                sum += half / 9 * ((5 * Rate(middle - off)) + (8 * Rate(middle)) + (5 * Rate(middle + off)));
            }

            return sum;
        }

        /// <summary>Newton on the integral; the rate never falls, so it comes down to the root from above after one step.</summary>
        internal double Onset(double start)
        {
            var t = start;
            var integral = Integral(0, t);
            for (var i = 0; i < 100; i++)
            {
                var next = Math.Max(t + ((1 - integral) / Rate(t)), 0.1 * t);
                integral += Integral(t, next);
                if (Math.Abs(next - t) < 1e-13 * next)
                {
                    return next;
                }

                t = next;
            }

            return t;
        }

        private double Rate(double t) => 1 / Delay(Octane, Start + (Rise * t), Temperature(t));
    }
}
