using CsCheck;
using PanelService.Work;

namespace PanelService.Api.Tests.Operations;

/// <summary>Clients take turns, none takes all the room, and nothing that was taken in gets lost.</summary>
public sealed class FairQueueTests
{
    [Fact]
    public async Task Clients_take_turns_whoever_came_first_with_many()
    {
        using var queue = new FairQueue<string>(16);
        foreach (string item in new[] { "a1", "a2", "a3", "a4", "b1", "c1", "b2" })
        {
            Assert.True(queue.TryAdd(item[..1], item));
        }

        Assert.Equal(["a1", "b1", "c1", "a2", "b2", "a3", "a4"], await TakeAsync(queue, 7));
    }

    [Fact]
    public void The_last_quarter_of_the_room_is_for_others()
    {
        using var queue = new FairQueue<int>(8);

        Assert.Equal(6, Enumerable.Range(0, 20).Count(i => queue.TryAdd("greedy", i)));
        Assert.True(queue.TryAdd("other", 1));
        Assert.True(queue.TryAdd("third", 1));
        Assert.False(queue.TryAdd("fourth", 1));
    }

    [Fact]
    public void What_goes_in_comes_out_once_each_clients_own_in_order() =>
        Gen.Select(Gen.Int[0, 3], Gen.Int[0, 99]).Array[0, 40].Sample(items =>
        {
            using var queue = new FairQueue<(int Client, int Number)>(24);
            var taken = items.Select((item, i) => (Client: item.Item1, Number: i)).Where(item => queue.TryAdd($"{item.Client}", item)).ToList();

            var given = TakeAsync(queue, taken.Count).GetAwaiter().GetResult();

            Assert.Equal(0, queue.Count);
            Assert.Equal(taken.Order(), given.Order());
            Assert.All(given.GroupBy(item => item.Client), client => Assert.Equal(client.Select(item => item.Number).Order(), client.Select(item => item.Number)));
        });

    [Fact]
    public async Task What_nobody_wants_any_more_takes_no_room()
    {
        var gone = new HashSet<int>();
        using var queue = new FairQueue<int>(4, gone.Contains);
        Assert.True(queue.TryAdd("a", 1) && queue.TryAdd("a", 2) && queue.TryAdd("b", 3) && queue.TryAdd("c", 4));
        Assert.True(queue.IsFull);
        Assert.False(queue.TryAdd("d", 5));

        gone.UnionWith([1, 2, 4]);

        Assert.False(queue.IsFull);
        Assert.True(queue.TryAdd("d", 6) && queue.TryAdd("a", 7));
        Assert.Equal([3, 6, 7], await TakeAsync(queue, 3));
        Assert.Equal(0, queue.Count);
        Assert.False(queue.TakeAsync(CancellationToken.None).IsCompleted);
    }

    private static async Task<List<T>> TakeAsync<T>(FairQueue<T> queue, int count)
    {
        var taken = new List<T>();
        while (taken.Count < count)
        {
            taken.Add(await queue.TakeAsync(CancellationToken.None));
        }

        return taken;
    }
}
