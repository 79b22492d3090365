using Gudgeon.Book.Fields;

namespace Gudgeon.Book.Joints;

/// <summary>Orders in which the bolts of a layout are tightened: each a list of bolt numbers.</summary>
public static class BoltOrder
{
    /// <summary>Distances from the middle within this share of the greatest count as one ring.</summary>
    private const double SameRing = 0.08;

    /// <summary>Distances within this share of the least count as neighbours.</summary>
    private const double NextTo = 1.05;

    /// <summary>The order of this name; that by the maker comes from the book instead.</summary>
    public static IReadOnlyList<int> Of(string order, IReadOnlyList<BoltPlace> places) => order switch
    {
        Joint.Cross => Farthest([[.. places]]),
        Joint.Spiral => Parted(places, [.. Rings(places).SelectMany(r => Opposite([.. r.OrderBy(p => Bearing(places, p))])).Select(p => p.Number)]),
        _ => Farthest(Rings(places)),
    };

    /// <summary>Whether two bolts stand next to each other: none is nearer to one of them, or hardly.</summary>
    public static bool Neighbours(IReadOnlyList<BoltPlace> places, int one, int other)
    {
        var (a, b) = (places[one - 1], places[other - 1]);
        var nearest = Math.Min(Nearest(places, a), Nearest(places, b));
        return a.To(b) <= NextTo * nearest;
    }

    /// <summary>What is wrong with an order, in sentences: bolts left out or taken twice, neighbours one after the other twice in a row.</summary>
    public static IEnumerable<string> Troubles(IReadOnlyList<BoltPlace> places, IReadOnlyList<int> order)
    {
        var twice = order.GroupBy(n => n).Where(g => g.Count() > 1).Select(g => g.Key).ToList();
        var left = places.Select(p => p.Number).Except(order).ToList();
        if (twice.Count > 0 || left.Count > 0 || order.Count != places.Count)
        {
            yield return FormattableString.Invariant($"The order does not take every bolt once: {(twice.Count > 0 ? "twice " + string.Join(", ", twice) : "")}{(twice.Count > 0 && left.Count > 0 ? "; " : "")}{(left.Count > 0 ? "left out " + string.Join(", ", left) : "")}.");
            yield break;
        }

        var runs = Runs(places, order);
        if (runs.Count > 0)
        {
            yield return FormattableString.Invariant($"Neighbours follow each other twice in a row at {string.Join(", ", runs.Select(i => $"{order[i - 2]}, {order[i - 1]}, {order[i]}"))}: one side is pulled down before the other.");
        }
    }

    /// <summary>Ring after ring, each next bolt as far as can be from the last one and, of equals, from all that are tight.</summary>
    private static List<int> Farthest(IReadOnlyList<List<BoltPlace>> rings)
    {
        var order = new List<BoltPlace>();
        foreach (var ring in rings)
        {
            var left = ring.OrderBy(p => p.Number).ToList();
            while (left.Count > 0)
            {
                var next = order.Count == 0 ? left[0] : left.MaxBy(p => (Math.Round(p.To(order[^1]), 6), Math.Round(order.Sum(p.To), 6)))!;
                order.Add(next);
                left.Remove(next);
            }
        }

        return order.ConvertAll(p => p.Number);
    }

    /// <summary>Places in an order at which neighbours have followed each other twice; four bolts and fewer cannot help it.</summary>
    private static List<int> Runs(IReadOnlyList<BoltPlace> places, IReadOnlyList<int> order) =>
        [.. Enumerable.Range(2, Math.Max(0, order.Count - 2)).Where(i => places.Count > 4 && Neighbours(places, order[i - 2], order[i - 1]) && Neighbours(places, order[i - 1], order[i]))];

    /// <summary>Round a ring, each bolt followed by the one across from it: 1 5 2 6 3 7 4 8.</summary>
    private static IEnumerable<BoltPlace> Opposite(List<BoltPlace> ring)
    {
        var half = (ring.Count + 1) / 2;
        for (var i = 0; i < half; i++)
        {
            yield return ring[i];
            if (i + half < ring.Count)
            {
                yield return ring[i + half];
            }
        }
    }

    /// <summary>An order in which a bolt that is the second neighbour in a row changes places with the nearest in the order with which there are fewer such runs; where none helps it stays and is told.</summary>
    private static List<int> Parted(IReadOnlyList<BoltPlace> places, List<int> order)
    {
        foreach (var at in Runs(places, order))
        {
            var now = Runs(places, order).Count;
            foreach (var other in Enumerable.Range(0, order.Count).Where(j => j != at).OrderBy(j => Math.Abs(j - at)))
            {
                (order[at], order[other]) = (order[other], order[at]);
                if (Runs(places, order).Count < now)
                {
                    break;
                }

                (order[at], order[other]) = (order[other], order[at]);
            }
        }

        return order;
    }

    private static List<List<BoltPlace>> Rings(IReadOnlyList<BoltPlace> places)
    {
        var middle = Middle(places);
        var step = SameRing * places.Max(middle.To);
        var rings = new List<List<BoltPlace>>();
        foreach (var place in places.OrderBy(middle.To))
        {
            if (rings.Count > 0 && middle.To(place) - middle.To(rings[^1][0]) <= step)
            {
                rings[^1].Add(place);
            }
            else
            {
                rings.Add([place]);
            }
        }

        return rings;
    }

    private static double Bearing(IReadOnlyList<BoltPlace> places, BoltPlace place)
    {
        var middle = Middle(places);
        return Math.Round(Math.Atan2(place.Y - middle.Y, place.X - middle.X), 6);
    }

    private static BoltPlace Middle(IReadOnlyList<BoltPlace> places) => new(0, (places.Min(p => p.X) + places.Max(p => p.X)) / 2, (places.Min(p => p.Y) + places.Max(p => p.Y)) / 2);

    private static double Nearest(IReadOnlyList<BoltPlace> places, BoltPlace place) => places.Where(p => p != place).Min(place.To);
}
