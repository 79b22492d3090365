using Gudgeon.Book.Checks.Fits;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Bearings;
using Gudgeon.Calc.Materials;
using Gudgeon.Calc.Shafts;

namespace Gudgeon.Book.Checks.Drive;

/// <summary>The nose of the crank under the pull of the belt. What is not known reads as NaN.</summary>
/// <param name="view">The values.</param>
public sealed class LoadedNose(View view)
{
    /// <summary>Sections that are looked at: where the spigot leaves its fit, and its shoulder.</summary>
    public const string Mouth = "mouth", Shoulder = "shoulder";

    /// <summary>4 minutes of arc: common practice, no source.</summary>
    private const double UsualTilt = 4 * Math.PI / 180 / 60;

    /// <summary>Endurance that 99 of 100 shafts reach: see <see cref="ShaftFatigue.Endurance"/>.</summary>
    private const double Reliability = 0.814;

    /// <summary>Steel, Pa: from memory.</summary>
    private const double Modulus = 205e9;

    private readonly DrivenBelt _belt = new(view);

    /// <summary>Whether the book has a spigot of known size and steel.</summary>
    public static bool HasSpigot(View view) => view.Knows(Fit.Size, Nose.Fit) && view.Knows(Fit.ShaftMaterial, Nose.Fit);

    /// <summary>Whether a bearing in a cover holds its end.</summary>
    public bool Held => view.Knows(Outboard.Distance);

    /// <summary>Where the belt pulls most.</summary>
    public BeltPull Worst() => _belt.Worst();

    /// <summary>Greatest load of the belt on the pulley, at rest or over the run, N.</summary>
    public double HubLoad() => _belt.Pulls().Append(BeltPull.AtRest).Max(_belt.HubLoad);

    /// <summary>Supports under a hub load, N, with the cover's bore off line by an offset towards the pull, m.</summary>
    public NoseSupport Supports(double load, double offset)
    {
        var (a, span) = (view.Amount(Nose.Overhang), view.Amount(Nose.Span));
        if (!Held)
        {
            return new NoseSupport(0, load * (1 + (a / span)), -load * a / span, load * a, double.NaN);
        }

        var (b, d, k) = (view.Amount(Outboard.Distance), view.Amount(Nose.Diameter), view.Amount(Outboard.Stiffness));
        return view.Work(NoseBeam.Outboard, load, a, b, span, d, k, offset, Modulus);
    }

    /// <summary>The offset of the cover's bore towards the pull and away from it, m: its direction is not known. One without an outboard bearing.</summary>
    public IReadOnlyList<double> Offsets() => Held ? [view.AmountOr(Outboard.Offset, 0), -view.AmountOr(Outboard.Offset, 0)] : [0];

    /// <summary>Greatest bending moment at a place from the near main bearing, m, under a hub load, N·m.</summary>
    public double Moment(double place, double load) => Offsets().Max(offset => Math.Abs(Moment(place, load, Supports(load, offset))));

    /// <summary>Bending moment at a place from the near main bearing, m; beyond the near bearing towards the end.</summary>
    public double Moment(double place, double load, NoseSupport supports) =>
        (load * Math.Max(0, view.Amount(Nose.Overhang) - place)) - (Held ? supports.Outboard * Math.Max(0, view.Amount(Outboard.Distance) - place) : 0);

    /// <summary>Place of a section from the near main bearing, m.</summary>
    public double Place(string section) => view.Amount(section == Mouth ? Nose.MouthFrom : Nose.FilletFrom);

    /// <summary>Safety of a section against fatigue and yield.</summary>
    public ShaftSafety Safety(string section)
    {
        var (diameter, torque) = (Diameter(section), Worst().Torque);
        var moment = Moment(Place(section), HubLoad());
        if (view.Choice<MaterialGrade>(Fit.ShaftMaterial, Nose.Fit) is not { } grade)
        {
            return Unknown<ShaftSafety>.Value;
        }

        var steel = view.Work(MaterialTable.Properties, grade, diameter);
        var notch = Notch(section, steel.Tensile);
        var limit = view.Work(ShaftFatigue.Endurance, steel.Tensile, diameter, Finish, Reliability).Limit;
        return view.Work(ShaftFatigue.Safety, diameter, moment, 0.0, view.AmountOr(Nose.Vibration, torque / 2), torque, limit, steel.Tensile, steel.Yield, notch.Bending, notch.Torsion, FatigueCriterion.Goodman);
    }

