namespace Gudgeon.Book.Fields;

/// <summary>A field of one instance: cylinder[1].bore; of the group when the index is empty.</summary>
/// <param name="Field">The field.</param>
/// <param name="Index">"1", "inlet.1.2", "head"; empty for the group.</param>
public readonly record struct FieldAddress(Field Field, string Index)
{
    /// <summary>"cylinder[1].bore".</summary>
    public string Path => Field.At(Index);

    /// <summary>This address and the groups that it belongs to, nearest first: inlet.1.2, inlet.1, inlet, all.</summary>
    public IEnumerable<FieldAddress> WithGroups()
    {
        var index = Index;
        while (index.Length > 0)
        {
            yield return this with { Index = index };
            var dot = index.LastIndexOf('.');
            index = dot < 0 ? "" : index[..dot];
        }

        yield return this with { Index = "" };
    }

    public override string ToString() => Path;
}
