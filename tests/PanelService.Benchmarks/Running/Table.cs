using System.Diagnostics;
using System.Globalization;
using PanelService.Checking.Bounds;

namespace PanelService.Benchmarks.Running;

/// <summary>Prints measurements as a table in Markdown.</summary>
public static class Table
{
    private const string Header =
        "| suite | cases | plan | bound | known | mean gap | worst gap | proven | met | cpu ms: median | worst | clock ms: median | worst |";

    /// <summary>One line per case.</summary>
    /// <param name="one">The case.</param>
    public static void PrintDetail(Measurement one) => Console.WriteLine(string.Create(
        CultureInfo.InvariantCulture,
        $"{one.Name,-28} plan {one.Spent,8} bound {one.LeastPossible,8} known {one.Known,8} {(one.Proven ? "proven" : one.Gap.ToString("P3", CultureInfo.InvariantCulture)),10} cpu {one.Cpu.TotalMilliseconds,9:0.0} clock {one.Clock.TotalMilliseconds,9:0.0} {Words(one.Beside)}{one.Fault}{Words(one.Verdict)}"));

    /// <summary>One line per group and one for all, then faults, memory and what the suite must reach.</summary>
    /// <param name="suite">The suite's name.</param>
    /// <param name="reach">What it must reach.</param>
    /// <param name="all">Its measurements; at least one.</param>
    public static void Print(string suite, string reach, IReadOnlyList<Measurement> all)
    {
        Console.WriteLine();
        Console.WriteLine(Header);
        Console.WriteLine("|" + string.Concat(Enumerable.Repeat("---|", Header.Count(c => c == '|') - 1)));
        foreach (var group in all.GroupBy(one => one.Group).Where(group => group.Count() < all.Count))
        {
            PrintRow($"{suite}: {group.Key}", [.. group]);
        }

        PrintRow(suite, all);
        Within(all);
        PrintBeside(all);
        PrintChecks(all);
        foreach (var one in all.Where(one => one.Fault is not null))
        {
            Console.WriteLine($"FAULT {one.Name}: {one.Fault}");
        }

        long peak = Process.GetCurrentProcess().PeakWorkingSet64 >> 20;
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"peak memory {peak} MB; faults {all.Count(one => one.Fault is not null)}; to reach: {reach}"));
    }

    private static void PrintBeside(IReadOnlyList<Measurement> all)
    {
        foreach (var figure in all.SelectMany(one => one.Beside).GroupBy(one => one.Of, StringComparer.Ordinal))
        {
            int proven = figure.Count(one => one.Value == one.Least);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{figure.Key}: {figure.Sum(one => one.Value)}, at least {figure.Sum(one => one.Least)}; proven in {proven} of {figure.Count()}"));
        }
    }

    private static string Words(IReadOnlyList<(string Of, long Value, long Least)> beside) =>
        string.Concat(beside.Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.Of} {one.Value} of {one.Least}, ")));

    private static string Words(BoundVerdict? verdict) => verdict is null ? "" : $" {verdict.Finding} {verdict.Why}";

    // What is not computed again counts as nothing but that.
    private static void PrintChecks(IReadOnlyList<Measurement> all)
    {
        BoundVerdict[] verdicts = [.. all.Select(one => one.Verdict).OfType<BoundVerdict>()];
        if (verdicts.Length == 0)
        {
            return;
        }

        int Count(BoundFinding finding) => verdicts.Count(verdict => verdict.Finding == finding);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"bounds re-checked {Count(BoundFinding.Right)} of {verdicts.Length}; wrong {Count(BoundFinding.Wrong)}; not re-checked {Count(BoundFinding.NotRechecked)}"));
        foreach (var one in all.Where(one => one.Verdict is { Finding: not BoundFinding.Right }))
        {
            Console.WriteLine($"{one.Verdict!.Finding} {one.Name}: {one.Verdict.Why}");
        }
    }

    private static void PrintRow(string name, IReadOnlyList<Measurement> rows)
    {
        var known = rows.Where(one => one.Known is not null).ToArray();
        string met = known.Length == 0 ? "" : $"{known.Count(one => one.Met == true)} of {known.Length}";
        string sum = known.Length == 0 ? "" : known.Sum(one => one.Known!.Value).ToString(CultureInfo.InvariantCulture);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {rows.Count} | {rows.Sum(one => one.Spent)} | {rows.Sum(one => one.LeastPossible)} | {sum} | {rows.Average(one => one.Gap):P3} | {rows.Max(one => one.Gap):P2} | {rows.Count(one => one.Proven)} ({(double)rows.Count(one => one.Proven) / rows.Count:P1}) | {met} | {Median(rows, one => one.Cpu):0.0} | {rows.Max(one => one.Cpu.TotalMilliseconds):0.0} | {Median(rows, one => one.Clock):0.0} | {rows.Max(one => one.Clock.TotalMilliseconds):0.0} |"));
    }

    // How near the known figure the plans come, where it is not simply met by all.
    private static void Within(IReadOnlyList<Measurement> all)
    {
        var known = all.Where(one => one.Met == false && one.Known > 0).ToArray();
        if (known.Length > 0)
        {
            double worst = known.Max(one => Math.Abs((double)(one.Spent - one.Known!.Value) / one.Known.Value));
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{known.Length} do not reach the known figure, the farthest by {worst:P2}"));
        }
    }

    private static double Median(IReadOnlyList<Measurement> rows, Func<Measurement, TimeSpan> of)
    {
        double[] sorted = [.. rows.Select(one => of(one).TotalMilliseconds).Order()];
        return sorted[sorted.Length / 2];
    }
}
