namespace Gudgeon.Tests.Cli;

/// <summary>The head's sheets of springs, lash and seats.</summary>
public sealed class HeadSpringVerbs : IDisposable
{
    private readonly Workshop _workshop = new();

    public HeadSpringVerbs() => _workshop.Unpack("heron");

    public void Dispose() => _workshop.Dispose();

    // 38.05 mm less 2.01 mm on a spring of 273 N at 38.5 mm and 588 N at 28 mm: 346.8 N; 24.05 mm is solid, 10.37 mm the lift.
    [Fact]
    public void SpringsSaysLoadsAndMarginsOfEveryValve()
    {
        var said = _workshop.Good("head", "springs", "heron.json", "--svg", "spring.svg", "--valve", "exhaust.1.2");
        Assert.Matches(@"inlet\.2\.1 +38\.05 mm +2\.01 mm +36\.04 mm +346\.8 N +657\.9 N +1\.62 mm", said);
        Assert.Contains("with 2 mm, look at both", said, StringComparison.Ordinal);
        Assert.Contains("New stem seals", said, StringComparison.Ordinal);
        Assert.Contains("eye protection", said, StringComparison.Ordinal);
        Assert.Contains("left over: 6, 10", said, StringComparison.Ordinal);
        Assert.Contains("Valve spring exhaust.1.2", _workshop.Read("spring.svg"), StringComparison.Ordinal);
        Assert.Equal(8, _workshop.Run("head", "springs", "heron.json", "--json").Json.GetProperty("rows").GetArrayLength());
        Assert.Matches(@"inlet\.2\.1 +1\.498 in .* 77\.96 lbf", _workshop.Good("head", "springs", "heron.json", "--imperial"));
    }

    [Fact]
    public void AValveThatIsNotThereIsRefused() =>
        Refusal.Holds(_workshop.Run("head", "springs", "heron.json", "--svg", "spring.svg", "--valve", "inlet.3.1"), "--valve: given 'inlet.3.1', wanted one of inlet.1.1");

    [Fact]
    public void LashIsATableToWorkFrom()
    {
        var said = _workshop.Good("head", "lash", "heron.json", "--svg", "lash.svg");
        Assert.Matches(@"exhaust\.2\.1 +0\.18 mm +0\.19 mm to 0\.25 mm +2\.55 mm +fit the one out of exhaust\.1\.1 +2\.5 mm +to exhaust\.1\.1 +0\.23 mm +too tight", said);
        Assert.Contains("in range with either; its own does more good elsewhere", said, StringComparison.Ordinal);
        Assert.Contains("5. Turn the engine twice by hand", said, StringComparison.Ordinal);
        Assert.Contains("allowed", _workshop.Read("lash.svg"), StringComparison.Ordinal);
        var json = _workshop.Run("head", "lash", "heron.json", "--json").Json;
        Assert.Equal(0.14e-3, json.GetProperty("rows")[1].GetProperty("after").GetDouble(), 1e-9);
        _workshop.Good("set", "heron.json", "valve[exhaust.1.2].lashMax", "0.23 mm");
        Assert.Contains("to buy: ", _workshop.Good("head", "lash", "heron.json"), StringComparison.Ordinal);
    }

    [Fact]
    public void LashNamesTheValveThatIsMissing()
    {
        _workshop.Unpack("wren");
        var run = _workshop.Run("head", "lash", "wren.json");
        Assert.Equal(3, run.Code);
        Assert.Contains("not planned: ", run.Output, StringComparison.Ordinal);
        Assert.Contains("exhaust.1.1", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void SeatsSaysWidthsClearancesAndWhatTheLeakTestMeans()
    {
        var said = _workshop.Good("head", "seats", "heron.json", "--svg", "seats.svg");
        Assert.Matches(@"exhaust\.2\.1 +1\.75 mm +29\.26 mm +161 mm².* 0\.045 mm +0\.0255 mm", said);
        Assert.Contains("leak test, cylinder 2: 9.1 %, heard at the exhaust: an exhaust valve does not seal", said, StringComparison.Ordinal);
        Assert.Contains("proved by a leak test before the head goes on", said, StringComparison.Ordinal);
        Assert.Contains("Stems in their guides", _workshop.Read("seats.svg"), StringComparison.Ordinal);
    }
}
