using System.Collections.Immutable;
using System.Globalization;
using PanelService.Planning.Boards;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Practice;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Refusals;

/// <summary>Which limit of the saw, the person or the car keeps a panel from being made, and what would be right.</summary>
internal static class LimitText
{
    private const decimal GramsPerPound = 453.59237m;

    /// <summary>The limits that keep a line from being made, each with what it would have to be at least.</summary>
    public static string Of(PanelLine line, Order order)
    {
        ImmutableArray<(string Text, SawSettings Alone)> limits = [.. Limits(line, order)];
        ImmutableArray<string> binding = [.. limits.Where(limit => !BoardRoom.HasAny(line, order with { Saw = limit.Alone })).Select(limit => limit.Text)];
        return $"a board is large enough, but not within {string.Join(" and ", binding.IsEmpty ? limits.Select(limit => limit.Text) : binding)}";
    }

    private static IEnumerable<(string Text, SawSettings Alone)> Limits(PanelLine line, Order order)
    {
        var (saw, none) = (order.Saw, BoardRoom.Unlimited(order.Saw));
        var size = CutSizes.Smallest(line, saw.Undersize);
        if (saw.Carry is { } carry)
        {
            yield return ($"saw.carry, {Size(carry.First, carry.Second, order)}: it must hold {Size(size.Width, size.Height, order)}", none with { Carry = carry });
        }

        if (saw.Largest is { } largest)
        {
            yield return ($"saw.largest, {Size(largest.First, largest.Second, order)}: it must hold {Size(size.Width, size.Height, order)}", none with { Largest = largest });
        }

        if (saw.HeaviestGrams is { } grams)
        {
            decimal needed = Lightest(line, size, order);
            yield return ($"saw.heaviest, {Weight(grams, order, up: false)}: the panel weighs {Weight(needed, order, up: true)}", none with { HeaviestGrams = grams });
        }

        if (saw.FenceReach is { } reach)
        {
            string enough = LengthText.Format(Length.Max(size.Width, size.Height), order.Units);
            yield return ($"saw.fenceReach, {LengthText.Format(reach, order.Units)}: a fence that reaches {enough} would do", none with { FenceReach = reach });
        }
    }

    private static decimal Lightest(PanelLine line, CutSize size, Order order) => order.Boards
        .Where(board => BoardFit.TurningOn(line, board) != Cutting.Turning.None)
        .Min(board => BoardDensity.Grams(board, size.Width * size.Height));

    private static string Size(Length width, Length height, Order order) =>
        $"{LengthText.FormatFigure(width, order.Units)} × {LengthText.Format(height, order.Units)}";

    // A tenth more than it weighs is enough; a tenth less than the limit was not.
    private static string Weight(decimal grams, Order order, bool up)
    {
        bool pounds = order.Units == LengthUnit.Inch;
        decimal figure = pounds ? grams / GramsPerPound : grams;
        decimal rounded = (up ? Math.Ceiling(figure * 10) : Math.Floor(figure * 10)) / 10;
        return string.Create(CultureInfo.InvariantCulture, $"{rounded:0.#} {(pounds ? "lb" : "g")}");
    }
}
