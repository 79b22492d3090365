using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Files;
using Gudgeon.Book.Rows;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Web.Host;

/// <summary>Work that is going on.</summary>
/// <param name="Name">What is worked.</param>
/// <param name="Share">Share done of its present part, 0 to 1.</param>
public sealed record Working(string Name, double Share);

/// <summary>
/// A book that is open on this machine, shared by everybody who looks at it. Answers are worked one at a time, kept, and
/// marked as old the moment the book is edited, here or by another program.
/// </summary>
public sealed class OpenBook : IDisposable
{
    private const int MostKept = 60;

    private static readonly TimeSpan Glance = TimeSpan.FromSeconds(1);

    private readonly Lock _gate = new();
    private readonly SemaphoreSlim _pen = new(1, 1);
    private readonly Dictionary<string, Kept> _answers = new(StringComparer.Ordinal);
    private readonly List<Kept> _queue = [];
    private readonly Timer _watch;
    private readonly DutyDesk _desk = new();
    private readonly Appraiser _appraiser;
    private CancellationTokenSource? _stop;
    private bool _busy;
    private string _stamp;
    private int _version;
    private long _asks;
    private StaleDuty? _stale;
    private int _staleAt = -1;

    /// <param name="path">The file.</param>
    /// <exception cref="BadInputException">Not a book.</exception>
    public OpenBook(string path)
    {
        Path = path;
        _stamp = Stamp(path);
        _appraiser = new Appraiser(_desk);
        (File, Now) = Read(path);
        _desk.Shelf = File.Shelf;
        _watch = new Timer(_ => Look(), null, Glance, Glance);
    }

    /// <summary>Raised when the book, an answer or the progress of the work has changed; on any thread.</summary>
    public event Action? Changed;

    /// <summary>The file.</summary>
    public string Path { get; }

    /// <summary>File name, which stands in the addresses of the pages.</summary>
    public string Key => System.IO.Path.GetFileName(Path);

    /// <summary>The book as last read.</summary>
    public BookFile File { get; private set; }

    /// <summary>The build.</summary>
    public BuildBook Book => File.Book;

    /// <summary>The values that hold.</summary>
    public Snapshot Now { get; private set; }

    /// <summary>The engine run that was kept last, when it no longer holds; null otherwise.</summary>
    public StaleDuty? Stale
    {
        get
        {
            lock (_gate)
            {
                if (_staleAt != _version)
                {
                    (_stale, _staleAt) = (StaleDuty.Of(_desk.Shelf, Now), _version);
                }

                return _stale;
            }
        }
    }

    /// <summary>Why the file can no longer be read; empty when all is well. The book as last read stays.</summary>
    public string Trouble { get; private set; } = "";

    /// <summary>What is being worked; null when nothing is.</summary>
    public Working? Working { get; private set; }

    /// <summary>The answer as far as it is known; it is worked when it is not known or no longer holds.</summary>
    public Answer<T> Ask<T>(Question<T> question)
        where T : class
    {
        lock (_gate)
        {
            if (!_answers.TryGetValue(question.Name, out var kept))
            {
                Forget();
                _answers[question.Name] = kept = new Kept(question.Name, question.Work);
            }

            kept.Asked = ++_asks;
            if (kept.Version != _version)
            {
                kept.Version = _version;
                kept.State = AnswerState.Working;
                kept.Work = question.Work;
                Enqueue(kept);
            }

            return new Answer<T>((T?)kept.Value, kept.State, kept.Sentence);
        }
    }

    /// <summary>Works a stopped answer again.</summary>
    public void Again<T>(Question<T> question)
        where T : class
    {
        lock (_gate)
        {
            if (_answers.TryGetValue(question.Name, out var kept) && kept.State != AnswerState.Working)
            {
                kept.State = AnswerState.Working;
                Enqueue(kept);
            }
        }

        Changed?.Invoke();
    }

    /// <summary>Stops the work that is going on, and what waits behind it.</summary>
    public void Stop()
    {
        lock (_gate)
        {
            _queue.ForEach(k => k.State = AnswerState.Stopped);
            _queue.Clear();
            _stop?.Cancel();
        }

        Changed?.Invoke();
    }

    /// <summary>Edits the book; one edit at a time.</summary>
    /// <param name="hand">Who does it.</param>
    /// <param name="edit">The edit, made on the book as it stands in the file.</param>
    /// <exception cref="BadInputException">Refused; the file is as it was.</exception>
    public async Task<BookFile> EditAsync(Hand hand, Func<BookFile, BookFile> edit)
    {
        await _pen.WaitAsync();
        try
        {
            var after = await Task.Run(() => edit(BookFile.Open(Path, hand)));
            Take(after, Stamp(Path));
            return after;
        }
        finally
        {
            _pen.Release();
        }
    }

    public void Dispose()
    {
        _watch.Dispose();
        _stop?.Cancel();
        _pen.Dispose();
    }

