using Gudgeon.Calc.Catalogue;
using static Gudgeon.Calc.Gas.PhysicalConstants;

namespace Gudgeon.Calc.Gas;

/// <summary>
/// The composition at temperature and pressure. With the oxygen activity o = √p(O2) and the amount of gas given, the
/// balances of carbon, hydrogen and nitrogen are linear or quadratic and are solved exactly; what remains is Newton in
/// (ln o, ln moles) on the balance of excess oxygen and on the sum of the partial pressures. The excess balance holds no
/// CO2 and no H2O, so a stoichiometric gas at room temperature, whose CO is below round-off, is no harder than any other.
/// </summary>
internal static class EquilibriumComposition
{
    private const int MaxIterations = 200;

    // Near 200 K round-off in the oxygen balance can move ln o by more than the tight tolerance.
    private const int TightIterations = 30;

    internal static EquilibriumState Solve(in Elements elements, double temperature, double pressure, EquilibriumGuess guess)
    {
        Span<double> cp = stackalloc double[ProductAmounts.Count];
        Span<double> enthalpy = stackalloc double[ProductAmounts.Count];
        Span<double> gibbs = stackalloc double[ProductAmounts.Count];
        ProductData.Evaluate(temperature, cp, enthalpy, gibbs);
        var balance = new Balance(elements, gibbs, pressure / StandardPressure);
        var (logOxygen, logMoles) = guess.IsGiven ? guess : balance.FirstGuess();
        var (low, high) = (double.NegativeInfinity, double.PositiveInfinity);
        for (var i = 0; i < MaxIterations; i++)
        {
            var (stepOxygen, stepMoles) = balance.NewtonStep(logOxygen, logMoles);
            (low, high) = stepOxygen > 0 ? (logOxygen, high) : (low, logOxygen);
            logOxygen += Math.Clamp(stepOxygen, -40, 40);
            logMoles += Math.Clamp(stepMoles, -0.3, 0.3);
            if (Math.Abs(stepOxygen) + Math.Abs(stepMoles) < (i < TightIterations ? 1e-9 : 1e-5))
            {
                // Newton's last step was quadratic: the error left is its square.
                var moles = balance.Amounts(logOxygen, logMoles);
                return EquilibriumProperties.Of(moles, temperature, pressure, cp, enthalpy, gibbs, new(logOxygen, logMoles));
            }

            if (Math.Abs(stepMoles) > 1e-3)
            {
                (low, high) = (double.NegativeInfinity, double.PositiveInfinity);
            }
            else if (logOxygen <= low || logOxygen >= high)
            {
                // Very rich and cold, the oxygen balance is steep between two flat stretches: Newton alone leaps to and fro.
                logOxygen = double.IsFinite(low + high) ? 0.5 * (low + high) : logOxygen;
            }
        }

        throw new FormulaDomainException("composition of the gas in equilibrium: the search did not converge");
    }

