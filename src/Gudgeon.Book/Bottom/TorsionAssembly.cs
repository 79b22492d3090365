using System.Globalization;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Crank;
using Gudgeon.Calc.Shafts;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>A joint of the torsional line, for its stress.</summary>
/// <param name="Name">"throw2 to throw1".</param>
/// <param name="Ratio">Speed of its shaft over the crank's.</param>
/// <param name="Diameter">Diameter that its stress is counted at, m; null when it has none.</param>
/// <param name="Limit">Vibratory stress allowed, Pa.</param>
public sealed record TorsionalJoint(string Name, double Ratio, double? Diameter, double Limit)
{
    /// <summary>Nominal stress of a torque that is referred to the crank, Pa; null when it has no diameter.</summary>
    public double? Stress(double torque) => Diameter is { } d ? ShaftStress.Of(d, 0, torque / Ratio).Torsion : null;
}

/// <summary>The torsional line of a book.</summary>
/// <param name="Line">The rotors.</param>
/// <param name="Joints">The joint of each, the first's without meaning.</param>
public sealed record TorsionalBuild(TorsionalLine Line, IReadOnlyList<TorsionalJoint> Joints);

/// <summary>The torsional line from the values of a book.</summary>
internal static class TorsionAssembly
{
    /// <summary>Loss factors of a toothed belt and of a shaft joint, nominal stress that a steel crank is let swing with, Pa: common practice, no source.</summary>
    private const double BeltLoss = 0.1, ShaftLoss = 0.03, SteelLimit = 50e6;

    /// <summary>Shear modulus of steel, Pa: from memory.</summary>
    private const double ShearModulus = 79.3e9;

    /// <summary>The line; null, and what it lacks noted as missing, when it is not known whole.</summary>
    /// <param name="view">The values.</param>
    /// <param name="crank">The crank, whose rods and pistons swing with it.</param>
    /// <param name="without">A rotor that is left off with all that hangs on it; empty for none.</param>
    /// <exception cref="BadInputException">Rotors that hang on none, or on each other.</exception>
    public static TorsionalBuild? Of(View view, CrankLine crank, string without = "")
    {
        var names = Names(view);
        if (names.Count < 2)
        {
            view.Unknown("two rotors or more, such as rotor[throw1] and rotor[primary]");
            return null;
        }

        var on = names.ToDictionary(n => n, n => view.WordOr(Rotor.On, "", n).Trim(), StringComparer.Ordinal);
        var ordered = Without(Ordered(names, on), on, without);
        var rotors = ordered.ConvertAll(n => Of(view, crank, n, ordered.IndexOf(on[n])));
        var joints = ordered.ConvertAll(n => Joint(view, n, on[n]));
        return rotors.Exists(r => double.IsNaN(r.Inertia) || (r.On >= 0 && double.IsNaN(r.Stiffness))) ? null : new TorsionalBuild(new TorsionalLine(rotors), joints);
    }

    /// <summary>Names of the rotors.</summary>
    public static IReadOnlyList<string> Names(View view) => [.. Instances.Named(view, Rotor.Inertia.Subject).Where(i => i.Length > 0)];

    private static List<string> Ordered(IReadOnlyList<string> names, Dictionary<string, string> on)
    {
        var first = names.Where(n => on[n].Length == 0).ToList();
        if (first.Count != 1)
        {
            throw new BadInputException($"{Rotor.On.Path}: {(first.Count == 0 ? "every rotor hangs on another" : string.Join(" and ", first) + " hang on none")}, wanted one rotor that the others hang from");
        }

        var ordered = first;
        while (names.FirstOrDefault(n => !ordered.Contains(n, StringComparer.Ordinal) && ordered.Contains(on[n], StringComparer.Ordinal)) is { } next)
        {
            ordered.Add(next);
        }

        return names.FirstOrDefault(n => !ordered.Contains(n, StringComparer.Ordinal)) is { } loose
            ? throw new BadInputException($"{Rotor.On.At(loose)}: given '{on[loose]}', wanted a rotor that leads to {first[0]}: {string.Join(", ", ordered)}")
            : ordered;
    }

