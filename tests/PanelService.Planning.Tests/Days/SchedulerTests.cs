using System.Collections.Immutable;
using CsCheck;
using PanelService.Cutting;
using PanelService.Planning.Days;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Tests.Days;

/// <summary>Schedules of random jobs: their limits kept, their end the soonest, their bound true.</summary>
public sealed class SchedulerTests
{
    private const int Step = 60;

    private static readonly Gen<BenchProblem> _tiny = Gen.Select(
        Gen.Select(Gen.Int[1, 3], Gen.Int[0, 4].Select(i => new[] { 0, 1, 4, 12, 20 }[i]), Gen.Bool, Gen.Int[0, 31], Gen.Int[0, 3]).Array[2, 5],
        Gen.Int[1, 2],
        Gen.Int[1, 2],
        Gen.Int[3, 5],
        (jobs, hands, spaces, hours) => Problem(jobs, new ScheduleSettings { FromMinute = 9 * Step, DayMinutes = hours * Step, Hands = hands }, spaces));

    // Every start on the hour tried; durations are whole hours, so that some soonest schedule begins on the hour.
    [Fact]
    public void End_is_the_soonest_that_trying_every_start_finds() => _tiny.Sample(
        problem =>
        {
            var (starts, least) = Scheduler.Find(problem, Effort.Steady, default);
            int soonest = new ByForce(problem).SoonestEnd(problem.FinishOf(starts!));
            Assert.Equal(soonest, problem.FinishOf(starts!));
            Assert.Equal(soonest, least);
            var hours = new HandHours(problem);
            Assert.True(ScheduleBound.Of(problem, hours) <= soonest);

            // No end that a schedule has is refuted, however late the end that is known.
            Assert.True(DeadlineBound.Of(problem, hours, 0, soonest + 2000) <= soonest);
            ScheduleLimits.AssertKept(problem, starts!);
        },
        iter: 60,
        seed: "0001000000003");

    [Fact]
    public void Larger_schedules_keep_every_limit_and_never_end_before_their_bound() => Gen.Select(
            Gen.Select(Gen.Int[5, 120], Gen.Int[0, 900], Gen.Bool, Gen.Int[0, int.MaxValue], Gen.Int[0, 7]).Array[10, 40],
            Gen.Int[1, 3],
            Gen.Int[1, 3])
        .Sample(
            (jobs, hands, spaces) =>
            {
                var settings = new ScheduleSettings
                {
                    Hands = hands,
                    Start = new DateOnly(2026, 10, 23),
                    Days = [DayOfWeek.Friday, DayOfWeek.Saturday, DayOfWeek.Monday, DayOfWeek.Tuesday],
                    ClockChanges = [new ClockChange(2, 180, -60)],
                };
                var problem = Problem(jobs, settings, spaces, scale: 1);
                var (starts, least) = Scheduler.Find(problem, Effort.Quick, default);
                Assert.InRange(least, 0, problem.FinishOf(starts!));
                ScheduleLimits.AssertKept(problem, starts!);

                // Moving each job as early as its place in the order lets it go makes nothing later.
                int[] earlier = new Dispatcher(problem).Earlier(starts!);
                Assert.All(earlier.Zip(starts!), pair => Assert.True(pair.First <= pair.Second));
                ScheduleLimits.AssertKept(problem, earlier);
            },
            iter: 60,
            seed: "0001000000007");

    // Hours from 9:00 to 17:00. After an errand of an hour three jobs of two hours fit, and the day's last hour fits none: the
    // fourth is done by 11:00 next day. All day long 60 + 360 of 480 minutes can be worked.
    [Fact]
    public void Evening_that_no_job_fits_counts_in_the_bound()
    {
        var problem = Problem([(1, 0, false, 0, 0), .. Enumerable.Repeat((2, 0, false, 0, 0), 4)], new ScheduleSettings(), spaces: 1);
        Assert.Equal((24 + 11) * Step, ScheduleBound.Of(Chained(problem), new HandHours(Chained(problem))));
    }

    // Lengths of which greedy filling leaves some of the first day: longest tails first would take 5 + 2 hours, and leave one.
    [Fact]
    public void Day_is_filled_where_others_fit_its_rest()
    {
        var problem = Problem([(5, 2, false, 0, 0), (2, 2, false, 0, 0), (3, 0, false, 0, 0)], new ScheduleSettings(), spaces: 1);
        long[] longestFirst = [.. problem.Tails.Select(tail => -(long)tail)];
        var dispatcher = new Dispatcher(problem);
        Assert.Equal([9 * Step, 14 * Step, 33 * Step], dispatcher.ByRank(longestFirst)!);
        Assert.Equal([9 * Step, 33 * Step, 14 * Step], dispatcher.ByRank(longestFirst, fills: true)!);
    }

    [Fact]
    public void Same_problem_gives_the_same_schedule_again() => _tiny.Sample(
        problem => Assert.Equal(
            Scheduler.Find(problem, Effort.Steady, default).Starts,
            Scheduler.Find(problem, Effort.Steady, default).Starts),
        iter: 20,
        seed: "0001000000003");

    private static BenchProblem Problem(
        (int Hands, int Wait, bool Space, int Before, int Sort)[] jobs, ScheduleSettings settings, int spaces, int scale = Step) => new(
        [
            .. jobs.Select((job, i) => new BenchJob
            {
                Number = i + 1,
                Task = BenchTask.Glue,
                Steps = [],
                Hands = job.Hands * scale,
                Wait = job.Wait * scale,
                TakesSpace = job.Space,
                After = [.. Earlier(i, job.Before).Where(_ => job.Sort != 1)],
                AfterHands = [.. Earlier(i, job.Before).Where(_ => job.Sort == 1)],
            }),
        ],
        new WorkCalendar(settings),
        settings.Hands,
        spaces);

    // Everything waits for the first.
    private static BenchProblem Chained(BenchProblem problem) => new(
        [.. problem.Jobs.Select(job => job.Number == 1 ? job : job with { After = [1] })], problem.Calendar, problem.Hands, problem.Spaces);

    // The bits of a number say which of the last five jobs before this one it waits for; about a third do.
    private static IEnumerable<int> Earlier(int job, int bits) =>
        Enumerable.Range(Math.Max(0, job - 5), Math.Min(job, 5)).Where(before => ((bits >> (before % 5)) & 1) == 1 && (bits + before) % 3 == 0).Select(before => before + 1);
}
