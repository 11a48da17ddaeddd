using System.Text.Json.Nodes;
using CsCheck;
using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.Orders;

/// <summary>Random spoiling of a right order: whatever comes, the answer is a plan or names what is wrong.</summary>
public sealed class RandomBodyTests
{
    private static readonly string[] Spoilt =
    [
        "null", "true", "0", "-1", "1", "0.5", "1e-28", "1e28", "-1e28", "1e999", "79228162514264337593543950335", "2147483647", "2147483648",
        "0.0000000000000000000000000001", "100000", "393700", "\"\"", "\"0\"", "\"1/3\"", "\"999999/000001\"", "\"1/999999999999\"",
        "\"99999999 yd\"", "\"inch\"", "\"roll\"", "\"height\"", "\"\\u0000\"", "\"\\uFFFF\"", "\"\\uD83D\\uDE00\"", "[]", "[[]]", "{}", "[null]", "[1,2]", "{\"id\":1}",
    ];

    [Fact]
    public async Task Create_order_spoilt_at_random_is_planned_or_refused_and_never_500()
    {
        using var planner = new SamplePlanner();
        using var host = new TestHost(planner.PlanAtOnce);
        using HttpClient client = host.CreateClient();

        await Gen.Select(Gen.Int[0, 1000], Gen.Int[0, Spoilt.Length - 1]).Array[1, 4].SampleAsync(
            async slips =>
            {
                string body = Spoil(slips);
                using HttpResponseMessage response = await client.PostOrderAsync(body);
                bool right = response.StatusCode == HttpStatusCode.Created;
                bool named = response.StatusCode == HttpStatusCode.BadRequest
                    && (await Json.ReadAsync(response)).GetProperty("errors").EnumerateObject().Any();
                Assert.True(right || named, $"{response.StatusCode} to {body}");
            },
            iter: 1000,
            threads: 1);
    }

    private static string Spoil((int Place, int Value)[] slips)
    {
        JsonNode order = JsonNode.Parse(SampleOrders.Full)!;
        foreach ((int place, int value) in slips)
        {
            List<Action<JsonNode?>> places = [.. Places(order)];
            string json = Spoilt[value];
            places[place % places.Count](JsonNode.Parse(json));
        }

        return order.ToJsonString();
    }

    private static IEnumerable<Action<JsonNode?>> Places(JsonNode? node)
    {
        if (node is JsonObject record)
        {
            foreach ((string name, JsonNode? child) in record.ToArray())
            {
                yield return value => record[name] = value;
                foreach (Action<JsonNode?> place in Places(child))
                {
                    yield return place;
                }
            }
        }
        else if (node is JsonArray list)
        {
            for (int index = 0; index < list.Count; index++)
            {
                int at = index;
                yield return value => list[at] = value;
                foreach (Action<JsonNode?> place in Places(list[at]))
                {
                    yield return place;
                }
            }
        }
    }
}
