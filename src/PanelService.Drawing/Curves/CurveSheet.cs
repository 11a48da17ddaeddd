using System.Globalization;
using System.Xml.Linq;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Curves;
using PanelService.Planning.Measures;

namespace PanelService.Drawing.Curves;

/// <summary>The chart on paper: two fields over one scale of times, and under them the goods in rows.</summary>
internal static class CurveSheet
{
    private const double Width = 186;
    private const double Left = 56;
    private const double Right = 180;
    private const double EachTop = 30;
    private const double EachHeight = 56;
    private const double CashTop = 103;
    private const double CashHeight = 26;
    private const double GoodsTop = 138;
    private const double Figures = 2.3;
    private const double Letters = 2.8;
    private const double Dot = 0.8;

    /// <summary>Draws.</summary>
    public static string Render(BatchCurve curve)
    {
        var goods = CurveGoods.Of(curve);
        double height = GoodsTop + goods.Height + 6;
        string heading = Heading(curve);
        string batch = Lettering.Clean(curve.Order.Title);
        return new XElement(
            Ink.Svg + "svg",
            new XAttribute("viewBox", $"0 0 {Ink.Number(Width)} {Ink.Fine(height)}"),
            new XAttribute("width", Ink.Number(Width) + "mm"),
            new XAttribute("height", Ink.Fine(height) + "mm"),
            new XAttribute("class", "drawing batch-curve"),
            new XAttribute("role", "img"),
            new XAttribute("font-family", Lettering.Family),
            Ink.Fill(Ink.Black),
            Ink.Title(batch.Length == 0 ? heading : $"{batch}: {heading}"),
            new XElement(Ink.Svg + "desc", CurveWords.Describe(curve)),
            Ink.Rectangle(new Box(0, 0, Width, height), Ink.Fill(Ink.White), new XAttribute("class", "paper")),
            CurveText.At(batch.Length == 0 ? "Batch curve" : batch, 6, 10, 5, Right - 6, CurveText.Bold),
            CurveText.At(heading, 6, 15, Letters, Right - 6),
            HollowKey(curve),
            Each(curve),
            goods.Panels(Axis(curve, EachTop, EachHeight, 1), EachTop + EachHeight + 4, 6),
            Cash(curve),
            goods.Draw(Axis(curve, CashTop, CashHeight, 1), GoodsTop, 6)).ToString(SaveOptions.DisableFormatting);
    }

    private static string Heading(BatchCurve curve) => string.Create(
        CultureInfo.InvariantCulture, $"the order made 1 to {curve.Points.Length} times over, each really planned");

    private static CurveAxis Axis(BatchCurve curve, double top, double height, decimal greatest) =>
        new(new Box(Left, top, Right - Left, height), curve.Points.Length, Math.Max(greatest, 0.01m));

    private static XElement Each(BatchCurve curve)
    {
        bool withTools = curve.Points.Any(point => !point.Plan.Cost.Tools.IsEmpty && point.Shop is not null);
        var axis = Axis(curve, EachTop, EachHeight, curve.Points.Max(point => new[] { OwnEach(curve, point), ShopEach(curve, point) ?? 0, withTools ? ToolsEach(curve, point) : 0 }.Max()));
        var group = Ink.Group("each", Scale(axis, curve, $"one panel, {curve.Order.Currency.Code}"));
        if (curve.Points[0].Shop is not null)
        {
            group.Add(
                Curve(axis, curve, point => ShopEach(curve, point) ?? 0, Ink.Accent, 0.35, "shop"),
                CurveText.At("ready-made", Right - 1, axis.Y(ShopEach(curve, curve.Points[^1]) ?? 0) - 1.2, Letters, 40, CurveText.ToTheLeft, ("fill", Ink.Accent)));
        }

        if (withTools)
        {
            group.Add(Curve(axis, curve, point => ToolsEach(curve, point), Ink.Grey, 0.35, "with-tools", new XAttribute("stroke-dasharray", "2 1.2")), Name(axis, curve, "tools in full", point => ToolsEach(curve, point), Ink.Grey));
        }

        group.Add(Curve(axis, curve, point => OwnEach(curve, point), Ink.Black, 0.6, "own"), Dots(axis, curve), Ends(axis, curve), Name(axis, curve, "made", point => OwnEach(curve, point), Ink.Black));
        group.Add(Thresholds(axis, curve));
        return group;
    }

