using Microsoft.AspNetCore.Components.Server.Circuits;

namespace Gudgeon.Web.Doors;

/// <summary>The visitor of a page that is open; set when the page opens.</summary>
public sealed class Present
{
    /// <summary>Who looks.</summary>
    public Visitor? Visitor { get; set; }
}

/// <summary>Ends the open pages of a device that is shut out: whatever it does next is refused.</summary>
/// <param name="devices">Devices that were let in.</param>
/// <param name="present">Who looks.</param>
internal sealed class Revocation(Devices devices, Present present) : CircuitHandler
{
    public override Func<CircuitInboundActivityContext, Task> CreateInboundActivityHandler(Func<CircuitInboundActivityContext, Task> next) => context =>
        present.Visitor is { IsHost: false } visitor && !devices.Knows(visitor.DeviceId)
            ? throw new UnauthorizedAccessException("this device was shut out")
            : next(context);
}
