// Problem: how much work can one pair of hands do in a day's hours, when no job may be left over night half done?
// Idea:    jobs of given lengths, each from its earliest start on, one after the other up to the evening: looked at from the
//          evening backwards every job has a due time, and the sums that can be reached follow job by job in order of due
//          times. The greatest of them is all that the day holds, whichever of the jobs are done on it.
// Source:  subset sums with due dates by dynamic programming: Lawler and Moore, Management Science 16, 1969.
// Cost:    jobs × the day's minutes, as bits; once a day, and only until the day is found to be full.
// Not:     what several days hold together: a job may fill a gap on each of them.
using System.Numerics;

namespace PanelService.Planning.Days;

/// <summary>What hands can do at most. Lives for one problem.</summary>
internal sealed class HandHours
{
    private readonly BenchProblem _problem;
    private readonly (int From, int To)[] _windows;
    private readonly int[] _usable;
    private readonly int[] _byHead;

    /// <summary>States the problem.</summary>
    public HandHours(BenchProblem problem)
    {
        _problem = problem;
        _windows = [.. problem.Calendar.Windows()];
        _usable = [.. Enumerable.Repeat(-1, _windows.Length)];
        _byHead = [.. Enumerable.Range(0, problem.Jobs.Length).OrderByDescending(job => problem.Heads[job])];
    }

    /// <summary>Hand-minutes between two moments at the most.</summary>
    /// <param name="from">Minutes passed.</param>
    /// <param name="to">Minutes passed, no less.</param>
    public long Between(int from, int to)
    {
        long minutes = 0;
        for (int day = First(from); day < _windows.Length && _windows[day].From < to; day++)
        {
            minutes += Math.Min(Math.Min(_windows[day].To, to) - Math.Max(_windows[day].From, from), Usable(day));
        }

        return minutes * _problem.Hands;
    }

    /// <summary>The earliest end of so many hand-minutes, begun no sooner than at a moment.</summary>
    /// <param name="from">Minutes passed.</param>
    /// <param name="work">Hand-minutes.</param>
    public int Worked(int from, long work)
    {
        long left = (work + _problem.Hands - 1) / _problem.Hands;
        for (int day = First(from); day < _windows.Length; day++)
        {
            int start = Math.Max(_windows[day].From, from);
            int minutes = Math.Min(_windows[day].To - start, Usable(day));
            if (left <= minutes)
            {
                return start + (int)left;
            }

            left -= minutes;
        }

        return _problem.Calendar.Horizon;
    }

    private int First(int from)
    {
        int day = 0;
        while (day < _windows.Length && _windows[day].To <= from)
        {
            day++;
        }

        return day;
    }

    private int Usable(int day)
    {
        if (_usable[day] < 0)
        {
            _usable[day] = UsableNow(_windows[day].From, _windows[day].To);
        }

        return _usable[day];
    }

    private int UsableNow(int from, int to)
    {
        int length = to - from;
        var reached = BigInteger.One;
        foreach (int job in _byHead)
        {
            int due = Math.Min(length, to - _problem.Heads[job]);
            if (due < _problem.Jobs[job].Hands)
            {
                continue;
            }

            reached |= (reached << _problem.Jobs[job].Hands) & ((BigInteger.One << (due + 1)) - 1);
            if (!(reached >> length).IsZero)
            {
                return length;
            }
        }

        return (int)reached.GetBitLength() - 1;
    }
}
