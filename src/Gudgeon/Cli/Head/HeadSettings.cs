using System.ComponentModel;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Head;

/// <summary>What every sheet of the head takes: gudgeon head springs heron.json --svg springs.svg.</summary>
internal class HeadSettings : ReadSettings
{
    [CommandOption("--svg <FILE>")]
    [Description("Draw it.")]
    public string? Svg { get; init; }
}
