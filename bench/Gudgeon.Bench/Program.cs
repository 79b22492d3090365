using Gudgeon.Bench;

Console.WriteLine(FormattableString.Invariant($"{Environment.ProcessorCount} processors, .NET {Environment.Version}; median and best of 9 rounds, the ways in turn"));
if (args is ["what-if"])
{
    WhatIfBench.Sliders();
    WhatIfBench.TwentyMoves();
    return;
}

if (args is ["pipes"])
{
    PipeBench.Sod();
    PipeBench.Real();
    return;
}

if (args is ["wave", ..])
{
    WaveBench.Sweep();
    WaveBench.Growth(args.ElementAtOrDefault(1));
    return;
}

if (args is ["train"])
{
    TrainBench.Turn();
    TrainBench.Stiff();
    TrainBench.Sweep();
    return;
}

if (args is ["bearings", "table", var file])
{
    BearingBench.Table(file);
    return;
}

if (args is ["bearings"])
{
    BearingBench.Orbit();
    BearingBench.Book();
    return;
}

if (args is ["shims"])
{
    ShimBench.Choice();
    return;
}

if (args is ["monte-carlo"])
{
    MonteCarloBench.Rate();
    return;
}

BookBench.Sweep();
BookBench.Recheck();
WhatIfBench.Sliders();
WhatIfBench.TwentyMoves();
EngineBench.Sweep();
EngineBench.Points();
EngineBench.Cycles();
GasBench.TemperatureOfEnergy();
PipeBench.Sod();
PipeBench.Real();
TrainBench.Turn();
