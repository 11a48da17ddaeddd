using System.Collections.Immutable;
using PanelService.Cutting;

namespace PanelService.Planning.Sizes;

/// <summary>A material of an order as a problem for the cutting engine.</summary>
/// <param name="Problem">The problem: first the material's stocks, then one stock per line that may come ready-made.</param>
/// <param name="LineOf">Per piece: its line.</param>
/// <param name="ReadyLines">Per ready-made stock: its line.</param>
internal sealed record CutTask(CuttingProblem Problem, ImmutableArray<int> LineOf, ImmutableArray<int> ReadyLines)
{
    /// <summary>The index of the first stock that stands for ready-made panels.</summary>
    public int FirstReady => Problem.Stocks.Length - ReadyLines.Length;

    /// <summary>Writes the problem.</summary>
    /// <param name="stocks">The material's stocks.</param>
    /// <param name="request">How many of each line, at what size, and what a ready-made one may cost here.</param>
    /// <param name="material">Which lines the material is cut for, how they lie on it, and how it is cut.</param>
    public static CutTask Of(ImmutableArray<Stock> stocks, CutRequest request, CutMaterial material)
    {
        ImmutableArray<int> lines = [.. request.Lines.Where(material.Wants)];
        ImmutableArray<int> ready = [.. lines.Where(i => request.ReadyFor(i) is not null)];
        var sizes = request.Sizes.Select(material.SizeOf).ToImmutableArray();
        var pieces = lines.Select(i => new Piece(
            sizes[i].Width,
            sizes[i].Height,
            request.Counts[i],
            [
                .. Enumerable.Range(0, stocks.Length).Select(stock => material.TurningOn(i, stock)),
                .. ready.Select(other => other == i ? Turning.Upright : Turning.None),
            ]));
        var readyStocks = ready.Select(i =>
            new Stock(sizes[i].Width, sizes[i].Height, request.ReadyFor(i)!.Price.Minor, request.ReadyFor(i)!.Most));
        return new CutTask(new CuttingProblem([.. stocks, .. readyStocks], [.. pieces], material.Kerf), lines, ready);
    }
}

/// <summary>What a material wants to know of lines.</summary>
/// <param name="Wants">Whether the material is cut for a line.</param>
/// <param name="SizeOf">The size in steps that is cut for a panel's cut size.</param>
/// <param name="TurningOn">How a line lies on a stock.</param>
/// <param name="Kerf">What one cut takes, in steps.</param>
internal sealed record CutMaterial(
    Func<int, bool> Wants,
    Func<CutSize, (long Width, long Height)> SizeOf,
    Func<int, int, Turning> TurningOn,
    long Kerf);
