using PanelService.Benchmarks.Suites;
using PanelService.Checking.Bounds;

namespace PanelService.Benchmarks.Running;

/// <summary>Runs one suite and prints its table.</summary>
public static class SuiteRun
{
    /// <summary>Runs and prints.</summary>
    /// <param name="name">A suite of the catalogue.</param>
    /// <param name="options">The command line.</param>
    /// <returns>The exit code: 0 where no result has a fault, 1 otherwise, 2 where nothing could run.</returns>
    public static int Run(string name, Options options)
    {
        var suite = Catalogue.All.Single(one => one.Name == name);
        if (suite.NeedsData && options.Data is null)
        {
            Console.WriteLine($"{name}: needs --data DIR");
            return 2;
        }

        var rows = new List<Measurement>();
        foreach (var row in suite.Run(options))
        {
            rows.Add(row);
            if (options.Details)
            {
                Table.PrintDetail(row);
            }
        }

        if (rows.Count == 0)
        {
            Console.WriteLine($"{name}: no case");
            return 2;
        }

        Table.Print(name, suite.Reach, rows);
        return rows.Any(row => row.Fault is not null || row.Verdict is { Finding: BoundFinding.Wrong }) ? 1 : 0;
    }
}
