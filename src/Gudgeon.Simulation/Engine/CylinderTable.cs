namespace Gudgeon.Simulation.Engine;

/// <summary>
/// Everything about a cylinder that depends on crank angle alone, on the engine's own even grid of crank angles; the last
/// entry repeats the first.
/// </summary>
internal sealed class CylinderTable
{
    private readonly int _top;

    public CylinderTable(CylinderSpec cylinder, int steps)
    {
        Geometry = new SliderCrank(cylinder);
        (Angle, Volume, Liner) = (new double[steps + 1], new double[steps + 1], new double[steps + 1]);
        (InletIn, InletOut, ExhaustOut, ExhaustIn) = (new double[steps + 1], new double[steps + 1], new double[steps + 1], new double[steps + 1]);
        Open = new bool[steps + 1];
        var (inlet, exhaust) = (new ValveArea(cylinder.Inlet), new ValveArea(cylinder.Exhaust));
        for (var i = 0; i <= steps; i++)
        {
            Angle[i] = ValveArea.Wrap((720.0 * (i % steps) / steps) - cylinder.FiringAngle);
            var depth = Geometry.Depth(Angle[i]);
            Volume[i] = Geometry.Volume(depth);
            Liner[i] = Math.PI * cylinder.Bore * depth;
            var (inletLift, exhaustLift) = (inlet.Lift(Angle[i]), exhaust.Lift(Angle[i]));
            (InletIn[i], InletOut[i]) = (inlet.Forward(inletLift), inlet.Reverse(inletLift));
            (ExhaustOut[i], ExhaustIn[i]) = (exhaust.Forward(exhaustLift), exhaust.Reverse(exhaustLift));
            Open[i] = inletLift > 0 || exhaustLift > 0;
        }

        _top = Enumerable.Range(0, steps).MinBy(i => Math.Abs(Late(Angle[i])));
        InletCloses = Enumerable.Range(0, steps).First(i => InletIn[i] == 0 && InletIn[(i + steps - 1) % steps] > 0);
    }

    public SliderCrank Geometry { get; }

    /// <summary>Crank angle after this cylinder's firing top dead centre, 0 to 720, degrees.</summary>
    public double[] Angle { get; }

    /// <summary>m³.</summary>
    public double[] Volume { get; }

    /// <summary>Liner surface laid bare by the piston, m².</summary>
    public double[] Liner { get; }

    public double[] InletIn { get; }

    public double[] InletOut { get; }

    public double[] ExhaustOut { get; }

    public double[] ExhaustIn { get; }

    /// <summary>Whether a valve is off its seat.</summary>
    public bool[] Open { get; }

    /// <summary>First index with the inlet valve on its seat.</summary>
    public int InletCloses { get; }

    /// <summary>
    /// Burned-zone fraction on the grid: from the start of the burn to just past the opening of a valve, zero elsewhere.
    /// </summary>
    /// <param name="burn">The burn.</param>
    /// <param name="fractions">Takes them.</param>
    public void BurnedZone(in BurnCurve burn, Span<double> fractions)
    {
        var steps = Angle.Length - 1;
        var first = _top;
        fractions.Clear();
        for (var j = 0; j < steps / 2; j++)
        {
            var i = (first + j) % steps;
            fractions[i] = burn.Fraction(Angle[i]);
            if (Open[i] && j > 0)
            {
                break;
            }
        }

        for (var j = 1; j < steps / 4 && !Open[(first - j + steps) % steps]; j++)
        {
            var i = (first - j + steps) % steps;
            fractions[i] = burn.Fraction(Late(Angle[i]));
        }

        fractions[steps] = fractions[0];
    }

    /// <summary>Angles of the compression stroke written as negative ones.</summary>
    private static double Late(double angle) => angle > 360 ? angle - 720 : angle;
}
