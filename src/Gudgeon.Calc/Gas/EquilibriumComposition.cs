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
    private const string NotConverged = "composition of the gas in equilibrium: the search did not converge";

    // Near 200 K round-off in the oxygen balance can move ln o by more than the tight tolerance.
    private const int TightIterations = 30;

    internal static EquilibriumState SolveAtPressure(in Elements elements, double temperature, double pressure, EquilibriumGuess guess)
    {
        Span<double> cp = stackalloc double[ProductAmounts.Count];
        Span<double> enthalpy = stackalloc double[ProductAmounts.Count];
        Span<double> gibbs = stackalloc double[ProductAmounts.Count];
        ProductData.Evaluate(temperature, cp, enthalpy, gibbs);
        var balance = new Balance(elements, gibbs);
        var bar = pressure / StandardPressure;
        var (logOxygen, logMoles) = guess.IsGiven ? guess : balance.FirstGuess(bar);
        var bracket = Bracket.Open;
        for (var i = 0; i < MaxIterations; i++)
        {
            var (stepOxygen, stepMoles) = balance.NewtonStep(logOxygen, logMoles, bar);
            if (Math.Abs(stepMoles) > 1e-3)
            {
                // The root still moves with the amount of gas: what was learnt about its place does not hold.
                bracket = Bracket.Open;
            }

            logOxygen = bracket.Move(logOxygen, stepOxygen);
            logMoles += Math.Clamp(stepMoles, -0.3, 0.3);
            if (Math.Abs(stepOxygen) + Math.Abs(stepMoles) < (i < TightIterations ? 1e-9 : 1e-5))
            {
                // Newton's last step was quadratic: the error left is its square.
                var moles = balance.Amounts(logOxygen, bar / Math.Exp(logMoles));
                return EquilibriumProperties.Of(moles, temperature, pressure, cp, enthalpy, gibbs, new(logOxygen, logMoles));
            }
        }

        throw new FormulaDomainException(NotConverged);
    }

    internal static EquilibriumState SolveAtVolume(in Elements elements, double temperature, double volume, EquilibriumGuess guess)
    {
        Span<double> cp = stackalloc double[ProductAmounts.Count];
        Span<double> enthalpy = stackalloc double[ProductAmounts.Count];
        Span<double> gibbs = stackalloc double[ProductAmounts.Count];
        ProductData.Evaluate(temperature, cp, enthalpy, gibbs);
        var balance = new Balance(elements, gibbs);
        var perMole = MolarGasConstant * temperature / (volume * StandardPressure);
        var logOxygen = guess.IsGiven ? guess.LogOxygen : balance.FirstGuess(40 * perMole).LogOxygen;
        var bracket = Bracket.Open;
        for (var i = 0; i < MaxIterations; i++)
        {
            var step = balance.NewtonStep(logOxygen, perMole);
            logOxygen = bracket.Move(logOxygen, step);
            if (Math.Abs(step) < (i < TightIterations ? 1e-9 : 1e-5))
            {
                var moles = balance.Amounts(logOxygen, perMole);
                var total = new GasMixture(moles).TotalMoles;
                return EquilibriumProperties.Of(moles, temperature, total * perMole * StandardPressure, cp, enthalpy, gibbs, new(logOxygen, Math.Log(total)));
            }
        }

        throw new FormulaDomainException(NotConverged);
    }

    /// <summary>
    /// Where the root of the oxygen balance lies. Very rich and cold, the balance is steep between two flat stretches and
    /// Newton alone leaps to and fro. Short steps are trusted: the bracket is only as true as the amount of gas was.
    /// </summary>
    private struct Bracket
    {
        private double _low;
        private double _high;

        internal static Bracket Open => new() { _low = double.NegativeInfinity, _high = double.PositiveInfinity };

        internal double Move(double at, double step)
        {
            (_low, _high) = step > 0 ? (at, _high) : (_low, at);
            var next = at + Math.Clamp(step, -40, 40);
            var trusted = Math.Abs(step) < 0.1 || (next > _low && next < _high) || !double.IsFinite(_low + _high);
            return trusted ? next : 0.5 * (_low + _high);
        }
    }

    /// <summary>The balances for one temperature. Equilibrium constants are for formation from O2, H2, N2 and CO.</summary>
    private readonly struct Balance
    {
        private readonly Elements _elements;
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
        internal Balance(in Elements elements, ReadOnlySpan<double> g)
        {
            _elements = elements;
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
        internal EquilibriumGuess FirstGuess(double pressure)
        {
            var moles = _elements.Carbon + (0.5 * (_elements.Hydrogen + _elements.Nitrogen)) + _elements.Argon + Math.Max(0, 0.5 * _excess);
            return new(0.5 * Math.Log(Math.Max(0.5 * _excess / moles, 1e-3) * pressure), Math.Log(moles));
        }

        /// <summary>Newton's step of ln o and ln moles at a pressure, bar.</summary>
        internal (double Oxygen, double Moles) NewtonStep(double logOxygen, double logMoles, double pressure)
        {
            var at = new Trial(this, Math.Exp(logOxygen), pressure / Math.Exp(logMoles));
            var (oxygen, oxygenO, oxygenM) = ExcessOxygen(at);
            var (sum, sumO, sumM) = PressureSum(at, pressure);
            var determinant = (oxygenO * sumM) - (oxygenM * sumO);
            return (((oxygenM * sum) - (oxygen * sumM)) / determinant, ((oxygen * sumO) - (oxygenO * sum)) / determinant);
        }

        /// <summary>Newton's step of ln o at a volume, given as the partial pressure of 1 mol/kg, bar.</summary>
        internal double NewtonStep(double logOxygen, double perMole)
        {
            var (oxygen, byO, _) = ExcessOxygen(new Trial(this, Math.Exp(logOxygen), perMole));
            return -oxygen / byO;
        }

        internal ProductAmounts Amounts(double logOxygen, double perMole)
        {
            var at = new Trial(this, Math.Exp(logOxygen), perMole);
            var amounts = new ProductAmounts();
            amounts[(int)Species.CO] = at.CO / perMole;
            amounts[(int)Species.CO2] = _kCO2 * at.CO * at.O / perMole;
            amounts[(int)Species.H2O] = _kH2O * at.H * at.H * at.O / perMole;
            amounts[(int)Species.H2] = at.H * at.H / perMole;
            amounts[(int)Species.H] = _kH * at.H / perMole;
            amounts[(int)Species.O] = _kO * at.O / perMole;
            amounts[(int)Species.OH] = _kOH * at.H * at.O / perMole;
            amounts[(int)Species.O2] = at.O * at.O / perMole;
            amounts[(int)Species.NO] = _kNO * at.N * at.O / perMole;
            amounts[(int)Species.N2] = at.N * at.N / perMole;
            amounts[(int)Species.N] = _kN * at.N / perMole;
            amounts[(int)Species.Ar] = _elements.Argon;
            return amounts;
        }

        /// <summary>What has oxygen to give against what lacks it, compared by logarithm; with its derivatives.</summary>
        private (double Value, double ByO, double ByM) ExcessOxygen(in Trial at)
        {
            var excess = _excess * at.PerMole;
            var (o, h, n) = (at.O, at.H, at.N);
            var giving = (2 * o * o) + (o * (_kO + (_kNO * n) + (0.5 * _kOH * h))) + Math.Max(-excess, 0);
            var givingO = (4 * o * o) + (o * (_kO + (_kNO * (n + at.NByO)) + (0.5 * _kOH * (h + at.HByO))));
            var givingM = (o * ((_kNO * at.NByM) + (0.5 * _kOH * at.HByM))) - Math.Max(-excess, 0);
            var lackingByH = (2 * h) + (0.5 * _kH);
            var lacking = at.CO + (h * (h + (0.5 * _kH))) + Math.Max(excess, 0);
            var lackingO = at.COByO + (lackingByH * at.HByO);
            var lackingM = -at.CO + (lackingByH * at.HByM) - Math.Max(excess, 0);
            return (Math.Log(giving / lacking), (givingO / giving) - (lackingO / lacking), (givingM / giving) - (lackingM / lacking));
        }

        /// <summary>Sum of the partial pressures, less the pressure; with its derivatives.</summary>
        private (double Value, double ByO, double ByM) PressureSum(in Trial at, double pressure)
        {
            var (o, h, n) = (at.O, at.H, at.N);
            var inert = (_elements.Carbon + _elements.Argon) * at.PerMole;
            var sum = inert + (h * ((h * (1 + (_kH2O * o))) + at.LinearH)) + (n * (n + at.LinearN)) + (o * (o + _kO));
            var byH = (2 * h * (1 + (_kH2O * o))) + at.LinearH;
            var byN = (2 * n) + at.LinearN;
            var byO = (byH * at.HByO) + (byN * at.NByO) + (o * ((_kH2O * h * h) + (_kOH * h) + (_kNO * n) + (2 * o) + _kO));
            return (sum * Math.Log(sum / pressure), byO, (byH * at.HByM) + (byN * at.NByM) - inert);
        }

        /// <summary>
        /// Carbon, hydrogen and nitrogen shared out at a trial oxygen activity and amount of gas: square roots of the partial
        /// pressures of O2, H2, N2 and the partial pressure of CO, bar, with derivatives by ln o (ByO) and ln moles (ByM).
        /// </summary>
        private readonly struct Trial
        {
            internal Trial(in Balance of, double o, double perMole)
            {
                O = o;
                PerMole = perMole;

                var oxidised = of._kCO2 * o;
                CO = of._elements.Carbon * perMole / (1 + oxidised);
                COByO = -CO * oxidised / (1 + oxidised);

                var hydrogen = of._elements.Hydrogen * perMole;
                LinearH = of._kH + (of._kOH * o);
                var rootH = Math.Sqrt((LinearH * LinearH) + (8 * (1 + (of._kH2O * o)) * hydrogen));
                H = 2 * hydrogen / (LinearH + rootH);
                HByO = -o * H * ((2 * of._kH2O * H) + of._kOH) / rootH;
                HByM = -hydrogen / rootH;

                var nitrogen = of._elements.Nitrogen * perMole;
                LinearN = of._kN + (of._kNO * o);
                var rootN = Math.Sqrt((LinearN * LinearN) + (8 * nitrogen));
                N = 2 * nitrogen / (LinearN + rootN);
                NByO = -of._kNO * o * N / rootN;
                NByM = -nitrogen / rootN;
            }

            internal double PerMole { get; }

            internal double O { get; }

            internal double CO { get; }

            internal double COByO { get; }

            internal double H { get; }

            internal double HByO { get; }

            internal double HByM { get; }

            internal double LinearH { get; }

            internal double N { get; }

            internal double NByO { get; }

            internal double NByM { get; }

            internal double LinearN { get; }
        }
    }
}
