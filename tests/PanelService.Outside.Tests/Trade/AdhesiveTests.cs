using System.Text.Json;
using PanelService.Outside.Tests.Orders;

namespace PanelService.Outside.Tests.Trade;

/// <summary>
/// Common practice: 0.4 US fl oz of adhesive covers an 8 x 10 in panel, generously. That is 5 % of an 8 oz bottle and
/// 229 mL/m². Conversions exact by definition: 1 in = 25.4 mm (NIST SP 811), 1 US fl oz = 29.5735295625 mL (NIST
/// Handbook 44).
/// </summary>
public sealed class AdhesiveTests(Service service) : IClassFixture<Service>
{
    private const string Goods = """
        "boards":[{"id":"b","thickness":"1/8 in","width":"24 in","height":"48 in","price":5}],
        "cloths":[{"id":"c","width":"54 in","sale":{"by":"length","step":"1 yd","price":10}}],
        """;

    [Fact]
    public async Task Adhesive_for_a_panel_of_8_by_10_is_a_twentieth_of_an_8_ounce_bottle()
    {
        var (needed, left) = await Adhesive($$"""
            {"units":"inch","currency":"USD",{{Goods}}"panels":[{"width":8,"height":10,"quantity":1,"surface":"cloth"}],
             "adhesives":[{"id":"glue","coverage":{"area":80,"volume":0.4},"containers":[{"volume":8,"price":7.9}]}]}
            """);

        Assert.Equal((0.4m, 0.95m), (needed, left / 8));
    }

    [Fact]
    public async Task Adhesive_at_229_mL_a_square_metre_is_four_tenths_of_an_ounce_for_a_panel_of_8_by_10()
    {
        var (needed, _) = await Adhesive($$"""
            {"units":"millimetre","currency":"USD",{{Goods}}"panels":[{"width":"8 in","height":"10 in","quantity":1,"surface":"cloth"}],
             "adhesives":[{"id":"glue","coverage":{"area":10000,"volume":229},"containers":[{"volume":250,"price":7.9}]}]}
            """);

        Assert.InRange(needed / 29.5735295625m, 0.3995m, 0.4005m);
    }

    private async Task<(decimal Needed, decimal Left)> Adhesive(string order)
    {
        using var plan = JsonDocument.Parse((await service.Plan(order)).Body);
        var liquid = plan.RootElement.GetProperty("liquids")[0];
        return (liquid.GetProperty("needed").GetDecimal(), liquid.GetProperty("left").GetDecimal());
    }
}
