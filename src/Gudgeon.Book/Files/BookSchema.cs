using System.Text.Json.Nodes;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Files;

/// <summary>JSON Schema (draft 2020-12) of a book, made from the field catalogue.</summary>
public static class BookSchema
{
    /// <summary>The schema.</summary>
    public static JsonObject Make() => new()
    {
        ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
        ["title"] = "Gudgeon book",
        ["type"] = "object",
        ["required"] = new JsonArray("gudgeon", "name"),
        ["additionalProperties"] = false,
        ["properties"] = new JsonObject
        {
            ["$schema"] = Type("string"),
            ["gudgeon"] = new JsonObject { ["const"] = BookReader.Format },
            ["name"] = Type("string"),
            ["notes"] = Type("string"),
            ["baseline"] = Reference("values"),
            ["changes"] = List(new JsonObject
            {
                ["type"] = "object",
                ["required"] = new JsonArray("id"),
                ["additionalProperties"] = false,
                ["properties"] = new JsonObject
                {
                    ["id"] = new JsonObject { ["type"] = "string", ["pattern"] = "^[\\p{L}\\p{N}_-]+$" },
                    ["title"] = Type("string"),
                    ["reason"] = Type("string"),
                    ["on"] = Type("boolean"),
                    ["set"] = Reference("values"),
                },
            }),
            ["measurements"] = List(new JsonObject
            {
                ["type"] = "object",
                ["required"] = new JsonArray("field"),
                ["properties"] = Story(new JsonObject { ["field"] = Type("string"), ["under"] = List(Type("string")) }),
            }),
            ["limits"] = new JsonObject
            {
                ["type"] = "object",
                ["additionalProperties"] = new JsonObject
                {
                    ["type"] = "object",
                    ["required"] = new JsonArray("value", "reason"),
                    ["properties"] = new JsonObject { ["value"] = Type("string"), ["reason"] = Type("string") },
                },
            },
        },
        ["$defs"] = new JsonObject { ["values"] = Values() },
    };

    private static JsonObject Values()
    {
        var root = Closed();
        foreach (var subject in FieldCatalogue.Subjects)
        {
            var place = subject.Path.Split('.').Aggregate(root, Child);
            place["description"] = subject.Label;
            AddFields(place, subject);
            if (subject.Indexing != Indexing.None)
            {
                var instance = Closed();
                AddFields(instance, subject);
                place["patternProperties"] = new JsonObject { [Pattern(subject.Indexing)] = instance };
            }
        }

        return root;
    }

    private static string Pattern(Indexing indexing) => indexing switch
    {
        Indexing.Cylinder => "^\\[[1-9][0-9]*\\]$",
        Indexing.Valve => "^\\[(inlet|exhaust)(\\.[1-9][0-9]*){0,2}\\]$",
        _ => "^\\[[\\p{L}\\p{N}_.-]+\\]$",
    };

    private static void AddFields(JsonObject place, Subject subject)
    {
        var properties = (JsonObject)place["properties"]!;
        foreach (var field in FieldCatalogue.All.Where(f => f.Subject == subject))
        {
            properties[field.Name] = Value(field);
        }
    }

    private static JsonObject Child(JsonObject place, string name)
    {
        var properties = (JsonObject)place["properties"]!;
        if (properties[name] is not JsonObject child)
        {
            properties[name] = child = Closed();
        }

        return child;
    }

    private static JsonObject Value(Field field)
    {
        var scalar = field.Kind switch
        {
            FieldKind.Count => new JsonObject { ["type"] = "integer", ["minimum"] = field.Possible.Low },
            FieldKind.Choice => new JsonObject { ["enum"] = new JsonArray([.. field.Choices.Select(c => (JsonNode)c)]) },
            FieldKind.Amount when field.Unit.Length == 0 => new JsonObject { ["type"] = new JsonArray("string", "number") },
            _ => Type("string"),
        };
        return new JsonObject
        {
            ["description"] = Description(field),
            ["anyOf"] = new JsonArray(scalar, new JsonObject { ["type"] = "object", ["additionalProperties"] = false, ["properties"] = Story([]) }),
        };
    }

    private static string Description(Field field) => string.Join(" ", new[]
    {
        field.Label + ".",
        field.Kind == FieldKind.Amount ? $"{Capital(field.Dimension.Noun())}{(field.Unit.Length > 0 ? $", usually in {field.Unit}" : "")}; usual range {field.Print(field.Plausible.Low)} to {field.Print(field.Plausible.High)}." : "",
        field.Help,
        field.Measured.Length > 0 ? $"Measured by {field.Measured}." : "",
    }.Where(p => p.Length > 0));

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static JsonObject Story(JsonObject properties)
    {
        properties["value"] = new JsonObject { ["type"] = new JsonArray("string", "number") };
        properties["columns"] = List(Type("string"));
        properties["rows"] = Type("array");
        properties["how"] = new JsonObject { ["enum"] = new JsonArray([.. Enum.GetNames<How>().Select(n => (JsonNode)n.ToLowerInvariant())]) };
        foreach (var name in new[] { "by", "on", "with", "note" })
        {
            properties[name] = Type("string");
        }

        return properties;
    }

    private static JsonObject Closed() => new() { ["type"] = "object", ["additionalProperties"] = false, ["properties"] = new JsonObject() };

    private static JsonObject Type(string name) => new() { ["type"] = name };

    private static JsonObject Reference(string name) => new() { ["$ref"] = $"#/$defs/{name}" };

    private static JsonObject List(JsonNode items) => new() { ["type"] = "array", ["items"] = items };
}
