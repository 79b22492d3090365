using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using System.Threading.RateLimiting;
using Gudgeon.Book.Values;
using Gudgeon.Web.Doors;
using Gudgeon.Web.Host;
using Gudgeon.Web.Readings;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.RateLimiting;

namespace Gudgeon.Web;

/// <summary>Serves the pages, from this machine only unless told to share them.</summary>
internal static class Server
{
    private const long LargestRequest = 1024 * 1024;
    private const int TriesPerMinute = 12;

    /// <summary>Name of the rate limit on guesses of the pairing code.</summary>
    public const string Guessing = "guessing";

    /// <summary>The program's own folder on this machine, for paired devices and keys; GUDGEON_HOME names another.</summary>
    public static string Home
    {
        get
        {
            var named = Environment.GetEnvironmentVariable("GUDGEON_HOME");
            var folder = named is { Length: > 0 } ? named : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create), "gudgeon");
            return OperatingSystem.IsWindows()
                ? Directory.CreateDirectory(folder).FullName
                : Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute).FullName;
        }
    }

    /// <summary>IPv4 addresses of this machine in its networks.</summary>
    public static IReadOnlyList<IPAddress> Addresses =>
        [.. NetworkInterface.GetAllNetworkInterfaces()
            .Where(i => i.OperationalStatus == OperationalStatus.Up && i.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .SelectMany(i => i.GetIPProperties().UnicastAddresses)
            .Select(a => a.Address)
            .Where(a => a.AddressFamily == AddressFamily.InterNetwork)];

    /// <summary>The server, ready to be started.</summary>
    /// <param name="workshop">The books.</param>
    /// <param name="port">Port; 0 for any that is free.</param>
    /// <param name="share">Whether to listen on the local network too.</param>
    public static WebApplication Build(Workshop workshop, int port, bool share)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory, ApplicationName = typeof(Server).Assembly.GetName().Name });
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = LargestRequest;
            kestrel.Listen(share ? IPAddress.Any : IPAddress.Loopback, port);
        });
        Logging(builder.Logging);
        Services(builder.Services, workshop);
        var app = builder.Build();
        Pipeline(app, share);
        return app;
    }

    private static void Logging(ILoggingBuilder logging)
    {
        logging.ClearProviders();
        if (Environment.GetEnvironmentVariable("GUDGEON_TRACE") is not null)
        {
            logging.AddSimpleConsole().SetMinimumLevel(LogLevel.Warning);
        }
    }

    private static void Services(IServiceCollection services, Workshop workshop)
    {
        services.AddRazorComponents().AddInteractiveServerComponents(o => o.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(10));
        services.AddDataProtection().PersistKeysToFileSystem(new DirectoryInfo(Path.Combine(Home, "keys"))).SetApplicationName("gudgeon");
        services.AddRateLimiter(limiter =>
        {
            limiter.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
            limiter.OnRejected = async (context, stop) =>
            {
                context.HttpContext.Response.ContentType = "text/plain; charset=utf-8";
                await context.HttpContext.Response.WriteAsync("Too many tries from this device; wait a minute and go back.", stop);
            };
            ReadingsEndpoint.AddLimit(limiter);
            limiter.AddPolicy(Guessing, context => RateLimitPartition.GetFixedWindowLimiter(
                HttpMethods.IsPost(context.Request.Method) ? context.Connection.RemoteIpAddress?.ToString() ?? "" : "look",
                from => new FixedWindowRateLimiterOptions { PermitLimit = from == "look" ? 600 : TriesPerMinute, Window = TimeSpan.FromMinutes(1) }));
        });
        services.AddAntiforgery(o => o.Cookie.SameSite = SameSiteMode.Strict);
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton(workshop);
        services.AddSingleton(new Devices(Home));
        services.AddSingleton<PairingCode>();
        services.AddScoped<Present>();
        services.AddScoped<CircuitHandler, Revocation>();
    }

    private static void Pipeline(WebApplication app, bool share)
    {
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase) { "localhost", "127.0.0.1" };
        if (share)
        {
            names.UnionWith([.. Addresses.Select(a => a.ToString()), Environment.MachineName, $"{Environment.MachineName}.local"]);
        }

        var doorkeeper = new Doorkeeper(app.Services.GetRequiredService<Devices>(), names);
        app.Use((context, next) => SecureHeaders.Invoke(context, _ => next(context)));
        app.Use((context, next) => Answers(context, next));
        app.Use((context, next) => doorkeeper.Invoke(context, _ => next(context)));
        app.UseRouting();
        app.UseRateLimiter();
        app.UseAntiforgery();
        app.MapStaticAssets();
        ReadingsEndpoint.Map(app);
        AsBuilt.AsBuiltEndpoint.Map(app);
        // The policy on frames is set with all others.
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(o => o.ContentSecurityFrameAncestorsPolicy = null);
    }

    /// <summary>What goes wrong is told in one sentence.</summary>
    private static async Task Answers(HttpContext context, RequestDelegate next)
    {
        try
        {
            await next(context);
        }
        catch (BadInputException e) when (!context.Response.HasStarted)
        {
            context.Response.StatusCode = StatusCodes.Status400BadRequest;
            context.Response.ContentType = "text/plain; charset=utf-8";
            await context.Response.WriteAsync(e.Message);
        }
    }
}
