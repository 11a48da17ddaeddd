using System.Text;

namespace PanelService.Drawing.Drafting;

/// <summary>
/// Lines at 45° across a box, computed and clipped here: an SVG pattern would need an id, and ids clash when a
/// page shows many drawings. The lines of all boxes lie on one grid, so that neighbours match.
/// </summary>
internal static class Hatching
{
    /// <summary>The path of the lines x + y = n · gap within the box.</summary>
    public static string Lines(Box box, double gap)
    {
        var path = new StringBuilder();
        for (double n = Math.Ceiling((box.X + box.Y) / gap); n * gap <= box.Right + box.Bottom; n++)
        {
            double sum = n * gap;
            double x1 = Math.Max(box.X, sum - box.Bottom);
            double x2 = Math.Min(box.Right, sum - box.Y);
            if (x2 - x1 > 0.1)
            {
                path.Append(Ink.Line(x1, sum - x1, x2, sum - x2));
            }
        }

        return path.ToString();
    }
}
