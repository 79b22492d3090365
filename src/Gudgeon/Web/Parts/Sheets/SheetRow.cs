namespace Gudgeon.Web.Parts.Sheets;

/// <summary>A row of a sheet's table.</summary>
/// <param name="Name">What it is about: "inlet.1.2".</param>
/// <param name="Cells">Its cells, under the headings.</param>
public sealed record SheetRow(string Name, IReadOnlyList<string> Cells);
