using Gudgeon.Web.Doors;

namespace Gudgeon.Web.Tests.Doors;

/// <summary>The short code: one device, ten minutes, five guesses.</summary>
public class PairingCodeTests
{
    private readonly Clock _clock = new();

    [Fact]
    public void ServesOnce()
    {
        var code = new PairingCode(_clock);
        var shown = code.Now;
        Assert.True(code.Take(shown));
        Assert.False(code.Take(shown));
        Assert.NotEqual(shown, code.Now);
    }

    [Fact]
    public void IsTakenHoweverItIsTyped()
    {
        var code = new PairingCode(_clock);
        Assert.True(code.Take($" {code.Now[..2].ToLowerInvariant()}-{code.Now[2..]} "));
    }

    [Fact]
    public void IsReplacedAfterTenMinutes()
    {
        var code = new PairingCode(_clock);
        var shown = code.Now;
        _clock.Pass(TimeSpan.FromMinutes(9));
        Assert.Equal(shown, code.Now);
        _clock.Pass(TimeSpan.FromMinutes(1));
        Assert.False(code.Take(shown));
    }

    [Fact]
    public void IsReplacedAfterFiveWrongGuesses()
    {
        var code = new PairingCode(_clock);
        var shown = code.Now;
        var replaced = 0;
        code.Replaced += () => replaced++;
        Assert.All(Enumerable.Range(0, 5), _ => Assert.False(code.Take("00000")));
        Assert.Equal(1, replaced);
        Assert.False(code.Take(shown));
    }

    [Fact]
    public void FourWrongGuessesDoNotShutTheRightDeviceOut()
    {
        var code = new PairingCode(_clock);
        var shown = code.Now;
        Assert.All(Enumerable.Range(0, 4), _ => Assert.False(code.Take("")));
        Assert.True(code.Take(shown));
    }

    private sealed class Clock : TimeProvider
    {
        private DateTimeOffset _now = new(2026, 5, 1, 8, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => _now;

        public void Pass(TimeSpan time) => _now += time;
    }
}
