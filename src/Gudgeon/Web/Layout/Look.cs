using MudBlazor;

namespace Gudgeon.Web.Layout;

/// <summary>Colours and letters: paper and graphite with one petrol accent, letters of the machine's own.</summary>
internal static class Look
{
    private static readonly string[] Letters = ["system-ui", "Segoe UI", "DejaVu Sans", "Arial", "sans-serif"];

    public static readonly MudTheme Theme = new()
    {
        PaletteLight = new PaletteLight
        {
            Primary = "#0b5563",
            Secondary = "#5b4a2f",
            Background = "#f6f5f1",
            Surface = "#ffffff",
            TextPrimary = "#1d2125",
            TextSecondary = "#4b5157",
            ActionDefault = "#3f464c",
            LinesDefault = "#cfccc2",
            LinesInputs = "#767a7e",
            TableLines = "#dddad1",
            Divider = "#d5d2c8",
            Error = "#a3200d",
            Success = "#1f6b3a",
            Warning = "#7a5200",
            Info = "#2f5d8a",
        },
        PaletteDark = new PaletteDark
        {
            Primary = "#6cc3d1",
            PrimaryContrastText = "#0c1a1d",
            Secondary = "#d3bd92",
            Background = "#15181b",
            Surface = "#1e2226",
            TextPrimary = "#e9e7e1",
            TextSecondary = "#b9bcbf",
            ActionDefault = "#c5c8ca",
            LinesDefault = "#3a4046",
            LinesInputs = "#8d949a",
            TableLines = "#343a40",
            Divider = "#3a4046",
            Error = "#ff9482",
            Success = "#7fd09b",
            Warning = "#e8bd62",
            Info = "#90bce8",
        },
        Typography = new Typography
        {
            Default = new DefaultTypography { FontFamily = Letters, FontSize = "0.95rem", LineHeight = "1.45", LetterSpacing = "normal" },
            Button = new ButtonTypography { FontFamily = Letters, TextTransform = "none", FontWeight = "600", LetterSpacing = "normal" },
        },
        LayoutProperties = new LayoutProperties { DefaultBorderRadius = "4px" },
    };
}
