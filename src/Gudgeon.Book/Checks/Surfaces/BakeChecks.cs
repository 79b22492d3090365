using Gudgeon.Book.Fields;
using Gudgeon.Book.Tracing;
using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Surfaces;

namespace Gudgeon.Book.Checks.Surfaces;

/// <summary>A check of the bake of a part that takes harm from hydrogen, once for each treatment that wants one.</summary>
public abstract class BakeCheck : Check
{
    public sealed override string Family => "surfaces";

    public override string Caution => SurfaceCautions.Hydrogen;

    public sealed override IEnumerable<string> Instances(View view) => TreatedPart.Names(view).Where(n => new TreatedPart(view, n).WantsBake);
}

/// <summary>Time of the bake against the strength of the steel.</summary>
public sealed class BakeTimeCheck : BakeCheck
{
    public override string Id => "bake-time";

    public override string Title => "Bake for hydrogen, time";

    public override string Source => "ASTM B850-98 (2009) table, ISO 9588 alike: 8 h up to 1100 MPa and 2 h more for each started 100 MPa";

    public override Judgement Examine(View view, string index) => Judgement.AtLeast(
        "time at temperature", view.Amount(Bake.Time, index), view.Work(HydrogenRelief.BakeTime, new TreatedPart(view, index).Strength), Dimension.Time, "h", "ASTM B850, by strength");
}

/// <summary>Temperature of the bake.</summary>
public sealed class BakeTemperatureCheck : BakeCheck
{
    /// <summary>The range of the table, K.</summary>
    internal const double Least = 190 + 273.15, Greatest = 220 + 273.15;

    public override string Id => "bake-temperature";

    public override string Title => "Bake for hydrogen, temperature";

    public override string Source => "ASTM B850-98 (2009), ISO 9588: 190 °C to 220 °C";

    public override Judgement Examine(View view, string index) => Judgement.Between("baking temperature", view.Amount(Bake.Temperature, index), Least, Greatest, Dimension.Temperature, "°C", "ASTM B850");
}

/// <summary>Delay from the bath to the oven.</summary>
public sealed class BakeDelayCheck : BakeCheck
{
    public override string Id => "bake-delay";

    public override string Title => "Bake for hydrogen, delay";

    public override string Source => "ASTM B850, ISO 9588 (from memory): as soon as possible, within 4 h, the hardest within 1 h";

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "delay from bath to oven", view.Amount(Bake.Delay, index), view.Limit("bake-delay.max", Dimension.Time, "h", 4 * 3600), Dimension.Time, "h", "ASTM B850, ISO 9588 (from memory)") with { Remark = "the hardest within 1 h" };
}

/// <summary>Every heat of the route against the temper of the part.</summary>
public sealed class TemperCheck : Check
{
    public override string Id => "treatment-temper";

    public override string Title => "Heat of the route below tempering";

    public override string Family => "surfaces";

    public override string Source => "hottest of bake, coating and service against the tempering or ageing temperature of the part";

    public override string Caution => SurfaceCautions.Hydrogen;

    public override IEnumerable<string> Instances(View view) => TreatedPart.Names(view).Where(n => new TreatedPart(view, n).Hottest is not null);

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "hottest of the route", new TreatedPart(view, index).Hottest ?? double.NaN, view.Amount(Treatment.Tempering, index), Dimension.Temperature, "°C", "treatment.tempering");
}

/// <summary>Growth by a coat against the room left for it.</summary>
public sealed class CoatingRoomCheck : Check
{
    public override string Id => "coating-room";

    public override string Title => "Coating build-up against the room left";

    public override string Family => "surfaces";

    public override string Source => "geometry: a diameter grows by two coats, a bore closes by two, the pitch diameter of a 60° thread grows by four; half of a hard anodic coat grows outward (MIL-PRF-8625 type III practice)";

    public override IEnumerable<string> Instances(View view) => Checks.Instances.Named(view, Coating.Thickness.Subject).Where(i => i.Length > 0 && view.Knows(Coating.Room, i));

    public override Judgement Examine(View view, string index) => Judgement.AtMost(
        "build-up", Growth(view, index), view.Amount(Coating.Room, index), Dimension.Length, "µm", "coating.room");

    /// <summary>What the coat takes of the room, m: of a bore, what it closes by.</summary>
    internal static double Growth(View view, string coat)
    {
        var change = TreatedPart.BuildUp(view, coat);
        return view.WordOr(Coating.Where, Coating.Shaft, coat) switch
        {
            Coating.Bore => -change.Bore,
            Coating.Face => change.Face,
            Coating.Thread => change.ThreadPitch,
            _ => change.Shaft,
        };
    }
}
