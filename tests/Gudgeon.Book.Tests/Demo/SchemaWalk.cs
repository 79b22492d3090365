using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Gudgeon.Book.Tests.Demo;

/// <summary>Holds a document to the keywords of JSON Schema that the schema of a book uses.</summary>
internal sealed class SchemaWalk(JsonObject schema)
{
    private static readonly HashSet<string> Known = new(StringComparer.Ordinal)
    {
        "$schema", "$defs", "$ref", "title", "description", "type", "const", "enum", "anyOf", "items", "minimum", "pattern", "format",
        "required", "properties", "patternProperties", "additionalProperties",
    };

    /// <summary>Every fault, with the place in the document.</summary>
    public IEnumerable<string> Faults(JsonElement document) => Faults(schema, document, "");

    private IEnumerable<string> Faults(JsonObject rule, JsonElement value, string at)
    {
        if (rule["$ref"] is { } reference)
        {
            return Faults((JsonObject)schema["$defs"]![((string)reference!).Split('/')[^1]]!, value, at);
        }

        var unknown = rule.Select(r => r.Key).Where(k => !Known.Contains(k)).Select(k => $"{at}: the schema's keyword {k} is not walked");
        return [.. unknown, .. Scalar(rule, value, at), .. Members(rule, value, at), .. Items(rule, value, at)];
    }

    private IEnumerable<string> Scalar(JsonObject rule, JsonElement value, string at)
    {
        if (rule["type"] is { } type && !Types(type).Any(t => Is(t, value)))
        {
            yield return $"{at}: {value} is not {type}";
        }

        if (rule["const"] is { } wanted && wanted.ToJsonString() != value.GetRawText())
        {
            yield return $"{at}: {value} is not {wanted}";
        }

        if (rule["enum"] is JsonArray words && !words.Any(w => (string?)w == value.ToString()))
        {
            yield return $"{at}: {value} is not one of {words}";
        }

        if (rule["pattern"] is { } pattern && !Regex.IsMatch(value.ToString(), (string)pattern!, RegexOptions.None, TimeSpan.FromSeconds(1)))
        {
            yield return $"{at}: {value} does not match {pattern}";
        }

        if (rule["format"] is { } format && ((string?)format != "date" || !DateOnly.TryParseExact(value.ToString(), "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture, System.Globalization.DateTimeStyles.None, out _)))
        {
            yield return $"{at}: {value} is not a {format}";
        }

        if (rule["minimum"] is { } least && value.ValueKind == JsonValueKind.Number && value.GetDouble() < least.GetValue<double>())
        {
            yield return $"{at}: {value} is less than {least}";
        }

        if (rule["anyOf"] is JsonArray choices && choices.All(c => Faults((JsonObject)c!, value, at).Any()))
        {
            yield return $"{at}: {value} is none of what is wanted";
        }
    }

    private IEnumerable<string> Members(JsonObject rule, JsonElement value, string at)
    {
        if (value.ValueKind != JsonValueKind.Object)
        {
            yield break;
        }

        foreach (var member in value.EnumerateObject())
        {
            var next = MemberRule(rule, member.Name);
            if (next is null && rule["additionalProperties"] is JsonValue)
            {
                yield return $"{at}.{member.Name}: there is no such member";
            }

            foreach (var fault in next is null ? [] : Faults(next, member.Value, $"{at}.{member.Name}"))
            {
                yield return fault;
            }
        }

        foreach (var name in (rule["required"] as JsonArray ?? []).Select(n => (string)n!).Where(n => !value.TryGetProperty(n, out _)))
        {
            yield return $"{at}: {name} is missing";
        }
    }

    private static JsonObject? MemberRule(JsonObject rule, string name) =>
        rule["properties"]?[name] as JsonObject
        ?? (rule["patternProperties"] as JsonObject)?.FirstOrDefault(p => Regex.IsMatch(name, p.Key, RegexOptions.None, TimeSpan.FromSeconds(1))).Value as JsonObject
        ?? rule["additionalProperties"] as JsonObject;

    private IEnumerable<string> Items(JsonObject rule, JsonElement value, string at) => value.ValueKind == JsonValueKind.Array && rule["items"] is JsonObject each
        ? value.EnumerateArray().SelectMany((item, i) => Faults(each, item, $"{at}[{i}]"))
        : [];

    private static IEnumerable<string> Types(JsonNode type) => type is JsonArray several ? several.Select(t => (string)t!) : [(string)type!];

    private static bool Is(string type, JsonElement value) => type switch
    {
        "integer" => value.ValueKind == JsonValueKind.Number && value.TryGetInt64(out _),
        "boolean" => value.ValueKind is JsonValueKind.True or JsonValueKind.False,
        _ => string.Equals(value.ValueKind.ToString(), type, StringComparison.OrdinalIgnoreCase),
    };
}
