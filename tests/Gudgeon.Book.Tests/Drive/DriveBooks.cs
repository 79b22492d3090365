using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Tests.Demo;

namespace Gudgeon.Book.Tests.Drive;

/// <summary>The invented twin with its blower, and one desk, so that its engine is run once for all the tests of the drive.</summary>
internal static class DriveBooks
{
    /// <summary>Where the engine is run.</summary>
    public static DutyDesk Desk => DemoBooks.Heron.Desk;

    /// <summary>The twin.</summary>
    public static BuildBook Heron => DemoBooks.Named("heron").Book;

    /// <summary>The single, without a blower.</summary>
    public static BuildBook Wren => DemoBooks.Named("wren").Book;

    /// <summary>One finding, uncertainties left out.</summary>
    public static Finding Of(BuildBook book, string id)
    {
        var appraiser = new Appraiser(Desk) { WithUncertainty = false };
        return appraiser.Appraise(book.Now(), CheckCatalogue.All.Where(c => c.Id == id.Split('[')[0])).Single(f => f.Id == id);
    }
}