    /// <summary>The balances for one temperature and pressure. Equilibrium constants are for formation from O2, H2, N2 and CO.</summary>
    private readonly struct Balance
    {
        private readonly Elements _elements;
        private readonly double _pressure;
        private readonly double _excess;
        private readonly double _kH;
        private readonly double _kO;
        private readonly double _kN;
        private readonly double _kOH;
        private readonly double _kNO;
        private readonly double _kH2O;
        private readonly double _kCO2;

        /// <param name="elements">Atoms, mol/kg.</param>
        /// <param name="g">μ°/(R T) of the product species.</param>
        /// <param name="pressure">Pressure, bar.</param>
        internal Balance(in Elements elements, ReadOnlySpan<double> g, double pressure)
        {
            _elements = elements;
            _pressure = pressure;
            _excess = elements.OxygenExcess;
            var (halfO2, halfH2, halfN2) = (0.5 * g[(int)Species.O2], 0.5 * g[(int)Species.H2], 0.5 * g[(int)Species.N2]);
            _kH = Math.Exp(halfH2 - g[(int)Species.H]);
            _kO = Math.Exp(halfO2 - g[(int)Species.O]);
            _kN = Math.Exp(halfN2 - g[(int)Species.N]);
            _kOH = Math.Exp(halfO2 + halfH2 - g[(int)Species.OH]);
            _kNO = Math.Exp(halfO2 + halfN2 - g[(int)Species.NO]);
            _kH2O = Math.Exp(halfO2 + (2 * halfH2) - g[(int)Species.H2O]);
            _kCO2 = Math.Exp(halfO2 + g[(int)Species.CO] - g[(int)Species.CO2]);
        }

        /// <summary>Complete combustion; oxygen from its excess, or plenty when there is none: Newton comes down from above surely.</summary>
        internal EquilibriumGuess FirstGuess()
        {
            var moles = _elements.Carbon + (0.5 * (_elements.Hydrogen + _elements.Nitrogen)) + _elements.Argon + Math.Max(0, 0.5 * _excess);
            return new(0.5 * Math.Log(Math.Max(0.5 * _excess / moles, 1e-3) * _pressure), Math.Log(moles));
        }

        internal (double Oxygen, double Moles) NewtonStep(double logOxygen, double logMoles)
        {
            var o = Math.Exp(logOxygen);
            var perMole = _pressure / Math.Exp(logMoles);

            // Partial pressures in bar, and d/d ln o (suffix O) and d/d ln moles (suffix M) of each balance's own unknown.
            var carbon = _elements.Carbon * perMole;
            var co = carbon / (1 + (_kCO2 * o));
            var co2 = _kCO2 * co * o;
            var coO = -co * co2 / Math.Max(carbon, double.Epsilon);

            var hydrogen = _elements.Hydrogen * perMole;
            var linearH = _kH + (_kOH * o);
            var squareH = 2 * (1 + (_kH2O * o));
            var rootH = Math.Sqrt((linearH * linearH) + (4 * squareH * hydrogen));
            var h = 2 * hydrogen / (linearH + rootH);
            var hO = -((2 * _kH2O * o * h * h) + (_kOH * o * h)) / rootH;
            var hM = -hydrogen / rootH;

            var nitrogen = _elements.Nitrogen * perMole;
            var linearN = _kN + (_kNO * o);
            var rootN = Math.Sqrt((linearN * linearN) + (8 * nitrogen));
            var n = 2 * nitrogen / (linearN + rootN);
            var nO = -_kNO * o * n / rootN;
            var nM = -nitrogen / rootN;

            // Balance of excess oxygen: what has oxygen to give against what lacks it, compared by logarithm.
            var excess = _excess * perMole;
            var atomO = _kO * o;
            var giving = (2 * o * o) + atomO + (_kNO * n * o) + (0.5 * _kOH * h * o) + Math.Max(-excess, 0);
            var lacking = co + (h * h) + (0.5 * _kH * h) + Math.Max(excess, 0);
            var givingO = (4 * o * o) + atomO + (_kNO * o * (n + nO)) + (0.5 * _kOH * o * (h + hO));
            var givingM = (_kNO * o * nM) + (0.5 * _kOH * o * hM) - Math.Max(-excess, 0);
            var lackingO = coO + (((2 * h) + (0.5 * _kH)) * hO);
            var lackingM = -co + (((2 * h) + (0.5 * _kH)) * hM) - Math.Max(excess, 0);
            var oxygenError = Math.Log(giving / lacking);
            var oxygenByO = (givingO / giving) - (lackingO / lacking);
            var oxygenByM = (givingM / giving) - (lackingM / lacking);

            // Sum of the partial pressures.
            var sum = carbon + (h * (h + (_kH2O * h * o) + _kH + (_kOH * o))) + (n * (n + _kN + (_kNO * o))) + (o * o) + atomO + (_elements.Argon * perMole);
            var sumByH = (2 * h * (1 + (_kH2O * o))) + linearH;
            var sumByN = (2 * n) + linearN;
            var sumO = (sumByH * hO) + (h * o * ((_kH2O * h) + _kOH)) + (sumByN * nO) + (_kNO * n * o) + (2 * o * o) + atomO;
            var sumM = (sumByH * hM) + (sumByN * nM) - carbon - (_elements.Argon * perMole);
            var sumError = Math.Log(sum / _pressure);

            var determinant = (oxygenByO * sumM) - (oxygenByM * sumO);
            return (
                ((oxygenByM * sumError * sum) - (oxygenError * sumM)) / determinant,
                ((oxygenError * sumO) - (oxygenByO * sumError * sum)) / determinant);
        }

        internal ProductAmounts Amounts(double logOxygen, double logMoles)
        {
            var o = Math.Exp(logOxygen);
            var moles = Math.Exp(logMoles);
            var perMole = _pressure / moles;
            var linearH = _kH + (_kOH * o);
            var hydrogen = _elements.Hydrogen * perMole;
            var h = 2 * hydrogen / (linearH + Math.Sqrt((linearH * linearH) + (8 * (1 + (_kH2O * o)) * hydrogen)));
            var linearN = _kN + (_kNO * o);
            var nitrogen = _elements.Nitrogen * perMole;
            var n = 2 * nitrogen / (linearN + Math.Sqrt((linearN * linearN) + (8 * nitrogen)));
            var co = _elements.Carbon / (1 + (_kCO2 * o));
            var amounts = new ProductAmounts();
            amounts[(int)Species.CO] = co;
            amounts[(int)Species.CO2] = _kCO2 * co * o;
            amounts[(int)Species.H2O] = _kH2O * h * h * o / perMole;
            amounts[(int)Species.H2] = h * h / perMole;
            amounts[(int)Species.H] = _kH * h / perMole;
            amounts[(int)Species.O] = _kO * o / perMole;
            amounts[(int)Species.OH] = _kOH * h * o / perMole;
            amounts[(int)Species.O2] = o * o / perMole;
            amounts[(int)Species.NO] = _kNO * n * o / perMole;
            amounts[(int)Species.N2] = n * n / perMole;
            amounts[(int)Species.N] = _kN * n / perMole;
            amounts[(int)Species.Ar] = _elements.Argon;
            return amounts;
        }
    }
}
