using System.Globalization;
using PanelService.Cutting;
using PanelService.Planning.Batches;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Refusals;

/// <summary>
/// A plan names every panel's place on every sheet that differs from the others, the saw run looks at them all, and each takes
/// some two kilobytes on the way. Beyond half a million that is more memory than a plan may have.
/// </summary>
internal static class TooManyPlaces
{
    /// <summary>More are not written out.</summary>
    internal const int Most = 500_000;

    /// <summary>The refusal; null: the batch can be written out.</summary>
    /// <param name="batch">What is cut from what.</param>
    public static CannotBeMade? Check(Batch batch)
    {
        long places = batch.Boards.Patterns.Sum(pattern => PiecesOf(pattern.Block)) + batch.Cloth.Patterns.Sum(pattern => PiecesOf(pattern.Block));
        return places <= Most ? null : new CannotBeMade(
            CannotReason.TooManyPlaces,
            string.Create(CultureInfo.InvariantCulture, $"The plan has {places} places on sheets and lengths that all differ; {Most} can be written out. Send the order in parts, or with fewer formats."),
            Marks: []);
    }

    private static long PiecesOf(Block block) => block is StackBlock stack ? stack.Parts.Sum(PiecesOf) : 1;
}
