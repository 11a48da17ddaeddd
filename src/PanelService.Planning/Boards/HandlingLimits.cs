using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.Boards;

/// <summary>What car, person and saw can handle of a board.</summary>
internal static class HandlingLimits
{
    /// <summary>What the fence can hold; null: nothing is said of it.</summary>
    /// <param name="saw">The saw.</param>
    public static FenceSides? Fence(SawSettings saw) =>
        saw.FenceReach is { } reach ? new FenceSides(reach.Steps, SawPractice.LeastAtFence.Steps) : null;

    /// <summary>How large a part of a board may be when it comes to the saw.</summary>
    /// <param name="saw">The saw.</param>
    /// <param name="board">The board.</param>
    /// <param name="source">What is in the studio already needs no car.</param>
    /// <param name="edgeTrim">Lost at each factory edge.</param>
    public static PartLimits Parts(SawSettings saw, BoardSupply board, Source source, Length edgeTrim)
    {
        var limits = new PartLimits(Sizes(saw, source), MostArea(saw, board)) { EdgeTrim = edgeTrim.Steps };
        return TrimsByTheKeptPart(saw, edgeTrim) ? limits with { TrimReach = saw.FenceReach!.Value.Steps } : limits;
    }

    private static ImmutableArray<(long First, long Second)> Sizes(SawSettings saw, Source source) =>
    [
        .. new[] { source == Source.Bought ? saw.Carry : null, saw.Largest }
            .OfType<SizeLimit>()
            .Select(size => (size.First.Steps, size.Second.Steps)),
    ];

    private static Int128? MostArea(SawSettings saw, BoardSupply board)
    {
        if (saw.HeaviestGrams is not { } grams)
        {
            return null;
        }

        decimal squareMetres = grams / BoardDensity.GramsPerSquareMetre(board);
        decimal perSquareMetre = 1000m * Length.StepsPerMillimetre * 1000m * Length.StepsPerMillimetre;
        return (Int128)Math.Floor(squareMetres * perSquareMetre);
    }

    /// <summary>A strip too narrow for the fence: what is kept has to lie there, as far as it reaches.</summary>
    private static bool TrimsByTheKeptPart(SawSettings saw, Length edgeTrim)
    {
        var strip = edgeTrim - saw.Kerf;
        return saw.FenceReach is { } reach && (strip < SawPractice.LeastAtFence || strip > reach);
    }
}
