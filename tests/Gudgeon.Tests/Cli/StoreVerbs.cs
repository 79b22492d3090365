using System.Globalization;

namespace Gudgeon.Tests.Cli;

/// <summary>Verbs on a book that keeps a journal.</summary>
public sealed class StoreVerbs : IDisposable
{
    private readonly Workshop _workshop = new();

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void AStoreGrowsFromNothingAsJsonDoes()
    {
        Assert.StartsWith("Tern begins in tern.gudgeon", _workshop.Good("new", "tern.gudgeon", "--name", "Tern"), StringComparison.Ordinal);
        Assert.Equal("engine.cylinders is 2 (assumed)\n", _workshop.Good("set", "engine.cylinders", "2"));
        Assert.Equal("cylinder.bore is 94.00 mm (manual by Tom)\n", _workshop.Good("set", "tern.gudgeon", "cylinder.bore", "94.00 mm", "--how", "manual", "--by", "Tom"));
        _workshop.Good("change", "add", "bored", "--title", "Bored", "--by", "Eve");
        _workshop.Good("set", "cylinder.bore", "94.50 mm", "--change", "bored");
        _workshop.Good("change", "off", "bored");
        _workshop.Good("limit", "squish.min", "0.9 mm", "--reason", "short stroke");
        _workshop.Good("measure", "cylinder[1].bore", "94.012 ± 0.006 mm", "--with", "bore gauge", "--by", "Ada", "--on", "2026-03-01");
        Assert.Contains("cylinder[1].bore                   94.012 mm ± 0.006 mm       measured with bore gauge by Ada on 2026-03-01", _workshop.Good("show", "cylinder"), StringComparison.Ordinal);
        var journal = _workshop.Run("journal", "--json").Json.EnumerateArray().ToList();
        Assert.Equal(8, journal.Count);
        Assert.Equal([Environment.UserName, "Tom", "Eve", Environment.UserName], new[] { 1, 2, 3, 4 }.Select(i => journal[i].GetProperty("who").GetString()));
        Assert.All(journal, e => Assert.Equal(Environment.MachineName, e.GetProperty("device").GetString()));
        Assert.Equal(["tern.gudgeon"], Directory.EnumerateFileSystemEntries(_workshop.Folder).Select(Path.GetFileName));
    }

    [Fact]
    public void EveryReadingIsListedUnderTheMean()
    {
        _workshop.Good("new", "tern.gudgeon");
        foreach (var reading in new[] { "94.00 mm", "94.02 mm" })
        {
            _workshop.Good("measure", "cylinder[1].bore", reading, "--with", "bore gauge", "--by", "Ada", "--on", "2026-03-01");
        }

        // s² = 0.0002 mm², so u = √(0.0002/2) = 0.01 mm; with one degree of freedom k is 12.71 (GUM table G.2).
        Assert.Equal(
            """
            tern: 0 of 0 changes on, 2 readings, revision 3

            Cylinder
              cylinder[1].bore                   94.010 mm ± 0.13 mm        mean of 2 readings, measured with bore gauge by Ada on 2026-03-01
                  reading 94.00 mm (measured with bore gauge by Ada on 2026-03-01)
                  reading 94.02 mm (measured with bore gauge by Ada on 2026-03-01)

            """,
            _workshop.Good("show", "cylinder[1].bore"));
    }

    [Fact]
    public void UndoGivesBackTheValueBefore()
    {
        _workshop.Good("new", "tern.gudgeon");
        _workshop.Good("set", "crank.mass", "11 kg");
        _workshop.Good("set", "crank.mass", "12 kg");
        Assert.StartsWith("taken back: crank.mass is 12 kg", _workshop.Good("undo"), StringComparison.Ordinal);
        Assert.Contains("11 kg", _workshop.Good("show", "crank.mass"), StringComparison.Ordinal);
        Assert.Contains("crank.mass is 12 kg (taken back)", _workshop.Good("journal"), StringComparison.Ordinal);
        _workshop.Good("undo");
        Refusal.Holds(_workshop.Run("undo"), "holds no edit to take back");
    }

