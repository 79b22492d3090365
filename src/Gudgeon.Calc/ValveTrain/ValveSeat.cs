using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>Contact of a valve on its seat.</summary>
/// <param name="MeanDiameter">Mean diameter of the contact band, m.</param>
/// <param name="Area">Area of the band on the cone, m².</param>
/// <param name="Projected">The same seen along the stem, m².</param>
public readonly record struct SeatContact(
    [Quantity("mean diameter of the band", Dimension.Length, "mm", Symbol = "Dm")] double MeanDiameter,
    [Quantity("area of the band", Dimension.Area, "mm²", Symbol = "A")] double Area,
    [Quantity("area along the stem", Dimension.Area, "mm²", Symbol = "Ap")] double Projected);

/// <summary>Load and pressure on a valve seat.</summary>
/// <param name="Load">Load along the stem, N.</param>
/// <param name="Pressure">Pressure square to the band, Pa.</param>
public readonly record struct SeatPressure(
    [Quantity("load along the stem", Dimension.Force, "N", Symbol = "F")] double Load,
    [Quantity("seat pressure", Dimension.Pressure, "MPa", Symbol = "p")] double Pressure);

/// <summary>The conical seat of a poppet valve.</summary>
public static class ValveSeat
{
    private const string Caution = "A wide seat carries heat, a narrow one seals: what the valve's maker asks goes before the sum. Friction on the cone would lower the pressure and is left out.";

    /// <summary>Contact band of a valve that touches up to the edge of its head.</summary>
    /// <param name="headDiameter">Diameter of the head, m.</param>
    /// <param name="width">Width of the band along the cone, m.</param>
    /// <param name="angle">Angle of the face from the plane of the head, rad.</param>
    [Formula("valve seat contact", "Dm = D - w cos(α); A = π Dm w; Ap = A cos(α)", "area of a frustum", Provenance = Provenance.Definition, Validity = "the band reaches up to the edge of the head; a margin of the face makes it a little less")]
    public static SeatContact Contact(
        [Quantity("head diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double headDiameter,
        [Quantity("seat width", Dimension.Length, "mm", Symbol = "w", Above = 0)] double width,
        [Quantity("seat angle", Dimension.Angle, "°", Symbol = "α", Min = 0, Below = Math.PI / 2)] double angle = Math.PI / 4)
    {
        var mean = headDiameter - (width * Math.Cos(angle));
        FormulaDomainException.Unless(mean > width * Math.Cos(angle), "seat width: wider than the head");
        var area = Math.PI * mean * width;
        return new SeatContact(mean, area, area * Math.Cos(angle));
    }

    /// <summary>Pressure on the contact band, of the spring and the gas in the cylinder.</summary>
    /// <param name="headDiameter">Diameter of the head, m.</param>
    /// <param name="width">Width of the band along the cone, m.</param>
    /// <param name="angle">Angle of the face from the plane of the head, rad.</param>
    /// <param name="seatLoad">Load of the spring, N.</param>
    /// <param name="pressure">Pressure in the cylinder above that in the port, Pa.</param>
    [Formula("valve seat pressure", "F = F0 + π / 4 Dm^2 Δp; p = F / Ap", "balance of forces along the stem, no friction on the cone", Provenance = Provenance.Definition, Caution = Caution)]
    public static SeatPressure Pressure(
        [Quantity("head diameter", Dimension.Length, "mm", Symbol = "D", Above = 0)] double headDiameter,
        [Quantity("seat width", Dimension.Length, "mm", Symbol = "w", Above = 0)] double width,
        [Quantity("seat angle", Dimension.Angle, "°", Symbol = "α", Min = 0, Below = Math.PI / 2)] double angle,
        [Quantity("seat load", Dimension.Force, "N", Symbol = "F0", Min = 0)] double seatLoad,
        [Quantity("cylinder pressure less port pressure", Dimension.Pressure, "bar", Symbol = "Δp", Min = 0)] double pressure)
    {
        var contact = Contact(headDiameter, width, angle);
        var load = seatLoad + (Math.PI / 4 * contact.MeanDiameter * contact.MeanDiameter * pressure);
        return new SeatPressure(load, load / contact.Projected);
    }
}
