using System.Collections.Immutable;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.Days;

/// <summary>What a line's panels want done, by its surface and liquids, and how long each step takes.</summary>
internal static class BenchMinutes
{
    private const decimal MinutesPerHour = 60;

    /// <summary>Whether its boards are sealed before cloth goes on: the adhesive is for both faces.</summary>
    public static bool Seals(PanelLine line, ImmutableArray<LiquidUse> liquids) =>
        line.MountsNow && UseOf(line, liquids, isAdhesive: true) is { Liquid.Faces: > 1 };

    /// <summary>The adhesive or the primer that serves a line; null: none.</summary>
    public static LiquidUse? UseOf(PanelLine line, ImmutableArray<LiquidUse> liquids, bool isAdhesive) =>
        liquids.FirstOrDefault(use => use.IsAdhesive == isAdhesive && use.Shares.Any(share => share.Mark == line.Mark));

    /// <summary>The steps of one panel of a line.</summary>
    /// <param name="order">The order.</param>
    /// <param name="line">The line.</param>
    /// <param name="liquids">The liquids used.</param>
    public static ImmutableArray<RecipeStep> Steps(Order order, PanelLine line, ImmutableArray<LiquidUse> liquids) =>
        [.. Cutting(line), .. Mounting(order, line, liquids), .. Coating(order, line, liquids), .. Ending(order, line, liquids)];

    /// <summary>Whole minutes, the started one counted.</summary>
    public static int Hours(decimal hours) => (int)Math.Ceiling(hours * MinutesPerHour);

    /// <summary>How long a coat of a primer or a sealing dries, hours.</summary>
    public static decimal DryHours(Order order, LiquidUse? use) => use?.Liquid.DryHours ?? order.Bench.DryHours;

    private static IEnumerable<RecipeStep> Cutting(PanelLine line)
    {
        if (line.NeedsBoard)
        {
            yield return new RecipeStep(BenchStep.Cut, WorkMinutes.Cut, 0);
        }

        if (line.NeedsCloth)
        {
            yield return new RecipeStep(BenchStep.CutCloth, WorkMinutes.Cloth, 0);
        }

        if (line.NeedsBoard)
        {
            yield return new RecipeStep(BenchStep.Ease, WorkMinutes.Ease, 0);
            yield return new RecipeStep(BenchStep.Dust, WorkMinutes.Dust, 0);
        }
    }

    private static IEnumerable<RecipeStep> Mounting(Order order, PanelLine line, ImmutableArray<LiquidUse> liquids)
    {
        if (Seals(line, liquids))
        {
            yield return new RecipeStep(BenchStep.Seal, WorkMinutes.Seal, DryHours(order, UseOf(line, liquids, isAdhesive: true)));
        }

        if (line.MountsNow)
        {
            yield return new RecipeStep(BenchStep.Glue, WorkMinutes.Lay, 0);
            yield return new RecipeStep(BenchStep.Press, 0, order.Bench.PressHours);
            yield return new RecipeStep(BenchStep.Trim, WorkMinutes.Trim, 0);
            yield return new RecipeStep(BenchStep.Edges, WorkMinutes.Edges, 0);
        }

        if (line.Cradle)
        {
            yield return new RecipeStep(BenchStep.Brace, WorkMinutes.Brace, order.Bench.ClampHours);
        }
    }

    private static IEnumerable<RecipeStep> Coating(Order order, PanelLine line, ImmutableArray<LiquidUse> liquids)
    {
        var primer = UseOf(line, liquids, isAdhesive: false);
        for (int coat = 0; coat < (primer?.Liquid.Coats ?? 0); coat++)
        {
            yield return new RecipeStep(BenchStep.Coat, WorkMinutes.Brush * primer!.Liquid.Faces, DryHours(order, primer));
            yield return new RecipeStep(BenchStep.Sand, WorkMinutes.Sand * primer.Liquid.Faces, 0);
        }
    }

    private static IEnumerable<RecipeStep> Ending(Order order, PanelLine line, ImmutableArray<LiquidUse> liquids)
    {
        if (line.NeedsBoard)
        {
            yield return new RecipeStep(BenchStep.Label, WorkMinutes.Label, 0);
        }

        if (line.MountsNow || UseOf(line, liquids, isAdhesive: false) is not null)
        {
            yield return new RecipeStep(BenchStep.Rest, 0, order.Bench.RestHours);
        }
    }
}
