using PanelService.Checking.Reading;

namespace PanelService.Checking.Rules;

/// <summary>Replays a sheet's cuts by number from the whole sheet and remembers which cut made which rectangle.</summary>
internal sealed class CutReplay
{
    private readonly Dictionary<Box, int> left;
    private readonly Dictionary<int, int> makers = [];

    private CutReplay(Box sheet) => left = new Dictionary<Box, int> { [sheet] = 0 };

    /// <summary>What is left after all cuts.</summary>
    public IReadOnlyCollection<Box> Left => left.Keys;

    /// <summary>By cut number: the cut that made its workpiece; 0: the whole sheet.</summary>
    public IReadOnlyDictionary<int, int> Makers => makers;

    /// <summary>Replays.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="findings">Where faults go.</param>
    public static CutReplay Of(SheetFacts sheet, Findings findings)
    {
        var replay = new CutReplay(sheet.Box);
        var cuts = sheet.Cuts.OrderBy(cut => cut.Number).ToArray();
        findings.Expect(
            cuts.Select(cut => cut.Number).SequenceEqual(Enumerable.Range(1, cuts.Length)), sheet.Where, $"cuts are not numbered 1 to {cuts.Length}");
        foreach (var cut in cuts)
        {
            replay.Make(cut, $"{sheet.Where}, cut {cut.Number}", findings);
        }

        return replay;
    }

    /// <summary>The sizes of the two parts across the cut, left (or lower) first; 0 or less where there is none.</summary>
    public static (long Before, long After) Parts(CutFacts cut)
    {
        var piece = cut.Workpiece;
        return cut.AcrossX
            ? (cut.At - piece.X, piece.Right - cut.At - cut.Kerf)
            : (cut.At - piece.Y, piece.Top - cut.At - cut.Kerf);
    }

    private void Make(CutFacts cut, string where, Findings findings)
    {
        var piece = cut.Workpiece;
        if (!left.Remove(piece, out int maker))
        {
            findings.Expect(false, where, $"workpiece {piece} is not one that earlier cuts left");
            return;
        }

        makers[cut.Number] = maker;
        var (before, after) = Parts(cut);
        long side = cut.AcrossX ? piece.Width : piece.Height;
        findings.Expect(before > -cut.Kerf && after > -cut.Kerf, where, $"the blade's path at {cut.At} misses the workpiece {piece}");
        if (before > 0 && before < side)
        {
            left[cut.AcrossX ? piece with { Width = before } : piece with { Height = before }] = cut.Number;
        }

        if (after > 0 && after < side)
        {
            left[cut.AcrossX
                ? piece with { X = piece.Right - after, Width = after }
                : piece with { Y = piece.Top - after, Height = after }] = cut.Number;
        }
    }
}
