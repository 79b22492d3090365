using Gudgeon.Book.Fields;
using Gudgeon.Book.Sweeps;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Sweeps;

public class FieldRangeTests
{
    [Theory]
    [InlineData("intake.runnerArea=1000..2200mm²/7", 1000e-6, 2200e-6, 7)]
    [InlineData("crank.stroke=60mm..9cm/4", 0.060, 0.090, 4)]
    [InlineData("cylinder[2].chamberVolume = 44 .. 52 cm³ / 3", 44e-6, 52e-6, 3)]
    [InlineData("blower.driveRatio=.9..1.2/2", 0.9, 1.2, 2)]
    [InlineData("cylinder.domeVolume=-2..4cm³/4", -2e-6, 4e-6, 4)]
    [InlineData("weather.temperature=−5..35°C/5", 268.15, 308.15, 5)]
    [InlineData("fuel.injectorFlow=5..6g/s/11", 5e-3, 6e-3, 11)]
    [InlineData("blower.beltSlip=0..5%/101", 0, 0.05, 101)]
    public void Values_go_evenly_from_one_end_to_the_other(string text, double from, double to, int count)
    {
        var varied = Variation.Parse("--vary", text);
        var values = varied.Values.Select(v => v.Si).ToList();
        Assert.Equal(count, values.Count);
        Assert.Equal(from, values[0], 1e-12);
        Assert.Equal(to, values[^1], 1e-12);

        // What is tried is written in four digits of the range.
        Assert.All(values.Select((v, i) => v - (from + ((to - from) * i / (count - 1)))), off => Assert.InRange(off, -0.51e-4 * (to - from), 0.51e-4 * (to - from)));
    }

    [Theory]
    [InlineData("intake.runnerArea=1000 mm²..2200 mm²/7")]
    [InlineData("valve[inlet.2].lift=150 thou..1 cm/9")]
    [InlineData("blower.driveRatio=0.90..1.20/5")]
    public void Reads_what_it_prints(string text)
    {
        var varied = Variation.Parse("--vary", text);
        Assert.Equal(text, varied.ToString());
        Assert.Equal(varied.Values, Variation.Parse("--vary", varied.ToString()).Values);
    }

    // A value stands in the book as it was tried: written and read again it is the same.
    [Fact]
    public void A_value_is_the_one_that_its_words_give()
    {
        var values = Variation.Parse("--vary", "blower.driveRatio=0.9..1.2/8").Values;
        Assert.Equal(["0.9", "0.94286", "0.98571", "1.02857", "1.07143", "1.11429", "1.15714", "1.2"], values.Select(v => v.Written));
        Assert.All(values, v => Assert.Equal(v.Si, KnownValue.Read(Blower.DriveRatio, v.Written).Si));
    }

    [Fact]
    public void A_share_of_the_way_is_found_again()
    {
        var range = FieldRange.Parse("--let", "crank.stroke=60..90mm");
        Assert.Equal(0.25, range.ShareOf(range.At(0.25).Si), 1e-4);
        Assert.Equal(-1, range.ShareOf(0.030), 1e-9);
    }

    [Theory]
    [InlineData("intake.runnerAra=1..2mm²/3", "there is no field 'intake.runnerAra'; the nearest is 'intake.runnerArea'")]
    [InlineData("intake.runnerArea=1000..2200mm/3", "which is a length; wanted an area")]
    [InlineData("intake.runnerArea=1000..2200/3", "without a unit")]
    [InlineData("intake.runnerArea=2200..1000mm²/3", "runs from 2200 mm² to 1000 mm², wanted a range that rises")]
    [InlineData("intake.runnerArea=1000..1000mm²/3", "wanted a range that rises")]
    [InlineData("intake.runnerArea=1000..2200mm²/1", "given 1 values, wanted 2 to 101")]
    [InlineData("intake.runnerArea=1000..2200mm²/102", "given 102 values, wanted 2 to 101")]
    [InlineData("intake.runnerArea=1000..2200mm²/-3", "given -3 values")]
    [InlineData("intake.runnerArea=1000..2200mm²", "how many values after the stroke")]
    [InlineData("intake.runnerArea=1000..2200mm²/few", "how many values after the stroke")]
    [InlineData("intake.runnerArea=1000mm²/3", "wanted FIELD=FROM..TO")]
    [InlineData("intake.runnerArea/3", "wanted FIELD=FROM..TO")]
    [InlineData("intake.runnerArea=..2200mm²/3", "wanted an area such as")]
    [InlineData("intake.runnerArea=1000..2200mm² ± 3 mm²/3", "without a ±")]
    [InlineData("crank.stroke=-60..90mm/3", "which cannot be")]
    [InlineData("cylinder[0].bore=60..90mm/3", "wanted a cylinder number")]
    [InlineData("fuel.kind=petrol..methanol/2", "is no amount but a choice")]
    [InlineData("valve[inlet].liftTable=1..2/2", "is no amount but a table")]
    public void Says_in_a_sentence_what_is_wrong(string text, string sentence)
    {
        var e = Assert.Throws<BadInputException>(() => Variation.Parse("--vary", text));
        Assert.Contains(sentence, e.Message, StringComparison.Ordinal);
    }
}
