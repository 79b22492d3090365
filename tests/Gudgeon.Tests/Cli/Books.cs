namespace Gudgeon.Tests.Cli;

/// <summary>Small books for the tests; figures invented.</summary>
internal static class Books
{
    /// <summary>A twin of which only the chamber is known: quick to check, for no engine can be run on it.</summary>
    public const string Tern = """
        {
          "gudgeon": 1,
          "name": "Tern",
          "baseline": {
            "engine": {
              "cylinders": 2
            },
            "cylinder": {
              // steel, three layers
              "gasketThickness": "1.00 mm",
              "deckHeight": "0.20 mm"
            }
          },
          "changes": [
            {
              "id": "decked",
              "title": "Deck skimmed",
              "reason": "more squish",
              "on": true,
              "set": {
                "cylinder": {
                  "deckHeight": "0.10 mm"
                }
              }
            }
          ],
          "measurements": [],
          "limits": {}
        }

        """;

    /// <summary>A book with nothing in it but this baseline.</summary>
    public static string With(string baseline) => $$"""{ "gudgeon": 1, "name": "Tern", "baseline": { {{baseline}} } }""";
}
