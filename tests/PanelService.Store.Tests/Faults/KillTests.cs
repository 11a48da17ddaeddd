using System.Globalization;
using Microsoft.EntityFrameworkCore;
using PanelService.Planning;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Store.Model;
using PanelService.Store.Plans;
using PanelService.Store.Tests.Hosts;

namespace PanelService.Store.Tests.Faults;

/// <summary>
/// Killed at any moment. A process that books without end is killed in the middle of its next booking; the database is
/// opened again, and every booking it had answered must be there, whole, and no other may be there in part.
/// </summary>
public abstract class KillTests(IDatabase database, int kills)
{
    private const string PlanId = "00112233445566778899aabbccddeeff";
    private const int Homes = 4;

    // Fewer, for whoever waits: KILLS=20.
    private readonly int _kills = int.TryParse(Environment.GetEnvironmentVariable("KILLS"), NumberStyles.None, CultureInfo.InvariantCulture, out int fewer) ? fewer : kills;

    [Fact]
    public async Task Killed_in_the_middle_of_bookings_leaves_every_answered_booking_and_no_half_one()
    {
        int[] done = await Task.WhenAll(Enumerable.Range(0, Homes).Select(seed => KillAgainAndAgainAsync(seed, _kills / Homes)));

        Assert.Equal(_kills, done.Sum());
    }

    private async Task<int> KillAgainAndAgainAsync(int seed, int times)
    {
        using Home home = database.Open();
        await PrepareAsync(home);
        var random = new Random(seed);
        List<string> answered = [];
        int killed = 0;
        for (; killed < times; killed++)
        {
            using var booker = new Booker(home.Options, PlanId);

            // Read so far, then kill: it is in the middle of something, nobody knows of what.
            for (int said = random.Next(1, 7); said > 0; said--)
            {
                answered.Add(await booker.NextAsync() ?? throw new InvalidOperationException("It ended by itself."));
            }

            answered.AddRange(await booker.KillAsync());
        }

        await CheckAsync(home, answered);
        return killed;
    }

    private static async Task PrepareAsync(Home home)
    {
        using Studio studio = home.OpenStudio();
        var order = new Order
        {
            Units = LengthUnit.Inch,
            Currency = new Currency("EUR", 2),
            Panels = [new PanelLine { Mark = "A", Width = Length.FromInches(8), Height = Length.FromInches(10), Quantity = 10 }],
            Boards = [new BoardSupply { Id = "hb3", Thickness = Length.FromInches(0.125m), Width = Length.FromInches(24), Height = Length.FromInches(48), OnHand = 2, ForSale = 0 }],
        };
        Plan plan = ((Planned)Planner.Plan(order)).Plan;
        await new PlanBook(studio, TimeProvider.System).SaveAsync(new FinishedPlan(PlanId, plan, false, "{}", []), default);
    }

    private static async Task CheckAsync(Home home, List<string> answered)
    {
        using Studio studio = home.OpenStudio();
        (BookingRow[] bookings, MovementRow[] movements, StockRow[] stock, PlanRow plan) = await studio.ReadAsync(
            async context => (
                await context.Bookings.ToArrayAsync(),
                await context.Movements.ToArrayAsync(),
                await context.Stock.ToArrayAsync(),
                await context.Plans.SingleAsync()),
            default);
        ILookup<long, MovementRow> of = movements.ToLookup(movement => movement.BookingId);

        Assert.DoesNotContain(answered, line => line.StartsWith("unavailable", StringComparison.Ordinal));
        AnsweredAreThere(answered, bookings, of);
        NoneIsHalf(bookings, of);
        Assert.Equal(stock.Length, stock.Select(heap => heap.Id).Distinct().Count());
        Assert.All(stock, heap => Assert.Contains(movements, movement => movement.StockId == heap.Id));
        Assert.All(movements.GroupBy(movement => movement.StockId), heap => Assert.True(heap.Sum(movement => movement.Quantity) >= 0, heap.Key));

        // The plan is cut exactly where its last cut has not been taken back.
        BookingRow? last = bookings.Where(booking => booking.Kind == "cut").MaxBy(booking => booking.Id);
        bool isTakenBack = last is null || bookings.Any(booking => booking.UndoOf == last.Id);
        Assert.Equal(isTakenBack ? null : last!.Id, plan.CutBooking);
    }

    private static void AnsweredAreThere(List<string> answered, BookingRow[] bookings, ILookup<long, MovementRow> of)
    {
        Dictionary<string, long> byNote = bookings.Where(booking => booking.Note is not null).ToDictionary(booking => booking.Note!, booking => booking.Id);
        HashSet<long> ids = [.. bookings.Select(booking => booking.Id)];
        foreach (string[] words in answered.Select(line => line.Split(' ')))
        {
            if (words[0] == "added")
            {
                Assert.Equal(words[2..], of[byNote[words[1]]].OrderBy(movement => movement.Id).Select(movement => movement.StockId));
            }
            else if (words[0] is "cut" or "undone")
            {
                Assert.Contains(long.Parse(words[1], CultureInfo.InvariantCulture), ids);
            }
        }
    }

    private static void NoneIsHalf(BookingRow[] bookings, ILookup<long, MovementRow> of)
    {
        Assert.All(bookings.Where(booking => booking.Kind == "added"), booking => Assert.Equal([1, 2, 3], of[booking.Id].OrderBy(movement => movement.Id).Select(movement => movement.Quantity)));
        long[][] cuts = [.. bookings.Where(booking => booking.Kind == "cut").Select(booking => of[booking.Id].OrderBy(movement => movement.Id).Select(movement => movement.Quantity).ToArray())];
        Assert.All(cuts, cut => Assert.Equal(cuts[0], cut));
        Assert.All(
            bookings.Where(booking => booking.UndoOf is not null),
            booking => Assert.Equal(of[booking.UndoOf!.Value].Select(movement => -movement.Quantity).Order(), of[booking.Id].Select(movement => movement.Quantity).Order()));
    }
}

/// <summary>On SQLite, two hundred times.</summary>
public sealed class SqliteKillTests() : KillTests(new SqliteDatabase(), 200);

/// <summary>On PostgreSQL, where the server outlives the killed: twenty times.</summary>
[Trait(PostgresDatabase.Trait, PostgresDatabase.Name)]
public sealed class PostgresKillTests() : KillTests(new PostgresDatabase(), 20);
