// Books without end and says after each booking that it is done, so that a test can kill it in the middle of the next.
// Arguments: the data folder, the plan to cut and take back, and for PostgreSQL the connection.
using System.Collections.Immutable;
using System.Globalization;
using Microsoft.Extensions.Logging.Abstractions;
using PanelService.Planning.Measures;
using PanelService.Store;
using PanelService.Store.Cuts;
using PanelService.Store.Faults;
using PanelService.Store.Stock;

var options = new StoreOptions { DataFolder = args[0], Postgres = args.Length > 2 ? args[2] : null };
using var studio = new Studio(options, NullLogger<Studio>.Instance);
var stock = new StockBook(studio, TimeProvider.System);
var cuts = new CutBook(studio, TimeProvider.System);
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
try
{
    for (int round = 0; ; round++)
    {
        string note = string.Create(CultureInfo.InvariantCulture, $"{Environment.ProcessId}-{round}");
        ImmutableArray<StockItem> added = await stock.AddAsync([Heap(1), Heap(2), Heap(3)], note, default);
        Console.WriteLine($"added {note} {string.Join(' ', added.Select(item => item.Id))}");
        CutOutcome cut = await cuts.CutAsync(args[1], [], default);
        Console.WriteLine(cut is CutBooked booked ? $"cut {booked.Record.Booking}" : $"not cut {cut.GetType().Name}");
        UndoOutcome back = await cuts.UndoAsync(args[1], default);
        Console.WriteLine(back is TakenBack taken ? $"undone {taken.Movements[0].Booking}" : $"not undone {back.GetType().Name}");
    }
}
catch (StoreUnavailableException fault)
{
    Console.WriteLine($"unavailable {fault.Fault}");
    return 1;
}

static StockDraft Heap(int count) => new(
    StockSort.Offcut,
    new StockGood { Thickness = Length.FromInches(0.125m), Width = Length.FromInches(8 + count), Height = Length.FromInches(10) },
    count,
    new Money(100),
    LengthUnit.Inch,
    "EUR");
