using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Wire.Plans;

namespace PanelService.Wire.Curves;

/// <summary>What the whole order costs when it is made 1, 2, … times over, each really planned.</summary>
internal sealed record BatchCurveResponse
{
    /// <summary>The plan's id.</summary>
    public required string Id { get; init; }

    /// <summary>The order's unit.</summary>
    public required LengthUnit Units { get; init; }

    /// <summary>The currency of every amount, ISO 4217.</summary>
    public required string Currency { get; init; }

    /// <summary>One for each number of times, rising from 1.</summary>
    public required IReadOnlyList<CurvePointResponse> Points { get; init; }

    /// <summary>Where another number of a good is bought than one time before; the first point is held against buying nothing.</summary>
    public required IReadOnlyList<CurveStepResponse> Steps { get; init; }

    /// <summary>From where on whole rolls beat cloth by length, at every later point too; missing where they never do, or cloth is not for sale both ways.</summary>
    public CurveThresholdResponse? RollFrom { get; init; }

    /// <summary>
    /// From where on making costs less than buying, at every later point too, were the tools paid for in full by that batch
    /// alone; missing where it never does, or no line has a shop price.
    /// </summary>
    public CurveThresholdResponse? MakingFrom { get; init; }

    /// <summary>Why the curve ends before the number asked for; missing where it does not.</summary>
    public string? EndsBecause { get; init; }
}

/// <summary>The order made so many times over.</summary>
internal sealed record CurvePointResponse
{
    /// <summary>How many times over.</summary>
    public required int Times { get; init; }

    /// <summary>How many panels that is, without spares and wishes.</summary>
    public required int Panels { get; init; }

    /// <summary>What the shop trip costs.</summary>
    public required decimal Cash { get; init; }

    /// <summary>What the batch truly consumes, with labour and overheads (the overheads once, whatever the times).</summary>
    public required decimal Used { get; init; }

    /// <summary>The ordered lines' totals ÷ panels, rounded for reading. Wishes that are made bear their own part.</summary>
    public required decimal Each { get; init; }

    /// <summary>The lines with a shop price, were all tools paid for in full by this batch alone.</summary>
    public required decimal WithTools { get; init; }

    /// <summary>What the shop asks for the same panels; missing where no line has a shop price.</summary>
    public decimal? Shop { get; init; }

    /// <summary>What the plan spends, and what no plan can spend less than.</summary>
    public required ProofResponse Proof { get; init; }

    /// <summary>True where the clock cut the search short.</summary>
    public bool? StoppedEarly { get; init; }
}

/// <summary>A good of which another number is bought than one time before.</summary>
/// <param name="Times">At how many times over.</param>
/// <param name="Id">The good's id.</param>
/// <param name="Name">What to ask for.</param>
/// <param name="SaleUnit">Of what: a sheet, a step, a roll, a container …</param>
/// <param name="From">How many are bought one time before.</param>
/// <param name="To">How many are bought here.</param>
internal sealed record CurveStepResponse(int Times, string Id, string Name, SaleUnit SaleUnit, int From, int To);

/// <summary>A point from which on something holds.</summary>
/// <param name="Times">How many times over.</param>
/// <param name="Panels">How many panels that is.</param>
internal sealed record CurveThresholdResponse(int Times, int Panels);
