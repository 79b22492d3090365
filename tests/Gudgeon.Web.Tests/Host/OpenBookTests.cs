using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;
using Gudgeon.Web.Host;

namespace Gudgeon.Web.Tests.Host;

/// <summary>A book open on the host: answers are worked once, kept, marked as old by an edit, and can be stopped.</summary>
public sealed class OpenBookTests : IDisposable
{
    private static readonly Hand Ada = new("Ada", "bench");

    private readonly string _folder = Directory.CreateTempSubdirectory("gudgeon-open-").FullName;
    private readonly OpenBook _open;

    public OpenBookTests()
    {
        var path = Path.Combine(_folder, "wren.gudgeon");
        BookFile.Open(Path.Combine(AppContext.BaseDirectory, "demo", "wren.json")).CopyTo(path, Ada);
        _open = new OpenBook(path);
    }

    [Fact]
    public async Task AnAnswerIsWorkedOnceAndOldAfterAnEdit()
    {
        var worked = 0;
        var question = new Question<string>("the name", a => $"{a.Book.Name} {Interlocked.Increment(ref worked)}");
        Assert.Equal(AnswerState.Working, _open.Ask(question).State);
        await Until(() => _open.Ask(question).IsReady);
        Assert.Equal("Wren 500 methanol single 1", _open.Ask(question).Value);

        await _open.EditAsync(Ada, file => file.Set("vehicle.mass", "140 kg", []));
        var old = _open.Ask(question);
        Assert.Equal((AnswerState.Working, "Wren 500 methanol single 1"), (old.State, old.Value));
        await Until(() => _open.Ask(question).IsReady);
        Assert.Equal(2, worked);
    }

    [Fact]
    public async Task WorkCanBeStoppedAndTakenUpAgain()
    {
        var patient = true;
        var question = new Question<string>("what takes long", a => patient && a.Desk.Cancellation.WaitHandle.WaitOne() ? throw new OperationCanceledException() : "done");
        _open.Ask(question);
        await Until(() => _open.Working?.Name == "what takes long");
        _open.Stop();
        await Until(() => _open.Ask(question).State == AnswerState.Stopped);
        Assert.Null(_open.Ask(question).Value);
        patient = false;
        _open.Again(question);
        await Until(() => _open.Ask(question).IsReady);
        Assert.Equal("done", _open.Ask(question).Value);
    }

    [Fact]
    public async Task ARefusalIsAnAnswerAndAFaultIsTold()
    {
        var refused = new Question<string>("what cannot be", _ => throw new BadInputException("wanted: a bore"));
        var faulty = new Question<string>("what fails", _ => throw new InvalidOperationException("oh"));
        _open.Ask(refused);
        _open.Ask(faulty);
        await Until(() => _open.Ask(refused).State == AnswerState.Refused && _open.Ask(faulty).State == AnswerState.Refused);
        Assert.Equal("wanted: a bore", _open.Ask(refused).Sentence);
        Assert.Contains("a fault of the program's own (InvalidOperationException: oh)", _open.Ask(faulty).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AnEditByAnotherProgramIsSeen()
    {
        var seen = 0;
        _open.Changed += () => Interlocked.Increment(ref seen);
        BookFile.Open(_open.Path, new Hand("Ben", "elsewhere")).Set("vehicle.mass", "139 kg", []);
        await Until(() => _open.Book.Baseline["vehicle.mass"].Content.ToString() == "139 kg");
        Assert.True(seen > 0);
    }

    /// <summary>Opened again, a book has its run by the wave model at once; after an edit the old one is told with what has changed.</summary>
    [Fact]
    public async Task ARunByTheWaveModelOutlastsTheProgramAndIsToldAsStale()
    {
        await _open.EditAsync(Ada, file => file.Set("engine.depth", "wave", []).Set("engine.runFrom", "8000 rpm", []).Set("engine.cellLength", "40 mm", []));
        Assert.Null(_open.Stale);
        await Until(() => _open.Ask(Questions.Duty).IsReady);
        var power = _open.Ask(Questions.Duty).Value!.Power;
        Assert.Equal(Depth.Wave, _open.Ask(Questions.Duty).Value!.Depth);

        using var again = new OpenBook(_open.Path);
        var runs = 0;
        var counted = new Question<EngineDuty>("a counted run", a =>
        {
            var duty = Questions.Duty.Work(a);
            runs = a.Desk.Runs;
            return duty;
        });
        await Until(() => again.Ask(counted).IsReady);
        Assert.Equal((0, power), (runs, again.Ask(counted).Value!.Power));

        await again.EditAsync(Ada, file => file.Set("intake.runner.length", "170 mm", []));
        Assert.Equal("computed before intake.runner[1].length changed", again.Stale?.Sentence);
        Assert.Equal(power, again.Stale!.Duty.Power);
    }

    /// <summary>Reading a store touches its files; only an edit makes answers old.</summary>
    [Fact]
    public async Task AFileThatWasOnlyTouchedLeavesAnswersAsTheyAre()
    {
        var worked = 0;
        var question = new Question<string>("the name", a => $"{a.Book.Name} {Interlocked.Increment(ref worked)}");
        _open.Ask(question);
        await Until(() => _open.Ask(question).IsReady);
        var file = _open.File;
        File.SetLastWriteTimeUtc(_open.Path, DateTime.UtcNow.AddSeconds(5));
        await Task.Delay(2500);
        Assert.Same(file, _open.File);
        Assert.True(_open.Ask(question).IsReady);
        Assert.Equal(1, worked);
    }

    [Fact]
    public async Task ARefusedEditLeavesTheBookAsItWas()
    {
        var before = _open.File.Revision;
        var refusal = await Assert.ThrowsAsync<BadInputException>(() => _open.EditAsync(Ada, file => file.Set("vehicle.mass", "140 N·m", [])));
        Assert.Contains("which is a torque", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(before, _open.File.Revision);
    }

    [Fact]
    public async Task WhatWasAskedLongAgoIsLetGo()
    {
        var worked = new int[100];
        Question<string> Number(int i) => new($"question {i}", _ => $"{Interlocked.Increment(ref worked[i])}");
        for (var i = 0; i < worked.Length; i++)
        {
            _open.Ask(Number(i));
            await Until(() => _open.Ask(Number(i)).IsReady);
        }

        Assert.Equal(AnswerState.Working, _open.Ask(Number(0)).State);
        Assert.Equal(AnswerState.Ready, _open.Ask(Number(99)).State);
    }

    public void Dispose()
    {
        _open.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private static async Task Until(Func<bool> holds)
    {
        for (var i = 0; i < 3000 && !holds(); i++)
        {
            await Task.Delay(10);
        }

        Assert.True(holds(), "waited 30 s in vain");
    }
}
