using System.Text;
using Gudgeon.Book.Drawings;
using Gudgeon.Calc.Catalogue;

namespace Gudgeon.Web.Drawings;

/// <summary>One spring at one height, px.</summary>
/// <param name="X">Middle.</param>
/// <param name="Name">"valve shut".</param>
/// <param name="Top">Under the retainer.</param>
/// <param name="Bottom">On the spacer, or on the seat when there is none.</param>
/// <param name="Known">Whether its height is known.</param>
public sealed record DrawnSpring(double X, string Name, double Top, double Bottom, bool Known);

/// <summary>A valve spring shut, at full lift and solid, side by side on one seat, all to one scale, px.</summary>
public sealed class SpringGeometry
{
    /// <summary>Size of the drawing, px.</summary>
    public const double Width = 720, Height = 350;

    /// <summary>The spring seat in the head.</summary>
    public const double Seat = 310;

    /// <summary>Half the width of a spring; widths are not to scale.</summary>
    public const double Half = 48;

    private const double Tallest = 240, UsualHeight = 40e-3, UsualLift = 9e-3, UsualSolid = 24e-3, UsualWire = 3.5e-3;

    /// <param name="heights">The numbers.</param>
    /// <param name="imperial">Whether in inch units.</param>
    public SpringGeometry(SpringHeights heights, bool imperial)
    {
        var installed = heights.Installed ?? UsualHeight;
        Scale = Tallest / installed;
        var spacer = heights.Spacer ?? 0;
        Spacer = spacer * Scale;
        var (shut, lift, solid) = (installed - spacer, heights.Lift ?? UsualLift, heights.Solid ?? UsualSolid);
        Coils = heights.Coils is { } coils ? (int)Math.Round(coils) : 5;
        Wire = (heights.Wire ?? UsualWire) * Scale;
        Springs =
        [
            Drawn(70, "valve shut", shut, heights.Shut is not null),
            Drawn(290, "full lift", shut - lift, heights.Open is not null),
            Drawn(560, "solid", solid, heights.Solid is not null),
        ];
        Numbers =
        [
            Told.Length("installed, spacer left out", heights.Installed, imperial),
            heights.Spacer is null ? new Told("spacer", "none", Known: true) : Told.Length("spacer", heights.Spacer, imperial),
            Told.Length("height, valve shut", heights.Shut, imperial),
            Told.Length("full lift", heights.Lift, imperial),
            Told.Length("height at full lift", heights.Open, imperial),
            Told.Length("solid height", heights.Solid, imperial),
            Told.Length("coil-bind margin", heights.Margin, imperial),
            Told.Of("load, valve shut", heights.SeatLoad, Dimension.Force, "N", imperial),
            Told.Of("load at full lift", heights.OpenLoad, Dimension.Force, "N", imperial),
        ];
        var (atShut, atOpen, atSolid) = (Springs[0], Springs[1], Springs[2]);
        Uprights =
        [
            new Upright(atShut.X + Half + 16, atShut.Top, atShut.Bottom, Numbers[2] with { Name = "height" }),
            new Upright(atOpen.X + Half + 16, atOpen.Top, atOpen.Bottom, Numbers[4] with { Name = "height" }),
            new Upright(atSolid.X + Half + 16, atSolid.Top, atSolid.Bottom, Numbers[5] with { Name = "height" }),
            new Upright(atSolid.X - Half - 14, Math.Min(atOpen.Top, atSolid.Top), Math.Max(atOpen.Top, atSolid.Top), Numbers[6]) { LeftWords = true },
        ];
    }

    /// <summary>px for each metre of height.</summary>
    public double Scale { get; }

    /// <summary>Thickness of the spacer; 0 without one.</summary>
    public double Spacer { get; }

    /// <summary>Active coils drawn.</summary>
    public int Coils { get; }

    /// <summary>Thickness of the wire.</summary>
    public double Wire { get; }

    /// <summary>Shut, at full lift, solid.</summary>
    public IReadOnlyList<DrawnSpring> Springs { get; }

    /// <summary>Every number, for the list.</summary>
    public IReadOnlyList<Told> Numbers { get; }

    /// <summary>Dimension lines.</summary>
    public IReadOnlyList<Upright> Uprights { get; }

    /// <summary>The wire's path of a spring: a line from side to side for each half coil.</summary>
    public string Path(DrawnSpring spring)
    {
        var turns = 2 * (Coils + 2);
        var (from, to) = (spring.Bottom - (Wire / 2), spring.Top + (Wire / 2));
        var path = new StringBuilder();
        for (var i = 0; i <= turns; i++)
        {
            var x = spring.X + ((i % 2 == 0 ? -1 : 1) * (Half - (Wire / 2)));
            path.Append(i == 0 ? 'M' : 'L').Append(Px.Of(x)).Append(' ').Append(Px.Of(from + ((to - from) * i / turns)));
        }

        return path.ToString();
    }

    private DrawnSpring Drawn(double x, string name, double height, bool known) => new(x, name, Seat - Spacer - (height * Scale), Seat - Spacer, known);
}
