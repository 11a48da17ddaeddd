namespace PanelService.Benchmarks.Running;

/// <summary>Which cases of a suite run, and each of them in turn.</summary>
public static class CaseFilter
{
    /// <summary>Runs the cases the command line asks for; the first runs once unmeasured, so that no compiling is counted.</summary>
    /// <param name="cases">All cases.</param>
    /// <param name="name">A case's name.</param>
    /// <param name="measure">Runs one.</param>
    /// <param name="options">The command line.</param>
    public static IEnumerable<Measurement> Run<T>(
        IEnumerable<T> cases, Func<T, string> name, Func<T, Measurement> measure, Options options)
    {
        bool warm = false;
        var wanted = cases
            .Where(one => options.Only is null || name(one).Contains(options.Only, StringComparison.OrdinalIgnoreCase))
            .Skip(options.Skip)
            .Take(options.First ?? int.MaxValue);
        foreach (var one in wanted)
        {
            if (!warm)
            {
                _ = measure(one);
                warm = true;
            }

            yield return measure(one);
        }
    }
}
