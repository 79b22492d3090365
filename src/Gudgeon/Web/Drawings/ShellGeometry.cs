using Gudgeon.Book.Drawings;

namespace Gudgeon.Web.Drawings;

/// <summary>Journal, shells and housing end on, px. All to one scale but the clearance, which is drawn larger by a stated factor.</summary>
public sealed class ShellGeometry
{
    /// <summary>Size of the drawing, px.</summary>
    public const double Width = 420, Height = 340;

    /// <summary>Middle.</summary>
    public const double X = 210, Y = 170;

    private const double HousingRadius = 120, RoomForGap = 34, UsualHousing = 48e-3, UsualShellShare = 0.04, UsualClearance = 40e-6;

    private static readonly int[] Factors = [1000, 500, 200, 100, 50, 20, 10];

    /// <param name="fit">The numbers.</param>
    /// <param name="imperial">Whether in inch units.</param>
    public ShellGeometry(ShellFit fit, bool imperial)
    {
        var housing = fit.Housing ?? (fit.Journal + (2 * fit.Shell) + UsualClearance) ?? UsualHousing;
        Scale = 2 * HousingRadius / housing;
        Housing = HousingRadius;
        ShellInside = HousingRadius - ((fit.Shell ?? (housing * UsualShellShare)) * Scale);
        var clearance = fit.Clearance ?? UsualClearance;
        Factor = Factors.FirstOrDefault(f => Math.Abs(clearance) / 2 * Scale * f <= RoomForGap, Factors[^1]);
        Journal = ShellInside - (clearance / 2 * Scale * Factor);
        (HousingKnown, ShellKnown, JournalKnown, ClearanceKnown) = (fit.Housing is not null, fit.Shell is not null, fit.Journal is not null, fit.Clearance is not null);
        Numbers =
        [
            Told.Length("housing, cap tightened", fit.Housing, imperial),
            Told.Length("shell at the crown", fit.Shell, imperial),
            Told.Length("journal", fit.Journal, imperial),
            Told.Length("diametral clearance", fit.Clearance, imperial),
            Told.Length("least wanted", fit.Least, imperial),
            Told.Length("greatest wanted", fit.Most, imperial),
        ];
    }

    /// <summary>px for each metre.</summary>
    public double Scale { get; }

    /// <summary>How many times as large the clearance is drawn.</summary>
    public int Factor { get; }

    /// <summary>Radii.</summary>
    public double Housing { get; }

    /// <inheritdoc cref="Housing"/>
    public double ShellInside { get; }

    /// <summary>Radius of the journal; greater than the shell's inside when it does not go in.</summary>
    public double Journal { get; }

    /// <summary>Whether it is known; else drawn dashed.</summary>
    public bool HousingKnown { get; }

    /// <inheritdoc cref="HousingKnown"/>
    public bool ShellKnown { get; }

    /// <inheritdoc cref="HousingKnown"/>
    public bool JournalKnown { get; }

    /// <inheritdoc cref="HousingKnown"/>
    public bool ClearanceKnown { get; }

    /// <summary>Every number, for the list.</summary>
    public IReadOnlyList<Told> Numbers { get; }
}
