using System.Text.Json.Nodes;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Jobs;
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
            ["name"] = Filled(),
            ["notes"] = Type("string"),
            ["baseline"] = Reference("values"),
            ["changes"] = List(new JsonObject
            {
                ["type"] = "object",
                ["required"] = new JsonArray("id"),
                ["additionalProperties"] = false,
                ["properties"] = new JsonObject
                {
                    ["id"] = new JsonObject { ["type"] = "string", ["pattern"] = "^[\\p{L}\\p{Nd}_-]+$" },
                    ["title"] = Type("string"),
                    ["reason"] = Type("string"),
                    ["on"] = Type("boolean"),
                    ["set"] = Reference("values"),
                },
            }),
            ["measurements"] = List(Reading()),
            ["limits"] = new JsonObject
            {
                ["type"] = "object",
                ["additionalProperties"] = new JsonObject
                {
                    ["type"] = "object",
                    ["required"] = new JsonArray("value", "reason"),
                    ["additionalProperties"] = false,
                    ["properties"] = new JsonObject { ["value"] = Written(), ["reason"] = Filled() },
                },
            },
            ["runs"] = List(Run()),
            ["cards"] = List(Card()),
            ["acts"] = List(Act()),
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
        _ => "^\\[[\\p{L}\\p{Nd}_-]+(\\.[\\p{L}\\p{Nd}_-]+)*\\]$",
    };

    private static void AddFields(JsonObject place, Subject subject)
    {
        foreach (var field in FieldCatalogue.All.Where(f => f.Subject == subject))
        {
            var names = field.Name.Split('.');
            var properties = (JsonObject)names[..^1].Aggregate(place, Child)["properties"]!;
            properties[names[^1]] = Value(field);
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
            FieldKind.Count => new JsonObject { ["type"] = new JsonArray("integer", "string"), ["minimum"] = field.Possible.Low, ["pattern"] = "^ *[0-9]+ *$" },
            FieldKind.Choice => new JsonObject { ["enum"] = new JsonArray([.. field.Choices.Select(c => (JsonNode)c)]) },
            FieldKind.Amount when field.Unit.Length == 0 => Written(),
            FieldKind.Date => new JsonObject { ["type"] = "string", ["format"] = "date" },
            _ => Type("string"),
        };
        return new JsonObject
        {
            ["description"] = Description(field),
            ["anyOf"] = new JsonArray(scalar, Story(scalar.DeepClone())),
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

    /// <summary>A reading: a value with its story, of a field, under changes.</summary>
    private static JsonObject Reading()
    {
        var reading = Story(Written());
        var properties = (JsonObject)reading["properties"]!;
        properties["field"] = Type("string");
        properties["id"] = Matching("^[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}$");
        properties["under"] = List(Type("string"));
        reading["required"] = new JsonArray("field");
        return reading;
    }

    /// <summary>A value, or the rows of a table, with how it is known.</summary>
    private static JsonObject Story(JsonNode value)
    {
        var story = Closed();
        story["anyOf"] = new JsonArray(new JsonObject { ["required"] = new JsonArray("value") }, new JsonObject { ["required"] = new JsonArray("rows") });
        var properties = (JsonObject)story["properties"]!;
        properties["value"] = value;
        properties["columns"] = List(Type("string"));
        properties["rows"] = Type("array");
        properties["how"] = new JsonObject { ["enum"] = new JsonArray([.. Enum.GetNames<How>().Select(n => (JsonNode)n.ToLowerInvariant())]) };
        foreach (var name in new[] { "by", "on", "with", "note" })
        {
            properties[name] = Type("string");
        }

        return story;
    }

    /// <summary>A kept run: its figures as a table, and what they came from.</summary>
    private static JsonObject Run()
    {
        var run = Closed();
        run["required"] = new JsonArray([.. RunReader.Required.Select(n => (JsonNode)n)]);
        var properties = (JsonObject)run["properties"]!;
        properties["kind"] = new JsonObject { ["enum"] = new JsonArray([.. Enum.GetNames<Build.RunKind>().Select(n => (JsonNode)n.ToLowerInvariant())]) };
        properties["depth"] = new JsonObject { ["enum"] = new JsonArray([.. Enum.GetValues<Depth>().Select(d => (JsonNode)d.Word())]) };
        foreach (var name in new[] { "title", "version" })
        {
            properties[name] = Filled();
        }

        foreach (var name in new[] { "by", "on" })
        {
            properties[name] = Type("string");
        }

        foreach (var name in new[] { "changes", "reads", "columns" })
        {
            properties[name] = List(Type("string"));
        }

        properties["given"] = new JsonObject { ["type"] = "object", ["additionalProperties"] = Type("string") };
        properties["sha256"] = Matching("^[0-9a-f]{64}$");
        properties["rows"] = List(List(new JsonObject { ["type"] = new JsonArray("number", "string", "boolean", "null") }));
        return run;
    }

    private static JsonObject Closed() => new() { ["type"] = "object", ["additionalProperties"] = false, ["properties"] = new JsonObject() };

    private static JsonObject Type(string name) => new() { ["type"] = name };

    private static JsonObject Filled() => Matching(".");

    private static JsonObject Matching(string pattern) => new() { ["type"] = "string", ["pattern"] = pattern };

    private static JsonObject Written() => new() { ["type"] = new JsonArray("string", "number") };

    private static JsonObject Reference(string name) => new() { ["$ref"] = $"#/$defs/{name}" };

    private static JsonObject Card()
    {
        var step = Members(CardReader.StepMembers, "when");
        foreach (var kind in CardReader.Kinds.Keys)
        {
            ((JsonObject)step["properties"]!)[kind] = Filled();
        }

        ((JsonObject)step["properties"]!)["hold"] = Type("boolean");
        step["oneOf"] = new JsonArray([.. CardReader.Kinds.Keys.Select(k => (JsonNode)new JsonObject { ["required"] = new JsonArray(k) })]);
        var card = Members(CardReader.CardMembers, "after", "when", "checks");
        ((JsonObject)card["properties"]!)["steps"] = new JsonObject { ["type"] = "array", ["minItems"] = 1, ["items"] = step };
        card["required"] = new JsonArray("id", "title", "stage", "hours", "steps");
        return card;
    }

    private static JsonObject Act()
    {
        var act = Members(CardReader.ActMembers, "overridden");
        ((JsonObject)act["properties"]!)["act"] = new JsonObject { ["enum"] = new JsonArray([.. Enum.GetNames<ActKind>().Select(n => (JsonNode)EnumWords.Of(n))]) };
        ((JsonObject)act["properties"]!)["reads"] = new JsonObject { ["type"] = "object", ["additionalProperties"] = Type("string") };
        ((JsonObject)act["properties"]!)["limits"] = new JsonObject { ["type"] = "object", ["additionalProperties"] = Type("string") };
        ((JsonObject)act["properties"]!)["on"] = new JsonObject { ["type"] = "string", ["pattern"] = "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}Z$" };
        act["required"] = new JsonArray("card", "act", "by", "on");
        return act;
    }

    /// <summary>An object of texts, some of them lists of texts.</summary>
    private static JsonObject Members(IEnumerable<string> names, params string[] lists)
    {
        var members = Closed();
        foreach (var name in names)
        {
            ((JsonObject)members["properties"]!)[name] = lists.Contains(name) ? List(Type("string")) : Type("string");
        }

        return members;
    }

    private static JsonObject List(JsonNode items) => new() { ["type"] = "array", ["items"] = items };
}
