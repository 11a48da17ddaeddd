using System.Globalization;
using PanelService.Cutting;

namespace PanelService.Benchmarks;

/// <summary>What the command line asks for.</summary>
/// <param name="Suites">Suites to run, each in a process of its own where there are several.</param>
/// <param name="Data">Folder of published benchmark files; null: suites that need it are left out.</param>
/// <param name="Effort">Effort given to the engine.</param>
/// <param name="OneThread">Whether the run is held to one core.</param>
/// <param name="Details">Whether every case gets a line.</param>
/// <param name="First">Only so many cases of each suite; null: all.</param>
/// <param name="Skip">Cases left out before the first that runs.</param>
/// <param name="Seconds">A clock that stops each case; null: none, so that results repeat.</param>
/// <param name="Only">Only cases whose name holds this text; null: all.</param>
/// <param name="Draw">Which draw of the drawn suites: 0, that of the tables, or another, on which nothing was tuned.</param>
/// <param name="Check">Whether every bound is computed again by code that shares nothing with the engine.</param>
public sealed record Options(
    IReadOnlyList<string> Suites,
    string? Data,
    Effort Effort,
    bool OneThread,
    bool Details,
    int? First,
    int Skip,
    double? Seconds,
    string? Only,
    int Draw,
    bool Check)
{
    /// <summary>How the program is called.</summary>
    public const string Usage =
        """
        dotnet run -c Release --project tests/PanelService.Benchmarks -- SUITE… [options]

          --data DIR      folder with the published benchmark files (gcut, knapsack59, packing250, furniture22)
          --effort E      quick, steady (default) or thorough
          --one-thread    hold the run to one core
          --details       a line for every case
          --first N       only the first N cases of a suite
          --skip N        leave the first N out
          --only TEXT     only cases whose name holds TEXT
          --draw N        draw the drawn suites with other seeds: 0 (default) as the tables, another one nothing was tuned on
          --check         compute every bound again by code that shares nothing with the engine
          --seconds S     stop each case after S seconds (its result need not repeat then)
        """;

    /// <summary>What stops a case after the seconds asked for; never, where none were.</summary>
    public CancellationTokenSource Stopper() => Seconds is { } seconds
        ? new CancellationTokenSource(TimeSpan.FromSeconds(seconds))
        : new CancellationTokenSource();

    /// <summary>Reads a command line.</summary>
    /// <param name="args">Suites and options, in any order.</param>
    /// <exception cref="ArgumentException">An unknown option, or one without its value.</exception>
    public static Options Parse(IReadOnlyList<string> args)
    {
        var options = new Options([], null, Effort.Steady, false, false, null, 0, null, null, 0, false);
        var suites = new List<string>();
        for (int i = 0; i < args.Count; i++)
        {
            string Value() => ++i < args.Count ? args[i] : throw new ArgumentException($"{args[i - 1]} needs a value.");
            options = args[i] switch
            {
                "--data" => options with { Data = Value() },
                "--effort" => options with { Effort = Enum.Parse<Effort>(Value(), ignoreCase: true) },
                "--one-thread" => options with { OneThread = true },
                "--check" => options with { Check = true },
                "--details" => options with { Details = true },
                "--first" => options with { First = int.Parse(Value(), CultureInfo.InvariantCulture) },
                "--skip" => options with { Skip = int.Parse(Value(), CultureInfo.InvariantCulture) },
                "--seconds" => options with { Seconds = double.Parse(Value(), CultureInfo.InvariantCulture) },
                "--draw" => options with { Draw = int.Parse(Value(), NumberStyles.None, CultureInfo.InvariantCulture) },
                "--only" => options with { Only = Value() },
                ['-', ..] unknown => throw new ArgumentException($"Unknown option {unknown}."),
                var suite => Add(options, suites, suite),
            };
        }

        return options with { Suites = suites };
    }

    private static Options Add(Options options, List<string> suites, string suite)
    {
        suites.Add(suite);
        return options;
    }
}
