// Books without end in each of some studios at once, and says after each booking that it is done, so that a test can kill it
// in the middle of the next ones. Every line begins with the studio's place.
// Arguments: the plan to cut and take back, then per studio its data folder and its PostgreSQL connection, "-" for none.
using System.Collections.Immutable;
using System.Globalization;
using Microsoft.Extensions.Logging.Abstractions;
using PanelService.Planning.Measures;
using PanelService.Store;
using PanelService.Store.Cuts;
using PanelService.Store.Faults;
using PanelService.Store.Stock;

string plan = args[0];
string[][] studios = [.. args.Skip(1).Chunk(2)];
Console.Out.NewLine = "\n";

// Should the test itself end, so does this.
new Thread(() =>
{
    _ = Console.In.ReadLine();
    Environment.Exit(2);
})
{
    IsBackground = true,
}.Start();

// SQLite's calls do not give their thread back: with fewer threads some studios would wait until the pool grows.
ThreadPool.SetMinThreads(studios.Length + 2, studios.Length + 2);
await Task.WhenAll(studios.Select((studio, place) => Task.Run(() => BookAsync(place, new StoreOptions { DataFolder = studio[0], Postgres = studio[1] == "-" ? null : studio[1] }))));
return 1;

async Task BookAsync(int place, StoreOptions options)
{
    using var studio = new Studio(options, NullLogger<Studio>.Instance);
    var stock = new StockBook(studio, TimeProvider.System);
    var cuts = new CutBook(studio, TimeProvider.System);
    try
    {
        for (int round = 0; ; round++)
        {
            string note = string.Create(CultureInfo.InvariantCulture, $"{Environment.ProcessId}-{round}");
            ImmutableArray<StockItem> added = await stock.AddAsync([Heap(1), Heap(2), Heap(3)], note, default);
            Console.WriteLine($"{place} added {note} {string.Join(' ', added.Select(item => item.Id))}");
            CutOutcome cut = await cuts.CutAsync(plan, Spoilage.None, default);
            Console.WriteLine(cut is CutBooked booked ? $"{place} cut {booked.Record.Booking}" : $"{place} not cut {cut.GetType().Name}");
            UndoOutcome back = await cuts.UndoAsync(plan, default);
            Console.WriteLine(back is TakenBack taken ? $"{place} undone {taken.Movements[0].Booking}" : $"{place} not undone {back.GetType().Name}");
        }
    }
    catch (StoreUnavailableException fault)
    {
        Console.WriteLine($"{place} unavailable {fault.Fault}");
    }
}

static StockDraft Heap(int count) => new(
    StockSort.Offcut,
    new StockGood { Thickness = Length.FromInches(0.125m), Width = Length.FromInches(8 + count), Height = Length.FromInches(10) },
    count,
    new Money(100),
    LengthUnit.Inch,
    "EUR");
