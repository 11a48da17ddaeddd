// Problem: no schedule is over before when?
// Idea:    three relaxations, the latest of which counts. Chain: each job as early as what it waits for and the hours allow.
//          Hands: jobs that still have at least so much before them after their hands are through take so many hand-minutes
//          in all, whatever their order, on days that hold what HandHours says. Press: some space holds its share of the stacks one after the other, each begun in
//          working hours.
// Source:  heads, tails and energy: Carlier and Pinson, Management Science 35, 1989; pigeonhole for the spaces.
// Cost:    square of the number of jobs at worst.
// Not:     the end of the best schedule: the three are never combined.
namespace PanelService.Planning.Days;

/// <summary>Lower bounds of the end.</summary>
internal static class ScheduleBound
{
    /// <summary>No schedule is over sooner.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="hours">What hands can do.</param>
    public static int Of(BenchProblem problem, HandHours hours) => Math.Max(Chain(problem), Math.Max(ByHands(problem, hours), ByPress(problem)));

    private static int Chain(BenchProblem problem) =>
        problem.Heads.Zip(problem.Tails, (head, tail) => head + tail).DefaultIfEmpty(0).Max();

    private static int ByHands(BenchProblem problem, HandHours hours)
    {
        int least = 0;
        long work = 0;
        int head = int.MaxValue;
        foreach (int job in Enumerable.Range(0, problem.Jobs.Length).OrderByDescending(i => problem.Tails[i] - problem.Jobs[i].Hands))
        {
            // From here on every job counted has at least this job's rest before it when its hands are through.
            work += problem.Jobs[job].Hands;
            head = Math.Min(head, problem.Heads[job]);
            least = Math.Max(least, hours.Worked(head, work) + problem.Tails[job] - problem.Jobs[job].Hands);
        }

        return least;
    }

    private static int ByPress(BenchProblem problem)
    {
        int[] stacks = [.. Enumerable.Range(0, problem.Jobs.Length).Where(i => problem.Jobs[i].TakesSpace)];
        if (stacks.Length == 0)
        {
            return 0;
        }

        int hands = stacks.Min(i => problem.Jobs[i].Hands), stay = stacks.Min(i => problem.Jobs[i].Hands + problem.Jobs[i].Wait);
        int start = problem.Calendar.Fit(stacks.Min(i => problem.Heads[i]), hands);
        for (int inRow = (stacks.Length + problem.Spaces - 1) / problem.Spaces; inRow > 1; inRow--)
        {
            start = problem.Calendar.Fit(start + stay, hands);
        }

        return start + stacks.Min(i => problem.Tails[i]);
    }
}
