// Problem: the plan of least cost may have sisters of the same cost that are better to cut.
// Idea:    the boards in other patterns of the same stocks that take few sizes (FewSizesPlanner), a dozen such choices. Each is laid
//          out, and how many settings it takes is guessed by a short search; the most promising are run through to the end, and the
//          best is taken: fewest settings, then fewest steps, and nothing else worse for it: as much kept of every board as in
//          the plan found, the same cut sizes, the same wishes. Only of that one is proven how few steps it could have.
//          Where its sheets, laid out anew for the saw, leave room for wishes still unmade, those go in, and it is run once more.
// Cost:    a short search for each sister, the whole saw run for two of them, four where the plan may take its time.
// Not:     the fewest settings over all plans of least cost.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Batches;
using PanelService.Planning.Boards;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;
using PanelService.Planning.Wishes;

namespace PanelService.Planning.SawRun;

/// <summary>A batch with its spare places filled, and the saw run of its boards.</summary>
/// <param name="Filled">Boards, cloth and liquids.</param>
/// <param name="Saw">The run.</param>
internal sealed record JointChoice(FilledBatch Filled, SawPlan Saw)
{
    // Deterministic time for the sisters, and how many of them are run to the end.
    private const double Work = 0.08;
    private const double PatientWork = 0.3;
    private const int MostRuns = 2;

    // How often wishes are put into what the saw's own layout leaves: each time is a run more, and moves the leftovers again.
    private const int MostFillings = 3;
    private const int PatientRuns = 4;

    // More places than this on sheets that all differ take longer, and more memory, than is left after a stop.
    private const int MostAfterStop = 150_000;

    /// <summary>Runs the boards as planned, and as they could be for the same money; keeps the best.</summary>
    /// <param name="order">The order.</param>
    /// <param name="batch">The batch.</param>
    /// <param name="sizes">Its cut sizes.</param>
    /// <param name="stop">Ends the search with what was found, or everything.</param>
    /// <exception cref="OperationCanceledException">Nobody wants the plan, or after a stop it is too large to be written out.</exception>
    public static JointChoice Make(Order order, Batch batch, ImmutableArray<CutSize> sizes, PlanStop stop)
    {
        var asFound = Laid(order, batch, sizes, isAsFound: true, stop);
        if (stop.Search.IsCancellationRequested && asFound.Sheets.Sum(sheet => sheet.Pieces.Length) > MostAfterStop)
        {
            throw new OperationCanceledException("A plan of so many places cannot be written out after a stop.", stop.Search);
        }

        var best = Run(order, asFound, stop);
        if (order.Effort != Effort.Quick && best.Run.Plan.Proof.Settings > 1 && !stop.Search.IsCancellationRequested)
        {
            foreach (var sister in Sisters(order, batch, sizes, asFound.Sheets, stop).Take(order.Effort == Effort.Thorough ? PatientRuns : MostRuns))
            {
                var other = Run(order, sister, stop);
                best = IsBetter(other.Run.Plan.Proof, best.Run.Plan.Proof) && IsNoWorse(other, asFound) ? other : best;
            }
        }

        for (int again = 0; again < MostFillings && !stop.Search.IsCancellationRequested
            && WishPlanner.FillAgain(order, best.Laid.Filled, best.Run.Plan.Sheets, stop) is { } filled; again++)
        {
            best = Run(order, new LaidOut(filled, SheetLayoutMaker.Make(order.Saw, filled.Boards, PanelResults.Marks(order))), stop);
        }

        return new JointChoice(best.Laid.Filled, best.Run.Proven());
    }