    private static XElement Cash(BatchCurve curve)
    {
        var axis = Axis(curve, CashTop, CashHeight, curve.Points.Max(point => Of(curve, point.Plan.Cost.Cash)));
        var group = Ink.Group("cash", Scale(axis, curve, $"shop trip, {curve.Order.Currency.Code}"));
        double half = Math.Min(3, axis.Field.Width / curve.Points.Length / 3);
        foreach (var point in curve.Points)
        {
            double top = axis.Y(Of(curve, point.Plan.Cost.Cash));
            var bar = new Box(axis.X(point.Times) - half, top, half * 2, axis.Field.Bottom - top);
            string said = string.Create(CultureInfo.InvariantCulture, $"{point.Times} times, {point.Panels} panels: {Of(curve, point.Plan.Cost.Cash)} {curve.Order.Currency.Code}");
            group.Add(Ink.Group(
                "bar",
                Ink.Title(said),
                Ink.Rectangle(bar, Ink.Fine, Ink.Fill(Ink.White), Ink.Stroke(Ink.Black), Ink.Weight(0.35)),
                Ink.Path(Hatching.Lines(bar, 1.6), Ink.Fill("none"), Ink.Stroke(Ink.Grey), Ink.Weight(0.15))));
            double column = axis.Field.Width / curve.Points.Length;
            string cash = Math.Round(Of(curve, point.Plan.Cost.Cash)).ToString("0", CultureInfo.InvariantCulture);
            double letters = Math.Min(Figures, (column - 0.5) / Math.Max(1, Lettering.Width(cash)));
            group.Add(CurveText.At(cash, axis.X(point.Times), top - 0.8, letters, column, CurveText.Centred));
        }

        return group;
    }

    private static XElement Scale(CurveAxis axis, BatchCurve curve, string name)
    {
        var group = Ink.Group("scale", CurveText.At(name, 6, axis.Field.Y - 2.5, Letters, Left, CurveText.Bold));
        var lines = new System.Text.StringBuilder();
        foreach (decimal amount in axis.Ticks)
        {
            double y = axis.Y(amount);
            lines.Append(Ink.Line(axis.Field.X, y, axis.Field.Right, y));
            group.Add(CurveText.At(CurveWords.Amount(amount, curve.Order.Currency), axis.Field.X - 1.5, y + 1, Letters, Left - 4, CurveText.ToTheLeft));
        }

        group.AddFirst(
            Ink.Path(lines.ToString(), Ink.Fill("none"), Ink.Stroke(Ink.Grey), Ink.Weight(0.1)),
            Ink.Path(Ink.Line(axis.Field.X, axis.Field.Y, axis.Field.X, axis.Field.Bottom) + Ink.Line(axis.Field.X, axis.Field.Bottom, axis.Field.Right, axis.Field.Bottom), Ink.Fill("none"), Ink.Stroke(Ink.Black), Ink.Weight(0.35)));
        return group;
    }

    private static XElement Curve(CurveAxis axis, BatchCurve curve, Func<CurvePoint, decimal> amount, string colour, double weight, string name, params XAttribute[] more)
    {
        string data = string.Concat(curve.Points.Select((point, i) => $"{(i == 0 ? 'M' : 'L')}{Ink.Fine(axis.X(point.Times))} {Ink.Fine(axis.Y(amount(point)))}"));
        return Ink.Path(data, [new XAttribute("class", name), Ink.Fill("none"), Ink.Stroke(colour), Ink.Weight(weight), .. more]);
    }

    private static XElement Dots(CurveAxis axis, BatchCurve curve) => Ink.Group("dots", [.. curve.Points.Select(point => Circle(
        axis.X(point.Times),
        axis.Y(OwnEach(curve, point)),
        point.Plan.Proof.Proven ? Ink.Black : Ink.White,
        Ink.Title(CurveWords.Point(curve, point))))]);

    private static XElement Circle(double x, double y, string colour, XElement? title = null) => new(
        Ink.Svg + "circle",
        new XAttribute("cx", Ink.Fine(x)),
        new XAttribute("cy", Ink.Fine(y)),
        new XAttribute("r", Ink.Fine(Dot)),
        Ink.Fill(colour),
        Ink.Stroke(Ink.Black),
        Ink.Weight(0.25),
        title);

