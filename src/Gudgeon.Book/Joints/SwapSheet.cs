using System.Globalization;
using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Checks.Joints;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Joints;

namespace Gudgeon.Book.Joints;

/// <summary>A joint as it would be one way.</summary>
/// <param name="Name">"now", "same torque".</param>
/// <param name="Torque">Its torque, N·m; null when it is not known.</param>
/// <param name="Figures">Its numbers.</param>
/// <param name="Mass">Mass of all its bolts, kg; null when it is not known.</param>
/// <param name="Verdicts">What the checks say of it.</param>
public sealed record SwapColumn(string Name, double? Torque, JointFigures Figures, double? Mass, IReadOnlyList<SwapVerdict> Verdicts)
{
    /// <summary>What a check says; null when it does not look at this joint.</summary>
    public SwapVerdict? By(string check) => Verdicts.FirstOrDefault(v => v.Check == check);
}

/// <summary>A joint with other bolts beside the joint as it is.</summary>
/// <param name="Key">The joint.</param>
/// <param name="Other">What the other bolts are.</param>
/// <param name="Columns">Now; other bolts at the same torque, at the same preload, at the same share of yield.</param>
/// <param name="Cautions">What to see to.</param>
/// <param name="Trouble">Why it cannot be compared, in one sentence; empty when it can.</param>
public sealed record SwapSheet(string Key, string Other, IReadOnlyList<SwapColumn> Columns, IReadOnlyList<string> Cautions, string Trouble)
{
    /// <summary>Words in the names of joints that must not get other bolts without the maker's word.</summary>
    private static readonly string[] WantWord = ["rod", "head", "brake", "caliper", "disc", "steer", "fork", "axle", "wheel", "swing", "flywheel", "crank", "main", "balance"];

    /// <summary>How the columns are to be read.</summary>
    public const string Remark = "Same preload is what the joint needs; same share of yield is what the bolt is used to. A softer bolt keeps its preload better when faces settle, takes less of the working force, and holds less before it yields: compare line by line. Same share of yield keeps the margin while tightening that the bolts of now have. Friction by the paste that the metal needs. Reserves are those of the checks: 1 is the edge, the ± of the values not counted.";

    /// <summary>What stands where the maker must be asked.</summary>
    public const string AskFirst = "These bolts hold what a life or the whole engine hangs on: no other material without the maker's word, whatever the numbers say.";

    /// <summary>What falls short with the other bolts, a sentence for each way of tightening; none when nothing does.</summary>
    public IEnumerable<string> FallsShort => Columns.Skip(1)
        .Select(c => (c.Name, Short: c.Verdicts.Where(v => v.Verdict == Verdict.FallsShort).Select(v => v.Title.ToLowerInvariant()).ToList()))
        .Where(c => c.Short.Count > 0)
        .Select(c => $"{c.Name}: falls short by {string.Join(", ", c.Short)}.");

    /// <summary>A joint with bolts of another material.</summary>
    public static SwapSheet Of(BuildBook book, DutyDesk desk, string key, SwapMaterial material)
    {
        var values = Values(book, key, material, new Dictionary<string, KnownValue>(StringComparer.Ordinal));
        return Compare(book, desk, key, material.Name, values, material.Cautions);
    }

    /// <summary>A joint with other values, by path.</summary>
    public static SwapSheet Compare(BuildBook book, DutyDesk desk, string key, string name, IReadOnlyDictionary<string, KnownValue> values, IReadOnlyList<string> cautions)
    {
        var now = new View(book.Now(), desk);
        var was = Column(book, desk, key, "now", new Dictionary<string, KnownValue>(StringComparer.Ordinal));
        IReadOnlyList<string> all = [.. Word(now, key) == Joint.MakersWord ? [AskFirst] : Array.Empty<string>(), .. cautions];
        if (now.Knows(Joint.Stretch, key) || TightenedJoint.Turned(now, key))
        {
            return new SwapSheet(key, name, [was, Column(book, desk, key, "as tightened now", values)], all, "It is tightened by angle or stretch, so that a torque does not say how the other bolts would be tightened: ask their maker for angle or stretch.");
        }

        if (was.Figures.Missing.Length + was.Figures.Refused.Length > 0)
        {
            return new SwapSheet(key, name, [was], all, $"{was.Figures.Missing} {was.Figures.Refused}".Trim());
        }

        var same = Column(book, desk, key, "same torque", values);
        return new SwapSheet(key, name,
        [
            was,
            same,
            Column(book, desk, key, "same preload", With(values, key, same.Torque * was.Figures.Preload / same.Figures.Preload)),
            Column(book, desk, key, "same share of yield", With(values, key, same.Torque * was.Figures.YieldShare / same.Figures.YieldShare)),
        ], all, same.Figures.Refused);
    }

    /// <summary>Values of a joint with other bolts, by path: those of a material, and what is set besides.</summary>
    public static IReadOnlyDictionary<string, KnownValue> Values(BuildBook book, string key, SwapMaterial? material, IReadOnlyDictionary<string, KnownValue> set)
    {
        var thread = set.TryGetValue(Joint.Thread.At(key), out var given) ? given.Si : new View(book.Now()).AmountOr(Joint.Thread, 10e-3, key);
        var values = material?.Values(key, thread).ToDictionary(StringComparer.Ordinal) ?? new Dictionary<string, KnownValue>(StringComparer.Ordinal);
        foreach (var (path, value) in set)
        {
            values[path] = value;
        }

        return values;
    }

    private static Dictionary<string, KnownValue> With(IReadOnlyDictionary<string, KnownValue> values, string key, double? torque)
    {
        var more = values.ToDictionary(StringComparer.Ordinal);
        if (torque is { } newtonMetres && double.IsFinite(newtonMetres))
        {
            more[Joint.Torque.At(key)] = KnownValue.Read(Joint.Torque, $"{newtonMetres.ToString("0.##########", CultureInfo.InvariantCulture)} N·m");
        }

        return more;
    }

    private static SwapColumn Column(BuildBook book, DutyDesk desk, string key, string name, IReadOnlyDictionary<string, KnownValue> values)
    {
        var now = book.Supposing(values).Now();
        var view = new View(now, desk);
        var figures = JointFigures.Of(view, key);

        // What the bolts of now bear for good says nothing of another metal.
        var other = values.ContainsKey(Joint.Modulus.At(key)) && !values.ContainsKey(Joint.FatigueStrength.At(key));
        return new SwapColumn(name, view.AmountIf(Joint.Torque, key), other ? figures with { FatigueStrength = double.NaN } : figures, BoltLine.Of(view, key).MassAll, SwapVerdict.Of(now, desk, key, other));
    }

    private static string Word(View view, string key) => view.WordOr(Joint.Substitution, WantWord.Any(w => key.Contains(w, StringComparison.OrdinalIgnoreCase)) ? Joint.MakersWord : Joint.Free, key);
}