    /// <summary>The sisters that keep as much as the plan known, the one that promises the fewest settings first.</summary>
    private static IEnumerable<LaidOut> Sisters(
        Order order, Batch batch, ImmutableArray<CutSize> sizes, ImmutableArray<SheetLayout> known, PlanStop stop) =>
        BoardPlanner.AtFewSizes(order.Saw, batch.Boards, order.Effort == Effort.Thorough ? PatientWork : Work, stop.Search)
            .Select(boards => batch with { Boards = boards })
            .Where(other => Grown(order, other).SequenceEqual(sizes))
            .Select(other => Laid(order, other, sizes, isAsFound: false, stop))
            .Where(laid => KeepsAsMuch(laid.Sheets, known))
            .OrderBy(laid => SawRunPlanner.Guess(order.Saw, laid.Sheets, stop));

    /// <summary>The cut sizes of a batch: as large as its boards and cloths let them be.</summary>
    /// <param name="order">The order.</param>
    /// <param name="batch">The batch.</param>
    public static ImmutableArray<CutSize> Grown(Order order, Batch batch) => SizeGrower.Grow(
        batch.SizesHeld(order),
        CutSizes.Nominal(order),
        batch.Boards.Rooms(order.Saw.Kerf).Concat(batch.Cloth.Rooms(order.Bench)),
        SizeGrower.Tape(order.Units));

    private static LaidOut Laid(Order order, Batch batch, ImmutableArray<CutSize> sizes, bool isAsFound, PlanStop stop)
    {
        var plain = new FilledBatch(
            Layouts.Of(batch.Boards, sizes, order.Saw.Kerf),
            Layouts.Of(batch.Cloth, sizes, order.Bench),
            batch.Liquids.Uses,
            Counts: []);
        var filled = WishPlanner.Fill(order, plain, stop);
        filled = isAsFound ? WishPlanner.FillBetter(order, plain, filled, (batch.Boards, sizes), stop) : filled;
        return new LaidOut(filled, SheetLayoutMaker.Make(order.Saw, filled.Boards, PanelResults.Marks(order)));
    }

    private static (LaidOut Laid, SawRunDraft Run) Run(Order order, LaidOut laid, PlanStop stop) =>
        (laid, SawRunPlanner.Draft(order.Saw, laid.Sheets, EffortFor(order.Effort), stop));

    private static SawEffort EffortFor(Effort effort) => effort switch
    {
        Effort.Thorough => SawEffort.Patient,
        Effort.Quick => SawEffort.Ordinary with { Steps = 0 },
        _ => SawEffort.Ordinary,
    };

    private static bool IsBetter(SawProof one, SawProof other) =>
        (one.Settings, one.Steps).CompareTo((other.Settings, other.Steps)) < 0;

    private static bool IsNoWorse((LaidOut Laid, SawRunDraft Run) one, LaidOut known) =>
        one.Laid.Filled.Counts.SequenceEqual(known.Filled.Counts)
        && KeepsAsMuch(one.Run.Plan.Sheets, known.Sheets);

    /// <summary>Whether of every board as much is kept in all, and as much in one piece.</summary>
    private static bool KeepsAsMuch(ImmutableArray<SheetLayout> one, ImmutableArray<SheetLayout> other)
    {
        var own = Kept(one);
        return Kept(other).All(kept => own.GetValueOrDefault(kept.Key) is var (all, largest) && all >= kept.Value.All && largest >= kept.Value.Largest);
    }

    private static Dictionary<string, (Area All, Area Largest)> Kept(ImmutableArray<SheetLayout> sheets) => sheets
        .GroupBy(sheet => sheet.Board.Id, StringComparer.Ordinal)
        .ToDictionary(
            board => board.Key,
            board => board.SelectMany(sheet => sheet.Offcuts.Where(offcut => offcut.Kept).SelectMany(offcut => Enumerable.Repeat(offcut.Area, sheet.Copies)))
                .Aggregate((All: Area.Zero, Largest: Area.Zero), (sum, area) => (sum.All + area, area > sum.Largest ? area : sum.Largest)),
            StringComparer.Ordinal);

    private sealed record LaidOut(FilledBatch Filled, ImmutableArray<SheetLayout> Sheets);
}
