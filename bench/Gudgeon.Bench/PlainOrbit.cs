namespace Gudgeon.Bench;

/// <summary>
/// An orbit written out as a plain loop for comparison: short film in Booker's closed form, load linear between its angles,
/// fourth-order Runge-Kutta with one step for each of them, marched until it closes.
/// </summary>
internal static class PlainOrbit
{
    /// <summary>Marches it and gives the greatest eccentricity ratio.</summary>
    public static double March(double[] x, double[] y, double[] turn, double slenderness, double perRadian)
    {
        var step = 4 * Math.PI / x.Length;
        double px = 0, py = 0, greatest = 0;
        for (var cycle = 0; cycle < 8; cycle++)
        {
            var (startX, startY) = (px, py);
            greatest = 0;
            for (var i = 0; i < x.Length; i++)
            {
                var n = i + 1 == x.Length ? 0 : i + 1;
                double mx = (x[i] + x[n]) / 2, my = (y[i] + y[n]) / 2, mt = (turn[i] + turn[n]) / 2;
                Slope(px, py, x[i], y[i], turn[i], slenderness, perRadian, out var ax, out var ay);
                Slope(px + (step / 2 * ax), py + (step / 2 * ay), mx, my, mt, slenderness, perRadian, out var bx, out var by);
                Slope(px + (step / 2 * bx), py + (step / 2 * by), mx, my, mt, slenderness, perRadian, out var cx, out var cy);
                Slope(px + (step * cx), py + (step * cy), x[n], y[n], turn[n], slenderness, perRadian, out var dx, out var dy);
                px += step / 6 * (ax + (2 * bx) + (2 * cx) + dx);
                py += step / 6 * (ay + (2 * by) + (2 * cy) + dy);
                greatest = Math.Max(greatest, Math.Sqrt((px * px) + (py * py)));
            }

            if (Math.Sqrt(((px - startX) * (px - startX)) + ((py - startY) * (py - startY))) < 1e-5)
            {
                break;
            }
        }

        return greatest;
    }

    private static void Slope(double px, double py, double x, double y, double turn, double slenderness, double perRadian, out double dx, out double dy)
    {
        var size = Math.Sqrt((x * x) + (y * y));
        double ux = x / size, uy = y / size;
        double along = (px * ux) + (py * uy), across = (py * ux) - (px * uy);
        var room = 1 - along;
        var root = Math.Sqrt(room);
        var square = slenderness * slenderness;
        double moveAlong = room * room * root / (Math.PI * square), moveAcross = -4 * across * room * root / (Math.PI * Math.PI * square);
        var scale = size * perRadian;
        dx = (scale * ((moveAlong * ux) - (moveAcross * uy))) - (turn * py);
        dy = (scale * ((moveAlong * uy) + (moveAcross * ux))) + (turn * px);
    }
}
