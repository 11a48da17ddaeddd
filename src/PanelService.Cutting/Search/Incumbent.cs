using System.Numerics;

namespace PanelService.Cutting.Search;

/// <summary>The best plan so far, and what no plan costs less than.</summary>
internal sealed class Incumbent
{
    private readonly Model _model;
    private readonly ProofRecord _proof;
    private readonly IProgress<CuttingProgress>? _progress;

    /// <summary>Starts with no plan and no bound.</summary>
    /// <param name="model">What is to be cut from what.</param>
    /// <param name="proof">Told of every bound claimed.</param>
    /// <param name="progress">Told whenever plan or bound gets better.</param>
    public Incumbent(Model model, ProofRecord proof, IProgress<CuttingProgress>? progress)
    {
        (_model, _proof, _progress) = (model, proof, progress);
        PriceStep = Enumerable.Range(0, model.Stocks.Length).Aggregate(0L, (divisor, s) =>
            (long)BigInteger.GreatestCommonDivisor(divisor, model.Stock(s).Price));
    }

    /// <summary>The plan: covers the demand unless <see cref="Missing"/>.</summary>
    public List<ColumnUse> Plan { get; private set; } = [];

    /// <summary>Its price, of what it holds while pieces are <see cref="Missing"/>; <see cref="long.MaxValue"/> before the first plan.</summary>
    public long Spent { get; private set; } = long.MaxValue;

    /// <summary>No plan costs less.</summary>
    public long Bound { get; private set; }

    /// <summary>Pieces no plan found so far has a place for.</summary>
    public int Missing { get; private set; } = int.MaxValue;

    /// <summary>Whether no plan is cheaper.</summary>
    public bool IsProven => Missing == 0 && Bound >= Spent;

    /// <summary>The price to get below: <see cref="long.MaxValue"/> while there is no whole plan.</summary>
    public long Below => Missing == 0 ? Spent : long.MaxValue;

    /// <summary>The prices' common divisor: every plan's price is a multiple of it. 0 where nothing has a price.</summary>
    public long PriceStep { get; }

    /// <summary>Raises the bound, and rounds it up to what a plan can cost.</summary>
    /// <param name="bound">No plan costs less.</param>
    public void RaiseBound(long bound)
    {
        // Every plan's price is a sum of prices, so a multiple of their common divisor.
        long whole = PriceStep <= 1 || bound == long.MaxValue ? bound : (bound + PriceStep - 1) / PriceStep * PriceStep;
        _proof.Claim(whole);
        if (whole > Bound)
        {
            Bound = Math.Min(whole, Spent);
            Report();
        }
    }

    /// <summary>Takes a plan if it is better than the best: fewer pieces missing, then cheaper.</summary>
    /// <param name="uses">The plan; what it holds too much is taken out.</param>
    /// <returns><see cref="Below"/>.</returns>
    public long Take(IEnumerable<ColumnUse> uses)
    {
        var (whole, missing) = ExactDemand.Of(uses.Where(use => _model.CanCut(use.Column.Block)), _model);
        long price = whole.Sum(u => _model.Stock(u.Column.Stock).Price * u.Copies);
        if (missing < Missing || (missing == Missing && price < Spent))
        {
            (Plan, Missing, Spent) = (whole, missing, price);
            Report();
        }

        return Below;
    }

    /// <summary>Tells how far it is; where the demand is known to be out of reach there is neither a plan nor a price to tell.</summary>
    private void Report()
    {
        if (Bound < long.MaxValue)
        {
            _progress?.Report(new CuttingProgress(Missing == 0 ? Spent : null, Bound));
        }
    }
}
