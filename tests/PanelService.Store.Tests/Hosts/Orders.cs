
namespace PanelService.Store.Tests.Hosts;

/// <summary>Orders to send.</summary>
internal static class Orders
{
    /// <summary>Ten bare panels out of one sheet.</summary>
    internal static string Smallest(string title) =>
        $$"""
        { "title": "{{title}}", "units": "inch", "currency": "EUR", "effort": "quick",
          "panels": [ { "width": 8, "height": 10, "quantity": 10 } ],
          "boards": [ { "id": "hb3", "thickness": "1/8", "width": 24, "height": 48, "price": 6.10 } ] }
        """;
}
