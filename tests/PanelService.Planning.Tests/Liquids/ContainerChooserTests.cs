using CsCheck;
using PanelService.Planning.Liquids;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Tests.Liquids;

public sealed class ContainerChooserTests
{
    private static readonly Gen<(Container[] Sizes, int Needed)> _cases = Gen.Select(
        Gen.Select(Gen.Int[1, 40], Gen.Int[0, 60]).Select(p => new Container(new Volume(p.Item1), new Money(p.Item2))).Array[1, 4],
        Gen.Int[1, 150]);

    [Fact]
    public void Choose_costs_what_a_table_over_all_volumes_costs() => _cases.Sample(c =>
    {
        var choice = ContainerChooser.Choose([.. c.Sizes], new Volume(c.Needed))!;
        return choice.Cost.Minor == CheapestByTable(c.Sizes, c.Needed) && choice.LeastCost == choice.Cost;
    });

    [Fact]
    public void Choose_holds_enough_and_adds_up() => _cases.Sample(c =>
    {
        var choice = ContainerChooser.Choose([.. c.Sizes], new Volume(c.Needed))!;
        return choice.Bought.Sum(b => b.Container.Volume.Millilitres * b.Count) >= c.Needed
            && choice.Bought.Sum(b => b.Container.Price.Minor * b.Count) == choice.Cost.Minor
            && choice.Bought.All(b => b.Count > 0);
    });

    [Fact]
    public void Choose_of_nothing_buys_nothing() =>
        Assert.Empty(ContainerChooser.Choose([], default)!.Bought);

    [Fact]
    public void Choose_without_containers_has_no_answer() =>
        Assert.Null(ContainerChooser.Choose([], new Volume(1)));

    [Fact]
    public void Choose_takes_two_small_bottles_where_the_large_one_costs_more()
    {
        var choice = ContainerChooser.Choose(
            [new Container(new Volume(32), new Money(2100)), new Container(new Volume(8), new Money(790))], new Volume(16))!;
        Assert.Equal(1580, choice.Cost.Minor);
    }

    // No size is proven against the others, whose volumes all have a divisor that what is needed has not: with a lower
    // price from six numbers on each, four hundred choices took half a minute a liquid.
    [Fact]
    public void Choose_of_many_sizes_with_lower_prices_shares_its_work_out()
    {
        var sizes = Enumerable.Range(0, 50).Select(i => 10 * (101 + (7 * i))).Select(volume => new Container(new Volume(volume), new Money(volume))
        {
            PriceFrom = [.. Enumerable.Range(0, 6).Select(step => new PriceStep(step + 2, new Money(volume - step - 1)))],
        });
        var choice = ContainerChooser.Choose([.. sizes], new Volume(116_691))!;
        Assert.InRange(choice.Cost.Minor, choice.LeastCost.Minor, 116_700);
        Assert.True(choice.Bought.Sum(one => one.Container.Volume.Millilitres * one.Count) >= 116_691);
    }

    /// <summary>The textbook table: the least cost of covering 0, 1, 2 … millilitres, one container at a time.</summary>
    private static long CheapestByTable(Container[] sizes, int needed)
    {
        var least = new long[needed + 1];
        for (int volume = 1; volume <= needed; volume++)
        {
            least[volume] = sizes.Min(s => s.Price.Minor + least[Math.Max(0, volume - (int)s.Volume.Millilitres)]);
        }

        return least[needed];
    }
}
