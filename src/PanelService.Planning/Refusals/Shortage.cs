using System.Collections.Immutable;
using PanelService.Planning.Batches;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Refusals;

/// <summary>Says what is missing where there is too little of something.</summary>
internal static class Shortage
{
    private const int MarksInDetail = 5;

    /// <summary>The refusal of a batch that is not complete.</summary>
    public static CannotBeMade Of(Order order, Batch batch)
    {
        var marks = Lines(order, batch.Boards.Outcome.Missing, "boards")
            .Concat(Lines(order, batch.Cloth.Outcome.Missing, "cloth"))
            .Concat(Strips(order, batch.Strips.Missing))
            .GroupBy(line => line.Mark, StringComparer.Ordinal)
            .Select(group => group.Aggregate(Joined))
            .ToImmutableArray();
        return Refusal(marks);
    }

    /// <summary>The refusal of lines that some good would serve, were there any of it.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="material">What there is none of: "boards", "cloth".</param>
    public static CannotBeMade OfNone(IEnumerable<PanelLine> lines, string material) =>
        Refusal([.. lines.Select(line => new UnmakeableLine(line.Mark, NoRoom(line, line.Wanted, material), line.Wanted))]);

    private static CannotBeMade Refusal(ImmutableArray<UnmakeableLine> marks)
    {
        string named = string.Join("; ", marks.Take(MarksInDetail).Select(line => $"{line.Mark}: {line.Missing}"));
        string others = marks.Length > MarksInDetail ? $"; and {marks.Length - MarksInDetail} more lines" : "";
        return new CannotBeMade(
            CannotReason.NotEnoughStock,
            $"There is too little: {named}{others}. Raise what is for sale or on hand, or lower the quantities.",
            marks);
    }

    private static IEnumerable<UnmakeableLine> Lines(Order order, ImmutableArray<int> missing, string material) =>
        order.Panels.Zip(missing)
            .Where(pair => pair.Second > 0)
            .Select(pair => new UnmakeableLine(
                pair.First.Mark,
                NoRoom(pair.First, pair.Second, material),
                pair.Second));

    private static string NoRoom(PanelLine line, int missing, string material) =>
        $"{missing} of {line.Wanted} find no room on the {material} there is for them";

    private static IEnumerable<UnmakeableLine> Strips(Order order, ImmutableArray<int> missing) =>
        order.Panels.Zip(missing)
            .Where(pair => pair.Second > 0)
            .Select(pair => new UnmakeableLine(
                pair.First.Mark,
                $"{pair.Second} pieces of its cradles find no room on the strips there are for them",
                pair.First.Wanted));

    private static UnmakeableLine Joined(UnmakeableLine a, UnmakeableLine b) =>
        new(a.Mark, $"{a.Missing}; {b.Missing}", Math.Max(a.Count, b.Count));
}
