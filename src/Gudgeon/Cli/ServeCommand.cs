using System.ComponentModel;
using System.Globalization;
using System.Net.Sockets;
using Gudgeon.Book.Values;
using Gudgeon.Web;
using Gudgeon.Web.Doors;
using Gudgeon.Web.Host;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Spectre.Console.Cli;

namespace Gudgeon.Cli;

/// <summary>gudgeon serve: the pages.</summary>
internal sealed class ServeCommand : AsyncCommand<ServeCommand.Settings>
{
    internal sealed class Settings : CommandSettings
    {
        [CommandArgument(0, "[BOOK|FOLDER]")]
        [Description("The book, or a folder of books; this folder when left out.")]
        public string? Path { get; init; }

        [CommandOption("--share")]
        [Description("Listen on the local network too; each device is paired with a code from this screen.")]
        public bool Share { get; init; }

        [CommandOption("--port <NUMBER>")]
        [Description("Port; 5180 when left out, 0 for any that is free.")]
        public string Port { get; init; } = "5180";
    }

    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var port = int.TryParse(settings.Port, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= 65535
            ? number
            : throw new BadInputException($"--port: given '{settings.Port}', wanted a number from 0 to 65535");
        using var workshop = new Workshop(settings.Path ?? Environment.GetEnvironmentVariable("GUDGEON_BOOK") ?? ".");
        await using var app = Server.Build(workshop, port, settings.Share);
        await Start(app, port, cancellationToken);
        var url = new Uri(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());
        Out.Line($"{workshop.Place} is open at http://127.0.0.1:{url.Port}/  (Ctrl+C ends it)");
        if (settings.Share)
        {
            Invite(app.Services.GetRequiredService<PairingCode>(), url.Port);
        }

        Out.Flush();
        Warm(workshop);
        await app.WaitForShutdownAsync(cancellationToken);
        return 0;
    }

    private static async Task Start(WebApplication app, int port, CancellationToken stop)
    {
        try
        {
            await app.StartAsync(stop);
        }
        catch (Exception e) when (e is IOException or SocketException)
        {
            throw new BadInputException($"--port: port {port.ToString(CultureInfo.InvariantCulture)} is taken by another program, or not allowed; try another");
        }
    }

    /// <summary>Shows the code on the host's screen, and a new one whenever it has served.</summary>
    private static void Invite(PairingCode code, int port)
    {
        void Show()
        {
            var address = Invitation.Address(port, code.Now);
            Out.Line();
            Out.Line($"To pair a device, open {Invitation.Address(port)} on it and type {code.Now}, or scan:");
            Out.Line(Invitation.InText(address));
            Out.Line("What travels between is not encrypted: share on a network that you trust.");
            Out.Flush();
        }

        Show();
        code.Replaced += Show;
    }

    /// <summary>Has the answers of the first page worked before anybody asks.</summary>
    private static void Warm(Workshop workshop)
    {
        try
        {
            if (workshop.Keys is [var only] && workshop.Find(only) is { } book)
            {
                book.Ask(Questions.Findings);
                book.Ask(Questions.Ladder);
            }
        }
        catch (BadInputException)
        {
            // The page of that book says what is wrong with it.
        }
    }
}