    [Fact]
    public void AConflictIsShownAndSettled()
    {
        _workshop.Good("new", "tern.gudgeon");
        _workshop.Good("set", "crank.mass", "11 kg", "--by", "Ada", "--based-on", "1");
        Assert.Contains("holds 11 kg; both are kept", _workshop.Good("set", "crank.mass", "12 kg", "--by", "Tom", "--based-on", "1"), StringComparison.Ordinal);
        Assert.Contains("! 1 conflict waits to be settled (gudgeon conflicts): crank.mass", _workshop.Good("show"), StringComparison.Ordinal);
        var conflicts = _workshop.Good("conflicts");
        Assert.Contains("first:  11 kg (Ada, ", conflicts, StringComparison.Ordinal);
        Assert.Contains("second: 12 kg (Tom, ", conflicts, StringComparison.Ordinal);
        Refusal.Holds(_workshop.Run("settle", "crank.mass", "third"), "given 'third', wanted first or second");
        Assert.Equal("settled: crank.mass is 12 kg\n", _workshop.Good("settle", "crank.mass", "second"));
        Assert.Equal("no conflicts\n", _workshop.Good("conflicts"));
        Refusal.Holds(_workshop.Run("settle", "crank.mass", "second"), "there is no conflict about crank.mass");
    }

    [Fact]
    public void ImportExportBackupAndVerify()
    {
        _workshop.Unpack("heron");
        Assert.Contains("comments stay behind", _workshop.Good("import", "heron.json", "heron.gudgeon"), StringComparison.Ordinal);
        _workshop.Good("export", "heron.gudgeon", "again.json");
        Assert.Equal(_workshop.Good("show", "heron.json", "--json"), _workshop.Good("show", "again.json", "--json"));
        Assert.Equal(_workshop.Good("show", "heron.json", "--json"), _workshop.Good("show", "heron.gudgeon", "--json"));
        Assert.StartsWith("copy.gudgeon holds revision 1", _workshop.Good("backup", "heron.gudgeon", "copy.gudgeon"), StringComparison.Ordinal);
        Assert.All(_workshop.Good("verify", "copy.gudgeon").Split('\n', StringSplitOptions.RemoveEmptyEntries), l => Assert.StartsWith("good  ", l, StringComparison.Ordinal));
        Refusal.Holds(_workshop.Run("export", "heron.gudgeon", "again.json"), "exists; a new book does not write over it");
        Refusal.Holds(_workshop.Run("import", "heron.json", "other.json"), "wanted a name that ends in .gudgeon");
        Refusal.Holds(_workshop.Run("undo", "heron.json"), "is kept as JSON");
        Refusal.Holds(_workshop.Run("show", "nosuch.gudgeon"), "there is no such file");
    }

