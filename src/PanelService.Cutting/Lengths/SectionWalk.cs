// Problem: sections of a strip that hold all but some twenty pieces and waste next to nothing, again and again others.
// Idea:    ruin and recreate: one to three sections are given up, and what is then left is drawn for anew, pieces that few sections hold
//          first. Kept unless more is left than before, now and then even so; begun anew after some dozen steps. Drawn from nothing
//          each time, every third draw left as few.
// Source:  ruin and recreate: Schrimpf and others, Journal of Computational Physics 159 (2000).
// Cost:    twenty to forty microseconds a step.
using PanelService.Cutting.Many;

namespace PanelService.Cutting.Lengths;

/// <summary>Sections of a strip and what they leave.</summary>
/// <param name="Chosen">The sections.</param>
/// <param name="Open">The pieces they leave: one bit for each.</param>
/// <param name="Room">The length they leave.</param>
internal sealed record SectionsTaken(List<StripSection> Chosen, UInt128 Open, int Room)
{
    /// <summary>How many pieces they leave.</summary>
    public int Left { get; } = (int)UInt128.PopCount(Open);
}

/// <summary>Walks from sections to other sections.</summary>
/// <param name="strip">The strip.</param>
/// <param name="source">Where sections come from.</param>
/// <param name="fewest">No more sections are drawn where so few pieces are left.</param>
/// <param name="random">Where chance comes from.</param>
internal sealed class SectionWalk(StripPieces strip, SectionSource source, int fewest, SeededRandom random)
{
    private const int Steps = 50;
    private const int MostGivenUp = 3;

    // Of ten pieces so many are passed over when sections are drawn anew, and of ten steps so many may leave some more pieces.
    private const int PassedOver = 3;
    private const int Backward = 1;
    private const int PiecesBackward = 2;

    private readonly int[] _rarestFirst = [.. Enumerable.Range(0, strip.Count).OrderBy(source.Holding)];
    private SectionsTaken? _at;
    private int _step;

    /// <summary>Takes a step.</summary>
    /// <returns>Where it leads, whether the walk goes on from there or not.</returns>
    public SectionsTaken Step()
    {
        if (_at is null || ++_step == Steps)
        {
            _step = 0;
            _at = Draw([], everyPiece: true);
            return _at;
        }

        var kept = new List<StripSection>(_at.Chosen);
        for (int most = 1 + random.Below(MostGivenUp); most > 0 && kept.Count > 0; most--)
        {
            kept.RemoveAt(random.Below(kept.Count));
        }

        var next = Draw(kept, everyPiece: false);
        if (next.Left <= _at.Left + (random.Below(10) < Backward ? PiecesBackward : 0))
        {
            _at = next;
        }

        return next;
    }

    private SectionsTaken Draw(List<StripSection> chosen, bool everyPiece)
    {
        var open = chosen.Aggregate(strip.Everything, (left, section) => left & ~section.Set);
        int room = strip.Length - chosen.Sum(section => section.Length);
        foreach (int p in _rarestFirst)
        {
            if ((open >> p & UInt128.One) != 0 && (everyPiece || random.Below(10) >= PassedOver)
                && UInt128.PopCount(open) > (UInt128)fewest && source.Draw(p, open, room, random) is { } section)
            {
                chosen.Add(section);
                room -= section.Length;
                open &= ~section.Set;
            }
        }

        return new SectionsTaken(chosen, open, room);
    }
}
