using Gudgeon.Book.Bottom;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Web.Drawings;

/// <summary>One rotor of a mode shape, px.</summary>
/// <param name="Name">The rotor.</param>
/// <param name="X">Where it stands.</param>
/// <param name="Y">Height of its swing.</param>
/// <param name="Stem">From the axis to it.</param>
/// <param name="NameY">Height of its name, on the free side of the axis.</param>
public sealed record SwingingRotor(string Name, double X, double Y, string Stem, double NameY);

/// <summary>A mode shape of a torsional line, px: branches that hang on the first rotor's left stand left of it.</summary>
public sealed class ShapeGeometry
{
    /// <summary>Height of the drawing, px.</summary>
    public const double Height = 300;

    private const double Pitch = 96, Middle = 150, Swing = 108, Name = 22;

    /// <param name="sheet">The sheet.</param>
    /// <param name="mode">Which mode, from 0.</param>
    public ShapeGeometry(TorsionSheet sheet, int mode)
    {
        var (rotors, shape) = (sheet.Build!.Line.Rotors, sheet.Sweep!.Shapes[mode]);
        Width = Pitch * rotors.Count;
        var places = Places([.. rotors.Select(r => r.On)]);
        (double X, double Y) At(int i) => (Pitch * (places[i] + 0.5), Middle - (Swing * shape.Shape[i]));
        Rotors =
        [
            .. rotors.Select((r, i) => new SwingingRotor(r.Name, At(i).X, At(i).Y, $"M{Px.Of(At(i).X)} {Px.Of(Middle)}V{Px.Of(At(i).Y)}", shape.Shape[i] >= 0 ? Middle + Name : Middle - Name + 8)),
        ];
        Joints = [.. Enumerable.Range(1, rotors.Count - 1).Select(i => $"M{Px.Of(At(rotors[i].On).X)} {Px.Of(At(rotors[i].On).Y)}L{Px.Of(At(i).X)} {Px.Of(At(i).Y)}")];
        Numbers = [Told.Of("natural frequency", shape.Frequency, Dimension.Frequency, "Hz", imperial: false), .. rotors.Select((r, i) => new Told(r.Name, Figures.Number(Math.Round(shape.Shape[i], 3), 3), Known: true))];
        Axis = $"M0 {Px.Of(Middle)}H{Px.Of(Width)}";
    }

    /// <summary>Width of the drawing, px.</summary>
    public double Width { get; }

    /// <summary>The line of no swing.</summary>
    public string Axis { get; }

    /// <summary>The rotors.</summary>
    public IReadOnlyList<SwingingRotor> Rotors { get; }

    /// <summary>The joints between them.</summary>
    public IReadOnlyList<string> Joints { get; }

    /// <summary>Every number, for the list.</summary>
    public IReadOnlyList<Told> Numbers { get; }

    /// <summary>Places from left to right: the first branch of the first rotor to its left, outermost first, then all others.</summary>
    private static int[] Places(IReadOnlyList<int> on)
    {
        var order = new List<int>();
        void Walk(int rotor)
        {
            order.Add(rotor);
            foreach (var next in Enumerable.Range(0, on.Count).Where(i => on[i] == rotor))
            {
                Walk(next);
            }
        }

        var branches = Enumerable.Range(0, on.Count).Where(i => on[i] == 0).ToList();
        if (branches.Count > 1)
        {
            Walk(branches[0]);
            order.Reverse();
        }

        order.Add(0);
        branches.Skip(branches.Count > 1 ? 1 : 0).ToList().ForEach(Walk);
        var places = new int[on.Count];
        for (var i = 0; i < order.Count; i++)
        {
            places[order[i]] = i;
        }

        return places;
    }
}
