using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;

namespace Gudgeon.Book.Tests.Surfaces;

/// <summary>Invented treatments with the strips of the references P06, P09 and P11, and a plated shaft.</summary>
internal static class RouteBooks
{
    /// <summary>Row P06: intensity 0.00641 in, T 4.754 min, the last strip at 2.52 T.</summary>
    public const string P06 = "4 min at 0.0060 in; 6 min at 0.0069 in; 8 min at 0.0070 in; 12 min at 0.0070 in";

    /// <summary>Row P09: intensity 0.270 mm, T 9.22 min, but the last strip at 1.74 T; a fifth at 32 min lies on the same curve.</summary>
    public const string P09 = "2 min at 0.118 mm; 4 min at 0.190 mm; 8 min at 0.259 mm; 16 min at 0.295 mm";

    /// <summary>Row P11: fit T 6.51 min, the last strip short of twice that.</summary>
    public const string P11 = "2 min at 0.008 in; 4 min at 0.012 in; 6 min at 0.014 in; 8 min at 0.015 in; 10 min at 0.0153 in";

    /// <summary>Gears peened and superfinished.</summary>
    public static readonly BuildBook Gears = Books.Of(
        ("treatment[gears].part", "gears"),
        ("treatment[gears].tensileStrength", "1250 MPa"),
        ("treatment[gears].tempering", "180 °C"),
        ("treatment[gears].smallestFillet", "1.2 mm"),
        ("treatment[gears].slotWidth", "3.6 mm"),
        ("treatment[gears].caseDepth", "0.8 mm"),
        ("treatment[gears].caseLeast", "0.6 mm"),
        ("peening[gears.coarse].step", "1"),
        ("peening[gears.coarse].media", "cut wire"),
        ("peening[gears.coarse].shotSize", "0.6 mm"),
        ("peening[gears.coarse].intensityMin", "0.14 mm"),
        ("peening[gears.coarse].intensityMax", "0.20 mm"),
        ("peening[gears.coarse].readings", P06),
        ("peening[gears.coarse].coverageSeen", "50 %"),
        ("peening[gears.coarse].coverageTime", "1 min"),
        ("peening[gears.coarse].exposure", "12 min"),
        ("peening[gears.coarse].coverageWanted", "200 %"),
        ("peening[gears.coarse].masked", "splines; bores"),
        ("peening[gears.fine].step", "2"),
        ("peening[gears.fine].media", "ceramic bead"),
        ("peening[gears.fine].shotSize", "0.2 mm"),
        ("peening[gears.fine].strip", "N"),
        ("peening[gears.fine].intensityMin", "0.2 mm"),
        ("peening[gears.fine].intensityMax", "0.3 mm"),
        ("peening[gears.fine].readings", P09 + "; 32 min at 0.2999 mm"),
        ("superfinish[gears].removal", "4 µm"),
        ("superfinish[gears].removalMax", "8 µm"),
        ("superfinish[gears].roughnessBefore", "0.434 µm"),
        ("superfinish[gears].roughnessAfter", "0.083 µm"),
        ("superfinish[gears].roughnessMax", "0.1 µm"),
        ("superfinish[gears].film", "0.3 µm"));

    /// <summary>A shaft of 38 HRC, plated and baked, in its hole.</summary>
    public static readonly BuildBook Shaft = Books.Of(
        ("treatment[shaft].part", "shaft"),
        ("treatment[shaft].hardness", "38"),
        ("treatment[shaft].tempering", "480 °C"),
        ("coating[shaft].thickness", "8 µm"),
        ("coating[shaft].room", "20 µm"),
        ("coating[shaft].fit", "bush"),
        ("bake[shaft].time", "12 h"),
        ("bake[shaft].temperature", "200 °C"),
        ("bake[shaft].delay", "2 h"),
        ("fit[bush].size", "17 mm"),
        ("fit[bush].hole", "17.012 mm"),
        ("fit[bush].shaft", "16.966 mm"),
        ("fit[bush].interferenceMin", "-50 µm"),
        ("fit[bush].interferenceMax", "-16 µm"));

    /// <summary>A finding by its id; null where the check does not apply.</summary>
    public static Finding? Find(BuildBook book, string id) => new Appraiser(new DutyDesk()).Appraise(book.Now(), CheckCatalogue.All.Where(c => c.Id == id.Split('[')[0])).SingleOrDefault(f => f.Id == id);

    /// <summary>A finding by its id.</summary>
    public static Finding Of(BuildBook book, string id) => Find(book, id) ?? throw new InvalidOperationException($"no finding {id}");
}
