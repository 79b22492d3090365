using Gudgeon.Book.Checks;
using Gudgeon.Book.Checks.ValveTrain;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Checks;

public class CheckCatalogueTests
{
    // Ids are public and are never used again for something else: one that goes from here goes for good.
    private static readonly string[] Published =
    [
        "bearing-clearance", "bench", "blower-speed", "bolt-preload", "budget", "clutch", "coil-bind", "compression-ratio", "compression-spread", "flow-ratio", "flow-scatter", "head-separation", "injector-duty", "inlet-mach", "knock", "open-load", "parts-mass",
        "peak-pressure", "piston-acceleration", "piston-clearance", "piston-speed", "ring-gap-second", "ring-gap-top", "seat-load", "spring-fatigue", "spring-stress", "squish",
        "squish-running", "surge-margin", "target-power", "target-quarter", "turbo-speed", "valve-float", "valve-pressure",
        "coil-bind-agreement", "lash", "leak-down", "retainer-seal", "seat-pressure", "seat-width", "spring-range", "spring-rate", "spring-relaxation", "spring-spread", "spring-surge",
        "stem-clearance", "stem-clearance-hot", "stem-stress",
        "belt-jump", "gasket-crush", "gasket-line-load", "o-ring-fill", "o-ring-squeeze",
    ];

    public static TheoryData<string> Ids => [.. CheckCatalogue.All.Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_check_is_declared_whole(string id)
    {
        var check = CheckCatalogue.Find(id);
        Assert.Matches("^[a-z]+(-[a-z]+)*$", check.Id);
        Assert.NotEmpty(check.Title);
        Assert.NotEmpty(check.Source);
        Assert.Contains(check.Family, CheckCatalogue.Families);
        Assert.Contains(check, CheckCatalogue.OfFamily(check.Family.ToUpperInvariant()));
        Assert.DoesNotContain(" safe", check.Caution, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Ids_are_unique_and_last()
    {
        Assert.Equal(CheckCatalogue.All.Count, CheckCatalogue.All.DistinctBy(c => c.Id).Count());
        Assert.Empty(Published.Except(CheckCatalogue.All.Select(c => c.Id)));
    }

    [Fact]
    public void A_spring_and_whatever_bursts_carry_a_caution()
    {
        Assert.All(CheckCatalogue.OfFamily("valve train").Where(c => c is not (LobeCentreCheck or LobeCheck or RampCheck or ValveRoomCheck)), c => Assert.Contains("eye protection", c.Caution, StringComparison.Ordinal));
        Assert.All(CheckCatalogue.All.OfType<ValveRoomCheck>(), c => Assert.Contains("meets a piston wrecks the engine", c.Caution, StringComparison.Ordinal));
        Assert.Contains("Turn by hand, plug out", CheckCatalogue.Find("lobe-centre").Caution, StringComparison.Ordinal);
        Assert.Contains("bursts", CheckCatalogue.Find("blower-speed").Caution, StringComparison.Ordinal);
        Assert.Contains("methanol", CheckCatalogue.Find("injector-duty").Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_there_is_answered_with_what_is()
    {
        Assert.Contains("the nearest is 'squish'", Assert.Throws<BadInputException>(() => CheckCatalogue.Find("sqish")).Message, StringComparison.Ordinal);
        Assert.Contains("chamber", Assert.Throws<BadInputException>(() => CheckCatalogue.OfFamily("chambers")).Message, StringComparison.Ordinal);
    }
}
