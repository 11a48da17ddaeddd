using System.Collections.Immutable;
using System.Globalization;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Strength;

/// <summary>What to tell the painter of two ways to stiffen panels.</summary>
internal static class StiffeningRemark
{
    /// <summary>The remark; none where there is nothing to weigh.</summary>
    /// <param name="order">The order.</param>
    /// <param name="stiffening">The ways; null: nothing sags too much.</param>
    public static ImmutableArray<Warning> Of(Order order, Stiffening? stiffening)
    {
        if (stiffening is not { } ways || (ways.Strips ?? ways.Thicker) is null)
        {
            return [];
        }

        string strips = ways.Strips is { } of ? $"strips for cradles add {Amount(order, of)}" : "no strips are there for cradles";
        string thicker = ways.Thicker switch
        {
            null => "no board of the order is stiff enough for all of them",
            { Minor: < 0 } less => $"boards thick enough save {Amount(order, new Money(-less.Minor))}",
            { } more => $"boards thick enough add {Amount(order, more)}",
        };
        string end = ways.ThickerIsCheaper switch
        {
            true => " The thicker board is the cheaper way.",
            false => " Strips are the cheaper way.",
            null => "",
        };
        return [new Warning("brace-or-thicker", $"{string.Join(", ", ways.Marks)} would sag more under a hand than allowed. To stiffen them, {strips}; {thicker}.{end} Both planned quickly, without work and delivery.")];
    }

    private static string Amount(Order order, Money money) =>
        $"{money.In(order.Currency.MinorDigits).ToString($"F{order.Currency.MinorDigits}", CultureInfo.InvariantCulture)} {order.Currency.Code}";
}
