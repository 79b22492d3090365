namespace Gudgeon.Simulation.Engine;

/// <summary>What a link is.</summary>
internal enum LinkKind
{
    Restriction,
    CooledRestriction,
    Runner,
    Relief,
    Compressor,
    Displacement,
    InletValve,
    ExhaustValve,
    Outlet,
    Turbine,
    Wastegate,
    BlowBy,
}

/// <summary>A way from one node to another; flow is positive from <paramref name="From"/> to <paramref name="To"/>.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="From">Node.</param>
/// <param name="To">Node.</param>
/// <param name="Area">Effective area, m²; 0 when something else sets it.</param>
/// <param name="Cylinder">Cylinder it belongs to, or −1.</param>
internal readonly record struct Link(LinkKind Kind, int From, int To, double Area, int Cylinder = -1);

/// <summary>
/// The engine as nodes and links. A node is a volume or a reservoir: ambient, the world behind the tailpipe, crankcase,
/// fuel tank, imposed ports. Reservoirs keep their condition but count what they gave and took, so that the sum over all
/// nodes is conserved.
/// </summary>
internal sealed class Network
{
    public const int Ambient = 0;
    public const int Tailpipe = 1;
    public const int Crankcase = 2;
    public const int Tank = 3;

    private readonly List<double> _volumes = [0, 0, 0, 0];
    private readonly List<Link> _links = [];

    public Network(EngineSpec spec)
    {
        Cylinders = new int[spec.Cylinders.Count];
        Ports = new int[spec.Cylinders.Count];
        ExhaustPorts = new int[spec.Cylinders.Count];
        Imposed = spec.ImposedPorts is not null;
        Piped = spec.Pipework is not null && !Imposed;
        AddIntake(spec);
        for (var c = 0; c < Cylinders.Length; c++)
        {
            AddCylinder(spec, c);
        }

        if (!Imposed)
        {
            AddExhaust(spec);
        }

        Volumes = [.. _volumes];
        Links = [.. _links];
        Compressor = Array.FindIndex(Links, l => l.Kind is LinkKind.Compressor or LinkKind.Displacement);
    }

    /// <summary>Volume of each node, m³; 0 for reservoirs, whose condition is fixed, and for cylinders, whose volume moves.</summary>
    public double[] Volumes { get; }

    public Link[] Links { get; }

    /// <summary>Index of the blower's link, or −1.</summary>
    public int Compressor { get; }

    public bool Imposed { get; }

    /// <summary>Whether pipes stand where the lumped depth has port volumes and a collector.</summary>
    public bool Piped { get; }

    /// <summary>The pipes; none in the lumped depth.</summary>
    public PipeLine[] Pipes { get; private set; } = [];

    /// <summary>Which of <see cref="Pipes"/> are the stretches of one pipe, in a row.</summary>
    public Range[] WholePipes { get; private set; } = [];

    public int Airbox { get; private set; } = -1;

    public int Delivery { get; private set; } = -1;

    public int Plenum { get; private set; } = -1;

    /// <summary>The exhaust of the lumped depth, or −1.</summary>
    public int Collector { get; private set; } = -1;

    /// <summary>Inlet port of each cylinder; −1 where a pipe leads to its valve.</summary>
    public int[] Ports { get; }

    /// <summary>What the exhaust valves of each cylinder open to; −1 where a pipe leads away from them.</summary>
    public int[] ExhaustPorts { get; }

    /// <summary>Node of each cylinder.</summary>
    public int[] Cylinders { get; }

    public int NodeCount => Volumes.Length;

    private void AddIntake(EngineSpec spec)
    {
        if (Imposed)
        {
            return;
        }

        var intake = spec.Intake;
        Airbox = Add(intake.AirboxVolume);
        _links.Add(new(LinkKind.Restriction, Ambient, Airbox, intake.FilterArea));
        var before = Airbox;
        if (intake.Induction is not null)
        {
            Delivery = Add(intake.DeliveryVolume);
            _links.Add(new(intake.Induction is CentrifugalInduction ? LinkKind.Compressor : LinkKind.Displacement, Airbox, Delivery, 0));
            before = Delivery;
        }

        Plenum = Add(intake.PlenumVolume);
        _links.Add(intake.Cooler is { } cooler
            ? new(LinkKind.CooledRestriction, before, Plenum, InSeries(cooler.EffectiveArea, intake.ThrottleArea))
            : new(LinkKind.Restriction, before, Plenum, intake.ThrottleArea));
        if (intake.Relief is { } relief)
        {
            _links.Add(new(LinkKind.Relief, Delivery >= 0 ? Delivery : Plenum, Ambient, relief.Area));
        }

        if (!Piped)
        {
            Collector = Add(spec.Exhaust.CollectorVolume);
        }
    }

    /// <summary>From the collector or the pipes to the outside, through the turbine when there is one.</summary>
    private void AddExhaust(EngineSpec spec)
    {
        var turbine = (spec.Intake.Induction as CentrifugalInduction)?.Turbine;
        var end = turbine is null ? Tailpipe : Piped ? Add(turbine.VoluteVolume) : Collector;
        if (Piped)
        {
            (Pipes, WholePipes) = new PipeNetwork(spec, Cylinders, Plenum, end, Add).Laid();
        }

        if (turbine is not null)
        {
            _links.Add(new(LinkKind.Turbine, end, Tailpipe, turbine.ThroatArea));
            _links.Add(new(LinkKind.Wastegate, end, Tailpipe, turbine.WastegateArea));
        }
        else if (!Piped)
        {
            _links.Add(new(LinkKind.Outlet, Collector, Tailpipe, spec.Exhaust.OutletArea));
        }
    }

    private void AddCylinder(EngineSpec spec, int c)
    {
        ExhaustPorts[c] = -1;
        Ports[c] = Piped ? -1 : Add(Imposed ? 0 : spec.Intake.PortVolume);
        Cylinders[c] = Add(0);
        _links.Add(new(LinkKind.BlowBy, Cylinders[c], Crankcase, spec.Cylinders[c].BlowByArea, c));
        if (Piped)
        {
            return;
        }

        ExhaustPorts[c] = Imposed ? Add(0) : Collector;
        if (!Imposed)
        {
            _links.Add(new(LinkKind.Runner, Plenum, Ports[c], spec.Intake.RunnerArea, c));
        }

        _links.Add(new(LinkKind.InletValve, Ports[c], Cylinders[c], 0, c));
        _links.Add(new(LinkKind.ExhaustValve, Cylinders[c], ExhaustPorts[c], 0, c));
    }

    private int Add(double volume)
    {
        _volumes.Add(volume);
        return _volumes.Count - 1;
    }

    /// <summary>One restriction that stands for two: the pressure losses add, the flow being far from choking.</summary>
    private static double InSeries(double a, double b) => a * b / Math.Sqrt((a * a) + (b * b));
}
