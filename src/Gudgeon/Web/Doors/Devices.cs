using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using Gudgeon.Book.Files;
using Gudgeon.Book.Values;

namespace Gudgeon.Web.Doors;

/// <summary>A device that was let in.</summary>
/// <param name="Id">Its number here; never used again.</param>
/// <param name="Name">What people call it: "bench tablet".</param>
/// <param name="Who">Whose hands are on it, unless a reading says otherwise.</param>
/// <param name="TokenHash">SHA-256 of the secret that it keeps, hexadecimal; the secret itself is not kept here.</param>
/// <param name="Paired">When it was let in, UTC.</param>
public sealed record Device(string Id, string Name, string Who, string TokenHash, string Paired);

/// <summary>
/// Devices that were let in, kept on this machine so that a restart does not shut them out. A device proves itself by a
/// secret of 256 bits in a cookie that scripts cannot read.
/// </summary>
public sealed class Devices
{
    private readonly Lock _gate = new();
    private readonly string _file;
    private List<Device> _known;

    /// <param name="folder">The program's own folder on this machine.</param>
    /// <exception cref="BadInputException">The list is there and cannot be read.</exception>
    public Devices(string folder)
    {
        _file = Path.Combine(folder, "devices.json");
        try
        {
            _known = File.Exists(_file) ? JsonSerializer.Deserialize<List<Device>>(AtomicFile.Read(_file)) ?? [] : [];
        }
        catch (JsonException)
        {
            throw new BadInputException($"the list of paired devices '{_file}' is damaged; remove it, and pair the devices again");
        }
    }

    /// <summary>Raised when a device was let in or shut out.</summary>
    public event Action? Changed;

    /// <summary>Devices that may come in, oldest first.</summary>
    public IReadOnlyList<Device> All
    {
        get
        {
            lock (_gate)
            {
                return [.. _known];
            }
        }
    }

    /// <summary>Lets a device in.</summary>
    /// <returns>The secret that it must keep.</returns>
    public string Add(string name, string who)
    {
        var token = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(32));
        var id = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(6));
        Keep(known => [.. known, new Device(id, name, who, Hash(token), DateTime.UtcNow.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture))]);
        return token;
    }

    /// <summary>Shuts a device out.</summary>
    public void Revoke(string id) => Keep(known => known.FindAll(d => d.Id != id));

    /// <summary>The device that keeps this secret; null when none does.</summary>
    public Device? Find(string? token) => token is { Length: 64 } && Hash(token) is var hash ? All.FirstOrDefault(d => d.TokenHash == hash) : null;

    /// <summary>Whether a device may still come in.</summary>
    public bool Knows(string id) => All.Any(d => d.Id == id);

    private static string Hash(string token) => Convert.ToHexStringLower(SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(token)));

    private void Keep(Func<List<Device>, List<Device>> edit)
    {
        lock (_gate)
        {
            var after = edit(_known);
            AtomicFile.Write(_file, JsonSerializer.Serialize(after));
            _known = after;
        }

        Changed?.Invoke();
    }
}
