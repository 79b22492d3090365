using CsCheck;
using Gudgeon.Calc.Gas;

namespace Gudgeon.Calc.Tests.Gas;

/// <summary>The polynomials agree with themselves across intervals and with the laws that tie cp, h and s.</summary>
public class NasaPolynomialTests
{
    private static readonly Species[] Gases = [.. Enum.GetValues<Species>().Where(s => s <= Species.Methanol)];

    [Fact]
    public void Both_intervals_meet_at_1000_K()
    {
        foreach (var gas in Gases)
        {
            Near(NasaPolynomial.HeatCapacity(gas, 1000), NasaPolynomial.HeatCapacity(gas, 1000.000001), 1e-4);
            Near(NasaPolynomial.Entropy(gas, 1000), NasaPolynomial.Entropy(gas, 1000.000001), 1e-6);
            Assert.Equal(NasaPolynomial.Enthalpy(gas, 1000), NasaPolynomial.Enthalpy(gas, 1000.000001), 1.0);
        }
    }

    [Fact]
    public void Enthalpy_and_entropy_are_the_integrals_of_heat_capacity() =>
        Gen.Select(Gen.Double[210, 5900], Gen.Int[0, Gases.Length - 1].Select(i => Gases[i])).Where((t, _) => Math.Abs(t - 1000) > 1).Sample((t, gas) =>
        {
            const double Step = 0.05;
            var cp = NasaPolynomial.HeatCapacity(gas, t);
            Near(cp, (NasaPolynomial.Enthalpy(gas, t + Step) - NasaPolynomial.Enthalpy(gas, t - Step)) / (2 * Step), 1e-5);
            Near(cp / t, (NasaPolynomial.Entropy(gas, t + Step) - NasaPolynomial.Entropy(gas, t - Step)) / (2 * Step), 1e-5);
        });

    [Theory]
    [InlineData(6000, 7000)]
    [InlineData(200, 150)]
    public void Outside_the_limits_heat_capacity_is_held(double limit, double outside)
    {
        foreach (var gas in Gases)
        {
            var cp = NasaPolynomial.HeatCapacity(gas, limit);
            Assert.Equal(cp, NasaPolynomial.HeatCapacity(gas, outside));
            Near(cp * (outside - limit), NasaPolynomial.Enthalpy(gas, outside) - NasaPolynomial.Enthalpy(gas, limit), 1e-9);
            Near(cp * Math.Log(outside / limit), NasaPolynomial.Entropy(gas, outside) - NasaPolynomial.Entropy(gas, limit), 1e-9);
        }
    }

    [Fact]
    public void Nine_coefficients_given_by_hand_give_the_table_s_argon()
    {
        var argon = SpeciesProperties.FromNine([0, 0, 2.5, 0, 0, 0, 0, -745.375, 4.37967491], 500);
        Near(NasaPolynomial.HeatCapacity(Species.Ar, 500), argon.HeatCapacity, 1e-14);
        Near(NasaPolynomial.Enthalpy(Species.Ar, 500), argon.Enthalpy, 1e-14);
        Near(NasaPolynomial.Entropy(Species.Ar, 500), argon.Entropy, 1e-14);
    }

    private static void Near(double expected, double actual, double relative) =>
        Assert.InRange(actual, expected - (relative * Math.Abs(expected)), expected + (relative * Math.Abs(expected)));
}