    private static List<string> Without(List<string> ordered, Dictionary<string, string> on, string without)
    {
        if (without.Length > 0 && (!ordered.Contains(without, StringComparer.Ordinal) || ordered[0] == without))
        {
            throw new BadInputException($"without: given '{without}', wanted one of {string.Join(", ", ordered.Skip(1))}");
        }

        var gone = new HashSet<string>(StringComparer.Ordinal) { without };
        foreach (var name in ordered.Where(n => gone.Contains(on[n]) && on[n].Length > 0))
        {
            gone.Add(name);
        }

        return ordered.FindAll(n => !gone.Contains(n));
    }

    private static TorsionalRotor Of(View view, CrankLine crank, string name, int on)
    {
        var ratio = view.AmountOr(Rotor.Ratio, 1, name);
        var cylinders = Cylinders(view, crank, name);
        return new TorsionalRotor
        {
            Name = name,
            On = on,
            Cylinders = cylinders,
            Inertia = view.Work(Torsion.ReferredInertia, view.Amount(Rotor.Inertia, name), ratio) + cylinders.Sum(c => Moving(view, crank, crank.Throws[c])),
            Stiffness = on < 0 ? double.NaN : view.Work(Torsion.ReferredStiffness, Stiffness(view, name), ratio),
            Loss = view.AmountOr(Rotor.Loss, ratio == 1 ? ShaftLoss : BeltLoss, name),
        };
    }

    /// <summary>The cylinder that a throw is said to have, and those that share its crank pin.</summary>
    private static List<int> Cylinders(View view, CrankLine crank, string name)
    {
        if (!view.Knows(Rotor.Cylinder, name))
        {
            return [];
        }

        var cylinder = view.Count(Rotor.Cylinder, name) - 1;
        return cylinder < crank.Throws.Count
            ? [.. Enumerable.Range(0, crank.Throws.Count).Where(c => crank.Throws[c].Pin == crank.Throws[cylinder].Pin)]
            : throw new BadInputException($"{Rotor.Cylinder.At(name)}: given {cylinder + 1}, wanted 1 to {crank.Throws.Count}");
    }

    private static double Moving(View view, CrankLine crank, CrankThrow one) => view.Work(Torsion.ThrowInertia, one.BigEnd, one.Reciprocating, crank.Radius, one.Rod);

    /// <summary>As given; else of a crank throw, the mean of two empirical forms that lie a quarter apart; else of a plain shaft.</summary>
    private static double Stiffness(View view, string name)
    {
        if (view.AmountIf(Rotor.Stiffness, name) is { } given)
        {
            return given;
        }

        if (view.AmountIf(Rotor.PinDiameter, name) is not { } pin)
        {
            return view.Knows(Rotor.Length, name)
                ? view.Work(TorsionalStiffness.Shaft, view.Amount(Rotor.Diameter, name), view.Amount(Rotor.Length, name), 0.0, ShearModulus)
                : view.Amount(Rotor.Stiffness, name);
        }

        double Of(Field field) => view.Amount(field, name);
        var (journal, length, pinLength, radius) = (Of(Rotor.Diameter), Of(Rotor.Length), Of(Rotor.PinLength), view.Amount(Crank.Stroke) / 2);
        return (view.Work(TorsionalStiffness.KerWilson, journal, length, pin, pinLength, radius, Of(Rotor.WebThickness), Of(Rotor.WebWidth), ShearModulus)
            + view.Work(TorsionalStiffness.Carter, journal, length, pin, pinLength, radius, Of(Rotor.WebThickness), Of(Rotor.WebWidth), ShearModulus)) / 2;
    }

    private static TorsionalJoint Joint(View view, string name, string on) => new(
        string.Create(CultureInfo.InvariantCulture, $"{name} on {on}"),
        view.AmountOr(Rotor.Ratio, 1, name),
        view.AmountIf(Rotor.Diameter, name),
        view.AmountOr(Rotor.StressLimit, SteelLimit, name));
}
