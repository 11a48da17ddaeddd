using System.Net;
using PanelService.Checking;

namespace PanelService.Outside.Tests.Orders;

/// <summary>Eighty random orders through the whole service; every plan keeps the nine rules.</summary>
public sealed class RandomOrderTests(Service service) : IClassFixture<Service>
{
    private const int InOneTest = 20;

    /// <summary>The first seed of every test.</summary>
    public static TheoryData<int> Starts() => [.. Enumerable.Range(0, 4).Select(i => i * InOneTest)];

    [Theory]
    [MemberData(nameof(Starts))]
    public async Task Plan_of_a_random_order_keeps_every_rule(int start)
    {
        // Two at a time, each in a place of its own, so that what is told does not depend on who came first.
        string[] told = new string[InOneTest];
        await Parallel.ForAsync(0, InOneTest, new ParallelOptions { MaxDegreeOfParallelism = 2 }, async (i, _) => told[i] = await FaultsOf(start + i));
        string faults = string.Concat(told);

        Assert.True(faults.Length == 0, faults);
    }

    private async Task<string> FaultsOf(int seed)
    {
        string order = RandomOrder.Of(seed).Json;
        var (status, body) = await service.Plan(order);
        var found = status == HttpStatusCode.Created
            ? PlanChecker.Check(order, body)
            : [new Violation(Rule.Document, $"{(int)status}", body)];
        return string.Concat(found.Take(5).Select(violation => $"\nseed {seed}: {violation}"));
    }

    [Fact]
    public async Task Order_sent_twice_gives_the_same_plan()
    {
        var faults = new List<Violation>();
        for (int seed = 0; seed < 12; seed++)
        {
            string order = RandomOrder.Of(seed).Json;
            var first = await service.Plan(order);
            var second = await service.Plan(order);
            faults.AddRange(PlanChecker.CheckRepeated(first.Body, second.Body));
        }

        Assert.Empty(faults);
    }
}
