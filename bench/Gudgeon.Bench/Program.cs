using Gudgeon.Bench;

Console.WriteLine(FormattableString.Invariant($"{Environment.ProcessorCount} processors, .NET {Environment.Version}; median and best of 9 rounds, the ways in turn"));
BookBench.Sweep();
BookBench.Recheck();
EngineBench.Sweep();
EngineBench.Points();
EngineBench.Cycles();
GasBench.TemperatureOfEnergy();
PipeBench.Sod();
