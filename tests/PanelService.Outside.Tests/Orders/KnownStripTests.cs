using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace PanelService.Outside.Tests.Orders;

/// <summary>
/// Cloth by length of which a plan is known: a strip is cut up from edge to edge and its pieces are ordered. Nobody
/// may then say that they cost more than the strip does.
/// </summary>
public sealed class KnownStripTests(Service service) : IClassFixture<Service>
{
    [Theory]
    [InlineData(1, 8)]
    [InlineData(2, 14)]
    [InlineData(3, 20)]
    [InlineData(4, 28)]
    [InlineData(5, 40)]
    public async Task Bound_of_cloth_is_never_above_a_strip_it_is_known_to_come_out_of(int seed, int pieces)
    {
        var random = new Random(seed);
        int width = 50 + random.Next(40), length = (2 * width) + random.Next(2 * width);
        var (status, body) = await service.Plan(Order(width, CutUp(random, width, length, pieces)));

        Assert.Equal(HttpStatusCode.Created, status);
        using var plan = JsonDocument.Parse(body);
        Assert.InRange(plan.RootElement.GetProperty("clothProof").GetProperty("leastPossible").GetDecimal(), 0m, length);
    }

    private static string Order(int width, IEnumerable<(int Width, int Length)> pieces) => new JsonObject
    {
        ["units"] = "centimetre",
        ["currency"] = "EUR",
        ["effort"] = "quick",
        ["bench"] = new JsonObject { ["margin"] = 0 },
        ["panels"] = new JsonArray([.. pieces.Select(piece => new JsonObject
        {
            ["width"] = piece.Width, ["height"] = piece.Length, ["quantity"] = 1, ["surface"] = "loose",
        })]),
        ["cloths"] = JsonNode.Parse(
            $$$"""[{"id":"strip","width":{{{width}}},"sale":{"by":"length","step":1,"price":1.00}}]"""),
    }.ToJsonString();

    private static List<(int Width, int Length)> CutUp(Random random, int width, int length, int wanted)
    {
        const int Least = 6;
        var pieces = new List<(int Width, int Length)> { (width, length) };
        while (pieces.Count < wanted)
        {
            var largest = pieces.Where(piece => Math.Max(piece.Width, piece.Length) > 2 * Least).MaxBy(piece => piece.Width * piece.Length);
            pieces.Remove(largest);
            bool across = largest.Length <= 2 * Least || (largest.Width > 2 * Least && random.Next(2) == 0);
            int at = random.Next(Least, (across ? largest.Width : largest.Length) - Least);
            pieces.Add(across ? (at, largest.Length) : (largest.Width, at));
            pieces.Add(across ? (largest.Width - at, largest.Length) : (largest.Width, largest.Length - at));
        }

        return pieces;
    }
}
