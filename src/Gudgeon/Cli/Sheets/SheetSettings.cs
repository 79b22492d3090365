using System.ComponentModel;
using Spectre.Console.Cli;

namespace Gudgeon.Cli.Sheets;

/// <summary>What every sheet takes: gudgeon head springs heron.json --svg springs.svg.</summary>
internal class SheetSettings : ReadSettings
{
    [CommandOption("--svg <FILE>")]
    [Description("Draw it.")]
    public string? Svg { get; init; }
}
