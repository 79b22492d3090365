using Gudgeon.Book.Files;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Measuring;

/// <summary>Many readings from one CSV file: all of them or none, each taken once.</summary>
public sealed class ReadingSheetTests : IDisposable
{
    private const string Id = "4b1d6c7e-0f5a-4c56-9d8e-2a7b3c4d5e6f";

    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string> Forms => ["wren.gudgeon", "wren.json"];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Forms))]
    public void Every_line_is_a_reading(string form)
    {
        var (after, taken) = Taken(form, """
            field,value,with,by,on,note
            cylinder[1].bore,81.004 mm ± 0.006 mm,bore gauge,Ada,2026-05-01,"hot day, door open"
            # the second from the other side
            cylinder[1].bore,3.1892 in,,,,
            """);
        Assert.Equal(2, taken);
        var (first, second) = (after.Book.Measurements[0].Value, after.Book.Measurements[1].Value);
        Assert.Equal(("81.004 mm ± 0.006 mm", "bore gauge", "Ada", "2026-05-01", "hot day, door open"), (first.Content.ToString(), first.With, first.By, first.On, first.Note));
        Assert.Equal(("3.1892 in", "gauge", "Tom", "2026-06-01"), (second.Content.ToString(), second.With, second.By, second.On));
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void What_was_taken_before_is_passed_over_and_the_rest_is_taken(string form)
    {
        var sheet = $"field,value,id\ncylinder[1].bore,81.004 mm,{Id}\n";
        Assert.Equal(1, Taken(form, sheet).Taken);
        Assert.Equal(0, Taken(form, sheet).Taken);
        var (after, taken) = Taken(form, sheet + "cylinder[1].bore,81.006 mm,11111111-2222-4333-8444-555555555555\n");
        Assert.Equal((1, 2), (taken, after.Book.Measurements.Count));
    }

    [Fact]
    public void Semicolons_allow_a_decimal_comma_and_a_column_of_units() =>
        Assert.Equal("81.004 mm", Taken("wren.json", "path;reading;unit\ncylinder[1].bore;81,004;mm\n").After.Book.Measurements[0].Value.Content.ToString());

    [Theory]
    [InlineData("field,value\ncylinder[1].bore,81.004 mm\ncylinder[1].bore,81.004\n", "readings.csv, line 3: Bore: given '81.004' without a unit, wanted a length such as '12.3 mm'")]
    [InlineData("field,value\ncylinder[1].bore,81.004 mm\ncylinder[1].boar,81.004 mm\n", "readings.csv, line 3: there is no field 'cylinder.boar'; the nearest is 'cylinder.bore'")]
    [InlineData("field,value\ncylinder[1].bore,81.004 mm\ncylinder[7].bore,81.004 mm\n", "readings.csv, line 3: cylinder[7].bore: the engine has 1 cylinder (engine.cylinders)")]
    [InlineData("field,value\ncylinder[1].bore,81.004 mm\ncylinder[1].bore,\n", "readings.csv, line 3: given no value, wanted what cylinder[1].bore reads")]
    [InlineData("field,valu\ncylinder[1].bore,81.004 mm\n", "readings.csv, line 1: there is no column 'valu'; wanted field, value, unit, with, by, on, note, id, part at, tool at, made of")]
    [InlineData("field,with\ncylinder[1].bore,gauge\n", "readings.csv, line 1: wanted at least the columns field and value")]
    [InlineData("field,value,note\ncylinder[1].bore,81.004 mm,\ncylinder[1].bore,81.004 mm,hot day, door open\n", "readings.csv, line 3: the line has 4 cells under 3 headings; wanted one cell for each heading, and quotes about words with a comma")]
    [InlineData("field,value,on\ncylinder[1].bore,81.004 mm,2026-05-01\ncylinder[1].bore,81.004 mm,yesterday\n", "readings.csv, line 3: cylinder[1].bore, on: given 'yesterday', wanted a day such as 2026-11-29 or a time such as 2026-11-29 08:30")]
    [InlineData("field,value,id\ncylinder[1].bore,81 mm,7\n", "readings.csv, line 2: given '7' as the id of a reading, wanted a GUID such as 4b1d6c7e-0f5a-4c56-9d8e-2a7b3c4d5e6f")]
    public void One_bad_line_refuses_them_all_and_is_named(string sheet, string sentence)
    {
        Assert.Equal(sentence, Assert.Throws<BadInputException>(() => Taken("wren.json", sheet)).Message);
        Assert.Empty(BookFile.Open(_folder.PathOf("wren.json")).Book.Measurements);
        Assert.Equal(sentence, Assert.Throws<BadInputException>(() => Taken("wren.gudgeon", sheet)).Message);
        Assert.Empty(BookFile.Open(_folder.PathOf("wren.gudgeon")).Book.Measurements);
    }

    [Fact]
    public void A_line_without_a_person_is_refused_where_nobody_says_one() => Assert.Equal(
        "readings.csv, line 2: given no by, wanted the person",
        Assert.Throws<BadInputException>(() => ReadingSheet.Read("field,value\ncylinder[1].bore,81 mm\n", "readings.csv", "gauge", "", "2026-06-01")).Message);

    private (BookFile After, int Taken) Taken(string name, string sheet)
    {
        if (!_folder.Files.Contains(name))
        {
            BookFile.Create(_folder.PathOf(name), "Wren").Set("engine.cylinders", "1", []);
        }

        var after = BookFile.Open(_folder.PathOf(name)).Measure(ReadingSheet.Read(sheet, "readings.csv", "gauge", "Tom", "2026-06-01"), out var taken);
        return (after, taken);
    }
}
