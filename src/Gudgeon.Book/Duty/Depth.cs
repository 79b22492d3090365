using Gudgeon.Book.Fields;

namespace Gudgeon.Book.Duty;

/// <summary>How deep the engine model goes.</summary>
public enum Depth
{
    /// <summary>Volumes and restrictions: quick, and blind to the lengths of pipes.</summary>
    Lumped,

    /// <summary>Waves that run along the pipes.</summary>
    Wave,
}

/// <summary>Words for the depths.</summary>
public static class Depths
{
    /// <summary>"lumped", "wave".</summary>
    public static string Word(this Depth depth) => EnumWords.Of(depth.ToString());

    /// <summary>"from the wave model": what stands beside figures.</summary>
    public static string From(this Depth depth) => $"from the {depth.Word()} model";

    /// <summary>The depth that a word names.</summary>
    /// <exception cref="Values.BadInputException">It names none.</exception>
    public static Depth Read(string word) => Enum.GetValues<Depth>().Where(d => d.Word() == word.Trim()).Select(d => (Depth?)d).FirstOrDefault()
        ?? throw new Values.BadInputException($"depth: given '{word}', wanted {string.Join(" or ", Enum.GetValues<Depth>().Select(Word))}");
}
