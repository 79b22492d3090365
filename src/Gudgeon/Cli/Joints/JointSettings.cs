using System.ComponentModel;
using Gudgeon.Cli.Sheets;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Joints;

/// <summary>What sheets of one joint take: gudgeon joints torque heron.json --joint head.</summary>
internal class JointSettings : SheetSettings
{
    [CommandOption("--joint <NAME>")]
    [Description("The joint; the first of the book when left out.")]
    public string? Joint { get; init; }
}
