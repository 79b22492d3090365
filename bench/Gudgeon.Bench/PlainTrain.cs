namespace Gudgeon.Bench;

/// <summary>
/// The two masses of the bench written out as a plain loop for comparison: four equations, Dormand and Prince's pair, error
/// below 1e-6 absolute and relative in metres and metres per second, steps of at most 1.5° of cam, the lobe by its formula.
/// </summary>
internal static class PlainTrain
{
    private const double Follower = 20e-3;
    private const double Valve = 40e-3;
    private const double CamStiffness = 2e7;
    private const double TrainStiffness = 1.5e7;
    private const double SeatStiffness = 5e7;
    private const double Rate = 45e3;
    private const double ShutLoad = 250;
    private const double Lift = 8.5e-3;
    private const double Duration = 150 * Math.PI / 180;
    private const double Lash = 0.1e-3;
    private static readonly double CamDamping = 2 * 0.05 * Math.Sqrt(CamStiffness * Follower);
    private static readonly double TrainDamping = 2 * 0.05 * Math.Sqrt(TrainStiffness * Follower * Valve / (Follower + Valve));
    private static readonly double SeatDamping = 2 * 0.1 * Math.Sqrt(SeatStiffness * Valve);

    private static readonly double[][] A =
    [
        [],
        [1.0 / 5],
        [3.0 / 40, 9.0 / 40],
        [44.0 / 45, -56.0 / 15, 32.0 / 9],
        [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729],
        [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656],
        [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84],
    ];

    private static readonly double[] Places = [0, 0.2, 0.3, 0.8, 8.0 / 9, 1, 1];
    private static readonly double[] E = [71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40];

    /// <summary>One turn of the cam from rest; gives back the steps tried.</summary>
    public static int Revolve(double speed)
    {
        var k = new double[7][];
        for (var i = 0; i < 7; i++)
        {
            k[i] = new double[4];
        }

        double[] now = new double[4], next = new double[4];
        var (time, step, period, tries) = (0.0, 1e-5, 2 * Math.PI / speed, 0);
        Rates(speed, 0, now, k[0]);
        while (time < period)
        {
            step = Math.Min(step, Math.Min(Math.PI / 120 / speed, period - time));
            tries++;
            for (var s = 1; s < 7; s++)
            {
                for (var i = 0; i < 4; i++)
                {
                    var sum = 0.0;
                    for (var j = 0; j < s; j++)
                    {
                        sum += A[s][j] * k[j][i];
                    }

                    next[i] = now[i] + (step * sum);
                }

                Rates(speed, time + (Places[s] * step), next, k[s]);
            }

            var worst = 0.0;
            for (var i = 0; i < 4; i++)
            {
                var error = 0.0;
                for (var j = 0; j < 7; j++)
                {
                    error += E[j] * k[j][i];
                }

                worst = Math.Max(worst, Math.Abs(step * error) / (1e-6 * (1 + Math.Max(Math.Abs(now[i]), Math.Abs(next[i])))));
            }

            if (worst <= 1)
            {
                time = step == period - time ? period : time + step;
                (now, next) = (next, now);
                (k[0], k[6]) = (k[6], k[0]);
            }

            step *= Math.Clamp(0.9 * Math.Pow(worst, -0.2), 0.2, 5);
        }

        return tries;
    }

    private static void Rates(double speed, double time, double[] y, double[] rates)
    {
        var z = ((speed * time) - Math.PI) / Duration;
        var q = Math.Abs(z) < 0.5 ? 1 - (4 * z * z) : 0;
        var (lift, velocity) = ((Lift * q * q * q) - Lash, -24 * z * q * q * Lift * speed / Duration);
        var cam = Push(CamStiffness * (lift - y[0]), CamDamping * (velocity - y[2]));
        var train = Push(TrainStiffness * (y[0] - y[1]), TrainDamping * (y[2] - y[3]));
        var seat = Push(SeatStiffness * ((ShutLoad / SeatStiffness) - y[1]), -SeatDamping * y[3]);
        rates[0] = y[2];
        rates[1] = y[3];
        rates[2] = (cam - train) / Follower;
        rates[3] = (train + seat - ShutLoad - (Rate * y[1])) / Valve;
    }

    private static double Push(double elastic, double damping) => elastic > 0 ? Math.Max(0, elastic + damping) : 0;
}
