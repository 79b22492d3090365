using System.Reflection;
using Gudgeon.Book.Values;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>Refuses an option that was given without its value; the parser puts a word of its own in the value's place.</summary>
internal sealed class OptionsHaveValues : ICommandInterceptor
{
    private const string ParsersWord = "__default_command";

    public void Intercept(CommandContext context, CommandSettings settings)
    {
        foreach (var property in settings.GetType().GetProperties())
        {
            if (property.GetCustomAttribute<CommandOptionAttribute>() is { } option && Texts(property.GetValue(settings)).Contains(ParsersWord, StringComparer.Ordinal))
            {
                throw new BadInputException($"--{option.LongNames[0]}: missing its {option.ValueName?.ToLowerInvariant()}");
            }
        }
    }

    private static IEnumerable<string> Texts(object? value) => value switch
    {
        string text => [text],
        string[] texts => texts,
        _ => [],
    };
}
