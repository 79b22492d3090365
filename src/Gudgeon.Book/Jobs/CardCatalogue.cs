using Gudgeon.Book.Build;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Jobs;

/// <summary>Job cards that the program brings, and those of a book in their place or besides.</summary>
public static class CardCatalogue
{
    private static readonly Lazy<IReadOnlyList<(CardTemplate Card, JsonPlace Written)>> Brought = new(Read);

    /// <summary>The cards that the program brings, in the order of a full rebuild.</summary>
    public static IReadOnlyList<CardTemplate> All => [.. Brought.Value.Select(b => b.Card)];

    /// <summary>The cards of a book, whether it calls for them or not: each of the program's, or the book's own in its place, then those that are only the book's.</summary>
    public static IReadOnlyList<CardTemplate> Of(BuildBook book) =>
    [
        .. All.Select(c => book.Cards.FirstOrDefault(own => own.Id == c.Id) ?? c),
        .. book.Cards.Where(own => All.All(c => c.Id != own.Id)),
    ];

    /// <summary>A card as JSON, for an editor.</summary>
    /// <exception cref="BadInputException">There is no such card.</exception>
    public static string Written(BookFile file, string id)
    {
        var own = file.Book.Cards.Any(c => c.Id == id) ? file.Document()["cards"]?.Items.FirstOrDefault(c => c["id"]?.Text == id) : null;
        return JsonText.Write(own ?? Brought.Value.FirstOrDefault(b => b.Card.Id == id).Written ?? throw None(file.Book, id));
    }

    /// <summary>There is no card with this id.</summary>
    internal static BadInputException None(BuildBook book, string id) =>
        new($"there is no job card '{id}'; the nearest is '{Nearest.To(id, Of(book).Select(c => c.Id))}'");

    private static List<(CardTemplate, JsonPlace)> Read()
    {
        using var stream = typeof(CardCatalogue).Assembly.GetManifestResourceStream("jobs/cards.json")!;
        using var reader = new StreamReader(stream);
        var list = JsonPlace.Parse(reader.ReadToEnd(), "the program's job cards");
        return [.. list.Items.Select((c, i) => (new CardReader(new BookReader("the program's job cards")).Card(c, $"[{i}]"), c))];
    }
}
