using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Duty;

/// <summary>What the engine would do.</summary>
/// <param name="Wishes">What was tried.</param>
/// <param name="Duty">The run; only speeds that settled are in it.</param>
/// <param name="Values">The same as values of the book, by path, as a person writes them.</param>
/// <param name="Unsettled">Speeds that did not settle, rad/s.</param>
/// <param name="IsWhole">Whether every speed of the present run was tried; else a first look at a few.</param>
public sealed record WhatIfAnswer(Wishes Wishes, EngineDuty Duty, IReadOnlyDictionary<string, string> Values, IReadOnlyList<double> Unsettled, bool IsWhole)
{
    /// <summary>What it moves, each figure at the speeds that both runs have.</summary>
    /// <param name="now">The present run.</param>
    public IReadOnlyList<Difference> Against(EngineDuty now)
    {
        var both = Duty.Points.Select(p => p.Speed).ToHashSet();
        var before = now with { Points = [.. now.Points.Where(p => both.Contains(p.Speed))] };
        Difference Of(string name, Func<PointFigures, double> figure, Dimension dimension = Dimension.Number, string unit = "") =>
            new(name, before.Most(figure).Value, Duty.Most(figure).Value, dimension, unit);
        var boost = Of("greatest boost", f => f.Boost, Dimension.Pressure, "bar");
        return
        [
            Of("greatest power", f => f.Power, Dimension.Power, "kW"),
            Of("greatest torque", f => f.Torque, Dimension.Torque, "N·m"),
            .. Duty.Spec.Intake.Induction is null ? Array.Empty<Difference>() : [boost],
            Of("peak cylinder pressure", f => f.PeakPressure, Dimension.Pressure, "bar"),
            Of("knock integral", f => f.KnockIntegral),
        ];
    }
}

/// <summary>A figure before and after.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Before">SI.</param>
/// <param name="After">SI.</param>
/// <param name="Dimension">What it measures; no temperature.</param>
/// <param name="Unit">Display unit, metric.</param>
public sealed record Difference(string Name, double Before, double After, Dimension Dimension, string Unit)
{
    /// <summary>Smaller differences than this share are the model's settling, not an effect.</summary>
    private const double Same = 5e-5;

    /// <summary>"170.3 kW".</summary>
    public string Now(bool imperial) => Figures.Print(After, Dimension, Unit, 4, imperial);

    /// <summary>"5.2 kW more (+3.1 %)"; "as it is".</summary>
    public string Moved(bool imperial)
    {
        var change = After - Before;
        if (Math.Abs(change) <= Same * Math.Abs(Before))
        {
            return "as it is";
        }

        var share = Before > 0 ? FormattableString.Invariant($" ({change / Before:+0.0 %;-0.0 %})") : "";
        return $"{Figures.Print(Math.Abs(change), Dimension, Unit, 3, imperial)} {(change > 0 ? "more" : "less")}{share}";
    }
}