    /// <summary>What fatigue feels of the notch of a section.</summary>
    public NotchFactors Notch(string section, double tensile)
    {
        if (section == Mouth)
        {
            return view.Work(ShaftNotch.Seat, view.Knows(Fit.KeyLength, Nose.Fit) ? SeatKind.Keyed : SeatKind.ShrunkOn, tensile);
        }

        var (shoulder, fillet) = (view.Amount(Nose.Shoulder), view.Amount(Nose.Fillet));
        var sharp = view.Work(ShaftNotch.Shoulder, Diameter(section), shoulder, fillet);
        return view.Work(ShaftNotch.Fatigue, sharp.Bending, sharp.Torsion, fillet, tensile);
    }

    /// <summary>Load on the outboard bearing under a hub load, the worst way round, N.</summary>
    public double OutboardLoad(double load) => Offsets().Max(offset => Math.Abs(Supports(load, offset).Outboard));

    /// <summary>Misalignment in the outboard bearing: slope of the shaft, the worst way round, and tilt of the bore, rad.</summary>
    public double Misalignment() => Offsets().Max(offset => Math.Abs(Supports(HubLoad(), offset).Slope)) + view.AmountOr(Outboard.Tilt, 0);

    /// <summary>Misalignment that the bearing allows, rad.</summary>
    public double TiltLimit() => view.AmountOr(Outboard.TiltLimit, UsualTilt);

    /// <summary>Load that does the same damage as the run, every speed held as long as the next, N.</summary>
    public double MeanLoad()
    {
        var pulls = _belt.Pulls();
        double[] loads = [.. pulls.Select(p => Equivalent(OutboardLoad(_belt.HubLoad(p))))];
        return loads.Length == 0 || loads.Any(double.IsNaN) ? double.NaN : view.Work(RollingLife.MeanLoad, loads, pulls.Select(p => p.Speed).ToArray(), RollingElement.Ball);
    }

    /// <summary>Rating life at the mean speed of the run, s.</summary>
    public double Life()
    {
        var (load, rating) = (MeanLoad(), view.Amount(Outboard.Rating));
        return double.IsNaN(load + rating) ? double.NaN : view.Work(RollingLife.Life, rating, load, _belt.Pulls().Average(p => p.Speed), RollingElement.Ball, 1.0).Time;
    }

    /// <summary>The spigot's fit.</summary>
    internal FittedPair Joint { get; } = new(view, Nose.Fit);

    /// <summary>Torque at which the key alone comes to the pressure allowed on its flank, N·m.</summary>
    public double KeyTorque()
    {
        var key = Joint.Key();
        return view.Amount(Fit.KeyPressureLimit, Nose.Fit) * view.Amount(Fit.Torque, Nose.Fit) / Math.Max(key.HubPressure, key.ShaftPressure);
    }

    /// <summary>Torque at which the spigot itself yields at the notch of its weaker section, N·m: at its mouth, and at its shoulder where it has one.</summary>
    public double SpigotTorque()
    {
        var sections = view.Knows(Nose.Fillet) ? new[] { Mouth, Shoulder } : [Mouth];
        return view.Choice<MaterialGrade>(Fit.ShaftMaterial, Nose.Fit) is { } grade ? sections.Min(s => YieldTorque(s, grade)) : double.NaN;
    }

    private double YieldTorque(string section, MaterialGrade grade)
    {
        var (diameter, bore) = (Diameter(section), view.AmountOr(Fit.ShaftBore, 0, Nose.Fit));
        var steel = view.Work(MaterialTable.Properties, grade, diameter);
        return view.Work(ShaftStress.YieldTorque, diameter, bore, steel.Yield, Notch(section, steel.Tensile).Torsion);
    }

    private double Equivalent(double radial) => view.AmountIf(Outboard.AxialForce) is { } axial
        ? Math.Max(radial, view.Work(RollingLife.EquivalentLoad, radial, axial, 0.56, 2.0, 1.0))
        : radial;

    private double Diameter(string section) => section == Mouth ? view.Amount(Fit.Size, Nose.Fit) : view.Amount(Nose.Diameter);

    private SurfaceFinish Finish => view.ChoiceOr(Nose.Finish, SurfaceFinish.Ground);
}
