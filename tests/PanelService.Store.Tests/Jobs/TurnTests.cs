using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Store.Jobs;
using PanelService.Store.Tests.Hosts;

namespace PanelService.Store.Tests.Jobs;

/// <summary>Clients take turns in the queue that hosts share, and a turn whose planner is gone comes back to its order.</summary>
public abstract class TurnTests(IDatabase database)
{
    [Fact]
    public async Task Whoever_hands_in_many_orders_keeps_nobody_waiting_longer()
    {
        using Home home = database.Open();
        using Studio studio = home.OpenStudio();
        var jobs = new JobBook(studio, new SteppingClock());
        foreach (string id in new[] { "many-1", "many-2", "many-3", "one-1", "other-1" })
        {
            Assert.True(await jobs.AddAsync(Handed(id), id.Split('-')[0], 10, default));
        }

        List<string?> taken = [];
        for (int turn = 0; turn < 6; turn++)
        {
            taken.Add((await jobs.TakeAsync($"ticket-{turn}", "planner", default))?.Id);
        }

        Assert.Equal(["many-1", "one-1", "other-1", "many-2", "many-3", null], taken);
    }

    [Fact]
    public async Task Turn_that_is_given_out_again_comes_back_to_its_order_until_that_has_ended()
    {
        using Home home = database.Open();
        using Studio studio = home.OpenStudio();
        var jobs = new JobBook(studio, new SteppingClock());
        Assert.True(await jobs.AddAsync(Handed("a"), "one", 10, default));
        Assert.True(await jobs.AddAsync(Handed("b"), "one", 10, default));

        string? first = (await jobs.TakeAsync("ticket", "killed", default))?.Id;
        string? again = (await jobs.TakeAsync("ticket", "second", default))?.Id;
        await jobs.EndAsync("a", JobState.Done, null, default);
        string? ended = (await jobs.TakeAsync("ticket", "third", default))?.Id;
        string? other = (await jobs.TakeAsync("another", "third", default))?.Id;

        Assert.Equal(("a", "a", null, "b"), (first, again, ended, other));
    }

    [Fact]
    public async Task No_client_takes_the_last_quarter_of_the_room()
    {
        using Home home = database.Open();
        using Studio studio = home.OpenStudio();
        var jobs = new JobBook(studio, new SteppingClock());
        List<bool> isIn = [];
        foreach (string id in new[] { "many-1", "many-2", "many-3", "many-4", "one-1", "one-2" })
        {
            isIn.Add(await jobs.AddAsync(Handed(id), id.Split('-')[0], 4, default));
        }

        Assert.Equal([true, true, true, false, true, false], isIn);
    }

    private static PlanTask Handed(string id) => new(id, new Order { Units = LengthUnit.Inch, Currency = new Currency("EUR", 2), Panels = [] }, [], "{}", []);

    // Each time it is asked, a second later.
    private sealed class SteppingClock : TimeProvider
    {
        private long _seconds;

        public override DateTimeOffset GetUtcNow() => DateTimeOffset.UnixEpoch.AddSeconds(++_seconds);
    }
}

/// <summary>On SQLite.</summary>
public sealed class SqliteTurnTests() : TurnTests(new SqliteDatabase());

/// <summary>On PostgreSQL.</summary>
[Trait(PostgresDatabase.Trait, PostgresDatabase.Name)]
public sealed class PostgresTurnTests() : TurnTests(new PostgresDatabase());
