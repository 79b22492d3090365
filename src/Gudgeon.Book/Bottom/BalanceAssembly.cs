using Gudgeon.Book.Checks;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Book.Values;
using Gudgeon.Simulation.Crank;

namespace Gudgeon.Book.Bottom;

/// <summary>What one crank pin carries, and the factor that its crank balances with. kg.</summary>
/// <param name="Pin">Pin along the crank, from 1.</param>
/// <param name="Rotating">Big ends on it.</param>
/// <param name="Reciprocating">Small ends and pistons on it.</param>
public readonly record struct PinMass(int Pin, double Rotating, double Reciprocating);

/// <summary>Balance shafts, mounts and the masses on the pins, from the values of a book.</summary>
internal static class BalanceAssembly
{
    /// <summary>Names of the balance shafts.</summary>
    public static IReadOnlyList<string> ShaftNames(View view) => [.. Instances.Named(view, Balancer.Phase.Subject).Where(i => i.Length > 0)];

    /// <summary>The balance shafts in the order of their names; null, and what they lack noted as missing, when one is not known whole.</summary>
    public static IReadOnlyList<Spinner>? Shafts(View view, CrankLine line)
    {
        var middle = (line.Throws.Min(t => t.Position) + line.Throws.Max(t => t.Position)) / 2;
        var shafts = ShaftNames(view).Select(i => Shaft(view, i, middle)).ToList();
        return shafts.Exists(s => double.IsNaN(s.Unbalance + s.Phase)) ? null : shafts;
    }

    /// <summary>Masses on each pin.</summary>
    public static IReadOnlyList<PinMass> Pins(CrankLine line) => [.. line.Pins.Select(p => new PinMass(p.Key + 1, p.Sum(t => t.BigEnd), p.Sum(t => t.Reciprocating)))];

    /// <summary>Mounts whose place is known.</summary>
    public static IReadOnlyList<MountPoint> Mounts(View view) =>
    [
        .. from name in Instances.Named(view, Mount.X.Subject)
           where name.Length > 0
           select new MountPoint(name, view.Amount(Mount.X, name), view.Amount(Mount.Y, name), view.Amount(Mount.Position, name)) into mount
           where !double.IsNaN(mount.X + mount.Y + mount.Position)
           select mount,
    ];

    /// <summary>Length that turns a rocking couple into a force, m: that between the end main bearings, else the end cylinders, else a customary 100 mm.</summary>
    public static double Length(CrankLine line)
    {
        var places = line.Mains.Count > 1 ? line.Mains : [.. line.Throws.Select(t => t.Position)];
        var length = places.Max() - places.Min();
        return length > 0 ? length : 0.1;
    }

    private static Spinner Shaft(View view, string index, double middle)
    {
        var ratio = view.AmountOr(Balancer.Ratio, 1, index);

        // Shaking is followed over two turns of the crank; in them the shaft must come round again.
        if (Math.Abs(ratio * 2 - Math.Round(ratio * 2)) > 1e-9)
        {
            throw new BadInputException($"{Balancer.Ratio.At(index)}: given {Balancer.Ratio.Print(ratio)}, wanted 0.5, 1, 1.5 or 2, so that its marks come round with the crank's");
        }

        return new Spinner
        {
            Name = index,
            Unbalance = view.AmountIf(Balancer.Unbalance, index) ?? Weighed(view, index),
            Ratio = view.WordOr(Balancer.Hand, Balancer.Against, index) == Balancer.With ? ratio : -ratio,
            Phase = view.Amount(Balancer.Phase, index),
            X = view.AmountOr(Balancer.X, 0, index),
            Y = view.AmountOr(Balancer.Y, 0, index),
            Position = view.AmountOr(Balancer.Position, middle, index),
        };
    }

    private static double Weighed(View view, string index) => view.AmountIf(Balancer.Mass, index) is { } mass ? mass * view.Amount(Balancer.Radius, index) : view.Amount(Balancer.Unbalance, index);
}
