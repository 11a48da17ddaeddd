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
/// Killed at any moment. A process that books without end in some studios at once is killed in the middle of their next
/// bookings; the databases are opened again, and every booking it had answered must be there, whole, and no other may be
/// there in part. One process for several studios, because most of its life is its start.
/// </summary>
/// <param name="database">The kind of database.</param>
/// <param name="studios">How many studios one process books in.</param>
/// <param name="kills">How many bookings are cut short, over all studios.</param>
public abstract class KillTests(IDatabase database, int studios, int kills)
{
    private const string PlanId = "00112233445566778899aabbccddeeff";

    // More or fewer, for whoever waits: KILLS=2000.
    private readonly int _kills = int.TryParse(Environment.GetEnvironmentVariable("KILLS"), NumberStyles.None, CultureInfo.InvariantCulture, out int asked) ? asked : kills;

    [Fact]
    public async Task Killed_in_the_middle_of_bookings_leaves_every_answered_booking_and_no_half_one()
    {
        Home[] homes = [.. Enumerable.Range(0, studios).Select(_ => database.Open())];
        try
        {
            await Task.WhenAll(homes.Select(PrepareAsync));
            ILookup<int, string> answered = await KillAgainAndAgainAsync(homes);
            for (int place = 0; place < studios; place++)
            {
                Assert.NotEmpty(answered[place]);
                await CheckAsync(homes[place], [.. answered[place]]);
            }
        }
        finally
        {
            Array.ForEach(homes, home => home.Dispose());
        }
    }

    // Per studio, what was answered.
    private async Task<ILookup<int, string>> KillAgainAndAgainAsync(Home[] homes)
    {
        var random = new Random(_kills);
        List<string> answered = [];
        for (int killed = 0; killed < _kills; killed += studios)
        {
            using var booker = new Booker(PlanId, homes.Select(home => home.Options));

            // Read so far, then kill: it is in the middle of something in every studio, nobody knows of what.
            for (int said = random.Next(1, 4 * studios); said > 0; said--)
            {
                answered.Add(await booker.NextAsync() ?? throw new InvalidOperationException("It ended by itself."));
            }

            answered.AddRange(await booker.KillAsync());
        }

        return answered.Select(line => line.Split(' ', 2)).ToLookup(words => int.Parse(words[0], CultureInfo.InvariantCulture), words => words[1]);
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
public sealed class SqliteKillTests() : KillTests(new SqliteDatabase(), studios: 20, kills: 200);

/// <summary>On PostgreSQL, where the server outlives the killed: twenty times.</summary>
[Trait(PostgresDatabase.Trait, PostgresDatabase.Name)]
public sealed class PostgresKillTests() : KillTests(new PostgresDatabase(), studios: 10, kills: 20);
