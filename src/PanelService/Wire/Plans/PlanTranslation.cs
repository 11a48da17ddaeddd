using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Wire.Plans;

/// <summary>A plan as the wire shows it.</summary>
internal sealed class PlanTranslation(string id, Plan plan, DrawingLinks drawings)
{
    private readonly WireNumbers _numbers = new(plan.Order);
    private readonly LayoutTranslation _layouts = new(plan, drawings);

    internal PlanResponse Write(PlanState state) => new()
    {
        Id = id,
        Title = plan.Order.Title,
        Units = plan.Order.Units,
        Currency = plan.Order.Currency.Code,
        State = state,
        StoppedEarly = plan.StoppedEarly,
        Panels = [.. plan.Panels.Select(Panel)],
        Proof = Proof(plan.Proof),
        Sheets = [.. plan.Sheets.Select(_layouts.Sheet)],
        BoardProof = Proof(plan.BoardProof),
        SawRun = [.. plan.SawRun.Select(_layouts.Step)],
        SawProof = SawProofResponse.Of(plan.SawProof),
        Unmatched = [.. plan.Unmatched.Select(one => new UnmatchedResponse(one.Mark, one.Side, _numbers.Of(one.Size), one.AtOneSetting, one.Otherwise))],
        Tolerances = [.. plan.Tolerances.Select(one => new ToleranceResponse(
            one.Mark, _numbers.Of(one.Width), _numbers.Of(one.Height), _numbers.Of(one.OutOfSquare), one.Fits, one.HidesGap))],
        Strength = [.. plan.Strength.Select(new StrengthTranslation(_numbers).Write)],
        Stiffening = plan.Stiffening is { } ways ? new StrengthTranslation(_numbers).Write(ways) : null,
        Weights = new(_numbers.Of(plan.Weights.Batch), _numbers.Of(plan.Weights.Pack)),
        Cloth = [.. plan.Cloth.Select(_layouts.Cloth)],
        ClothProof = Proof(plan.ClothProof),
        Strips = [.. plan.Strips.Select(Strip)],
        StripProof = Proof(plan.StripProof),
        Liquids = [.. plan.Liquids.Select(Liquid)],
        BenchPlan = new BenchTranslation(plan.Order, plan.Bench, drawings.Schedule).Write(),
        Care = [.. plan.Care.Select(note => new WarningResponse(note.Id, note.Text))],
        Buy = [.. plan.Buy.Select(Purchase)],
        Surplus = [.. plan.Surplus.Select(one => new SurplusResponse(one.Id, one.SaleUnit, one.Quantity, _numbers.Of(one.Cost), one.Reason))],
        Deliveries = [.. plan.Deliveries.Select(one => new DeliveryResponse(one.Shop.Id, _numbers.Of(one.Goods), _numbers.Of(one.Charge)))],
        Tax = plan.Order.TaxPercent == 0 ? null : new TaxResponse(plan.Order.TaxPercent, _numbers.Of(plan.Tax)),
        Budget = plan.Budget is null ? null : Budget(plan.Budget),
        CouldStillMake = [.. plan.CouldStillMake.Select(one => new SparePanelResponse(one.Mark, _numbers.Of(one.Width), _numbers.Of(one.Height), one.Surface, one.Count))],
        Cost = new CostTranslation(plan).Write(),
        Warnings = [.. plan.Warnings.Select(w => new WarningResponse(w.Id, w.Text))],
    };

    private PanelResponse Panel(PanelResult panel) => new(
        panel.Line.Mark,
        _numbers.Of(panel.Line.Width),
        _numbers.Of(panel.Line.Height),
        _numbers.Of(panel.CutWidth),
        _numbers.Of(panel.CutHeight),
        panel.Line.Quantity,
        panel.Line.Spares,
        panel.Made,
        panel.Bought,
        panel.Line.Surface,
        [.. panel.Thicknesses.Select(_numbers.Of)],
        panel.IsWish);

    private ProofResponse Proof(Proof proof) =>
        new(_numbers.Of(proof.Spent), _numbers.Of(proof.LeastPossible), proof.Proven);

    private StripResponse Strip(StripLayout strip) => new(
        strip.Number,
        strip.Copies,
        strip.Strip.Id,
        strip.Source,
        _numbers.Of(strip.Strip.Length),
        [.. strip.Pieces.Select(piece => new StripPieceResponse(piece.Mark, _numbers.Of(piece.At), _numbers.Of(piece.Length)))],
        _numbers.Of(strip.Rest),
        strip.RestKept,
        strip.Strip.Name);

    private LiquidResponse Liquid(LiquidUse use) => new(
        use.Liquid.Id,
        use.IsAdhesive ? "adhesive" : "primer",
        _numbers.Of(use.Needed),
        _numbers.Of(use.FromHand),
        [.. use.Bought.Select(b => new ContainerResponse(_numbers.Of(b.Container.Volume), b.Count, _numbers.Of(b.Container.Price)))],
        _numbers.Of(use.Left),
        use.Liquid.Name);

    private BudgetResponse Budget(BudgetAnswer answer)
    {
        decimal Worth(long worth) => answer.ByArea ? _numbers.OfSquareMillimetres(worth) : _numbers.Of(new Money(worth));
        return new(
            _numbers.Of(answer.Budget),
            answer.ByArea ? "area" : "worth",
            Worth(answer.Worth),
            Worth(answer.MostPossible),
            answer.Proven,
            [.. answer.Lines.Select(line => new BudgetLineResponse(line.Mark, line.Wanted, line.Made))]);
    }

    private PurchaseResponse Purchase(Purchase purchase) => new(
        purchase.Id,
        purchase.Name,
        purchase.Quantity,
        purchase.SaleUnit,
        _numbers.Of(purchase.UnitPrice),
        _numbers.Of(purchase.Cost));
}
