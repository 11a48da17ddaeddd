using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.Prices;

/// <summary>Prices that fall with the number, shops that charge, and tax: each inside the plan and its bound.</summary>
public sealed class QuantityPriceTests
{
    private const int InOneTest = 6;

    /// <summary>The first seed of every test.</summary>
    public static TheoryData<int> Starts() => [.. Enumerable.Range(0, 6).Select(i => i * InOneTest)];

    [Theory]
    [MemberData(nameof(Starts))]
    public void Plan_and_bound_agree_with_every_way_of_shopping(int start)
    {
        var faults = new StringBuilder();
        for (int seed = start; seed < start + InOneTest; seed++)
        {
            var order = Drawn(seed);
            var proof = Planned(order).Proof;
            long least = new ShoppingByForce(order, most: 5).Least();
            bool mayMiss = order.Shops.Any(shop => shop.FreeFrom is not null);
            if (proof.LeastPossible.Minor > least || proof.Spent.Minor < least || (!mayMiss && proof.Spent.Minor != least))
            {
                faults.Append(CultureInfo.InvariantCulture, $"\nseed {seed}: spent {proof.Spent}, at least {proof.LeastPossible}, by force {least}");
            }
        }

        Assert.True(faults.Length == 0, faults.ToString());
    }

    [Fact]
    public void Sheets_are_bought_on_top_where_more_cost_less()
    {
        // Three sheets at 6.10 are 18.30, four at 4.00 are 16.00.
        var plan = Planned(OrderOf(Line("A", 8, 10, 30)) with { Boards = [Hardboard with { PriceFrom = [new PriceStep(4, new Money(400))] }] });

        Assert.Equal((new Money(1600), true), (plan.Cost.Cash, plan.Proof.Proven));
        Assert.Equal((1, new Money(400), SurplusReason.QuantityPrice), (plan.Surplus[0].Quantity, plan.Surplus[0].UnitPrice, plan.Surplus[0].Reason));
        Assert.Equal((4, new Money(400)), (plan.Buy[0].Quantity, plan.Buy[0].UnitPrice));
        Assert.Equal(plan.Proof, plan.BoardProof);
    }

    [Fact]
    public void Steps_of_cloth_reach_across_the_count_that_is_cheaper()
    {
        // 40 x 60 in loose cloth takes 61 in: two steps of 36 in. Two or more cost 20.00 each.
        var order = OrderOf(Line("A", 40, 60, 1) with { Surface = Surface.Loose }) with
        {
            Cloths = [Linen with { Warp = Grain.Height, Sale = new SaleByLength(Inches(36), new Money(3100), AtMost: null) { PriceFrom = [new PriceStep(2, new Money(2000))] } }],
        };

        Assert.Equal((new Money(4000), true), (Planned(order).Cost.Cash, Planned(order).Proof.Proven));
    }

    [Fact]
    public void Bottles_cost_less_each_in_larger_numbers()
    {
        var glue = Glue with { Containers = [new Container(Volume.From(8, LengthUnit.Inch), new Money(790)) { PriceFrom = [new PriceStep(3, new Money(500))] }] };
        var plan = Planned(OrderOf(Line("A", 8, 10, 40) with { Surface = Surface.Cloth }) with { Adhesives = [glue] });

        // 16 fl oz: two bottles at 7.90 are 15.80, three at 5.00 are 15.00; the third is left over.
        Assert.Equal((3, new Money(500)), (plan.Liquids[0].Bought[0].Count, plan.Liquids[0].Bought[0].Container.Price));
        Assert.Equal(8m, Math.Round(plan.Liquids[0].Left.In(LengthUnit.Inch), 6));
    }

    [Fact]
    public void One_shop_is_left_out_where_its_charge_is_more_than_it_saves()
    {
        var dear = Hardboard with { Id = "near", Price = new Money(700) };
        var cheap = Hardboard with { Id = "far", Price = new Money(500), Shop = "far" };
        var order = OrderOf(Line("A", 8, 10, 20)) with { Boards = [dear, cheap], Shops = [new Shop("far", null, new Money(450), FreeFrom: null)] };

        var two = Planned(order);
        var three = Planned(order with { Panels = [Line("A", 8, 10, 30)] });

        Assert.Equal((new Money(1400), true, 0), (two.Cost.Cash, two.Proof.Proven, two.Deliveries.Length));
        Assert.Equal((new Money(1950), true, new Money(450)), (three.Cost.Cash, three.Proof.Proven, three.Deliveries[0].Charge));
    }

