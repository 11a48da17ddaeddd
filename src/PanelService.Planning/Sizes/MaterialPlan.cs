using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Sizes;

/// <summary>How one material, boards or cloth, is cut, before sizes are settled.</summary>
/// <param name="Outcome">What it costs and what is missing.</param>
internal abstract record MaterialPlan(CutOutcome Outcome);

/// <summary>
/// Chooses between nominal and smallest sizes. A pattern stays cuttable when its pieces shrink, so no plan at any
/// allowed sizes is cheaper than the cheapest at the smallest ones: their bound bounds them all, and their plan, with
/// the sizes grown back as far as it allows, is the plan. Where nominal sizes cost no more, nominal they stay.
/// </summary>
internal static class SizeChoice
{
    /// <summary>Plans at nominal sizes and, where an undersize is allowed, at the smallest, and takes the cheaper.</summary>
    /// <typeparam name="T">The material's plan.</typeparam>
    /// <param name="order">The order.</param>
    /// <param name="planAt">Plans at given sizes.</param>
    /// <param name="search">Whom to tell; what is found at nominal sizes bounds nothing where smaller ones are allowed.</param>
    public static T Cheaper<T>(Order order, Func<ImmutableArray<CutSize>, Search, T> planAt, Search search)
        where T : MaterialPlan =>
        order.Saw.Undersize == Length.Zero
            ? planAt(CutSizes.Nominal(order), search)
            : Choose(planAt(CutSizes.Nominal(order), search.Quietly()), planAt(CutSizes.Smallest(order), search));

    private static T Choose<T>(T nominal, T smallest)
        where T : MaterialPlan
    {
        bool smallerSaves = !nominal.Outcome.Complete
            || (smallest.Outcome.Complete && smallest.Outcome.Spent < nominal.Outcome.Spent);
        var chosen = smallerSaves ? smallest : nominal;
        return chosen with
        {
            Outcome = chosen.Outcome with
            {
                AtSmallest = smallerSaves,
                LeastPossible = smallest.Outcome.LeastPossible,
                LeastAtNominal = nominal.Outcome.LeastPossible,
                StoppedEarly = nominal.Outcome.StoppedEarly || smallest.Outcome.StoppedEarly,
            },
        };
    }
}
