using System.Collections.Immutable;
using System.Globalization;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Strength;

/// <summary>What to tell the painter of panels that sag too much: the strips that brace them, and two ways to pay for it.</summary>
internal static class StiffeningRemark
{
    /// <summary>The remark; none where nothing sags too much.</summary>
    /// <param name="order">The order.</param>
    /// <param name="stiffening">The ways; null: nothing sags too much.</param>
    public static ImmutableArray<Warning> Of(Order order, Stiffening? stiffening) => stiffening is { } ways
        ? [new Warning("brace-or-thicker", $"{string.Join(", ", ways.Marks)} would sag more under a hand than allowed.{Braces(order, ways)}{Costs(order, ways)}")]
        : [];

    // Lines whose cradles are alike are told together: "Brace it: on each of A, B 2 strips of 19 1/2 in and 3 of 14 in."
    private static string Braces(Order order, Stiffening ways)
    {
        var alike = ways.Pieces.GroupBy(piece => piece.Mark)
            .Select(pieces => (Mark: pieces.Key, Said: string.Join(" and ", pieces.Select((piece, i) => Piece(order, piece, i)))))
            .GroupBy(line => line.Said)
            .Select(lines => $"on each of {string.Join(", ", lines.Select(line => line.Mark))} {lines.Key}");
        string all = string.Join("; ", alike);
        return all.Length == 0 ? " They are too small for a cradle of strips this wide." : $" Brace it: {all}.";
    }

    private static string Piece(Order order, CradleStrips piece, int place) => string.Create(
        CultureInfo.InvariantCulture, $"{piece.Each}{(place == 0 ? " strips" : "")} of {LengthText.Format(piece.Length, order.Units)}");

    private static string Costs(Order order, Stiffening ways)
    {
        if ((ways.Strips ?? ways.Thicker) is null)
        {
            return " Of neither strips nor boards thick enough are there enough in the order.";
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
        return $" To stiffen them, {strips}; {thicker}.{end} Both planned quickly, without work and delivery.";
    }

    private static string Amount(Order order, Money money) =>
        $"{money.In(order.Currency.MinorDigits).ToString($"F{order.Currency.MinorDigits}", CultureInfo.InvariantCulture)} {order.Currency.Code}";
}
