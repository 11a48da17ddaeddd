using System.Text.Json;
using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.Yields;

public sealed class YieldTests : IClassFixture<YieldTests.Service>
{
    private readonly HttpClient _client;

    public YieldTests(Service service)
    {
        ArgumentNullException.ThrowIfNull(service);
        _client = service.Client;
    }

    // Common practice: 24 × 48 in is 14.4 areas of 8 × 10 in, but yields 10 with a 1/8 in kerf.
    [Fact]
    public async Task Ask_of_one_board_gives_the_count_beside_the_area_figure_drawn()
    {
        using HttpResponseMessage response = await AskAsync("""{ "panel": { "width": 8, "height": 10 }, "board": { "width": 24, "height": 48 } }""");

        JsonElement board = Assert.Single((await Json.ReadAsync(response)).GetProperty("boards").EnumerateArray());
        Assert.Equal(10, board.GetProperty("count").GetInt32());
        Assert.Equal(14.4m, board.GetProperty("byArea").GetDecimal());
        Assert.Equal(10, board.GetProperty("sheet").GetProperty("pieces").GetArrayLength());
        Assert.StartsWith("<svg", board.GetProperty("sheet").GetProperty("svg").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ask_of_boards_and_stock_adds_up_what_is_there()
    {
        using HttpResponseMessage response = await AskAsync(
            """
            { "units": "centimetre", "panel": { "width": 20, "height": 30 }, "saw": { "kerf": "3.2 mm" },
              "boards": [ { "id": "half", "width": 61, "height": 122, "onHand": 2, "forSale": 0 }, { "width": "20 cm", "height": "30 cm", "onHand": 3, "forSale": 1 } ] }
            """);

        JsonElement yield = await Json.ReadAsync(response);
        Assert.Equal(["half", "board1"], yield.GetProperty("boards").EnumerateArray().Select(b => b.GetProperty("board").GetString()));
        int[] counts = [.. yield.GetProperty("boards").EnumerateArray().Select(b => b.GetProperty("count").GetInt32())];
        Assert.Equal(1, counts[1]);
        Assert.Equal((2 * counts[0]) + 3, yield.GetProperty("fromHand").GetInt64());
        Assert.Equal((2 * counts[0]) + 4, yield.GetProperty("fromAll").GetInt64());
    }

    [Fact]
    public async Task Ask_where_any_number_is_for_sale_leaves_the_total_out()
    {
        using HttpResponseMessage response = await AskAsync("""{ "panel": { "width": 8, "height": 10 }, "boards": [ { "width": 24, "height": 48 } ] }""");

        Assert.False((await Json.ReadAsync(response)).TryGetProperty("fromAll", out _));
    }

    [Fact]
    public async Task Ask_panel_larger_than_the_board_gives_none_without_a_drawing()
    {
        using HttpResponseMessage response = await AskAsync("""{ "panel": { "width": 30, "height": 50 }, "board": { "width": 24, "height": 48 } }""");

        JsonElement board = (await Json.ReadAsync(response)).GetProperty("boards")[0];
        Assert.Equal(0, board.GetProperty("count").GetInt32());
        Assert.False(board.TryGetProperty("sheet", out _));
    }

    [Theory]
    [InlineData("""{ "board": { "width": 24, "height": 48 } }""", "panel")]
    [InlineData("""{ "panel": { "height": 10 }, "board": { "width": 24, "height": 48 } }""", "panel.width")]
    [InlineData("""{ "panel": { "width": 8, "height": 10 } }""", "boards")]
    [InlineData("""{ "panel": { "width": 8, "height": 10 }, "boards": [] }""", "boards")]
    [InlineData("""{ "panel": { "width": 8, "height": 10 }, "board": { "width": 24 } }""", "board.height")]
    [InlineData("""{ "panel": { "width": 8, "height": 10 }, "board": { "width": 24, "height": 48 }, "boards": [ { "width": 24, "height": 48 } ] }""", "board")]
    [InlineData("""{ "panel": { "width": 8, "height": 10 }, "board": { "width": 24, "height": 48, "edgeTrim": 12 } }""", "board.edgeTrim")]
    [InlineData("""{ "panel": { "width": 8, "height": 10 }, "board": { "width": 24, "height": 48 }, "saw": { "undersize": 8 } }""", "saw.undersize")]
    [InlineData("""{ "panel": { "width": 8, "height": 10, "quantity": 3 }, "board": { "width": 24, "height": 48 } }""", "panel.quantity")]
    [InlineData("""{ "panel": { "width": 0.1, "height": 0.11 }, "board": { "width": 24, "height": 48 } }""", "panel")]
    [InlineData("""{ "panel": { "width": "1e9", "height": 10 }, "board": { "width": 24, "height": 48 } }""", "panel.width")]
    public async Task Ask_with_a_fault_is_400_naming_the_field(string body, string key)
    {
        using HttpResponseMessage response = await AskAsync(body);

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        Assert.Equal([key], problem.GetProperty("errors").EnumerateObject().Select(e => e.Name));
    }

    [Fact]
    public async Task Answer_to_more_boards_than_can_be_counted_at_once_says_how_many_can()
    {
        string boards = string.Join(',', Enumerable.Repeat("{ \"width\": 24, \"height\": 48 }", 100));

        using HttpResponseMessage response = await AskAsync($"{{ \"panel\": {{ \"width\": 0.75, \"height\": 0.7 }}, \"boards\": [{boards}] }}");

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        string said = Assert.Single(problem.GetProperty("errors").GetProperty("boards").EnumerateArray()).GetString()!;
        Assert.Matches("ask about the first [1-9][0-9]* alone", said);
    }

    private Task<HttpResponseMessage> AskAsync(string body) => _client.PostOrderAsync(body, "/api/yield");

    /// <summary>One service for all questions.</summary>
    public sealed class Service : IDisposable
    {
        private readonly TestHost _host = new();

        internal HttpClient Client => field ??= _host.CreateClient();

        public void Dispose() => _host.Dispose();
    }
}
