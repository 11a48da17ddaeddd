using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Prices;

/// <summary>A good that can be bought on top.</summary>
/// <param name="Id">The board, cloth or strip.</param>
/// <param name="Unit">What it is counted in.</param>
/// <param name="Levels">Its prices.</param>
/// <param name="Cut">How many are cut.</param>
internal sealed record TopUpItem(string Id, SaleUnit Unit, PriceLevels Levels, int Cut)
{
    /// <summary>The numbers that may be bought, level by level.</summary>
    public IEnumerable<TopUpRun> Runs()
    {
        long plain = Levels.Cheapest(Cut).Cost.Minor;
        for (int i = 0; i < Levels.Levels.Length; i++)
        {
            long first = Math.Max(Levels.Levels[i].Count, Cut);
            long last = Math.Min(
                i + 1 < Levels.Levels.Length ? Levels.Levels[i + 1].Count - 1L : int.MaxValue,
                Levels.Most ?? int.MaxValue);
            if (first <= last)
            {
                long price = Levels.Levels[i].Price.Minor;
                yield return new TopUpRun((int)first, (price * first) - plain, price, (int)(last - first));
            }
        }
    }
}

/// <summary>Numbers of a good that each cost as much more than the one before.</summary>
/// <param name="Count">The first.</param>
/// <param name="Cost">How much more it costs than the cheapest way of buying what is cut, in minor units; 0 or more.</param>
/// <param name="Price">How much more each further one costs.</param>
/// <param name="More">How many further ones there are.</param>
internal sealed record TopUpRun(int Count, long Cost, long Price, int More);
