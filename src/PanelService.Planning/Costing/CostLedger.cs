using System.Collections.Immutable;
using System.Numerics;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Costing;

/// <summary>Collects what each line costs, part by part, and what goes back on the rack. Lives for one tally.</summary>
internal sealed class CostLedger
{
    private readonly Dictionary<(string Mark, CostPart Part), Money> _amounts = [];

    /// <summary>What is kept for later.</summary>
    public Money BackOnRack { get; private set; }

    /// <summary>What all lines cost together.</summary>
    public Money Used => _amounts.Values.Aggregate(Money.Zero, (sum, amount) => sum + amount);

    /// <summary>What a line costs in one part.</summary>
    public Money this[string mark, CostPart part] => _amounts.GetValueOrDefault((mark, part));

    /// <summary>Puts an amount down to a line.</summary>
    public void Add(string mark, CostPart part, Money amount) => _amounts[(mark, part)] = this[mark, part] + amount;

    /// <summary>Puts an amount down as kept for later.</summary>
    public void Keep(Money amount) => BackOnRack += amount;

    /// <summary>Parts an amount among lines by weight.</summary>
    public void Share(CostPart part, Money total, IReadOnlyList<(string Mark, BigInteger Weight)> lines) =>
        Add(part, lines, LargestRemainder.Share(total, [.. lines.Select(line => line.Weight)]));

    /// <summary>
    /// Parts what a material cost: what is kept carries its area's share, the rest is borne by the pieces cut from it
    /// by their areas, so that the waste is theirs.
    /// </summary>
    /// <param name="part">Board or cloth.</param>
    /// <param name="total">What it cost, all copies together.</param>
    /// <param name="material">Area of one copy, how much of it is kept, and the pieces' areas by mark.</param>
    public void ShareMaterial(CostPart part, Money total, MaterialShares material)
    {
        var pieces = material.Pieces.Aggregate(BigInteger.Zero, (sum, piece) => sum + (BigInteger)piece.Area.SquareSteps);
        BigInteger kept = (BigInteger)material.Kept.SquareSteps;
        BigInteger notKept = (BigInteger)material.Whole.SquareSteps - kept;
        var shares = LargestRemainder.Share(
            total, [kept * pieces, .. material.Pieces.Select(piece => notKept * (BigInteger)piece.Area.SquareSteps)]);
        Keep(shares[0]);
        Add(part, [.. material.Pieces.Select(piece => (piece.Mark, BigInteger.Zero))], shares[1..]);
    }

    private void Add(CostPart part, IReadOnlyList<(string Mark, BigInteger Weight)> lines, ImmutableArray<Money> shares)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            Add(lines[i].Mark, part, shares[i]);
        }
    }
}
