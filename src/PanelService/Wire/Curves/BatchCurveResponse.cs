using PanelService.Planning.Measures;
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

    /// <summary>What the plan spends, and what no plan can spend less than.</summary>
    public required ProofResponse Proof { get; init; }

    /// <summary>True where the clock cut the search short.</summary>
    public bool? StoppedEarly { get; init; }
}
