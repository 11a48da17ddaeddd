using System.Globalization;
using System.Net;
using System.Text.Json;
using PanelService.Checking;

namespace PanelService.Outside.Tests.Orders;

/// <summary>Panels too narrow to lie at a fence that reaches a part of the sheet: they can only fall off what lies there.</summary>
public sealed class ShortFenceTests(Service service) : IClassFixture<Service>
{
    [Theory]
    [InlineData(12, 100, 2440, 1220)]
    [InlineData(12, 3000, 2440, 1220)]
    [InlineData(12, 6000, 10000, 10000)]
    [InlineData(20, 400, 10000, 10000)]
    public async Task Narrow_panels_come_off_one_sheet_in_stacks_that_the_fence_reaches(int size, int panels, int width, int height)
    {
        string order = string.Create(CultureInfo.InvariantCulture, $$"""
            { "units": "millimetre", "currency": "EUR", "effort": "quick", "saw": { "fenceReach": 600 },
              "panels": [{ "width": {{size}}, "height": {{size}}, "quantity": {{panels}} }],
              "boards": [{ "id": "b", "thickness": 5, "width": {{width}}, "height": {{height}}, "price": 100 }] }
            """);

        var (status, body) = await service.Plan(order);

        Assert.Equal((HttpStatusCode.Created, ""), (status, string.Join('\n', PlanChecker.Check(order, body))));
        using var plan = JsonDocument.Parse(body);
        Assert.Equal(1, Assert.Single(plan.RootElement.GetProperty("sheets").EnumerateArray()).GetProperty("copies").GetInt32());
    }
}