    // Each of the sets of shops that may charge nothing asks for the least sum again: 6561 of them took minutes.
    [Fact]
    public void Eight_shops_free_from_a_large_sum_are_weighed_in_moments()
    {
        var order = OrderOf(Line("A", 8, 10, 20)) with
        {
            Boards = [.. Enumerable.Range(0, 8).Select(i => Hardboard with { Id = $"b{i}", Price = new Money(610 + (2 * i)), Shop = $"s{i}" })],
            Shops = [.. Enumerable.Range(0, 8).Select(i => new Shop($"s{i}", null, new Money(450 + i), FreeFrom: new Money(490_001 + i)))],
        };
        var plan = Planned(order);
        Assert.Equal(("s0", 450), (Assert.Single(plan.Deliveries).Shop.Id, plan.Deliveries[0].Charge.Minor));
    }

    [Fact]
    public void Sheet_on_top_saves_the_delivery()
    {
        var board = Hardboard with { Shop = "yard" };
        var order = OrderOf(Line("A", 8, 10, 20)) with { Boards = [board], Shops = [new Shop("yard", "the yard", new Money(900), FreeFrom: new Money(1800))] };

        var plan = Planned(order);

        // Two sheets and delivery: 21.20; three sheets: 18.30, the least sum of sheets from 18.00 up.
        Assert.Equal((new Money(1830), true), (plan.Cost.Cash, plan.Proof.Proven));
        Assert.Equal(SurplusReason.FreeDelivery, plan.Surplus[0].Reason);
    }

    [Theory]
    [InlineData(300, 1200)]
    [InlineData(250, 1250)]
    public void Sheets_on_top_that_lower_the_price_of_all_save_the_delivery(int lower, int cash)
    {
        // One sheet and delivery: 19.00. Four at 3.00, or five at 2.50, are 12.00 or more.
        var board = Hardboard with { Price = new Money(500), PriceFrom = [new PriceStep(3, new Money(lower))], Shop = "yard" };
        var order = OrderOf(Line("A", 9, 10, 1)) with { Boards = [board], Shops = [new Shop("yard", null, new Money(1400), FreeFrom: new Money(1200))] };

        var plan = Planned(order);

        Assert.Equal((new Money(cash), new Money(cash), true), (plan.Cost.Cash, plan.Proof.Spent, plan.Proof.Proven));
        Assert.Equal((new Money(lower), SurplusReason.FreeDelivery), (Assert.Single(plan.Surplus).UnitPrice, plan.Surplus[0].Reason));
        Assert.Equal(plan.Cost.Cash + plan.Cost.OnHandUsed, plan.Cost.Used + plan.Cost.BackOnRack);
        Assert.Equal(plan.Cost.Cash, plan.BoardProof.Spent);
    }

    [Theory]
    [MemberData(nameof(Starts))]
    public void Boards_of_a_shop_free_from_a_sum_are_topped_up_as_every_way_of_shopping_would(int start)
    {
        var faults = new StringBuilder();
        for (int seed = start; seed < start + InOneTest; seed++)
        {
            var random = new Random(seed);
            long price = random.Next(300, 600);
            var board = Hardboard with
            {
                Price = new Money(price),
                PriceFrom = [new PriceStep(random.Next(2, 5), new Money(price * random.Next(50, 90) / 100)), new PriceStep(6, new Money(price * 45 / 100))],
                Shop = "yard",
            };
            var order = OrderOf(Line("A", 8, 10, random.Next(1, 30))) with
            {
                Boards = [board],
                Shops = [new Shop("yard", null, new Money(random.Next(300, 1500)), FreeFrom: new Money(random.Next(800, 2500)))],
            };
            var proof = Planned(order).Proof;
            long least = new ShoppingByForce(order, most: 14).Least();
            if (proof.Spent.Minor != least || proof.LeastPossible.Minor > least)
            {
                faults.Append(CultureInfo.InvariantCulture, $"\nseed {seed}: spent {proof.Spent}, at least {proof.LeastPossible}, by force {least}");
            }
        }

        Assert.True(faults.Length == 0, faults.ToString());
    }

