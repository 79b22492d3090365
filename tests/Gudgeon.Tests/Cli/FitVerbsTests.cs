using System.Xml.Linq;

namespace Gudgeon.Tests.Cli;

/// <summary>gudgeon fits on the invented twin, and without a book.</summary>
public sealed class FitVerbsTests : IDisposable
{
    private readonly Workshop _workshop = new();

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void LimitsOfSizeNeedNoBook()
    {
        var said = _workshop.Good("fits", "limits", "25mm", "H7", "p6", "--svg", "zones.svg");
        Assert.StartsWith("25 mm H7/p6: an interference fit", said, StringComparison.Ordinal);
        Assert.Matches(@"shaft, greatest +25\.035 mm", said);
        Assert.Matches(@"least interference +1 µm", said);
        Assert.Contains("hole H7 shaft p6", Drawn("zones.svg"), StringComparison.Ordinal);
        Assert.Contains("a clearance fit", _workshop.Good("fits", "limits", "1in", "H8", "f7"), StringComparison.Ordinal);
        Assert.All((string[][])[["25mm H7/p6"], ["25 mm H7/p6"], ["25mm", "H7/p6"], ["25mm H7 p6"]], words => Assert.StartsWith("25 mm H7/p6: an interference fit", _workshop.Good(["fits", "limits", .. words]), StringComparison.Ordinal));
        Assert.Matches(@"hole, least +24\.9755 mm", _workshop.Good("fits", "limits", "25mm P3/h2"));
        Assert.Matches(@"hole, greatest +25\.0006 mm", _workshop.Good("fits", "limits", "25mm H01/zc8"));
    }

    [Fact]
    public void WorkingsNameTheirSymbolsAndKeepTheDigitsOfASize()
    {
        Assert.Contains("greatest size (25.035 mm) = (25 mm) + (35 µm)", _workshop.Good("work", "ISO shaft limits", "size=25mm", "deviation=p", "grade=6"), StringComparison.Ordinal);

        // 01 is not 1.
        var outcome = _workshop.Run("work", "ISO hole limits", "size=25mm", "deviation=H", "grade=01");
        Assert.Equal(2, outcome.Code);
        Assert.Contains("given '01', wanted a whole number; -1 stands for grade 01", outcome.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("shaft: given 'p66', wanted letter and grade of a shaft", "25mm", "H7", "p66")]
    [InlineData("hole: given 'h7', wanted letter and grade of a hole", "25mm", "h7", "p6")]
    [InlineData("shaft: given 'p19', wanted letter and grade of a shaft, such as p6: a to zc, grades 01, 0 and 1 to 18", "25mm", "H7", "p19")]
    [InlineData("hole: given 'W7', wanted letter and grade of a hole, such as H7: A to ZC, grades 01, 0 and 1 to 18", "25mm", "W7", "p6")]
    [InlineData("fit: given '25mm H7', wanted size, hole and shaft, such as 25mm H7/p6", "25mm H7")]
    [InlineData("holes from K to ZC are defined from grade 3 on", "25mm P2/h1")]
    [InlineData("size: given '600mm', wanted more than 0 and at most 500 mm", "600mm", "H7", "p6")]
    [InlineData("which is a force", "25 N", "H7", "p6")]
    [InlineData("the standard has no t up to 24 mm", "20mm", "H7", "t6")]
    public void WhatIsNoFitIsOneSentence(string sentence, params string[] words)
    {
        var outcome = _workshop.Run(["fits", "limits", .. words]);
        Assert.Equal(2, outcome.Code);
        Assert.Contains(sentence, outcome.Error, StringComparison.Ordinal);
        Assert.Single(outcome.Error.Trim().Split('\n'));
    }

    [Fact]
    public void PairsAreToldAndDrawn()
    {
        _workshop.Unpack("heron");
        var said = _workshop.Good("fits", "pairs", "heron.json", "--svg", "fits.svg");
        Assert.Matches(@"spigot +26 mm  H7/s6  26\.008 mm  26\.041 mm +33 µm +14 µm to 48 µm", said);
        Assert.Matches(@"hub and shaft come loose at +77\S* °C  both as hot as each other", said);
        Assert.Matches(@"dowel +3 ", said);
        Assert.Contains("gloves", said, StringComparison.Ordinal);
        Assert.Matches(@"coating on the hole, on its diameter +-10 µm +10 µm thick, still to come", said);
        var drawn = Drawn("fits.svg");
        Assert.Contains("hole bare", drawn, StringComparison.Ordinal);
        Assert.Contains("hole P7 coated", drawn, StringComparison.Ordinal);
        Assert.Contains("−10 µm", drawn, StringComparison.Ordinal);
        Assert.Contains("below the line the fit is loose", drawn, StringComparison.Ordinal);
    }

    private string Drawn(string file) => string.Join(' ', XDocument.Parse(_workshop.Read(file)).Root!.Value.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    [Fact]
    public void JsonIsInSiUnits()
    {
        _workshop.Unpack("heron");
        var spigot = _workshop.Run("fits", "pairs", "heron.json", "--json").Json.GetProperty("fits").EnumerateArray().Single(f => f.GetProperty("index").GetString() == "spigot");
        Assert.Equal(33e-6, spigot.GetProperty("interference").GetDouble(), 1e-9);
    }

    [Fact]
    public void ABookWithoutFitsSaysHowToBegin()
    {
        _workshop.Good("new", "empty.json", "--name", "Empty");
        var outcome = _workshop.Run("fits", "pairs", "empty.json");
        Assert.Equal(3, outcome.Code);
        Assert.Contains("set fit[name].size", outcome.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void AClassThatIsNoneIsSaidAndLeavesTheSheetUnfinished()
    {
        _workshop.Unpack("heron");
        _workshop.Good("set", "heron.json", "fit[spigot].holeClass", "Q7", "--change", "blower");
        var outcome = _workshop.Run("fits", "pairs", "heron.json");
        Assert.Equal(3, outcome.Code);
        Assert.Contains("Left out, because it cannot be: spigot: fit[spigot].holeClass: given 'Q7', wanted letter and grade of a hole", outcome.Output, StringComparison.Ordinal);
    }

    [Fact] // 35 µm are 1.378 thousandths, 33 µm 1.3.
    public void InchReadersAreToldThousandths()
    {
        Assert.Matches(@"greatest interference +1\.378 thou", _workshop.Good("fits", "limits", "25mm H7/p6", "--imperial"));
        _workshop.Unpack("heron");
        var said = _workshop.Good("fits", "pairs", "heron.json", "--imperial");
        Assert.All((string[])["µm", " mm", "MPa", "°C", "N·m"], unit => Assert.DoesNotContain(unit, said, StringComparison.Ordinal));
        Assert.Matches("spigot .* 1\\.3 thou", said);
    }
}
