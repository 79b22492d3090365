using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.Crank;

/// <summary>Harmonics of the exact piston acceleration over r w².</summary>
/// <param name="Second">Coefficient of cos 2θ.</param>
/// <param name="Fourth">Coefficient of cos 4θ.</param>
/// <param name="Sixth">Coefficient of cos 6θ.</param>
public readonly record struct PistonHarmonics(
    [Quantity("second harmonic", Dimension.Number, Symbol = "A2")] double Second,
    [Quantity("fourth harmonic", Dimension.Number, Symbol = "A4")] double Fourth,
    [Quantity("sixth harmonic", Dimension.Number, Symbol = "A6")] double Sixth);

/// <summary>Fourier content of piston acceleration.</summary>
public static class AccelerationHarmonics
{
    private const int Points = 256;

    /// <summary>Second, fourth and sixth harmonic of the exact piston acceleration, no offset.</summary>
    /// <param name="ratio">Crank radius over rod length.</param>
    [Formula(
        "harmonics of piston acceleration",
        "a / (r w^2) = cos(θ) + A2 cos(2 θ) + A4 cos(4 θ) + A6 cos(6 θ) + …",
        "Fourier analysis of the exact slider-crank; series A2 = L + L³/4 + 15 L⁵/128 in Taylor, The Internal-Combustion Engine, vol. 2, and Den Hartog, Mechanical Vibrations (recalled)",
        Provenance = Provenance.Definition)]
    public static PistonHarmonics Of(
        [Quantity("crank radius over rod length", Dimension.Number, Symbol = "L", Above = 0, Max = 0.9)] double ratio)
    {
        // The trapezoidal rule over a full period converges faster than any power of the step on a smooth periodic function.
        double second = 0, fourth = 0, sixth = 0;
        for (var i = 0; i < Points; i++)
        {
            var angle = Math.Tau * i / Points;
            var acceleration = SliderCrank.Motion(ratio, 1, angle, 1).Acceleration / ratio;
            second += acceleration * Math.Cos(2 * angle);
            fourth += acceleration * Math.Cos(4 * angle);
            sixth += acceleration * Math.Cos(6 * angle);
        }

        const double Scale = 2.0 / Points;
        return new PistonHarmonics(Scale * second, Scale * fourth, Scale * sixth);
    }
}
