using Gudgeon.Calc.Catalogue;
using Gudgeon.Calc.Metrology;

namespace Gudgeon.Book.Fields;

/// <summary>
/// Instruments of the shop: instrument[mic-25]. The kind says what an instrument measures; amounts that are of that dimension
/// are text for that reason, and a book refuses those in another's unit.
/// </summary>
public static class Instrument
{
    private static readonly Subject Subject = new("instrument", "Instrument", Indexing.Name);

    public static readonly Field Kind = Subject.Choice<InstrumentKind>("kind", "Kind", "Says what it measures, and so the units of all else.");
    public static readonly Field Standard = Subject.Choice<InstrumentStandard>("standard", "Standard to whose limit it is kept", "Used where neither permissible error nor calibration is given. ISO 3611, ISO 13385-1 and DIN 2275 leave the limit open here: say it as permissible error.");
    public static readonly Field From = Subject.Text("from", "Range from", "A reading that it shows, with its unit, such as 25 mm.");
    public static readonly Field To = Subject.Text("to", "Range to", "A reading that it shows, with its unit, such as 50 mm.");
    public static readonly Field Resolution = Subject.Text("resolution", "Resolution", "Digital step, or what is read of a division, with its unit, such as 0.001 mm.");
    public static readonly Field Error = Subject.Text("error", "Permissible error, plus or minus", "Of maker or shop, with its unit, such as 0.004 mm, or as a share of the reading, such as 4 %.");
    public static readonly Field CalibrationError = Subject.Text("calibrationError", "Error found by the calibration", "With its unit and sign, such as -0.001 mm; readings are not corrected for it, it counts as a limit.");
    public static readonly Field CalibrationUncertainty = Subject.Text("calibrationUncertainty", "Expanded uncertainty of the calibration, k = 2", "With its unit, such as 0.002 mm; takes the place of the permissible error.");
    public static readonly Field Calibrated = Subject.Date("calibrated", "Calibrated on");
    public static readonly Field Due = Subject.Date("due", "Calibration due", "From the day after, the instrument is overdue.");
    public static readonly Field Owner = Subject.Text("owner", "Whose it is", "A person or a shop.");
    public static readonly Field Cost = Subject.Amount("cost", "Cost of a use", Dimension.Number, "", (0, 1000), help: "In the shop's own money: time, hire, the way to whoever has it. Nothing when left out.", zero: true);
    public static readonly Field Zero = Subject.Text("zero", "Zero at the last check", "What it shows at nothing, or on its setting piece less the size of that, with unit and sign, such as 0.001 mm; give it as a reading, so that the checks before it stay.");
}
