namespace Gudgeon.Cli.Drive;

/// <summary>Names of the pulleys as the belt meets them.</summary>
internal static class BeltNames
{
    /// <summary>With an idler when there are three.</summary>
    public static IReadOnlyList<string> Of(int pulleys) => pulleys == 3 ? ["crank", "idler", "blower"] : ["crank", "blower"];
}
