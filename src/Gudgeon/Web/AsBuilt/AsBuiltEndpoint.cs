using Gudgeon.Book.AsBuilt;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Values;
using Gudgeon.Web.Doors;
using Gudgeon.Web.Host;

namespace Gudgeon.Web.AsBuilt;

/// <summary>The as-built book as a file, from the pages.</summary>
internal static class AsBuiltEndpoint
{
    /// <summary>Adds the address.</summary>
    public static void Map(IEndpointRouteBuilder app) => app.MapGet("/book/{key}/as-built.html", async (string key, HttpContext context, Workshop workshop) =>
    {
        if (workshop.Find(key) is not { } open)
        {
            return Results.NotFound();
        }

        var built = open.Ask(Questions.AsBuilt(open)) is { IsReady: true, Value: { } worked } ? worked : await Work(open, context.RequestAborted);
        return Results.Content(await AsBuiltFile.Html(built, Days.Today, summary: false, Visitor.Of(context).Imperial), "text/html; charset=utf-8");
    });

    /// <summary>For whoever comes without having looked at the page, which has it worked.</summary>
    private static Task<AsBuiltBook> Work(OpenBook open, CancellationToken stop) => Task.Run(
        () =>
        {
            var desk = new DutyDesk { Shelf = open.File.Shelf, Cancellation = stop };
            return AsBuiltBook.Of(open.File, new Appraiser(desk), desk);
        },
        stop);
}
