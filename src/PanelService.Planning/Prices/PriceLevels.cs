using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Prices;

/// <summary>What a number of one good costs, where larger numbers cost less each.</summary>
/// <param name="Levels">From how many on which price holds; the first from 0 on, counts rising.</param>
/// <param name="Most">At most so many can be bought; null: any number.</param>
internal sealed record PriceLevels(ImmutableArray<PriceStep> Levels, int? Most)
{
    /// <summary>Whether there is more than one price.</summary>
    public bool Vary => Levels.Length > 1;

    /// <summary>The lowest price there is, whatever the number.</summary>
    public Money Lowest => Levels.Min(level => level.Price.Minor) is var least ? new Money(least) : default;

    /// <summary>Of a good.</summary>
    /// <param name="price">The price of one.</param>
    /// <param name="from">The prices from larger numbers on, counts rising.</param>
    /// <param name="most">At most so many can be bought; null: any number.</param>
    public static PriceLevels Of(Money price, ImmutableArray<PriceStep> from, int? most) =>
        new([new PriceStep(0, price), .. from.Where(step => step.Count <= (most ?? int.MaxValue))], most);

    /// <summary>Of a board.</summary>
    public static PriceLevels Of(BoardSupply board) => Of(board.Price, board.PriceFrom, board.ForSale);

    /// <summary>Of strips of one length.</summary>
    public static PriceLevels Of(StripSupply strip) => Of(strip.Price, strip.PriceFrom, strip.ForSale);

    /// <summary>Of a cloth that is for sale.</summary>
    public static PriceLevels Of(ClothSale sale) => sale switch
    {
        SaleByLength length => Of(length.Price, sale.PriceFrom, length.AtMost),
        SaleByRoll roll => Of(roll.Price, sale.PriceFrom, roll.ForSale),
        _ => throw new InvalidOperationException("An unknown way of selling cloth."),
    };

    /// <summary>The cheapest way to have at least so many: that many, or more where more cost less.</summary>
    /// <param name="count">So many are wanted, at most <see cref="Most"/>.</param>
    public Bought Cheapest(int count) => Levels
        .Select(level => new Bought(Math.Max(count, level.Count), level.Price))
        .Prepend(new Bought(count, At(count)))
        .MinBy(bought => (bought.Cost.Minor, bought.Count))!;

    /// <summary>What each of so many costs.</summary>
    public Money At(int count) => Levels.Last(level => level.Count <= count).Price;
}

/// <summary>So many at one price.</summary>
/// <param name="Count">How many.</param>
/// <param name="Price">The price of each.</param>
internal sealed record Bought(int Count, Money Price)
{
    /// <summary>What they cost together.</summary>
    public Money Cost => Price * Count;
}
