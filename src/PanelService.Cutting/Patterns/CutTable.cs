// Problem: at which cuts of a rectangle has a programme to look?
// Idea:    of two halves that change places one is enough, so the nearer part is at most half. What is left of a cut is worth
//          what the greatest point within it is worth; of all cuts with the same farther part the one with the largest nearer
//          part is no worse than any.
// Source:  Herz, IBM J. Res. Dev. 16 (1972), for the halves; the farther part's point: Beasley, JORS 36 (1985).
// Cost:    pairs of points, once an axis; then two spans a point.
// Not:     fewer for one sheet alone: the table serves every rectangle inside it.
namespace PanelService.Cutting.Patterns;

/// <summary>
/// For every point of an axis, the cuts worth trying there: the nearer part (at most half) and the point that the
/// farther part rounds down to. Of cuts with the same farther part only the largest nearer part is kept.
/// </summary>
internal sealed class CutTable
{
    private readonly int[] _start;
    private readonly int[] _near;
    private readonly int[] _far;

    /// <summary>Makes the table.</summary>
    /// <param name="set">The axis's points.</param>
    /// <param name="mostNear">The widest nearer part that can be cut off.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    public CutTable(PointSet set, long mostNear, CancellationToken cancellation = default)
    {
        var points = set.Points;
        _start = new int[points.Length + 1];
        var near = new List<int>();
        var far = new List<int>();
        for (int i = 0; i < points.Length; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            int rest = i;
            int last = -1;
            for (int j = 0; j < i && 2 * points[j] <= points[i] && points[j] <= mostNear; j++)
            {
                while (points[rest] > points[i] - points[j])
                {
                    rest--;
                }

                if (rest == last)
                {
                    near[^1] = j;
                    continue;
                }

                near.Add(j);
                far.Add(rest);
                last = rest;
            }

            _start[i + 1] = near.Count;
        }

        _near = [.. near];
        _far = [.. far];
    }

    /// <summary>No table over these points has more cuts.</summary>
    /// <param name="set">The axis's points.</param>
    public static long Most(PointSet set)
    {
        var points = set.Points;
        long most = 0;
        int half = 0;
        for (int i = 0; i < points.Length; i++)
        {
            while (2 * points[half] <= points[i])
            {
                half++;
            }

            most += half;
        }

        return most;
    }

    /// <summary>The nearer parts of the cuts at a point.</summary>
    /// <param name="point">The point's index.</param>
    public ReadOnlySpan<int> Near(int point) => _near.AsSpan(_start[point], _start[point + 1] - _start[point]);

    /// <summary>The farther parts of the cuts at a point, in the order of <see cref="Near"/>.</summary>
    /// <param name="point">The point's index.</param>
    public ReadOnlySpan<int> Far(int point) => _far.AsSpan(_start[point], _start[point + 1] - _start[point]);

    /// <summary>How many cuts there are in all.</summary>
    public long Count => _near.Length;

    /// <summary>How many cuts the first points have together.</summary>
    /// <param name="points">How many points.</param>
    public long CountBefore(int points) => _start[points];
}
