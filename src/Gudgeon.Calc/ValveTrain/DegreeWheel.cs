using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Calc.ValveTrain;

/// <summary>Lobe centre from several heights.</summary>
/// <param name="Centre">Mean of the centres at each height, crank rad.</param>
/// <param name="Spread">Greatest less least of them, rad.</param>
/// <param name="Uncertainty">Standard uncertainty of the mean, rad.</param>
public readonly record struct WheelCentre(
    [Quantity("lobe centre", Dimension.Angle, "°", Symbol = "C")] double Centre,
    [Quantity("spread over the heights", Dimension.Angle, "°", Symbol = "S")] double Spread,
    [Quantity("standard uncertainty", Dimension.Angle, "°", Symbol = "u")] double Uncertainty);

/// <summary>Readings of a degree wheel at equal lift on both flanks.</summary>
public static class DegreeWheel
{
    /// <summary>Lobe centre with its uncertainty from angles at equal lift on both flanks, at one height or several.</summary>
    /// <param name="opening">Crank angles on the opening flank, rad.</param>
    /// <param name="closing">Crank angles on the closing flank at the same lifts, rad.</param>
    /// <param name="reading">Expanded uncertainty of one angle, k = 2, rad.</param>
    [Formula("lobe centre by degree wheel", "C = mean((A1 + A2) / 2); S = max - min; u = sqrt((U / 2)^2 / (2 n) + s^2 / n)", "JCGM 100:2008, 4.2 and 5.1: readings of the same quantity, and what each can be read to", Validity = "s is the standard deviation of the n centres, none for one height; an unsymmetric lobe shows as a spread that grows with the height", Caution = "Turn the crank one way only, so that slack in the cam drive stays on one side; plug out, and by hand.")]
    public static WheelCentre Centre(
        [Quantity("angles on the opening flank", Dimension.Angle, "°", Symbol = "A1")] double[] opening,
        [Quantity("angles on the closing flank", Dimension.Angle, "°", Symbol = "A2")] double[] closing,
        [Quantity("± of one angle", Dimension.Angle, "°", Symbol = "U", Min = 0)] double reading)
    {
        FormulaDomainException.Unless(opening.Length == closing.Length, "angles on the closing flank: wanted one for each on the opening flank");
        var n = opening.Length;
        var (sum, least, most) = (0.0, double.PositiveInfinity, double.NegativeInfinity);
        for (var i = 0; i < n; i++)
        {
            FormulaDomainException.Unless(closing[i] > opening[i], "angles on the closing flank: must be later than on the opening flank");
            var centre = (opening[i] + closing[i]) / 2;
            sum += centre;
            (least, most) = (Math.Min(least, centre), Math.Max(most, centre));
        }

        var mean = sum / n;
        var squares = 0.0;
        for (var i = 0; i < n; i++)
        {
            var off = ((opening[i] + closing[i]) / 2) - mean;
            squares += off * off;
        }

        var scatter = n > 1 ? squares / (n - 1) / n : 0;
        return new WheelCentre(mean, most - least, Math.Sqrt((reading * reading / 8 / n) + scatter));
    }
}