    [Fact]
    public void VerifyEndsWithOneWhenAnythingIsWrong()
    {
        _workshop.Good("new", "tern.gudgeon");
        _workshop.Good("set", "crank.mass", "11 kg", "--note", "weighed by moonlight");
        Assert.Equal(0, _workshop.Run("verify").Code);
        var bytes = File.ReadAllBytes(_workshop.At("tern.gudgeon"));
        for (int at; (at = bytes.AsSpan().IndexOf("moonlight"u8)) >= 0;)
        {
            "sunlight."u8.CopyTo(bytes.AsSpan(at));
        }

        File.WriteAllBytes(_workshop.At("tern.gudgeon"), bytes);
        var outcome = _workshop.Run("verify");
        Assert.Equal(1, outcome.Code);
        Assert.Contains("BAD   entry 2 of the journal was altered after it was written", outcome.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void AFileIsAttachedListedAndExtracted()
    {
        _workshop.Good("new", "tern.gudgeon");
        _workshop.Write("bore.csv", "rpm,N·m\n5000,61\n");
        Assert.Contains("bore.csv (text/csv, ", _workshop.Good("attach", "bore.csv", "--to", "cylinder.bore", "--by", "Ada"), StringComparison.Ordinal);
        Assert.Contains("about cylinder.bore, Ada, ", _workshop.Good("attachments"), StringComparison.Ordinal);
        _workshop.Good("extract", "bore.csv", "again.csv");
        Assert.Equal(_workshop.Read("bore.csv"), _workshop.Read("again.csv"));
        Refusal.Holds(_workshop.Run("extract", "bore.csv", "again.csv"), "exists");
        Refusal.Holds(_workshop.Run("extract", "bor.csv", "third.csv"), "the nearest is 'bore.csv'");
        Refusal.Holds(_workshop.Run("attach", "nosuch.csv"), "there is no such file");
    }

    [Fact]
    public void EditsAtTheSameTimeAreAllKept()
    {
        _workshop.Good("new", "tern.gudgeon");
        var editors = Enumerable.Range(1, 6).Select(n => _workshop.Start("measure", "cylinder[1].bore", string.Create(CultureInfo.InvariantCulture, $"94.0{n} mm"), "--with", "bore gauge", "--by", "Ada")).ToList();
        Assert.All(editors.ConvertAll(Workshop.Finish), o => Assert.Equal((0, ""), (o.Code, o.Error)));
        Assert.Equal(7, _workshop.Run("journal", "--json").Json.GetArrayLength());
        _workshop.Good("verify");
    }

    [Theory]
    [InlineData("tern.gudgeon")]
    [InlineData("tern.json")]
    public void AReadingSentTwiceIsTakenOnce(string book)
    {
        _workshop.Good("new", book);
        string[] reading = ["measure", book, "cylinder[1].bore", "94.01 mm", "--with", "bore gauge", "--by", "Ada", "--id", "4b1d6c7e-0f5a-4c56-9d8e-2a7b3c4d5e6f"];
        _workshop.Good(reading);
        Assert.Equal("cylinder[1].bore: this reading was taken before, and is not taken again\n", _workshop.Good(reading));
        Assert.Contains("1 readings", _workshop.Good("show", book), StringComparison.Ordinal);
        Refusal.Holds(_workshop.Run([.. reading[..3], "94.02 mm", .. reading[4..]]), "bears the id of another");
        Refusal.Holds(_workshop.Run([.. reading[..^1], "seven"]), "wanted a GUID");
    }

    [Fact]
    public void AStatementIsSignedAndListed()
    {
        _workshop.Good("new", "tern.gudgeon");
        Refusal.Holds(_workshop.Run("sign", "measured cold"), "needs the person: --by NAME");
        Assert.StartsWith("Ada signed \"measured cold\"\n", _workshop.Good("sign", "measured cold", "--by", "Ada"), StringComparison.Ordinal);
        Assert.Contains("the book is as it was signed", _workshop.Good("signatures"), StringComparison.Ordinal);
        _workshop.Good("set", "crank.mass", "11 kg");
        Assert.Contains("the book was edited since: 1 edit stands", _workshop.Good("signatures"), StringComparison.Ordinal);
        Assert.Equal(1, _workshop.Run("signatures", "--json").Json[0].GetProperty("over").GetInt32());
        Assert.Contains("good  1 signatures are over the seals that the journal bears", _workshop.Good("verify"), StringComparison.Ordinal);
        Assert.EndsWith("and with them 1 signature, which is over the journal\n", _workshop.Good("export", "tern.gudgeon", "tern.json"), StringComparison.Ordinal);
        Refusal.Holds(_workshop.Run("sign", "tern.json", "measured", "--by", "Ada"), "is kept as JSON and bears no seal");
    }

    [Fact]
    public void ARunIsKeptAndSaysWhenItIsStale()
    {
        _workshop.Unpack("wren");
        _workshop.Good("import", "wren.json", "wren.gudgeon");
        string[] run = ["run", "wren.gudgeon", "--from", "6000rpm", "--to", "7000rpm", "--step", "1000rpm"];
        Assert.Contains("kept as \"as it came\": ", _workshop.Good([.. run, "--keep", "as it came", "--by", "Ada"]), StringComparison.Ordinal);
        Refusal.Holds(_workshop.Run([.. run, "--keep", " "]), "needs a title");
        var kept = Assert.Single(_workshop.Run("runs", "wren.gudgeon", "--json").Json.EnumerateArray());
        Assert.True(kept.GetProperty("holds").GetBoolean());
        Assert.Equal([6000, 7000], kept.GetProperty("rows").EnumerateArray().Select(r => r[0].GetDouble()));
        Assert.Contains("cylinder[1].bore", kept.GetProperty("reads").EnumerateArray().Select(r => r.GetString()));
        _workshop.Good("export", "wren.gudgeon", "again.json");
        Assert.Contains("holds: every value that it read is as it was", _workshop.Good("runs", "again.json"), StringComparison.Ordinal);
        _workshop.Good("measure", "wren.gudgeon", "cylinder[1].bore", "92.010 mm", "--with", "bore gauge", "--by", "Ada");
        Assert.Contains("stale: a value that it read is not as it was", _workshop.Good("runs", "wren.gudgeon"), StringComparison.Ordinal);
        _workshop.Good("verify", "wren.gudgeon");
    }
}
