// Problem: which of the parts known together hold all that is still wanted, each long rectangle's sections within its
//          length, one pattern in each short one?
// Idea:    an integer programme without a goal: the first solution will do.
// Source:  CP-SAT of OR-Tools: one worker, deterministic time.
// Cost:    some hundredths of a second for some hundred parts; with thousands it mostly finds nothing in the time given.
// Not:     a proof that there is no plan: there are other parts.
using Google.OrTools.Sat;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>Puts parts together.</summary>
internal static class PartChoice
{
    /// <summary>Chooses.</summary>
    /// <param name="rooms">What is left to do.</param>
    /// <param name="parts">The parts to choose from.</param>
    /// <param name="isLong">Whether a stock's rectangles take sections by their length.</param>
    /// <param name="time">The most deterministic time, about a second each.</param>
    /// <param name="work">Where work is counted.</param>
    /// <returns>The rooms with everything placed; null where no choice was found.</returns>
    public static Rooms? Find(Rooms rooms, IReadOnlyList<Part> parts, Func<int, bool> isLong, double time, WorkMeter work)
    {
        var programme = new CpModel();
        var lies = new List<(int Rectangle, Part Part, IntVar Times)>();
        for (int r = 0; r < rooms.Stocks.Length; r++)
        {
            int stock = rooms.Stocks[r];
            var own = parts.Where(p => p.Stock == stock && p.Length <= rooms.Free[r])
                .Select(p => (r, p, programme.NewIntVar(0, isLong(stock) ? Most(p, rooms, r) : 1, ""))).ToList();
            programme.Add(isLong(stock)
                ? LinearExpr.WeightedSum(own.Select(o => o.Item3), own.Select(o => o.p.Length)) <= rooms.Free[r]
                : LinearExpr.Sum(own.Select(o => o.Item3)) <= 1);
            lies.AddRange(own);
        }

        for (int t = 0; t < rooms.Demand.Length; t++)
        {
            var holding = lies.Where(one => one.Part.Counts[t] > 0).ToList();
            programme.Add(LinearExpr.WeightedSum(holding.Select(h => h.Times), holding.Select(h => (long)h.Part.Counts[t])) >= rooms.Demand[t]);
        }

        return Solve(programme, lies, time, work) is { } chosen ? Placed(rooms, chosen, isLong) : null;
    }

    private static List<(int Rectangle, Part Part, long Times)>? Solve(
        CpModel programme, List<(int Rectangle, Part Part, IntVar Times)> lies, double time, WorkMeter work)
    {
        using var solver = new CpSolver
        {
            StringParameters = string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"num_workers:1,random_seed:1,max_deterministic_time:{time},linearization_level:2,symmetry_level:0"),
        };
        using var stop = work.Cancellation.Register(solver.StopSearch);

        // A stop that came before the solver runs does not reach it.
        work.Cancellation.ThrowIfCancellationRequested();
        var status = solver.Solve(programme);
        work.Spend((long)(1000 + (10 * lies.Count) + (1_000_000 * (solver.Response?.DeterministicTime ?? 0))));
        return status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible)
            ? null
            : [.. lies.Select(one => (one.Rectangle, one.Part, solver.Value(one.Times))).Where(one => one.Item3 > 0)];
    }

    private static Rooms Placed(Rooms rooms, List<(int Rectangle, Part Part, long Times)> chosen, Func<int, bool> isLong)
    {
        var full = rooms.Copy();
        foreach (var (rectangle, part, times) in chosen)
        {
            for (int i = 0; i < times; i++)
            {
                full.Place(rectangle, part, whole: !isLong(part.Stock));
            }
        }

        return full;
    }

    private static long Most(Part part, Rooms rooms, int rectangle)
    {
        long most = rooms.Free[rectangle] / part.Length;
        for (int t = 0; t < part.Counts.Length; t++)
        {
            most = part.Counts[t] > 0 ? Math.Min(most, (rooms.Demand[t] + part.Counts[t] - 1) / part.Counts[t]) : most;
        }

        return most;
    }
}
