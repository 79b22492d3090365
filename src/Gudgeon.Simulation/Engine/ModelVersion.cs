namespace Gudgeon.Simulation.Engine;

/// <summary>Version of the models whose figures are kept.</summary>
public static class ModelVersion
{
    /// <summary>Version of the engine model; raised whenever the same engine gives other figures than before, so that kept ones are made again.</summary>
    public const string Engine = "2";
}
