using System.Collections.Immutable;
using PanelService.Planning.Batches;
using PanelService.Planning.Boards;
using PanelService.Planning.Budgets;
using PanelService.Planning.Care;
using PanelService.Planning.Cloth;
using PanelService.Planning.Costing;
using PanelService.Planning.Days;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Prices;
using PanelService.Planning.Refusals;
using PanelService.Planning.SawRun;
using PanelService.Planning.SawRun.Cautions;
using PanelService.Planning.Sizes;
using PanelService.Planning.Spare;
using PanelService.Planning.Strength;
using PanelService.Planning.Wishes;

namespace PanelService.Planning;

/// <summary>An order in, a plan out. Pure: the same order gives the same plan.</summary>
public static class Planner
{
    /// <summary>Plans an order.</summary>
    /// <param name="order">The order; its shape has been checked.</param>
    /// <param name="progress">Told when the best plan or the bound gets better; null: nobody listens.</param>
    /// <param name="cancellation">Ends the search early and keeps the best plan so far.</param>
    /// <param name="unwanted">Ends everything: nobody wants the plan any more. Whoever tells it has told <paramref name="cancellation"/> before.</param>
    /// <returns>The plan, or why there is none.</returns>
    /// <exception cref="OperationCanceledException">The search was ended before it had any plan to keep, or nobody wants one.</exception>
    public static PlanOutcome Plan(
        Order order, IProgress<PlanProgress>? progress = null, CancellationToken cancellation = default, CancellationToken unwanted = default)
    {
        ArgumentNullException.ThrowIfNull(order);
        order = Bracing.Of(order);
        if (Unfitting.Check(order) is { } refusal)
        {
            return refusal;
        }

        return order.Budget is null
            ? Plan(order, null, progress, new PlanStop(cancellation, unwanted))
            : BudgetPlanner.Plan(order, (made, known) => Plan(made, known, progress, new PlanStop(cancellation, unwanted)), cancellation);
    }

    private static PlanOutcome Plan(Order order, BatchChoice? known, IProgress<PlanProgress>? progress, PlanStop stop)
    {
        var priced = Tax.AddedTo(order);
        var choice = known ?? ShopSearch.Cheapest(priced, new Search(progress, default, stop.Search));
        if (choice.Best.Complete)
        {
            if (TooManyPlaces.Check(choice.Best) is { } tooMany)
            {
                return tooMany;
            }

            var batch = SizeReturner.Return(priced, choice.Best, stop.Search);
            batch = batch with
            {
                Boards = BoardPlanner.Gather(priced, batch.Boards, stop.Search),
                Cloth = ClothLeftovers.Gather(priced, batch.Cloth, new CutRequest(batch.Made, batch.SizesHeld(priced), Ready: []), stop.Search),
            };
            var plan = Write(priced, choice with { Best = batch }, stop);
            return new Planned(plan with { Order = order, Tax = Tax.In(order, plan.Buy) });
        }

        // What is missing for want of time is not missing in the studio.
        stop.Search.ThrowIfCancellationRequested();
        return Shortage.Of(order, choice.Best);
    }

    /// <summary>The sheets as the engine's patterns lay them out, and the step that makes the saw run of them: for the benchmark of that step.</summary>
    internal static (ImmutableArray<SheetLayout> First, Func<SawPlan> Step) SawStep(Order order)
    {
        var best = BatchPlanner.Cheapest(order, new Search(null, default, default)).Best;
        var batch = best with { Boards = BoardPlanner.Gather(order, best.Boards, default) };
        var sizes = JointChoice.Grown(order, batch);
        var first = SheetLayoutMaker.Make(order.Saw, Layouts.Of(batch.Boards, sizes, order.Saw.Kerf), PanelResults.Marks(order));
        return (first, () => JointChoice.Make(order, batch, sizes, default).Saw);
    }

    private static Plan Write(Order asked, BatchChoice choice, PlanStop stop)
    {
        var (order, batch, surplus) = Purchases.Of(asked, choice);
        var sizes = JointChoice.Grown(order, batch);
        var (filled, saw) = JointChoice.Make(order, batch, sizes, stop);
        stop.ThrowIfUnwanted();
        var marks = PanelResults.Marks(order);
        var sheets = saw.Sheets;
        var goods = new Goods(
            order,
            PanelResults.Of(order, batch, new MadeSizes(sizes, sheets, filled.Counts)),
            sheets,
            ClothLayoutMaker.Make(order, filled.Cloth, marks),
            filled.Liquids,
            batch.Strips.Layouts)
        {
            Surplus = surplus,
            Deliveries = choice.Deliveries,
        };
        var buy = ShoppingList.Of(goods);
        var strength = StrengthMaker.Of(order, goods.Panels, sheets, new Coverings(goods.Cloth, goods.Liquids));
        var stiffening = StiffeningMaker.Of(asked, batch, strength, stop.Search);
        var plan = new Plan
        {
            Order = order,
            Panels = goods.Panels,
            Proof = new Proof(choice.Spent, choice.LeastPossible),
            BoardProof = WithTopUps(new Proof(batch.Boards.Outcome.Spent, batch.Boards.Outcome.LeastPossible), choice, SaleUnit.Sheet),
            ClothProof = WithTopUps(ClothProof.Of(order, batch.Cloth.Outcome, sizes), choice, SaleUnit.Step, SaleUnit.Roll),
            Sheets = goods.Sheets,
            SawRun = CautionBook.With(saw.Run, sheets, order),
            SawProof = saw.Proof,
            Unmatched = saw.Unmatched,
            Tolerances = Tolerances.Of(order, saw.Sized),
            Strength = strength,
            Stiffening = stiffening,
            Weights = StrengthMaker.Weigh(goods.Panels, strength),
            Cloth = goods.Cloth,
            Strips = goods.Strips,
            StripProof = WithTopUps(new Proof(batch.Strips.Spent, batch.Strips.LeastPossible), choice, SaleUnit.Strip),
            Liquids = goods.Liquids,
            Buy = buy,
            Surplus = surplus,
            Deliveries = choice.Deliveries,
            Cost = TallyMaker.Make(goods, buy),
            CouldStillMake = SparePanels.Of(goods),
            Warnings = [.. batch.Liquids.Warnings, .. batch.Strips.Warnings, .. PriceWarnings.Of(choice), .. HandlingRemarks.Of(order, sheets), .. StiffeningRemark.Of(order, stiffening)],
            StoppedEarly = batch.StoppedEarly || stop.Search.IsCancellationRequested,
        };
        stop.ThrowIfUnwanted();
        return plan with { Bench = BenchPlanner.Of(plan, stop.Search), Care = CareMaker.Of(plan) };
    }

    private static Proof WithTopUps(Proof proof, BatchChoice choice, params ReadOnlySpan<SaleUnit> units) =>
        proof with { Spent = proof.Spent + Purchases.CostOf(choice.TopUps, units) };
}
