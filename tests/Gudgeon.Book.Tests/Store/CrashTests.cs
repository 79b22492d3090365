using System.Diagnostics;
using System.Globalization;
using Gudgeon.Book.Files;
using Gudgeon.Book.Store;

namespace Gudgeon.Book.Tests.Store;

/// <summary>What a killed program leaves behind. GUDGEON_KILLS asks for more kills than the usual 200.</summary>
public sealed class CrashTests : IDisposable
{
    private const int Usual = 200;
    private const int Books = 3;
    private const int AtOnce = 3;
    private readonly TemporaryFolder _folder = new();
    private readonly List<WriterProcess> _writers = [];

    private static int Kills => int.TryParse(Environment.GetEnvironmentVariable("GUDGEON_KILLS"), NumberStyles.None, CultureInfo.InvariantCulture, out var kills) ? Math.Max(kills, Usual) : Usual;

    public void Dispose()
    {
        _writers.ForEach(w => w.Dispose());
        _folder.Dispose();
    }

    [Fact]
    public void No_acknowledged_reading_is_lost_when_writers_are_killed()
    {
        var random = new Random(1);
        var (kills, whileWriting) = (0, 0);
        for (var round = 0; kills < Kills; round++)
        {
            var books = Enumerable.Range(1, Books).Select(b => _folder.PathOf(string.Create(CultureInfo.InvariantCulture, $"round{round}-{b}.gudgeon"))).ToList();
            books.ForEach(b => BookFile.Create(b, "Wren"));
            var writers = books.ConvertAll(b => Start(b, int.MaxValue));
            WaitUntil(() => writers.TrueForAll(ws => ws.Exists(w => !w.Said.IsEmpty)));
            foreach (var writer in Enumerable.Range(0, AtOnce).SelectMany(i => writers.Select(ws => ws[i])))
            {
                Thread.Sleep(random.Next(0, 20));
                whileWriting += writer.Said.IsEmpty ? 0 : 1;
                writer.Kill();
                kills++;
            }

            foreach (var (book, killed) in books.Zip(writers))
            {
                Holds(book, [.. killed.SelectMany(w => w.Said)]);
            }
        }

        Assert.True(whileWriting >= kills / AtOnce, "too few writers were killed while they wrote for the test to tell anything");
    }

    [Fact]
    public void Several_programs_that_write_at_once_lose_nothing()
    {
        const int Each = 15;
        var path = _folder.PathOf("shared.gudgeon");
        BookFile.Create(path, "Wren");
        var writers = Start(path, Each);
        Assert.All(writers, w => Assert.Equal(0, w.Finish()));
        var said = writers.SelectMany(w => w.Said).ToList();
        Assert.Equal(AtOnce * Each, said.Count);
        Holds(path, said);
        var readings = BookFile.Open(path).Book.Measurements;
        Assert.Equal(AtOnce * Each, readings.Count);
        Assert.All(readings.GroupBy(r => r.Value.By), g => Assert.Equal(Enumerable.Range(1, Each).Select(i => $"{g.Key}-{i}"), g.Select(r => r.Value.Note)));
    }

    private List<WriterProcess> Start(string path, int most)
    {
        List<WriterProcess> writers = [.. Enumerable.Range(1, AtOnce).Select(w => WriterProcess.Start(path, string.Create(CultureInfo.InvariantCulture, $"w{w}"), most))];
        _writers.AddRange(writers);
        return writers;
    }

    private static void Holds(string path, List<string> said)
    {
        var notes = BookFile.Open(path).Book.Measurements.Select(m => m.Value.Note).ToList();
        Assert.Equal(notes.Count, notes.Distinct(StringComparer.Ordinal).Count());
        Assert.Empty(said.Except(notes, StringComparer.Ordinal));
        Assert.All(StoredBook.Verify(path), a => Assert.True(a.Good, a.Sentence));
    }

    private static void WaitUntil(Func<bool> condition)
    {
        var began = Stopwatch.StartNew();
        while (!condition())
        {
            Assert.True(began.Elapsed < TimeSpan.FromMinutes(3), "no writer wrote anything");
            Thread.Sleep(2);
        }
    }
}