    private static (BookFile File, Snapshot Now) Read(string path)
    {
        var file = BookFile.Open(path);
        return (file, file.Book.Now());
    }

    /// <summary>Sees whether another program has edited the book.</summary>
    private void Look()
    {
        var stamp = Stamp(Path);
        if (stamp == _stamp || !_pen.Wait(0))
        {
            return;
        }

        try
        {
            // Reading a store touches its files, and so does a small picture that is kept: an edit is what raises the revision.
            if (File is StoredBook && Trouble.Length == 0 && StoredBook.RevisionAt(Path) == File.Revision)
            {
                _stamp = stamp;
                return;
            }

            Take(BookFile.Open(Path), stamp);
        }
        catch (BadInputException e)
        {
            _stamp = stamp;
            Trouble = e.Message;
            Changed?.Invoke();
        }
        finally
        {
            _pen.Release();
        }
    }

    private void Take(BookFile file, string stamp)
    {
        lock (_gate)
        {
            _stamp = stamp;
            Trouble = "";
            File = file;
            Now = file.Book.Now();
            _version++;
            // What was begun on the book as it was is of no use any more; whoever looks asks again.
            _queue.Clear();
            _stop?.Cancel();
        }

        Changed?.Invoke();
    }

    /// <summary>Lets the answers go that nobody has asked for longest.</summary>
    private void Forget()
    {
        foreach (var old in _answers.Values.Where(k => k.State != AnswerState.Working).OrderBy(k => k.Asked).Take(_answers.Count - MostKept).ToList())
        {
            _answers.Remove(old.Name);
        }
    }

    private void Enqueue(Kept kept)
    {
        _queue.Remove(kept);
        _queue.Add(kept);
        if (!_busy)
        {
            _busy = true;
            _ = Task.Run(WorkOff);
        }
    }

    private void WorkOff()
    {
        while (Next() is var (kept, asked, version))
        {
            var (value, state, sentence) = Work(kept, asked);
            lock (_gate)
            {
                if (kept.Version == version && _version == version)
                {
                    (kept.State, kept.Sentence) = (state, sentence);
                    kept.Value = value ?? (state == AnswerState.Refused ? null : kept.Value);
                }

                Working = null;
            }

            Changed?.Invoke();
        }
    }

    private (Kept Kept, Asked Asked, int Version)? Next()
    {
        lock (_gate)
        {
            if (_queue.Count == 0)
            {
                _busy = false;
                return null;
            }

            var kept = _queue[0];
            _queue.RemoveAt(0);
            _stop?.Dispose();
            _stop = new CancellationTokenSource();
            _desk.Cancellation = _stop.Token;
            _desk.Progress = null;
            Working = new Working(kept.Name, 0);
            return (kept, new Asked(Book, Now, _appraiser, _desk, new Told(this, kept.Name)), _version);
        }
    }

    private static (object? Value, AnswerState State, string Sentence) Work(Kept kept, Asked asked)
    {
        try
        {
            return (kept.Work(asked), AnswerState.Ready, "");
        }
        catch (OperationCanceledException)
        {
            return (null, AnswerState.Stopped, "");
        }
        catch (OutOfRangeException e)
        {
            return (null, AnswerState.Refused, FormulaCall.Sentence(e));
        }
        catch (Exception e) when (e is BadInputException or FormulaDomainException)
        {
            return (null, AnswerState.Refused, e.Message);
        }
#pragma warning disable CA1031 // A fault in one answer must not take the pages of everybody down.
        catch (Exception e)
#pragma warning restore CA1031
        {
            return (null, AnswerState.Refused, $"a fault of the program's own ({e.GetType().Name}: {e.Message}); please report it");
        }
    }

    /// <summary>Changes whenever the file does; the store writes beside it.</summary>
    private static string Stamp(string path) => string.Join('|', new[] { path, path + "-wal" }.Select(p => new FileInfo(p) is { Exists: true } f
        ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{f.Length}@{f.LastWriteTimeUtc.Ticks}")
        : ""));

    /// <summary>A question, its newest answer, and the state of the book that it was last asked on.</summary>
    private sealed class Kept(string name, Func<Asked, object> work)
    {
        public string Name { get; } = name;

        public Func<Asked, object> Work { get; set; } = work;

        public object? Value { get; set; }

        public AnswerState State { get; set; }

        public string Sentence { get; set; } = "";

        public int Version { get; set; } = -1;

        public long Asked { get; set; }
    }

    /// <summary>Takes the progress of the work to the pages, not more often than people can see.</summary>
    private sealed class Told(OpenBook book, string name) : IProgress<double>
    {
        private long _next;

        public void Report(double value)
        {
            var now = Environment.TickCount64;
            if (now < Interlocked.Read(ref _next))
            {
                return;
            }

            Interlocked.Exchange(ref _next, now + 150);
            book.Working = new Working(name, value);
            book.Changed?.Invoke();
        }
    }
}
