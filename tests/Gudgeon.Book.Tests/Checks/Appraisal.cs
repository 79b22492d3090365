using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;

namespace Gudgeon.Book.Tests.Checks;

/// <summary>Shorthand for findings.</summary>
internal static class Appraisal
{
    /// <summary>One finding with its uncertainty, worked afresh.</summary>
    public static Finding Of(BuildBook book, string check, string index = "") => new Appraiser(new DutyDesk()).Appraise(CheckCatalogue.Find(check), index, book.Now());

    /// <summary>The value and the reserve are what was worked by hand, to nine digits.</summary>
    public static void Is(this Finding finding, double value, double reserve, Verdict verdict)
    {
        Assert.Equal([], finding.Missing);
        Assert.Equal(value, finding.Judgement!.Value, Math.Abs(value) * 1e-9);
        Assert.Equal(reserve, finding.Reserve, Math.Abs(reserve) * 1e-9);
        Assert.Equal(verdict, finding.Verdict);
    }
}
