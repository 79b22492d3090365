using System.Globalization;
using System.Text.Json;
using System.Threading.RateLimiting;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Store;
using Gudgeon.Book.Values;
using Gudgeon.Web.Doors;
using Gudgeon.Web.Host;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.RateLimiting;

namespace Gudgeon.Web.Readings;

/// <summary>
/// Where devices send their readings. What can never be taken is answered with 400 or 409 and one sentence; what may be
/// taken later, because the book cannot be written now, with 503, so that the device keeps it and tries again.
/// </summary>
internal static class ReadingsEndpoint
{
    private const string Limit = "readings";
    private const int PerSecond = 20;
    private const int LargestReading = 16 * 1024;
    private const int LargestSheet = 1024 * 1024;

    /// <summary>Adds the rate at which one device may send.</summary>
    public static void AddLimit(RateLimiterOptions limiter) => limiter.AddPolicy(Limit, context => RateLimitPartition.GetTokenBucketLimiter(
        Visitor.Of(context).DeviceId,
        _ => new TokenBucketRateLimiterOptions { TokenLimit = 2 * PerSecond, TokensPerPeriod = PerSecond, ReplenishmentPeriod = TimeSpan.FromSeconds(1) }));

    /// <summary>Adds the addresses.</summary>
    public static void Map(IEndpointRouteBuilder app)
    {
        var book = app.MapGroup("/book/{key}").RequireRateLimiting(Limit).AddEndpointFilter(OneSentence);
        book.MapPost("/readings", Take).WithMetadata(new RequestSizeLimitAttribute(LargestReading));
        book.MapPost("/sheets", TakeSheet).WithMetadata(new RequestSizeLimitAttribute(LargestSheet));
        book.MapPost("/photos", TakePhoto).WithMetadata(new RequestSizeLimitAttribute(StoredBook.LargestFile));
        book.MapGet("/verdicts", Verdicts);
    }

    private static async Task<IResult> Take(string key, HttpContext context, Workshop workshop)
    {
        if (!context.Request.HasJsonContentType())
        {
            return Sentence(StatusCodes.Status415UnsupportedMediaType, "given another type of content, wanted a reading as application/json");
        }

        var sent = await context.Request.ReadFromJsonAsync<SentReading>(context.RequestAborted) ?? throw new BadInputException("given null, wanted a reading");
        if (Open(workshop, key, out var refusal) is not { } open)
        {
            return refusal!;
        }

        var reading = sent.Read(open.Book);
        try
        {
            var after = await open.EditAsync(new Hand(reading.By, Visitor.Of(context).Device), reading.AddTo);
            return Results.Json(Acknowledged(after, reading));
        }
        catch (BadInputException e)
        {
            return Sentence(reading.IsKnownTo(open) ? StatusCodes.Status409Conflict : StatusCodes.Status503ServiceUnavailable, e.Message);
        }
    }

    /// <summary>Takes many readings pasted as CSV: all of them or none.</summary>
    private static async Task<IResult> TakeSheet(string key, string with, string by, string on, HttpContext context, Workshop workshop)
    {
        if (Open(workshop, key, out var refusal) is not { } open)
        {
            return refusal!;
        }

        using var body = new StreamReader(context.Request.Body);
        var readings = ReadingSheet.Read(await body.ReadToEndAsync(context.RequestAborted), "the pasted readings", with, by, on);
        var taken = 0;
        var after = await open.EditAsync(new Hand(by, Visitor.Of(context).Device), file => file.Measure(readings, out taken));
        return Results.Json(new { sentence = $"{taken} of {readings.Count} readings are in the book{(taken < readings.Count ? "; the others were there before" : "")}.", warnings = after.Warnings });
    }

    private static object Acknowledged(BookFile after, TakenReading reading)
    {
        var added = after.Book.Measurements.FirstOrDefault(m => m.Id == reading.Id);
        return new { id = reading.Id, repeated = after.Repeated, revision = added?.Revision ?? after.Revision, kept = added?.Value.Content.ToString(), warnings = after.Warnings, holds = Bench.Holds(after.Book.Now(), reading.Address) };
    }

    private static async Task<IResult> TakePhoto(string key, string path, string name, HttpContext context, Workshop workshop)
    {
        if (Open(workshop, key, out var refusal) is not { } open)
        {
            return refusal!;
        }

        if (open.File is not StoredBook)
        {
            return Sentence(StatusCodes.Status400BadRequest, $"the book '{key}' is kept as JSON, which holds no pictures; gudgeon import makes one that does");
        }

        using var content = new MemoryStream();
        await context.Request.Body.CopyToAsync(content, context.RequestAborted);
        await open.EditAsync(Visitor.Of(context).Hand, file => ((StoredBook)file).Attach(name, content.ToArray(), path));
        return Results.Json(new { sentence = $"'{name}' is attached to {path}" });
    }

    private static IResult Verdicts(string key, string path, HttpContext context, Workshop workshop)
    {
        var address = FieldCatalogue.Address(path);
        return Open(workshop, key, out var refusal) is { } open ? Results.Json(Resting.On(open, address, Visitor.Of(context).Imperial)) : refusal!;
    }

    /// <summary>The book; null, and why, when there is none or it cannot be read now.</summary>
    private static OpenBook? Open(Workshop workshop, string key, out IResult? refusal)
    {
        try
        {
            var open = workshop.Find(key);
            refusal = open is null ? Sentence(StatusCodes.Status404NotFound, $"there is no book '{key}' here") : null;
            return open;
        }
        catch (BadInputException e)
        {
            refusal = Sentence(StatusCodes.Status503ServiceUnavailable, e.Message);
            return null;
        }
    }

    /// <summary>Says in one sentence what was wrong with a request.</summary>
    private static async ValueTask<object?> OneSentence(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        try
        {
            return await next(context);
        }
        catch (BadInputException e)
        {
            return Sentence(StatusCodes.Status400BadRequest, e.Message);
        }
        catch (JsonException)
        {
            return Sentence(StatusCodes.Status400BadRequest, "given what is no JSON of a reading, wanted an object with id, path, text, with, by and on");
        }
        catch (BadHttpRequestException e) when (e.StatusCode == StatusCodes.Status413PayloadTooLarge)
        {
            return Sentence(e.StatusCode, string.Create(CultureInfo.InvariantCulture, $"given too much, wanted a reading of at most {LargestReading / 1024} KiB or a photo of at most {StoredBook.LargestFile / 1048576} MiB"));
        }
    }

    private static IResult Sentence(int status, string sentence) => Results.Json(new { sentence }, statusCode: status);
}
