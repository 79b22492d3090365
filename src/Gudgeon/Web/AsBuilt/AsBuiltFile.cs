using System.ComponentModel;
using System.Diagnostics;
using Gudgeon.Book.AsBuilt;
using Gudgeon.Book.Values;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.Logging.Abstractions;

namespace Gudgeon.Web.AsBuilt;

/// <summary>The as-built book as a file: HTML by the pages' own components, PDF by an installed browser.</summary>
internal static class AsBuiltFile
{
    private static readonly string[] Browsers = ["chromium", "chromium-browser", "google-chrome", "microsoft-edge", "chrome", "msedge"];

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    /// <summary>The book as one HTML page that needs nothing else.</summary>
    /// <param name="built">The book.</param>
    /// <param name="made">Day on which it is made.</param>
    /// <param name="summary">Whether only the page for scrutineers is wanted.</param>
    /// <param name="imperial">Whether in inch units.</param>
    public static async Task<string> Html(AsBuiltBook built, DateOnly made, bool summary, bool imperial)
    {
        using var services = new ServiceCollection().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            var parameters = ParameterView.FromDictionary(new Dictionary<string, object?>(StringComparer.Ordinal)
            {
                [nameof(AsBuiltDocument.Built)] = built,
                [nameof(AsBuiltDocument.Made)] = Days.Written(made),
                [nameof(AsBuiltDocument.Summary)] = summary,
                [nameof(AsBuiltDocument.Imperial)] = imperial,
                [nameof(AsBuiltDocument.Style)] = Style(),
            });
            return (await renderer.RenderComponentAsync<AsBuiltDocument>(parameters)).ToHtmlString();
        });
    }

    /// <summary>Prints an HTML file to a PDF beside it.</summary>
    /// <returns>The PDF.</returns>
    /// <exception cref="BadInputException">There is no browser that can, or it failed; the HTML stays.</exception>
    public static string Pdf(string html)
    {
        var browser = Browsers.Select(OnPath).FirstOrDefault(b => b is not null)
            ?? throw new BadInputException($"--pdf: no Chromium-family browser is installed here to print it; '{html}' is written, and any browser prints it");
        var pdf = Path.ChangeExtension(html, ".pdf");
        File.Delete(pdf);
        var profile = Directory.CreateTempSubdirectory("gudgeon-print-");
        try
        {
            var start = new ProcessStartInfo(browser) { UseShellExecute = false, RedirectStandardError = true, RedirectStandardOutput = true };
            foreach (var word in (string[])["--headless", "--no-sandbox", "--disable-gpu", "--no-first-run", "--no-pdf-header-footer", $"--user-data-dir={profile.FullName}", $"--print-to-pdf={Path.GetFullPath(pdf)}", new Uri(Path.GetFullPath(html)).AbsoluteUri])
            {
                start.ArgumentList.Add(word);
            }

            Print(start);
        }
        finally
        {
            profile.Delete(recursive: true);
        }

        return File.Exists(pdf) ? pdf : throw new BadInputException($"--pdf: {Path.GetFileName(browser)} made none; '{html}' is written, and any browser prints it");
    }

    private static void Print(ProcessStartInfo start)
    {
        try
        {
            using var process = Process.Start(start)!;
            _ = process.StandardError.ReadToEndAsync();
            _ = process.StandardOutput.ReadToEndAsync();
            if (!process.WaitForExit(Patience))
            {
                process.Kill(entireProcessTree: true);
            }
        }
        catch (Win32Exception e)
        {
            throw new BadInputException($"--pdf: {Path.GetFileName(start.FileName)} cannot be started: {e.Message}");
        }
    }

    private static string? OnPath(string name) => (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
        .SelectMany(folder => (string[])[Path.Combine(folder, name), Path.Combine(folder, name + ".exe")])
        .FirstOrDefault(File.Exists);

    private static string Style()
    {
        using var stream = typeof(AsBuiltFile).Assembly.GetManifestResourceStream("app.css")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
