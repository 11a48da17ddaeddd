using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Cloth;

/// <summary>
/// The cloth's proof for the chosen cut sizes. Where all cloth is cut for nominal panels the bound found at nominal
/// sizes holds; else the one found at the smallest sizes does, which holds for every size.
/// </summary>
internal static class ClothProof
{
    /// <summary>The proof.</summary>
    /// <param name="order">The order.</param>
    /// <param name="outcome">What the cloth came to.</param>
    /// <param name="sizes">Per line: the size its panel is cut to.</param>
    public static Proof Of(Order order, CutOutcome outcome, ImmutableArray<CutSize> sizes)
    {
        bool allNominal = order.Panels.Zip(sizes).All(pair =>
            !pair.First.NeedsCloth || pair.Second == new CutSize(pair.First.Width, pair.First.Height));
        var least = allNominal && outcome.LeastAtNominal > outcome.LeastPossible ? outcome.LeastAtNominal : outcome.LeastPossible;
        return new Proof(outcome.Spent, least <= outcome.Spent ? least : outcome.Spent);
    }
}
