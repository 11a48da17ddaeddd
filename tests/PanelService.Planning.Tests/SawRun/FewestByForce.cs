using PanelService.Cutting;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Tests.SawRun;

/// <summary>
/// The fewest settings by trying: every set of settings, the smallest first; a sheet serves when some order of
/// edge-to-edge cuts of its parts as they lie, each with one of its two sides at a setting of the set, leaves exactly them.
/// How few steps they need is found by trying every run of every such set. Shares nothing with the planner but the rule which side may lie at the fence and when the sled is used.
/// </summary>
internal sealed class FewestByForce
{
    private readonly long _kerf;
    private readonly long _leastLength;
    private readonly long _leastAtFence;
    private readonly List<(long X, long Y, long W, long H)[]> _sheets;
    private readonly bool _tiled;

    public FewestByForce(IReadOnlyList<SheetLayout> sheets, long kerf, long leastLength, long leastAtFence)
    {
        (_kerf, _leastLength, _leastAtFence) = (kerf, leastLength, leastAtFence);
        _sheets = [.. sheets.Select(sheet => sheet.Pieces.Select(p => (p.X.Steps, p.Y.Steps, p.Width.Steps, p.Height.Steps))
            .Concat(sheet.Offcuts.Select(o => (o.X.Steps, o.Y.Steps, o.Width.Steps, o.Height.Steps))).ToArray())];
        _tiled = sheets.Zip(_sheets).All(pair => pair.Second.Sum(part => (part.W + kerf) * (part.H + kerf))
            == (pair.First.Board.Width.Steps + kerf) * (pair.First.Board.Height.Steps + kerf));
    }

    /// <summary>How few; null where parts lie apart by more than a kerf (dust), which this does not try.</summary>
    public int? Least()
    {
        if (!_tiled)
        {
            return null;
        }

        var all = new HashSet<(bool Sled, long Size)>();
        foreach (var sheet in _sheets)
        {
            Collect(sheet, all, []);
        }

        var settings = all.ToArray();
        for (int size = 0; size <= settings.Length; size++)
        {
            if (AnyOf(settings, size, 0, []))
            {
                return size;
            }
        }

        return null;
    }

    /// <summary>
    /// How few steps a run at so few settings has: every set of so many settings that serves, every run of them, the shortest first.
    /// </summary>
    /// <param name="most">Settings; there is no run with fewer.</param>
    /// <param name="below">Steps: longer runs are not tried, and so many are answered where no shorter one serves.</param>
    public int LeastSteps(int most, int below)
    {
        var all = new HashSet<(bool Sled, long Size)>();
        foreach (var sheet in _sheets)
        {
            Collect(sheet, all, []);
        }

        var sets = Sets([.. all], most).Where(set => _sheets.TrueForAll(sheet => Serves(sheet, [.. set], []))).ToList();
        return Enumerable.Range(most, below - most)
            .Where(steps => sets.Exists(set => Runs(set, steps, []).Any(run => _sheets.TrueForAll(sheet => CutsUp(sheet, run, 0)))))
            .Append(below).First();
    }

    private static IEnumerable<(bool, long)[]> Sets((bool, long)[] settings, int size) => size == 0
        ? [[]]
        : settings.SelectMany((setting, i) => Sets(settings[(i + 1)..], size - 1).Select(rest => ((bool, long)[])[setting, .. rest]));

    private static IEnumerable<(bool, long)[]> Runs((bool, long)[] settings, int steps, (bool, long)[] run) => run.Length == steps
        ? [run]
        : settings.Where(setting => run.Length == 0 || run[^1] != setting).SelectMany(setting => Runs(settings, steps, [.. run, setting]));

    /// <summary>Whether a run, from a step on, cuts a workpiece up. Cuts may be made at any later step, not only at the next.</summary>
    private bool CutsUp((long X, long Y, long W, long H)[] parts, (bool, long)[] run, int from) =>
        parts.Length == 1
        || Cuts(parts).Any(cut => Enumerable.Range(from, run.Length - from)
            .Any(step => cut.Settings.Contains(run[step]) && CutsUp(cut.Near, run, step) && CutsUp(cut.Far, run, step)));

    private bool AnyOf((bool, long)[] settings, int size, int from, HashSet<(bool, long)> taken)
    {
        if (taken.Count == size)
        {
            return _sheets.TrueForAll(sheet => Serves(sheet, taken, []));
        }

        for (int i = from; i <= settings.Length - (size - taken.Count); i++)
        {
            taken.Add(settings[i]);
            if (AnyOf(settings, size, i + 1, taken))
            {
                return true;
            }

            taken.Remove(settings[i]);
        }

        return false;
    }

    private bool Serves((long X, long Y, long W, long H)[] parts, HashSet<(bool, long)> settings, Dictionary<string, bool> known)
    {
        if (parts.Length == 1)
        {
            return true;
        }

        string key = string.Join(' ', parts.Select(p => $"{p.X},{p.Y}"));
        if (!known.TryGetValue(key, out bool serves))
        {
            serves = Cuts(parts).Any(cut => cut.Settings.Any(settings.Contains) && Serves(cut.Near, settings, known) && Serves(cut.Far, settings, known));
            known.Add(key, serves);
        }

        return serves;
    }

    private void Collect((long X, long Y, long W, long H)[] parts, HashSet<(bool, long)> all, HashSet<string> seen)
    {
        if (parts.Length == 1 || !seen.Add(string.Join(' ', parts.Select(p => $"{p.X},{p.Y}"))))
        {
            return;
        }

        foreach (var (settings, near, far) in Cuts(parts))
        {
            all.UnionWith(settings);
            Collect(near, all, seen);
            Collect(far, all, seen);
        }
    }

    private IEnumerable<((bool, long)[] Settings, (long X, long Y, long W, long H)[] Near, (long X, long Y, long W, long H)[] Far)> Cuts(
        (long X, long Y, long W, long H)[] parts)
    {
        foreach (var axis in new[] { Axis.X, Axis.Y })
        {
            long Start((long X, long Y, long W, long H) p) => axis == Axis.X ? p.X : p.Y;
            long End((long X, long Y, long W, long H) p) => axis == Axis.X ? p.X + p.W : p.Y + p.H;
            long along = axis == Axis.X ? parts.Max(p => p.Y + p.H) - parts.Min(p => p.Y) : parts.Max(p => p.X + p.W) - parts.Min(p => p.X);
            foreach (long at in parts.Select(End).Distinct().Where(at => parts.All(p => End(p) <= at || Start(p) >= at + _kerf)))
            {
                var near = parts.Where(p => End(p) <= at).ToArray();
                var far = parts.Where(p => End(p) > at).ToArray();
                if (far.Length > 0)
                {
                    long nearSize = at - parts.Min(Start), farSize = parts.Max(End) - at - _kerf;
                    long[] sides = [.. new[] { nearSize, farSize }.Where(side => side >= _leastAtFence)];
                    sides = sides.Length > 0 ? sides : [Math.Max(nearSize, farSize)];
                    yield return ([.. sides.Select(side => (along < _leastLength, side))], near, far);
                }
            }
        }
    }
}
