namespace PanelService.Store.Model;

/// <summary>A heap of alike pieces, or one liquid. How much of it there is stands nowhere: it is the sum of its movements.</summary>
internal sealed class StockRow
{
    /// <summary>What is written on it in pencil: "B7". Never given out twice.</summary>
    public required string Id { get; init; }

    public required string Letter { get; init; }

    public required int Number { get; init; }

    public required string Sort { get; init; }

    /// <summary>What it is, as StoreJson writes a StockGood.</summary>
    public required string Good { get; set; }

    public required string Units { get; set; }

    public required string Currency { get; set; }

    /// <summary>Minor units that <see cref="ValueOf"/> of it counts as.</summary>
    public required long ValueMinor { get; set; }

    /// <summary>1 for pieces; for a liquid the nanolitres that the value was said of.</summary>
    public required long ValueOf { get; set; }

    /// <summary>Unix milliseconds.</summary>
    public required long AddedAt { get; init; }

    public required int Version { get; set; }
}