    [Fact]
    public void Tax_is_rounded_on_each_unit_price()
    {
        // 6.10 and 7.5 percent are 6.5575, paid as 6.56.
        var plan = Planned(OrderOf(Line("A", 8, 10, 20)) with { TaxPercent = 7.5m });

        Assert.Equal((new Money(1312), new Money(92), true), (plan.Cost.Cash, plan.Tax, plan.Proof.Proven));
    }

    [Theory]
    [MemberData(nameof(Starts))]
    public void Money_adds_up_whatever_the_prices(int start)
    {
        for (int seed = start; seed < start + InOneTest; seed++)
        {
            var plan = Planned(Drawn(seed));
            var cost = plan.Cost;
            long delivery = plan.Deliveries.Sum(one => one.Charge.Minor);

            Assert.Equal(cost.Cash.Minor, plan.Buy.Sum(purchase => purchase.Cost.Minor));
            Assert.Equal(cost.Cash + cost.OnHandUsed, cost.Used + cost.BackOnRack);
            Assert.Equal(plan.Proof.Spent, cost.Cash + cost.OnHandUsed);
            Assert.Equal(delivery, cost.Lines.Sum(line => line.Delivery.Minor));
            Assert.True(cost.BackOnRack.Minor >= plan.Surplus.Sum(one => one.Cost.Minor));
        }
    }

    /// <summary>Few panels, one or two boards and a cloth, with every kind of price.</summary>
    private static Order Drawn(int seed)
    {
        var random = new Random(seed);
        ImmutableArray<Shop> shops = [.. Enumerable.Range(0, random.Next(0, 3)).Select(i =>
            new Shop($"s{i}", null, new Money(random.Next(50, 900)), random.Next(3) == 0 ? new Money(random.Next(500, 4000)) : null))];
        string? Shop() => shops.IsEmpty || random.Next(3) == 0 ? null : shops[random.Next(shops.Length)].Id;
        ImmutableArray<PriceStep> From(long price)
        {
            int count = random.Next(2, 4);
            var first = new PriceStep(count, new Money(price * random.Next(50, 96) / 100));
            return random.Next(3) switch
            {
                0 => [],
                1 => [first],
                _ => [first, new PriceStep(count + random.Next(1, 3), new Money(first.Price.Minor * random.Next(60, 96) / 100))],
            };
        }

        var boards = Enumerable.Range(0, random.Next(1, 3)).Select(i =>
        {
            var (width, height, price) = i == 0 ? (24, 48, random.Next(500, 900)) : (24, 24, random.Next(250, 500));
            return Hardboard with { Id = $"b{i}", Width = Inches(width), Height = Inches(height), Price = new Money(price), PriceFrom = From(price), Shop = Shop() };
        });
        var lines = Enumerable.Range(0, random.Next(1, 3)).Select(i => Line($"L{i}", random.Next(7, 13), random.Next(8, 15), random.Next(2, 12)));
        long step = random.Next(200, 900);
        ClothSale sale = random.Next(3) == 0
            ? new SaleByRoll(Inches(40), new Money(step * 2), ForSale: null) { PriceFrom = From(step * 2) }
            : new SaleByLength(Inches(18), new Money(step), AtMost: null) { PriceFrom = From(step) };
        bool cloth = random.Next(2) == 0;
        return OrderOf([.. lines, .. cloth ? [Line("C", random.Next(9, 20), random.Next(9, 20), random.Next(1, 4)) with { Surface = Surface.Loose }] : ImmutableArray<PanelLine>.Empty]) with
        {
            Boards = [.. boards],
            Cloths = cloth ? [Linen with { Sale = sale, Shop = Shop() }] : [],
            Adhesives = [],
            Shops = shops,
            TaxPercent = random.Next(3) == 0 ? random.Next(1, 2500) / 100m : 0,
        };
    }
}
