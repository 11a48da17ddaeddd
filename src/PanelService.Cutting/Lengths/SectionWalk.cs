// Problem: sections of a strip that hold all but some twenty pieces and waste next to nothing, again and again others.
// Idea:    ruin and recreate: one to three sections are given up; of what is then left all sections are found (one list for each
//          piece that is left), and all ways to take some of them, up to some hundred. Every one of them leaves a rest to be looked at;
//          the walk goes on from one that leaves fewest pieces, and begins anew after some dozen steps.
// Source:  ruin and recreate: Schrimpf and others, Journal of Computational Physics 159 (2000).
// Cost:    a nanosecond or two a section looked at: from ten to a hundred microseconds a step.
using PanelService.Cutting.Many;

namespace PanelService.Cutting.Lengths;

/// <summary>Walks from sections to other sections.</summary>
/// <param name="strip">The strip.</param>
/// <param name="sections">Its sections.</param>
/// <param name="few">Where no more pieces than this are left a rest is looked at even if another section could be taken.</param>
/// <param name="random">Where chance comes from.</param>
internal sealed class SectionWalk(StripPieces strip, SectionList sections, int few, SeededRandom random)
{
    private const int Steps = 100;
    private const int MostGivenUp = 3;
    private const int MostFeasible = 400;
    private const int MostWays = 300;

    private readonly List<StripSection> _taken = [];
    private readonly List<StripSection> _feasible = [];
    private readonly List<int> _way = [];
    private readonly List<SectionsTaken> _found = [];
    private UInt128 _open = strip.Everything;
    private int _room = strip.Length;
    private int _step;

    // So many of those taken last were taken in the last step.
    private int _added;

    /// <summary>How many sections were looked at.</summary>
    public long Looks { get; private set; }

    /// <summary>Takes a step.</summary>
    /// <returns>All that it could lead to; valid until the next one.</returns>
    public IReadOnlyList<SectionsTaken> Step()
    {
        _found.Clear();
        if (_step++ % Steps == 0)
        {
            Begin();
            return _found;
        }

        for (int most = 1 + random.Below(MostGivenUp); most > 0 && _taken.Count > 0; most--)
        {
            int given = random.Below(_taken.Count);
            _open |= _taken[given].Set;
            _room += _taken[given].Length;
            _taken.RemoveAt(given);
        }

        FindFeasible();
        _way.Clear();
        Take(0, _open, _room);
        if (_found.Count > 0)
        {
            GoTo(Fewest());
        }

        return _found;
    }

    /// <summary>The sections of one of the ways found by the last step.</summary>
    /// <param name="way">The way.</param>
    public StripSection[] Sections(SectionsTaken way) => [.. _taken.Take(_taken.Count - _added), .. way.Added.Select(i => _feasible[i])];

    private void Begin()
    {
        _taken.Clear();
        (_open, _room, _added) = (strip.Everything, strip.Length, 0);
        foreach (var (piece, list) in sections.Lists)
        {
            int from = list.Length == 0 || (_open >> piece & UInt128.One) == 0 ? 0 : random.Below(list.Length);
            for (int i = 0; i < list.Length && (_open >> piece & UInt128.One) != 0; i++)
            {
                Looks++;
                var section = list[(from + i) % list.Length];
                if (Fits(section, _open, _room))
                {
                    _taken.Add(section);
                    _open &= ~section.Set;
                    _room -= section.Length;
                }
            }
        }
    }

    /// <summary>All sections of what is left, in some order; some of them where they are many.</summary>
    private void FindFeasible()
    {
        _feasible.Clear();
        foreach (var (piece, list) in sections.Lists)
        {
            if ((_open >> piece & UInt128.One) == 0)
            {
                continue;
            }

            Looks += list.Length;
            foreach (ref readonly var section in list.AsSpan())
            {
                if (Fits(section, _open, _room))
                {
                    _feasible.Add(section);
                }
            }
        }

        int kept = Math.Min(_feasible.Count, MostFeasible);
        for (int i = 0; i < kept; i++)
        {
            int j = i + random.Below(_feasible.Count - i);
            (_feasible[i], _feasible[j]) = (_feasible[j], _feasible[i]);
        }

        _feasible.RemoveRange(kept, _feasible.Count - kept);
    }

    /// <summary>Takes sections from one on in every way, until there are enough.</summary>
    private void Take(int from, UInt128 open, int room)
    {
        bool any = false;
        for (int i = from; i < _feasible.Count && _found.Count < MostWays; i++)
        {
            if (Fits(_feasible[i], open, room))
            {
                any = true;
                _way.Add(i);
                Take(i + 1, open & ~_feasible[i].Set, room - _feasible[i].Length);
                _way.RemoveAt(_way.Count - 1);
            }
        }

        Looks += _feasible.Count - from;
        if (_way.Count > 0 && _found.Count < MostWays && (!any || UInt128.PopCount(open) <= (UInt128)few))
        {
            _found.Add(new SectionsTaken(open, room, [.. _way]));
        }
    }

    private SectionsTaken Fewest()
    {
        var best = _found[0];
        int alike = 0;
        foreach (var way in _found)
        {
            if (way.Left < best.Left || (way.Left == best.Left && random.Below(++alike) == 0))
            {
                alike = way.Left < best.Left ? 1 : alike;
                best = way;
            }
        }

        return best;
    }

    private void GoTo(SectionsTaken way)
    {
        _taken.AddRange(way.Added.Select(i => _feasible[i]));
        (_open, _room, _added) = (way.Open, way.Room, way.Added.Length);
    }

    private static bool Fits(in StripSection section, UInt128 open, int room) => (section.Set & ~open) == 0 && section.Length <= room;
}

/// <summary>Sections of a strip and what they leave.</summary>
/// <param name="Open">The pieces they leave: one bit for each.</param>
/// <param name="Room">The length they leave.</param>
/// <param name="Added">The sections taken in the step that led to them.</param>
internal sealed record SectionsTaken(UInt128 Open, int Room, int[] Added)
{
    /// <summary>How many pieces they leave.</summary>
    public int Left { get; } = (int)UInt128.PopCount(Open);
}
