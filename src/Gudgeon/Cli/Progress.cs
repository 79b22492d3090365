namespace Gudgeon.Cli;

/// <summary>Progress of long work on the error stream, so that the output stays clean; nothing when that is no terminal.</summary>
internal sealed class Progress : IProgress<double>
{
    private readonly Lock _gate = new();
    private readonly string _what;
    private int _shown = -1;

    private Progress(string what) => _what = what;

    public static IProgress<double>? OnTerminal(string what) => Console.IsErrorRedirected ? null : new Progress(what);

    public void Report(double value)
    {
        lock (_gate)
        {
            var percent = (int)(value * 100);
            if (percent == _shown)
            {
                return;
            }

            _shown = percent;
            Console.Error.Write(percent >= 100 ? $"\r{new string(' ', _what.Length + 6)}\r" : $"\r{_what} {percent,3} %");
        }
    }
}