    /// <summary>What a hollow dot means, where there is one.</summary>
    private static XElement? HollowKey(BatchCurve curve)
    {
        if (curve.Points.All(point => point.Plan.Proof.Proven))
        {
            return null;
        }

        double left = Right - (Lettering.Width(CurveWords.Hollow) * Figures);
        return Ink.Group("hollow-key", Circle(left - 2, 15 - 0.8, Ink.White), CurveText.At(CurveWords.Hollow, left, 15, Figures, Right - left + 0.01));
    }

    // What one costs at first and at last, under the line: the two figures the curve is looked at for.
    private static XElement Ends(CurveAxis axis, BatchCurve curve) => Ink.Group("ends", [.. new[] { curve.Points[0], curve.Points[^1] }.Distinct().Select(point =>
        OnPatch(CurveWords.Amount(Math.Round(OwnEach(curve, point), curve.Order.Currency.MinorDigits), curve.Order.Currency), (axis.X(point.Times), axis.Y(OwnEach(curve, point)) + 4.2), isCentred: true, Ink.Black))]);

    // At the first point, above the line: there the curves lie farthest apart.
    private static XElement Name(CurveAxis axis, BatchCurve curve, string name, Func<CurvePoint, decimal> amount, string colour) =>
        OnPatch(name, (axis.X(1) + 1.6, axis.Y(amount(curve.Points[0])) - 1.2), isCentred: false, colour);

    // On white, so that no line of the scale runs through it.
    private static XElement OnPatch(string text, (double X, double Y) at, bool isCentred, string colour)
    {
        double width = Lettering.Width(text) * Letters;
        double left = isCentred ? at.X - (width / 2) : at.X;
        return Ink.Group(
            "named",
            Ink.Rectangle(new Box(left - 0.4, at.Y - 2.3, width + 0.8, 2.9), Ink.Fine, Ink.Fill(Ink.White), new XAttribute("class", "patch")),
            CurveText.At(text, left, at.Y, Letters, 40, ("fill", colour)));
    }

    /// <summary>From where on making, or the roll, is cheaper: as dimension lines above the field.</summary>
    private static XElement Thresholds(CurveAxis axis, BatchCurve curve)
    {
        var group = Ink.Group("thresholds");
        double y = axis.Field.Y - 9;
        foreach (var (point, words) in new[] { (curve.MakingFrom, CurveWords.Making), (curve.RollFrom, CurveWords.Roll) })
        {
            if (point is not null)
            {
                group.Add(Threshold(axis, point, words, y));
                y += 5;
            }
        }

        return group;
    }

    private static XElement Threshold(CurveAxis axis, CurvePoint point, string words, double y)
    {
        double from = point.Times == 1 ? axis.Field.X : axis.X(point.Times);
        string text = string.Create(CultureInfo.InvariantCulture, $"from {point.Panels} panels on {words}");
        double width = Lettering.Width(text) * Letters;
        bool inside = axis.Field.Right - from > width + 6;
        string line = Ink.Line(from, y, axis.Field.Right, y) + Ink.Line(from - 0.9, y + 0.9, from + 0.9, y - 0.9) + Ink.Line(from, y - 1.5, from, axis.Field.Bottom);
        return Ink.Group(
            "threshold",
            Ink.Path(line, Ink.Fill("none"), Ink.Stroke(Ink.Accent), Ink.Weight(0.2)),
            CurveText.At(text, inside ? from + 2 : from - 1.5, y - 0.8, Letters, Width, inside ? ("text-anchor", "start") : CurveText.ToTheLeft));
    }

    private static decimal OwnEach(BatchCurve curve, CurvePoint point) => point.EachMinor / CurveWords.Minor(curve.Order.Currency);

    private static decimal ToolsEach(BatchCurve curve, CurvePoint point) => Of(curve, point.MadeWithTools) / Math.Max(1, point.PricedPanels);

    private static decimal? ShopEach(BatchCurve curve, CurvePoint point) => point.Shop is { } shop ? Of(curve, shop) / point.PricedPanels : null;

    private static decimal Of(BatchCurve curve, Money money) => money.In(curve.Order.Currency.MinorDigits);
}
