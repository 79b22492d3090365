using Gudgeon.Book.Bottom;
using Gudgeon.Book.Checks.Surfaces;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Bearings;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Book.Checks.Bearings;

/// <summary>What the checks of bearings run through their loads share.</summary>
public abstract class FilmCheck : Check
{
    public override string Family => "bearings";

    /// <summary>Where the width of the shells is known: without it there is no film to run.</summary>
    public override IEnumerable<string> Instances(View view) => BearingFit.Keys(view).Where(i => view.Knows(Bearing.Width, i));

    /// <summary>The film in which something is at its most, at the hardest speeds; null, and what is missing noted, when there is none.</summary>
    private protected static HardFilm? Worst(View view, string index, Func<HardFilm, double> most)
    {
        var films = HardFilm.Of(view, index);
        if (films.FirstOrDefault(f => !f.State.Settled) is not { } open)
        {
            return films.Count == 0 ? null : films.MaxBy(most);
        }

        view.Unknown(open.State.Path.Touches ? $"a film in {index} at {Engine.RevLimit.Print(open.Loads.Speed)} (the journal touches)" : $"a film in {index} that settles at {Engine.RevLimit.Print(open.Loads.Speed)} (its oil gets ever hotter)");
        return null;
    }

    private protected static string At(HardFilm film) => $"at {Engine.RevLimit.Print(film.Loads.Speed)}";

    private protected static string At(HardFilm film, int place) => $"{At(film)}, {CyclePlace.Of(film.Loads, place)}";
}

/// <summary>The thinnest film of the cycle against the roughness of journal and shells.</summary>
public sealed class OilFilmCheck : FilmCheck
{
    /// <summary>Thinnest film where roughness is not known, m, and how many times both roughnesses together otherwise: common practice, no source.</summary>
    private const double FewMicrometres = 1e-6, Peaks = 3;

    /// <summary>Rq of a ground or bored face over its Ra: common practice, no source.</summary>
    private const double RqOverRa = 1.25;

    public override string Id => "oil-film";

    public override string Title => "Oil film in the bearing";

    public override string Source => "orbit of the journal by the mobility method with films of finite length (Reynolds equation, p ≥ 0), oil as warm as the film makes it; limit: three times the roughness of both together, 1 µm where that is not known: common practice, no source";

    public override Judgement Examine(View view, string index)
    {
        var film = Worst(view, index, f => -f.State.Least.Film);
        var (journal, shell) = (view.AmountIf(Bearing.JournalRoughness, index) ?? TreatedPart.JournalRoughness(view, index), view.AmountIf(Bearing.ShellRoughness, index));
        var usual = journal is { } j && shell is { } s ? Peaks * RqOverRa * Math.Sqrt((j * j) + (s * s)) : FewMicrometres;
        var least = film?.State.Least ?? (double.NaN, 0);
        return Judgement.AtLeast("thinnest oil film", least.Film, view.Limit("oil-film.min", Dimension.Length, "µm", usual), Dimension.Length, "µm", "common practice, no source") with { Remark = film is null ? "" : At(film, least.At) };
    }
}

/// <summary>The greatest film pressure of the cycle against what the shells bear.</summary>
public sealed class FilmPressureCheck : FilmCheck
{
    public override string Id => "film-pressure";

    public override string Title => "Greatest film pressure on the shells";

    public override string Source => "film of finite length under the loads of the cycle; limit by the maker of the shells";

    /// <summary>Where a limit is known: only the maker of the shells has one.</summary>
    public override IEnumerable<string> Instances(View view) => base.Instances(view).Where(i => view.Knows(Bearing.PeakPressureLimit, i));

    public override Judgement Examine(View view, string index)
    {
        var film = Worst(view, index, f => f.State.Peak.Pressure);
        var peak = film?.State.Peak ?? (double.NaN, 0);
        return Judgement.AtMost("greatest film pressure", peak.Pressure, view.Amount(Bearing.PeakPressureLimit, index), Dimension.Pressure, "MPa", "bearing.peakPressureLimit") with { Remark = film is null ? "" : At(film, peak.At) };
    }
}

/// <summary>The greatest load over the projected area against what the shells bear.</summary>
public sealed class BearingLoadCheck : FilmCheck
{
    public override string Id => "bearing-load";

    public override string Title => "Load on the shells by projected area";

    public override string Source => "greatest load of the cycle over journal diameter and the length that carries; limit by the maker of the shells";

    /// <summary>Where a limit is known: only the maker of the shells has one.</summary>
    public override IEnumerable<string> Instances(View view) => base.Instances(view).Where(i => view.Knows(Bearing.LoadLimit, i));

    public override Judgement Examine(View view, string index)
    {
        var film = Worst(view, index, f => f.GreatestLoad);
        var load = view.Work(BearingOil.ProjectedLoad, film?.GreatestLoad ?? double.NaN, film?.State.Spec.Diameter ?? double.NaN, film?.State.Spec.Carrying ?? double.NaN);
        return Judgement.AtMost("load by projected area", load, view.Amount(Bearing.LoadLimit, index), Dimension.Pressure, "MPa", "bearing.loadLimit") with { Remark = film is null ? "" : At(film) };
    }
}

/// <summary>What the oil pump gives against what bearings and other consumers take.</summary>
public sealed class OilPumpCheck : FilmCheck
{
    public override string Id => "oil-pump";

    public override string Title => "Oil pump against demand";

    public override string Source => "displacement of the pump against the flows of all shell bearings at the pressure of the gallery, and what else is fed from it; at the hardest speeds";

    public override string Caution => "Turn the engine over without plugs until the gauge shows pressure before it is started: dry shells are wiped within seconds.";

    /// <summary>Once, where the pump and a bearing in its oil are known.</summary>
    public override IEnumerable<string> Instances(View view) => view.Knows(Oil.Displacement) && base.Instances(view).Any() ? [""] : [];

    public override Judgement Examine(View view, string index)
    {
        var each = BearingFit.Keys(view).Select(i => HardFilm.Of(view, i)).ToList();
        var other = view.AmountOr(Oil.OtherFlow, 0);
        var (displacement, ratio, efficiency) = (view.Amount(Oil.Displacement), view.Amount(Oil.Ratio), view.AmountOr(Oil.Efficiency, OilDemand.UsualEfficiency));
        var hardest = each.Exists(f => f.Count == 0) ? null : Enumerable.Range(0, each[0].Count)
            .Select(at => (Speed: each[0][at].Loads.Speed, Demand: other + each.Sum(f => f[at].State.Flow)))
            .MaxBy(p => p.Demand / p.Speed) as (double Speed, double Demand)?;
        return Judgement.AtLeast(
            "oil that the pump gives",
            view.Work(BearingOil.PumpDelivery, displacement, ratio, hardest?.Speed ?? double.NaN, efficiency),
            hardest?.Demand ?? double.NaN,
            Dimension.VolumeFlow,
            "L/min",
            "flows of all bearings and what else is fed") with { Remark = hardest is { } at ? $"at {Engine.RevLimit.Print(at.Speed)}; what is over goes through the relief valve" : "" };
    }
}
