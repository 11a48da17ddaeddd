using System.Collections.Immutable;
using PanelService.Planning.Batches;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Wishes;

namespace PanelService.Planning.Sizes;

/// <summary>What the lines came to.</summary>
/// <param name="Sizes">Per line: the size it is cut to.</param>
/// <param name="Sheets">The sheets.</param>
/// <param name="WishCounts">Per wish: how many are made; empty: none.</param>
internal sealed record MadeSizes(
    ImmutableArray<CutSize> Sizes, ImmutableArray<SheetLayout> Sheets, ImmutableArray<int> WishCounts);

/// <summary>Writes what became of each line and of each wish that is made.</summary>
internal static class PanelResults
{
    /// <summary>Per piece number: its mark; wishes are numbered after the lines.</summary>
    public static ImmutableArray<string> Marks(Order order) =>
        [.. order.Panels.Select(line => line.Mark), .. order.Wishes.Select(wish => wish.Mark)];

    /// <summary>Writes.</summary>
    public static ImmutableArray<PanelResult> Of(Order order, Batch batch, MadeSizes made)
    {
        var thicknesses = ThicknessesByMark(made.Sheets);
        var lines = order.Panels.Select((line, i) => new PanelResult(
            line,
            IsWish: false,
            made.Sizes[i].Width,
            made.Sizes[i].Height,
            batch.Made[i],
            batch.Bought[i],
            thicknesses.GetValueOrDefault(line.Mark, [])));
        var wishes = order.Wishes.Zip(made.WishCounts).Where(pair => pair.Second > 0).Select(pair => new PanelResult(
            pair.First.AsLine(pair.Second),
            IsWish: true,
            pair.First.Width,
            pair.First.Height,
            Made: pair.Second,
            Bought: 0,
            thicknesses.GetValueOrDefault(pair.First.Mark, [])));
        return [.. lines, .. wishes];
    }

    private static Dictionary<string, ImmutableArray<Length>> ThicknessesByMark(ImmutableArray<SheetLayout> sheets) => sheets
        .SelectMany(sheet => sheet.Pieces.Select(piece => piece.Mark).Distinct().Select(mark => (mark, sheet.Board.Thickness)))
        .GroupBy(pair => pair.mark, StringComparer.Ordinal)
        .ToDictionary(
            group => group.Key,
            group => group.Select(pair => pair.Thickness).Distinct().Order().ToImmutableArray(),
            StringComparer.Ordinal);
}
