using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Fields;

/// <summary>What a field's value is made of.</summary>
public enum FieldKind
{
    /// <summary>A number with a unit.</summary>
    Amount,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>One of a fixed set of words.</summary>
    Choice,

    /// <summary>Free text, or text of a form that the field's help describes.</summary>
    Text,

    /// <summary>Rows of amounts, such as a lift curve.</summary>
    Table,

    /// <summary>A day, as year-month-day.</summary>
    Date,
}

/// <summary>How instances of a subject are told apart.</summary>
public enum Indexing
{
    /// <summary>There is one.</summary>
    None,

    /// <summary>By cylinder number: cylinder[1].</summary>
    Cylinder,

    /// <summary>By side, cylinder and place: valve[inlet], valve[inlet.1], valve[inlet.1.2].</summary>
    Valve,

    /// <summary>By a word of the user's: joint[head], bearing[main.2].</summary>
    Name,
}

/// <summary>Which shaft an angle is counted on; the cam turns half as fast as the crank.</summary>
public enum Shaft
{
    /// <summary>It is no angle of a shaft.</summary>
    None,

    /// <summary>The crank.</summary>
    Crank,

    /// <summary>The cam.</summary>
    Cam,
}

/// <summary>One column of a table field.</summary>
/// <param name="Name">Heading without the unit: "lift".</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Unit">Unit used when the heading of a file gives none.</param>
/// <param name="Optional">Whether a table may leave it out.</param>
/// <param name="Of">The shaft that an angle is counted on, where a file may count it on the other.</param>
/// <param name="Signed">Whether it may be negative: a place on either side of a mark.</param>
/// <param name="Place">Whether it says where something is read, and not what the instrument shows there.</param>
public sealed record Column(string Name, Dimension Dimension, string Unit, bool Optional = false, Shaft Of = Shaft.None, bool Signed = false, bool Place = false);

/// <summary>
/// One thing that can be known about a build. Declared once, as a static member of the trade subject that it belongs to;
/// the command line, the schema, the pages and the documentation are made from the declaration.
/// </summary>
public sealed class Field
{
    internal Field(Subject subject, string name, string label, FieldKind kind)
    {
        Subject = subject;
        Name = name;
        Label = label;
        Kind = kind;
    }

    /// <summary>The subject that it belongs to.</summary>
    public Subject Subject { get; }

    /// <summary>Name below the subject: "bore".</summary>
    public string Name { get; }

    /// <summary>Path of the group value: "cylinder.bore".</summary>
    public string Path => $"{Subject.Path}.{Name}";

    /// <summary>Trade name for people.</summary>
    public string Label { get; }

    /// <summary>What its value is made of.</summary>
    public FieldKind Kind { get; }

    /// <summary>What an amount measures.</summary>
    public Dimension Dimension { get; init; } = Dimension.Number;

    /// <summary>Display unit of an amount.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Values outside this range ask, SI.</summary>
    public (double Low, double High) Plausible { get; init; } = (double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>Values outside this range are refused, SI.</summary>
    public (double Low, double High) Possible { get; init; } = (double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>Words that a choice accepts.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>Columns of a table.</summary>
    public IReadOnlyList<Column> Columns { get; init; } = [];

    /// <summary>The field of their mean, where a table holds readings at stations of one part; its usual range is theirs.</summary>
    public Field? Mean { get; init; }

    /// <summary>How it is usually measured; empty when it is chosen, not measured.</summary>
    public string Measured { get; init; } = "";

    /// <summary>One line of help.</summary>
    public string Help { get; init; } = "";

    /// <summary>An SI amount in the field's display unit.</summary>
    public string Print(double si, bool imperial = false) => Figures.Print(si, Dimension, Unit, 5, imperial);

    /// <summary>Path of an instance: "cylinder[1].bore"; of the group when the index is empty.</summary>
    public string At(string index) => index.Length == 0 ? Path : $"{Subject.Path}[{index}].{Name}";

    public override string ToString() => Path;
}
