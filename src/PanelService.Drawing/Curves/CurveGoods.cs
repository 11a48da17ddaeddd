using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Curves;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Curves;

/// <summary>Rows under the chart: panels, then every good with how many of it are bought, boxed where one is added.</summary>
/// <param name="Curve">The curve.</param>
/// <param name="Goods">The goods, each with its counts by number of times.</param>
internal sealed record CurveGoods(BatchCurve Curve, ImmutableArray<(string Name, ImmutableArray<int> Counts)> Goods)
{
    private const int MostRows = 10;
    private const double RowHeight = 4.6;
    private const double Letters = 2.8;
    private const double NameLetters = 2.5;

    /// <summary>How high the rows are, with what the boxes mean.</summary>
    public double Height => (Math.Min(Goods.Length, MostRows) + (Goods.Length > MostRows ? 3 : 2)) * RowHeight;

    /// <summary>Of a curve.</summary>
    public static CurveGoods Of(BatchCurve curve)
    {
        var names = curve.Points.SelectMany(point => point.Plan.Buy).Where(purchase => purchase.SaleUnit != SaleUnit.Delivery)
            .Select(purchase => (purchase.Id, purchase.Name, purchase.SaleUnit)).Distinct();
        return new CurveGoods(curve,
        [
            .. names.Select(good => (
                Named(good.Name, good.SaleUnit),
                curve.Points.Select(point => point.Plan.Buy.Where(purchase => (purchase.Id, purchase.Name, purchase.SaleUnit) == good).Sum(purchase => purchase.Quantity)).ToImmutableArray())),
        ]);
    }

    /// <summary>Draws.</summary>
    /// <param name="axis">Where each number of times stands.</param>
    /// <param name="top">Where the rows begin.</param>
    /// <param name="left">Where the names begin.</param>
    public XElement Draw(CurveAxis axis, double top, double left)
    {
        double column = axis.Field.Width / Curve.Points.Length;
        var group = Ink.Group("goods", Row(axis, top, (left, column), "panels", [.. Curve.Points.Select(point => point.Panels)], boxed: false));
        double y = top + RowHeight;
        foreach (var (name, counts) in Goods.Take(MostRows))
        {
            group.Add(Row(axis, y, (left, column), name, counts, boxed: true));
            y += RowHeight;
        }

        if (Goods.Length > MostRows)
        {
            group.Add(CurveText.At(string.Create(CultureInfo.InvariantCulture, $"and {Goods.Length - MostRows} more goods"), left, y, Letters, 60));
            y += RowHeight;
        }

        group.Add(CurveText.At("boxed: more of it than the time before", axis.Field.X, y + 0.6, NameLetters, 80, ("fill", Ink.Accent)));

        return group;
    }

    /// <summary>How many panels each number of times makes: between the two fields, since both stand over it.</summary>
    /// <param name="axis">Where each number of times stands.</param>
    /// <param name="y">The line of letters.</param>
    /// <param name="left">Where the name begins.</param>
    public XElement Panels(CurveAxis axis, double y, double left) =>
        Row(axis, y, (left, axis.Field.Width / Curve.Points.Length), "panels", [.. Curve.Points.Select(point => point.Panels)], boxed: false);

    private static XElement Row(CurveAxis axis, double y, (double Left, double Column) at, string name, ImmutableArray<int> counts, bool boxed)
    {
        var row = Ink.Group("row", CurveText.At(name, at.Left, y, NameLetters, axis.Field.X - at.Left));
        double size = Math.Min(Letters, at.Column / 2.6);
        for (int i = 0; i < counts.Length; i++)
        {
            double x = axis.X(i + 1);
            int before = i == 0 ? 0 : counts[i - 1];
            if (boxed && counts[i] > before)
            {
                row.Add(Ink.Rectangle(new Box(x - (at.Column * 0.42), y - 3.2, at.Column * 0.84, 4.2), Ink.Fine, Ink.Fill("none"), Ink.Stroke(Ink.Accent), Ink.Weight(0.25)));
            }

            string text = counts[i] == 0 ? "·" : counts[i].ToString(CultureInfo.InvariantCulture);
            row.Add(CurveText.At(text, x, y, size, at.Column, CurveText.Centred));
        }

        return row;
    }

    private static string Named(string name, SaleUnit unit) => unit switch
    {
        SaleUnit.Sheet => $"{name}, sheets",
        SaleUnit.Step => $"{name}, by length",
        SaleUnit.Roll => $"{name}, rolls",
        _ => name,
    };
}
