using Gudgeon.Book.Values;
using Gudgeon.Web.Doors;

namespace Gudgeon.Web.Tests.Doors;

/// <summary>Paired devices, kept on the disk.</summary>
public sealed class DevicesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gudgeon-devices-").FullName;

    [Fact]
    public void APairedDeviceIsKnownAfterARestartAndShutOutAfterARevocation()
    {
        var token = new Devices(_folder).Add("bench tablet", "Ada");
        var again = new Devices(_folder);
        var device = again.Find(token)!;
        Assert.Equal(("bench tablet", "Ada"), (device.Name, device.Who));
        again.Revoke(device.Id);
        Assert.Null(again.Find(token));
        Assert.False(new Devices(_folder).Knows(device.Id));
    }

    [Fact]
    public void TheSecretItselfIsNotKept()
    {
        var devices = new Devices(_folder);
        var token = devices.Add("phone", "Ben");
        Assert.DoesNotContain(token, File.ReadAllText(Path.Combine(_folder, "devices.json")), StringComparison.Ordinal);
        Assert.Null(devices.Find(devices.All[0].TokenHash));
        Assert.Null(devices.Find(""));
        Assert.Null(devices.Find(null));
    }

    [Fact]
    public void ADamagedListIsRefusedInASentence()
    {
        File.WriteAllText(Path.Combine(_folder, "devices.json"), "[{");
        Assert.Contains("damaged", Assert.Throws<BadInputException>(() => new Devices(_folder)).Message, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
