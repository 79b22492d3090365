using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.ValveTrain;
using Gudgeon.Simulation.Engine;

namespace Gudgeon.Book.Head;

/// <summary>Seat and throat of a port: the areas that its flow is held against. SI.</summary>
/// <param name="Throat">Throats less stems, all valves of the port; null when not known.</param>
/// <param name="Seat">Inner areas of the seats, all valves; null when not known.</param>
/// <param name="CornerLift">Lift up to which the gap stands square on the seat; null when not known.</param>
/// <param name="ThroatLift">Lift from which the throat is narrowest; null when not known.</param>
internal sealed record Passage(double? Throat, double? Seat, double? CornerLift, double? ThroatLift)
{
    /// <summary>Customary seat angle, rad: 45°.</summary>
    private const double UsualSeatAngle = Math.PI / 4;

    /// <summary>What is known of a port's seat and throat; nothing, and the view says why, when they cannot go together.</summary>
    public static Passage Of(View view, string index, ValveSpec valves)
    {
        try
        {
            return Worked(view, index, valves);
        }
        catch (Exception e) when (e is FormulaDomainException or OutOfRangeException)
        {
            view.Unknown($"valve[{index}]: {(e is OutOfRangeException range ? Rows.FormulaCall.Sentence(range) : e.Message)}");
            return new Passage(null, null, null, null);
        }
    }

    private static Passage Worked(View view, string index, ValveSpec valves)
    {
        var (throat, width) = (view.AmountIf(Valve.ThroatDiameter, index), view.AmountIf(Valve.SeatWidth, index));
        var stem = throat is null ? 0 : view.AmountOr(Valve.StemDiameter, 0, index);
        var angle = width is null ? UsualSeatAngle : view.AmountOr(Valve.SeatAngle, UsualSeatAngle, index);
        double? seat = width is { } w ? valves.Count * view.Work(PortFlow.SeatInnerArea, valves.HeadDiameter, w, angle) : null;
        if (throat is not { } diameter)
        {
            return new Passage(null, seat, null, null);
        }

        var areas = view.Work(ValveAreas.Curtain, valves.HeadDiameter, 0.0, diameter, stem);
        if (width is not { } along)
        {
            return new Passage(valves.Count * areas.Throat, seat, null, areas.ThroatLift);
        }

        var stages = view.Work(ValveAreas.Least, valves.HeadDiameter, along * Math.Cos(angle), angle, diameter, stem, 0.0);
        return new Passage(valves.Count * areas.Throat, seat, stages.FirstLimit, stages.SecondLimit);
    }

    /// <summary>Which place is narrowest at a lift.</summary>
    public Narrowest At(double lift) => (ThroatLift, CornerLift) switch
    {
        (null, _) => Narrowest.Unknown,
        ({ } throat, _) when lift >= throat => Narrowest.Throat,
        (_, { } corner) when lift > corner => Narrowest.SeatCorner,
        _ => Narrowest.Curtain,
    };
}
