namespace PanelService.Checking.Reading;

/// <summary>What an order says, in whole steps and minor units, defaults filled in.</summary>
internal sealed record OrderFacts
{
    public required Units Units { get; init; }

    /// <summary>Panel lines in their order, then wishes.</summary>
    public required IReadOnlyList<LineFacts> Lines { get; init; }

    public required IReadOnlyDictionary<string, BoardFacts> Boards { get; init; }

    public required IReadOnlyDictionary<string, ClothFacts> Cloths { get; init; }

    public required IReadOnlyDictionary<string, LiquidFacts> Adhesives { get; init; }

    public required IReadOnlyDictionary<string, LiquidFacts> Primers { get; init; }

    public required long Kerf { get; init; }

    public required long Undersize { get; init; }

    public required HandlingFacts Handling { get; init; }

    public required (long A, long B) SmallestKept { get; init; }

    public required (long A, long B) SmallestCloth { get; init; }

    /// <summary>Both margins together, across and along.</summary>
    public required (long Across, long Along) Margins { get; init; }

    /// <summary>Percent more across and along.</summary>
    public required (decimal Across, decimal Along) Shrinkage { get; init; }

    public required long PressSpaces { get; init; }

    public required long Hands { get; init; }

    /// <summary>A working day's first minute and its length; null where a time zone's clocks may change it.</summary>
    public required (long From, long Minutes)? Day { get; init; }

    public required long Overheads { get; init; }

    /// <summary>What an hour of work counts as.</summary>
    public required long LabourPerHour { get; init; }

    public required IReadOnlyList<ShopFacts> Shops { get; init; }

    /// <summary>The cash there is; then the lines are of what is made, and <see cref="Asked"/> says what was wanted.</summary>
    public long? Budget { get; init; }

    public IReadOnlyList<AskedFacts> Asked { get; init; } = [];

    public required IReadOnlyList<ConsumableFacts> Consumables { get; init; }

    public required IReadOnlyList<ToolFacts> Tools { get; init; }

    public required IReadOnlyDictionary<string, StripGoodFacts> Strips { get; init; }

    public required CradleFacts Cradles { get; init; }

    public LineFacts? Line(string mark) => Lines.FirstOrDefault(line => line.Mark == mark);
}

/// <summary>A panel line or a wish.</summary>
internal sealed record LineFacts
{
    public required string Mark { get; init; }

    public required bool IsWish { get; init; }

    public required long Width { get; init; }

    public required long Height { get; init; }

    /// <summary>Quantity and spares, or a wish's limit.</summary>
    public required long Wanted { get; init; }

    public required long Quantity { get; init; }

    public required string Surface { get; init; }

    public string? Board { get; init; }

    public string? Cloth { get; init; }

    public long? Thickness { get; init; }

    public required bool MayTurn { get; init; }

    public long? ShopPrice { get; init; }

    public required bool MayBuy { get; init; }

    public string? Adhesive { get; init; }

    public string? Primer { get; init; }

    public bool Cradle { get; init; }

    public bool MayBrace { get; init; }

    public bool NeedsBoard => Surface != "loose";

    public bool NeedsCloth => Surface is "cloth" or "loose";

    public bool MountLater { get; init; }

    public bool First { get; init; }

    public bool NeedsAdhesive => Surface == "cloth" && !MountLater;

    public bool NeedsPrimer => Surface == "primed";

    public Int128 Area => (Int128)Width * Height;

    /// <summary>
    /// The least thickness where none is asked for, common practice: 1/8 in for what fits inside 16 x 20 in and is
    /// smaller than it, 3/16 in from there up.
    /// </summary>
    public long LeastThickness
    {
        get
        {
            long a = Units.Inches(16), b = Units.Inches(20);
            bool fits = new Box(0, 0, a, b).Holds(Width, Height);
            return fits && Area < (Int128)a * b ? Units.Inches(0.125m) : Units.Inches(0.1875m);
        }
    }
}

/// <summary>A board.</summary>
internal sealed record BoardFacts(
    string Id, string? Kind, long Thickness, long Width, long Height, long? Price, long? ForSale, long OnHand, long Value, long EdgeTrim, bool HasGrain)
{
    public PriceListFacts Prices { get; init; } = PriceListFacts.None;

    public string? Shop { get; init; }

    // A board within 0.5 mm of a nominal thickness counts as that thickness.
    private static readonly long Near = Units.Millimetres(0.5m);

    public bool Serves(LineFacts line) =>
        line.NeedsBoard
        && (line.Board is null || line.Board == Kind)
        && (line.Thickness is { } asked ? Math.Abs(Thickness - asked) <= Near : Thickness >= line.LeastThickness - Near);
}

/// <summary>A cloth.</summary>
internal sealed record ClothFacts(
    string Id, string? Kind, long Width, long Selvedge, bool WarpBinds, SaleFacts? Sale, IReadOnlyDictionary<string, RemnantFacts> Remnants)
{
    public string? Shop { get; init; }
}

/// <summary>How a cloth is sold: steps of a length, or rolls.</summary>
internal sealed record SaleFacts(bool ByRoll, long Length, PriceListFacts Prices, long? Limit)
{
    public string Unit => ByRoll ? "roll" : "step";
}

/// <summary>What one costs, by how many are bought: the first entry from 0 on. Tax is in them.</summary>
internal sealed record PriceListFacts(IReadOnlyList<(long Count, long Price)> Levels)
{
    public static readonly PriceListFacts None = new([]);

    public long At(long count) => Levels.Where(level => level.Count <= count).Select(level => level.Price).LastOrDefault();

    /// <summary>The least that at least so many cost, where no more than a limit are to be had.</summary>
    public long Least(long count, long? limit) => Levels
        .Select(level => Math.Max(count, level.Count)).Append(count)
        .Where(bought => bought <= (limit ?? long.MaxValue))
        .Min(bought => bought * At(bought));
}

/// <summary>A shop, its charge taxed.</summary>
internal sealed record ShopFacts(string Id, long Charge, long? FreeFrom);

/// <summary>Something worn out by metres, feet or panels.</summary>
internal sealed record ConsumableFacts(string Per, long Price, decimal Lasts);

/// <summary>A tool spread over panels.</summary>
internal sealed record ToolFacts(long Price, long SpreadOver);

/// <summary>Strips of one length.</summary>
internal sealed record StripGoodFacts(string Id, long Length, long? Price, long? ForSale, long OnHand, long Value)
{
    public PriceListFacts Prices { get; init; } = PriceListFacts.None;

    public string? Shop { get; init; }
}

/// <summary>How cradles are made.</summary>
internal sealed record CradleFacts(long Width, long Inset, long SmallestKept, bool Brace);

/// <summary>A line of an order with a budget; area in the document's units.</summary>
internal sealed record AskedFacts(string Mark, long Quantity, long? Worth, decimal Area);

/// <summary>A remnant.</summary>
internal sealed record RemnantFacts(string Id, long Width, long Length, long Quantity, long Value);

/// <summary>An adhesive or primer. Volumes in the document's units.</summary>
internal sealed record LiquidFacts(
    string Id, decimal VolumePerArea, IReadOnlyList<(decimal Volume, PriceListFacts Prices)> Containers, decimal OnHand, long Value)
{
    public string? Shop { get; init; }
}
