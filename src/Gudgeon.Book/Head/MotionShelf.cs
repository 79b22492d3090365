using System.Globalization;
using Gudgeon.Simulation.ValveTrain;

namespace Gudgeon.Book.Head;

/// <summary>Where marched motions are kept: several checks ask for the same one, and most nudged values do not touch it.</summary>
public sealed class MotionShelf
{
    private const int Most = 400;

    /// <summary>
    /// How the book's trains are marched. Coils that clash never repeat to a hair: three hundredths of the lift from turn to turn,
    /// in any coil, count as settled. Traces are wanted by whoever asks how far a valve is thrown.
    /// </summary>
    internal static readonly TrainOptions Options = new() { Tolerance = 1e-5, TracePoints = 720, Repeat = 0.03 };

    private readonly Lock _gate = new();
    private readonly Dictionary<string, TrainPoint> _points = new(StringComparer.Ordinal);

    /// <summary>Motions marched so far.</summary>
    public int Marched { get; private set; }

    /// <summary>The motion of a train at a cam speed, rad/s: kept, or marched now.</summary>
    internal TrainPoint At(TrainSpec spec, double speed)
    {
        var key = Key(spec, speed);
        lock (_gate)
        {
            if (_points.TryGetValue(key, out var kept))
            {
                return kept;
            }
        }

        var point = new TrainModel(spec).At(speed, Options);
        lock (_gate)
        {
            if (_points.Count >= Most)
            {
                _points.Clear();
            }

            Marched++;
            return _points[key] = point;
        }
    }

    /// <summary>Every number of a train: curves by their course, the rest as it stands.</summary>
    private static string Key(TrainSpec spec, double speed)
    {
        var course = new HashCode();
        for (var i = 0; i <= 180; i++)
        {
            var angle = spec.Profile.Start + ((spec.Profile.End - spec.Profile.Start) * i / 180);
            course.Add(spec.Profile.At(angle));
            course.Add(spec.Gas?.At(angle) ?? 0);
        }

        double[] numbers =
        [
            speed, spec.Lash, spec.ValveMass, spec.FollowerMass, spec.CamStiffness, spec.CamDamping, spec.TrainStiffness ?? -1, spec.TrainDamping,
            spec.SeatStiffness, spec.SeatDamping, spec.GuideFriction, spec.Profile.Start, spec.Profile.End, spec.Profile.FullLift,
            .. spec.Springs.SelectMany(s => (double[])[s.Rate, s.ShutLoad, s.ActiveMass, s.BindTravel, s.Damping, s.Elements]),
        ];
        return string.Join(' ', numbers.Select(n => n.ToString("R", CultureInfo.InvariantCulture)).Append(course.ToHashCode().ToString(CultureInfo.InvariantCulture)));
    }
}
