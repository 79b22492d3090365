using System.Security.Cryptography;

namespace Gudgeon.Web.Doors;

/// <summary>
/// The short code that lets one device in. It is shown on the host's screen only, serves once, and is replaced after ten
/// minutes or five wrong guesses, so that it cannot be found by trying: five in 29 million.
/// </summary>
/// <param name="clock">The time.</param>
public sealed class PairingCode(TimeProvider clock)
{
    /// <summary>Without letters and digits that are taken for one another.</summary>
    private const string Letters = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";

    private const int Length = 5;
    private const int Guesses = 5;

    private static readonly TimeSpan Life = TimeSpan.FromMinutes(10);

    private readonly Lock _gate = new();
    private string _code = "";
    private DateTimeOffset _until;
    private int _wrong;

    /// <summary>Raised when the code has served or was given up.</summary>
    public event Action? Replaced;

    /// <summary>The code that serves now.</summary>
    public string Now
    {
        get
        {
            lock (_gate)
            {
                return Fresh();
            }
        }
    }

    /// <summary>How long it still serves.</summary>
    public TimeSpan Left => _until - clock.GetUtcNow();

    /// <summary>Whether a code is the one that serves; it has then served.</summary>
    public bool Take(string given)
    {
        bool right, replaced;
        lock (_gate)
        {
            right = CryptographicOperations.FixedTimeEquals(System.Text.Encoding.UTF8.GetBytes(Plain(given)), System.Text.Encoding.UTF8.GetBytes(Fresh()));
            replaced = right || ++_wrong >= Guesses;
            if (replaced)
            {
                _code = "";
            }
        }

        if (replaced)
        {
            Replaced?.Invoke();
        }

        return right;
    }

    private static string Plain(string given) => new([.. given.ToUpperInvariant().Where(char.IsAsciiLetterOrDigit)]);

    private string Fresh()
    {
        if (_code.Length == 0 || clock.GetUtcNow() >= _until)
        {
            _code = RandomNumberGenerator.GetString(Letters, Length);
            _until = clock.GetUtcNow() + Life;
            _wrong = 0;
        }

        return _code;
    }
}
