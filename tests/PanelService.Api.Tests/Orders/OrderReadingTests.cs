using PanelService.Api.Tests.Hosts;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Api.Tests.Orders;

/// <summary>What the planner is given for what came over the wire.</summary>
public sealed class OrderReadingTests
{
    [Fact]
    public async Task Create_order_that_says_only_what_it_must_is_filled_up_with_the_contracts_defaults()
    {
        Order order = await ReadAsync(SampleOrders.Smallest);

        PanelLine line = Assert.Single(order.Panels);
        Assert.Equal(
            new PanelLine { Mark = "A", Width = Length.FromInches(8), Height = Length.FromInches(10), Quantity = 2, Surface = Surface.Bare, MayTurn = true },
            line);
        Assert.Equal(
            new BoardSupply { Id = "hb3", Thickness = Length.FromInches(0.125m), Width = Length.FromInches(24), Height = Length.FromInches(48), Price = new Money(610) },
            Assert.Single(order.Boards));
        Assert.Equal(Length.FromInches(0.125m), order.Saw.Kerf);
        Assert.Equal(Length.Zero, order.Saw.EdgeTrim);
        Assert.Equal(Length.Zero, order.Saw.Undersize);
        Assert.Equal(Length.FromInches(0.5m), order.Bench.MarginSides);
        Assert.Equal(Length.FromInches(0.5m), order.Bench.MarginEnds);
        Assert.Equal((Money.Zero, Effort.Steady, ""), (order.LabourPerHour, order.Effort, order.Title));
    }

    [Fact]
    public async Task Create_order_that_says_everything_is_read_field_by_field()
    {
        Order order = await ReadAsync(SampleOrders.Full);

        Assert.Equal(("Tern Island study week", LengthUnit.Inch, new Currency("EUR", 2)), (order.Title, order.Units, order.Currency));
        Assert.Equal(["A", "B"], order.Panels.Select(p => p.Mark));
        Assert.Equal((Surface.Cloth, "hardboard", "linen", new Money(740)), (order.Panels[0].Surface, order.Panels[0].Board, order.Panels[0].Cloth, order.Panels[0].ShopPrice!.Value));
        Assert.Equal((Length.FromInches(11.75m), Length.FromMillimetres(205)), (order.Panels[1].Width, order.Panels[1].Height));
        Assert.Equal((20, new Money(200)), (order.Wishes[0].AtMost, order.Wishes[0].Worth));
        Assert.Equal((0, 2, Length.Zero, Grain.Height), (order.Boards[1].ForSale!.Value, order.Boards[1].OnHand, order.Boards[1].EdgeTrim!.Value, order.Boards[1].Grain));
        Assert.Equal(new SaleByLength(Length.FromInches(36), new Money(3100), null), order.Cloths[0].Sale);
        Assert.Equal(new Remnant("r7", Length.FromInches(30), Length.FromInches(22), 1, Money.Zero), Assert.Single(order.Cloths[0].Remnants));
        Assert.Equal(new SaleByRoll(Length.FromInches(216), new Money(9600), null), order.Cloths[1].Sale);
        Assert.Equal(new Volume(0.4m * Volume.MillilitresPerFluidOunce), order.Adhesives[0].CoverageVolume);
        Assert.Equal(80m, order.Adhesives[0].CoverageArea.In(LengthUnit.Inch));
        Assert.Equal(3, order.Primers[0].Coats);
    }

    [Theory]
    [InlineData("\"2 cm\"", 20, 20)]
    [InlineData("[\"1 cm\", \"3 cm\"]", 10, 30)]
    [InlineData("0", 0, 0)]
    public async Task Create_margin_is_one_length_or_left_right_and_top_bottom(string margin, int sides, int ends)
    {
        Order order = await ReadAsync(Json.With(SampleOrders.Full, "bench.margin", margin));

        Assert.Equal((Length.FromMillimetres(sides), Length.FromMillimetres(ends)), (order.Bench.MarginSides, order.Bench.MarginEnds));
    }

    [Fact]
    public async Task Create_lines_without_marks_are_given_letters_that_no_other_line_has()
    {
        string lines = string.Join(',', Enumerable.Repeat("""{ "width": 8, "height": 10, "quantity": 1 }""", 30));
        string order = Json.With(SampleOrders.Smallest, "panels", $$"""[{ "mark": "C", "width": 8, "height": 10, "quantity": 1 }, {{lines}}]""");

        string[] marks = [.. (await ReadAsync(order)).Panels.Select(p => p.Mark)];

        Assert.Equal(["C", "A", "B", "D"], marks[..4]);
        Assert.Equal(["Y", "Z", "AA", "AB", "AC", "AD", "AE"], marks[^7..]);
        Assert.Equal(31, marks.Distinct().Count());
    }

    [Fact]
    public async Task Create_bare_numbers_before_the_unit_they_are_in_are_read_in_it()
    {
        Order order = await ReadAsync(
            """
            { "panels": [ { "width": 20, "height": 30, "quantity": 1 } ],
              "boards": [ { "id": "hb", "thickness": 0.32, "width": 122, "height": 244, "price": 9 } ],
              "units": "centimetre", "currency": "EUR" }
            """);

        Assert.Equal(Length.FromMillimetres(200), order.Panels[0].Width);
        Assert.Equal(Length.FromMillimetres(3.2m), order.Boards[0].Thickness);
    }

    [Fact]
    public async Task Create_order_of_loose_cloth_needs_no_boards()
    {
        string order = Json.With(Json.With(SampleOrders.Full, "boards", null), "panels", """[ { "width": 8, "height": 10, "quantity": 1, "surface": "loose" } ]""");

        Assert.Empty((await ReadAsync(order)).Boards);
    }

    [Fact]
    public async Task Create_order_that_names_neither_units_nor_currency_is_warned_in_the_plan()
    {
        using var planner = new SamplePlanner();
        using var host = new TestHost(planner.PlanAtOnce);
        using HttpClient client = host.CreateClient();

        using HttpResponseMessage response = await client.PostOrderAsync(Json.With(Json.With(SampleOrders.Smallest, "units", null), "currency", null));

        Assert.Equal(
            ["units-assumed", "currency-assumed"],
            (await Json.ReadAsync(response)).GetProperty("warnings").EnumerateArray().Select(w => w.GetProperty("id").GetString()));
    }

    [Theory]
    [InlineData("JPY", "610", true)]
    [InlineData("JPY", "6.10", false)]
    [InlineData("KWD", "6.125", true)]
    [InlineData("KWD", "6.1251", false)]
    [InlineData("EUR", "6.1000", true)]
    public async Task Create_price_with_the_currencys_digits_is_taken_and_with_more_is_refused(string currency, string price, bool right)
    {
        using var planner = new SamplePlanner();
        using var host = new TestHost(planner.PlanAtOnce);
        using HttpClient client = host.CreateClient();
        string order = Json.With(Json.With(SampleOrders.Smallest, "currency", $"\"{currency}\""), "boards[0].price", price);

        using HttpResponseMessage response = await client.PostOrderAsync(order);

        Assert.Equal(right ? HttpStatusCode.Created : HttpStatusCode.BadRequest, response.StatusCode);
    }

    private static async Task<Order> ReadAsync(string body)
    {
        using var planner = new SamplePlanner();
        using var host = new TestHost(planner.PlanAtOnce);
        using HttpClient client = host.CreateClient();
        using HttpResponseMessage response = await client.PostOrderAsync(body);
        Assert.True(response.StatusCode == HttpStatusCode.Created, await response.Content.ReadAsStringAsync());
        return Assert.Single(planner.Orders);
    }
}
