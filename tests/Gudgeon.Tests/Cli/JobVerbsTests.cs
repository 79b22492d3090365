namespace Gudgeon.Tests.Cli;

/// <summary>gudgeon jobs on the invented twin: a card worked from a terminal, and what is refused.</summary>
public sealed class JobVerbsTests : IDisposable
{
    private readonly Workshop _workshop = new();

    public JobVerbsTests()
    {
        _workshop.Unpack("heron");
        _workshop.Good("import", "heron.json", "heron.gudgeon");
        File.Delete(_workshop.At("heron.json"));
    }

    public void Dispose() => _workshop.Dispose();

    [Fact]
    public void ACardIsWorkedAndSigned()
    {
        Assert.Contains("strip        ready       ", _workshop.Good("jobs", "board"), StringComparison.Ordinal);
        var first = _workshop.Good("jobs", "tick", "clean", "plugs", "--by", "Ada");
        Assert.Equal("clean: 1 of 4 steps done; next: wash, Parts washed hot, dried, bare steel oiled at once.\n", first);
        Refused("clean, plugs: done already, by Ada at ", "jobs", "tick", "clean", "plugs", "--by", "Tom");
        Refused("clean: has no step 'wsh'; the nearest is 'wash'", "jobs", "tick", "clean", "wsh", "--by", "Tom");
        Refused("work on a job card needs the person: --by NAME", "jobs", "tick", "clean", "wash");
        foreach (var step in new[] { "wash", "blast", "threads" })
        {
            _workshop.Good("jobs", "tick", "clean", step, "--by", "Ada");
        }

        Refused("clean: not to be signed: comes after: Strip the engine. To sign all the same takes a reason", "jobs", "sign", "clean", "--by", "Tom");
        Assert.Contains("overridden, because it came stripped: comes after: Strip the engine", _workshop.Good("jobs", "sign", "clean", "--by", "Tom", "--because", "it came stripped"), StringComparison.Ordinal);
        var card = _workshop.Good("jobs", "card", "clean");
        Assert.StartsWith("Clean every part: signed, signed by Tom at ", card, StringComparison.Ordinal);
        Assert.Contains("because: it came stripped", card, StringComparison.Ordinal);
        Assert.Contains("job card clean: sign", _workshop.Good("journal"), StringComparison.Ordinal);
        Assert.DoesNotContain("bad ", _workshop.Good("verify"), StringComparison.Ordinal);
        Assert.Contains("clean: look again", _workshop.Good("jobs", "reopen", "clean", "--by", "Ada", "--because", "grit in a gallery"), StringComparison.Ordinal);
    }

    [Fact]
    public void HeadBoltsComeInTheirOrder()
    {
        _workshop.Good("jobs", "tick", "head", "faces", "--by", "Ada");
        Refused("head, tighten@1.1: held until this is done: New: head gasket or sealing rings.", "jobs", "tick", "head", "tighten@1.1", "--with", "wrench", "--by", "Ada");
        _workshop.Good("jobs", "tick", "head", "gasket", "--value", "bag 12", "--by", "Ada");
        var card = _workshop.Run("jobs", "card", "head", "--json");
        Assert.Equal(3, card.Code);
        var step = card.Json.GetProperty("steps").EnumerateArray().First(s => s.GetProperty("key").GetString() == "tighten");
        var bolts = step.GetProperty("stages")[0].GetProperty("bolts").EnumerateArray().Select(b => b.GetProperty("key").GetString()!).ToList();
        Assert.Equal(8, bolts.Count);
        var torque = step.GetProperty("stages")[0].GetProperty("what").GetString()![3..];
        Refused($"head, {bolts[3]}: bolt ", "jobs", "tick", "head", bolts[3], "--with", "wrench", "--value", torque, "--by", "Ada");
        Refused($"head, {bolts[0]}: wanted what it was tightened to, such as {torque}", "jobs", "tick", "head", bolts[0], "--with", "wrench", "--by", "Ada");
        Assert.Contains($"next: {bolts[1]}, bolt ", _workshop.Good("jobs", "tick", "head", bolts[0], "--with", "wrench", "--value", torque, "--by", "Ada"), StringComparison.Ordinal);
    }

    [Fact]
    public void APictureIsKeptWithTheTick()
    {
        File.WriteAllBytes(_workshop.At("engine.png"), AsBuiltVerbTests.Picture);
        Refused("strip: has no step 'befor'; the nearest is 'before'", "jobs", "tick", "strip", "befor", "--photo", "engine.png", "--by", "Ada");
        Assert.Equal("no attachments\n", _workshop.Good("attachments"));
        _workshop.Good("jobs", "tick", "strip", "before", "--photo", "engine.png", "--by", "Ada");
        Assert.Contains("engine.png (image/png, 70 bytes) about card[strip]", _workshop.Good("attachments"), StringComparison.Ordinal);
        Assert.Contains(": engine.png", _workshop.Run("jobs", "card", "strip").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void TheWayToTheFirstStartIsTold()
    {
        var way = _workshop.Good("jobs", "path");
        Assert.Contains("h of work are left. What may not be late: ", way, StringComparison.Ordinal);
        Assert.Contains("first-start", way, StringComparison.Ordinal);
        Assert.DoesNotContain("dyno", way, StringComparison.Ordinal);
    }

    [Fact]
    public void ACardIsEditedAsAFile()
    {
        _workshop.Write("strip.json", _workshop.Good("jobs", "template", "strip").Replace("Strip the engine", "Take it apart", StringComparison.Ordinal));
        Assert.Equal("strip: the book's own\n", _workshop.Good("jobs", "put", "heron.gudgeon", "strip.json", "--by", "Ada"));
        Assert.Contains("Take it apart", _workshop.Good("jobs", "board", "heron.gudgeon"), StringComparison.Ordinal);
        _workshop.Write("strip.json", "{ \"id\": \"strip\" ");
        Assert.Equal(2, _workshop.Run("jobs", "put", "heron.gudgeon", "strip.json", "--by", "Ada").Code);
    }

    private void Refused(string sentence, params string[] words)
    {
        var outcome = _workshop.Run(words);
        Assert.Equal(2, outcome.Code);
        Assert.Contains(sentence, outcome.Error, StringComparison.Ordinal);
    }
}
