using CsCheck;
using PanelService.Planning.Measures;
using PanelService.Store.Stock;
using PanelService.Store.Tests.Hosts;
using PanelService.Store.Versions;

namespace PanelService.Store.Tests.Stock;

/// <summary>Random histories: whatever is added, corrected and taken back, stock is the sum of its movements and never below 0.</summary>
public abstract class HistoryTests(IDatabase database, int histories)
{
    private const int Steps = 12;

    private static readonly Gen<(int What, int Which, int Amount)[]> Histories = Gen.Select(Gen.Int[0, 2], Gen.Int[0, 9], Gen.Int[0, 6]).Array[Steps];

    [Fact]
    public void Stock_is_the_sum_of_its_movements_after_any_history()
    {
        using Home home = database.Open();
        using Studio studio = home.OpenStudio();
        var book = new StockBook(studio, TimeProvider.System);

        Histories.Sample(history => LiveThrough(book, history), iter: histories, threads: 1);
    }

    private static void LiveThrough(StockBook book, (int What, int Which, int Amount)[] history)
    {
        var expected = book.ListAsync(true, default).Result.ToDictionary(item => item.Id, item => item.Quantity, StringComparer.Ordinal);
        foreach ((int what, int which, int amount) in history)
        {
            Step(book, expected, what, which, amount);
        }

        StockItem[] stock = [.. book.ListAsync(true, default).Result];
        Movement[] ledger = [.. book.MovementsAsync(null, null, 0, int.MaxValue, default).Result];
        Assert.Equal(expected.OrderBy(heap => heap.Key, StringComparer.Ordinal), stock.ToDictionary(item => item.Id, item => item.Quantity).OrderBy(heap => heap.Key, StringComparer.Ordinal));
        Assert.All(stock, item => Assert.Equal(ledger.Where(movement => movement.Stock == item.Id).Sum(movement => movement.Quantity), item.Quantity));
        Assert.All(stock, item => Assert.True(item.Quantity >= 0));
    }

    // What each step should come to is worked out from the ledger's rules, not asked of the book.
    private static void Step(StockBook book, Dictionary<string, long> expected, int what, int which, int amount)
    {
        string[] ids = [.. expected.Keys.Order(StringComparer.Ordinal)];
        if (what == 0 || ids.Length == 0)
        {
            StockItem added = book.AddAsync([new StockDraft(StockSort.Panel, new StockGood(), amount + 1, default, LengthUnit.Inch, "EUR")], null, default).Result[0];
            Assert.True(expected.TryAdd(added.Id, amount + 1), $"{added.Id} was given out twice.");
        }
        else if (what == 1)
        {
            string id = ids[which % ids.Length];
            Assert.IsType<Saved>(book.CorrectAsync(id, new StockCorrection(null, amount, null, null), Precondition.None, default).Result);
            expected[id] = amount;
        }
        else
        {
            Movement[] ledger = [.. book.MovementsAsync(null, null, 0, int.MaxValue, default).Result];
            Movement chosen = ledger[^(1 + (which % ledger.Length))];
            UndoOutcome outcome = book.UndoAsync(chosen.Id, default).Result;
            if (ledger.Any(movement => movement.UndoOf == chosen.Id))
            {
                Assert.IsType<AlreadyUndone>(outcome);
            }
            else if (expected[chosen.Stock] < chosen.Quantity)
            {
                Assert.IsType<UsedSince>(outcome);
            }
            else
            {
                Assert.IsType<TakenBack>(outcome);
                expected[chosen.Stock] -= chosen.Quantity;
            }
        }
    }
}

/// <summary>On SQLite.</summary>
public sealed class SqliteHistoryTests() : HistoryTests(new SqliteDatabase(), 25);

/// <summary>On PostgreSQL.</summary>
[Trait(PostgresDatabase.Trait, PostgresDatabase.Name)]
public sealed class PostgresHistoryTests() : HistoryTests(new PostgresDatabase(), 8);
