namespace PanelService.Api.Tests.Hosts;

/// <summary>Orders to send.</summary>
internal static class SampleOrders
{
    /// <summary>The least that can be ordered: two bare panels from one board.</summary>
    internal const string Smallest =
        """
        { "units": "inch", "currency": "EUR",
          "panels": [ { "width": 8, "height": 10, "quantity": 2 } ],
          "boards": [ { "id": "hb3", "thickness": "1/8", "width": 24, "height": 48, "price": 6.10 } ] }
        """;

    /// <summary>Every field of the contract, each with a right value.</summary>
    internal const string Full =
        """
        { "title": "Tern Island study week", "units": "inch", "currency": "EUR",
          "panels": [
            { "mark": "A", "width": 8, "height": 10, "quantity": 12, "spares": 0, "surface": "cloth", "board": "hardboard",
              "cloth": "linen", "thickness": "1/8", "mayTurn": true, "adhesive": "glue", "primer": "ground", "shopPrice": 7.40, "mayBuy": false },
            { "width": "11 3/4", "height": "20,5 cm", "quantity": 3, "surface": "bare" } ],
          "wishes": [ { "mark": "W", "width": 5, "height": 7, "atMost": 20, "worth": 2.0, "surface": "bare", "board": null, "thickness": null, "mayTurn": true } ],
          "boards": [
            { "id": "hb3", "name": "Hardboard 1/8, 2 x 4 ft", "kind": "hardboard", "thickness": "1/8", "width": 24, "height": 48,
              "price": 6.10, "forSale": null, "onHand": 1, "value": 0, "edgeTrim": null, "grain": "none" },
            { "id": "ply", "kind": "plywood", "thickness": "4 mm", "width": 24, "height": 24, "forSale": 0, "onHand": 2, "edgeTrim": 0, "grain": "height" } ],
          "cloths": [
            { "id": "lin-wide", "name": "Primed linen", "kind": "linen", "width": 62, "selvedge": "1/2",
              "sale": { "by": "length", "step": 36, "price": 31.00, "atMost": null },
              "remnants": [ { "id": "r7", "width": 30, "length": 22, "quantity": 1, "value": 0 } ], "warp": "any" },
            { "id": "cot-roll", "kind": "cotton", "width": 72, "selvedge": 0, "sale": { "by": "roll", "length": 216, "price": 96.00, "forSale": null } } ],
          "adhesives": [
            { "id": "glue", "name": "Neutral pH adhesive", "coverage": { "area": 80, "volume": 0.4 },
              "containers": [ { "volume": 8, "price": 7.90 }, { "volume": 32, "price": 21.00 } ], "onHand": 3.0, "value": 0 } ],
          "primers": [ { "id": "ground", "coats": 3, "coverage": { "area": 400, "volume": 1 }, "containers": [ { "volume": 16, "price": 12.50 } ], "onHand": 0 } ],
          "saw": { "kerf": "1/8", "edgeTrim": 0, "undersize": 0, "smallestKept": [4, 6] },
          "bench": { "margin": "1/2", "smallestCloth": [6, 8], "pressHours": 12, "pressSpaces": 4, "stackHeight": 10 },
          "labour": { "perHour": 0 },
          "overheads": [ { "name": "saw hire", "cost": 0 } ],
          "effort": "steady" }
        """;
}
