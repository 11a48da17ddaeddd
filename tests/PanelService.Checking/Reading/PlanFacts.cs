namespace PanelService.Checking.Reading;

/// <summary>What a plan says, in whole steps and minor units.</summary>
internal sealed record PlanFacts(
    IReadOnlyList<PanelFacts> Panels,
    IReadOnlyList<SheetFacts> Sheets,
    IReadOnlyList<SawStepFacts> SawRun,
    SawProofFacts SawProof,
    IReadOnlyList<ClothLayoutFacts> Cloth,
    IReadOnlyList<LiquidUseFacts> Liquids,
    IReadOnlyList<BuyFacts> Buy,
    ProofFacts Proof,
    ProofFacts BoardProof,
    ProofFacts ClothProof,
    CostFacts Cost,
    IReadOnlyList<SurplusFacts> Surplus,
    IReadOnlyList<DeliveryFacts> Deliveries,
    bool StoppedEarly,
    IReadOnlyList<StripFacts> Strips,
    ProofFacts? StripProof,
    IReadOnlyDictionary<string, int> Bars,
    IReadOnlySet<string> Weak,
    BenchFacts? Bench)
{
    public BudgetFacts? Budget { get; init; }

    /// <summary>How many of a good are on the shopping list.</summary>
    public long Listed(string id, string unit) => Buy.Where(buy => buy.SaleUnit == unit && buy.Id == id).Sum(buy => buy.Quantity);

    /// <summary>How many of a good are bought beyond what is cut.</summary>
    public long Beyond(string id, string unit) => Surplus.Where(one => one.SaleUnit == unit && one.Id == id).Sum(one => one.Quantity);

    public PanelFacts? Panel(string mark) => Panels.FirstOrDefault(panel => panel.Mark == mark);
}

/// <summary>A line of the plan.</summary>
internal sealed record PanelFacts(
    string Mark, long Width, long Height, long CutWidth, long CutHeight, long Quantity, long Spares, long Made, long Bought, string Surface, IReadOnlyList<long> Thicknesses);

/// <summary>A piece in its place.</summary>
internal sealed record PieceFacts(string Mark, Box Box, bool Turned);

/// <summary>A leftover.</summary>
internal sealed record OffcutFacts(Box Box, bool Kept);

/// <summary>A cut.</summary>
internal sealed record CutFacts(int Number, Box Workpiece, bool AcrossX, long At, bool BySupplier, long Kerf);

/// <summary>A sheet layout; waste in the document's areas.</summary>
internal sealed record SheetFacts(
    int Number, long Copies, string Board, bool OnHand, Box Box, IReadOnlyList<PieceFacts> Pieces, IReadOnlyList<OffcutFacts> Offcuts, IReadOnlyList<CutFacts> Cuts, decimal Waste)
{
    public string Where => $"sheet {Number}";
}

/// <summary>A setting of the saw with its passes in order.</summary>
internal sealed record SawStepFacts(int Step, string Tool, long Fence, IReadOnlyList<(int Sheet, int Cut)> Passes);

/// <summary>How many settings a run is said to have, and how few there could be.</summary>
internal sealed record SawProofFacts(int Settings, int LeastPossible, bool Proven)
{
    public required (long Value, long Least, bool Proven) Changes { get; init; }

    public required (long Value, long Least, bool Proven) Cuts { get; init; }
}

/// <summary>A cloth layout.</summary>
internal sealed record ClothLayoutFacts(
    int Number, long Copies, string Cloth, bool OnHand, string? Remnant, Box Box, IReadOnlyList<PieceFacts> Pieces, IReadOnlyList<OffcutFacts> Offcuts)
{
    public string Where => $"cloth {Number}";
}

/// <summary>A strip layout; where each piece begins and how long it is.</summary>
internal sealed record StripFacts(
    int Number, long Copies, string Strip, bool OnHand, long Length, IReadOnlyList<(string Mark, long At, long Length)> Pieces, long Rest, bool Kept)
{
    public string Where => $"strip {Number}";
}

/// <summary>The bench: stacks and jobs, and the end told with its bound; no jobs where no schedule is told. Minutes are hands-on: of one panel by its steps, and of a whole line.</summary>
internal sealed record BenchFacts(
    IReadOnlyList<IReadOnlyList<(string Mark, long Count)>> Stacks, IReadOnlyList<JobFacts> Jobs, (long Finish, long Least, bool Proven)? Proof)
{
    public required IReadOnlyDictionary<string, decimal> MinutesEach { get; init; }

    public required IReadOnlyDictionary<string, decimal> HandsOn { get; init; }
}

/// <summary>A job; times in minutes passed since midnight of the first day.</summary>
internal sealed record JobFacts(
    int Number, string Task, long Start, long Hands, long Wait, bool Press, int? Stack, IReadOnlyList<int> After, IReadOnlyList<int> AfterHands, IReadOnlyList<(string Mark, long Count)> Panels)
{
    public decimal Minutes { get; init; }

    public long Until => Start + Hands + Wait;
}

/// <summary>A liquid used.</summary>
internal sealed record LiquidUseFacts(
    string Id, decimal Needed, decimal FromHand, IReadOnlyList<(decimal Volume, long Count, long Price)> Bought, decimal Left);

/// <summary>What a budget is said to be enough for; worth in minor units, or in the document's areas.</summary>
internal sealed record BudgetFacts(decimal Worth, decimal MostPossible, bool Proven, IReadOnlyList<(string Mark, long Wanted, long Made)> Lines);

/// <summary>Goods bought beyond what is cut.</summary>
internal sealed record SurplusFacts(string Id, string SaleUnit, long Quantity, long Cost, string Reason);

/// <summary>A shop bought in.</summary>
internal sealed record DeliveryFacts(string Shop, long Goods, long Charge);

/// <summary>A line of the shopping list.</summary>
internal sealed record BuyFacts(string Id, long Quantity, string SaleUnit, long UnitPrice, long Cost);

/// <summary>A proof.</summary>
internal sealed record ProofFacts(long Spent, long LeastPossible, bool Proven);

/// <summary>The tally.</summary>
internal sealed record CostFacts(
    long Cash, long Used, long BackOnRack, IReadOnlyList<LineCostFacts> Panels, decimal? SavedTotal, decimal? SavedShare);

/// <summary>A line of the tally. Parts by their field names.</summary>
internal sealed record LineCostFacts(
    string Mark, long Quantity, IReadOnlyDictionary<string, long> Parts, decimal Each, long Total, IReadOnlyDictionary<string, decimal> ByArea, long? ShopPrice, decimal? SavedEach, decimal? SavedShare)
{
    public static readonly IReadOnlyList<string> PartNames =
        ["board", "cloth", "adhesive", "primer", "strips", "ready", "delivery", "labour", "overheads", "consumables", "tools"];

    public string Where => $"cost of {Mark}";
}
