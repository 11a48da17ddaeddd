using System.Collections.Immutable;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using PanelService.Planning.Measures;
using PanelService.Store.Documents;
using PanelService.Store.Faults;
using PanelService.Store.Model;

namespace PanelService.Store.Jobs;

/// <summary>
/// Orders that wait for a planner or are planned: all of them where several hosts share one database; else those whose clients
/// went away with an address.
/// </summary>
/// <param name="studio">The database.</param>
/// <param name="clock">When they were handed in.</param>
public sealed class JobBook(Studio studio, TimeProvider clock)
{
    // An order that takes the process down must not do so at every start; one that was only unlucky is not given up at once.
    private const int MostTries = 3;

    private static readonly string Waiting = StoreJson.Word(JobState.Waiting);
    private static readonly string Planning = StoreJson.Word(JobState.Planning);
    private static readonly string[] Open = [Waiting, Planning];

    /// <summary>Hands an order in; false where as many wait as may, or as many of this client's: three quarters of them.</summary>
    /// <param name="task">The order.</param>
    /// <param name="client">Whose it is; clients take turns.</param>
    /// <param name="most">How many may be waiting or planned at once, over all hosts.</param>
    /// <param name="cancellation">Gives up before it is handed in.</param>
    public Task<bool> AddAsync(PlanTask task, string client, int most, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(task);
        JobRow row = RowOf(task, client);
        return studio.WriteAsync(
            async context =>
            {
                string?[] open = await context.Jobs.Where(job => Open.Contains(job.State)).Select(job => job.Client).ToArrayAsync(cancellation);
                bool isRoom = open.Length < most && open.Count(one => one == client) < Math.Max(1, most - (most / 4));
                if (isRoom)
                {
                    context.Jobs.Add(row);
                }

                return isRoom;
            },
            cancellation);
    }

    /// <summary>Writes an order down that a planner of this host is to make, however many wait; once this returns, it survives whatever happens.</summary>
    /// <param name="task">The order.</param>
    /// <param name="client">Whose it is.</param>
    /// <param name="cancellation">Gives up before it is written down.</param>
    /// <exception cref="Faults.StoreUnavailableException">It was not written down.</exception>
    public Task PromiseAsync(PlanTask task, string client, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(task);
        JobRow row = RowOf(task, client);
        return studio.WriteAsync(
            context =>
            {
                context.Jobs.Add(row);
                return Task.FromResult(true);
            },
            cancellation);
    }

    /// <summary>The order of a row; null where it is damaged: the others must not wait for it.</summary>
    private static PlanTask? TaskIn(JobRow row)
    {
        try
        {
            return StoreJson.Read<PlanTask>(row.Filled);
        }
        catch (StoreUnavailableException)
        {
            return null;
        }
    }

    /// <summary>The orders that wait, the oldest first, each with whose it is: after a start, what the last run left undone.</summary>
    /// <param name="givenUp">Why there is no plan of an order that was begun again three times, and cut short each time: a problem document.</param>
    /// <param name="cancellation">Gives up.</param>
    public Task<ImmutableArray<(PlanTask Task, string Client)>> ResumeAsync(string givenUp, CancellationToken cancellation) => studio.WriteAsync(
        async context =>
        {
            JobRow[] rows = await context.Jobs.Where(job => Open.Contains(job.State)).OrderBy(job => job.CreatedAt).ToArrayAsync(cancellation);
            var left = ImmutableArray.CreateBuilder<(PlanTask Task, string Client)>();
            foreach (JobRow row in rows)
            {
                PlanTask? task = TriesOf(row) < MostTries ? TaskIn(row) : null;
                if (task is null)
                {
                    row.State = StoreJson.Word(JobState.Failed);
                    row.Problem = givenUp;
                }
                else if (row.State == Waiting)
                {
                    left.Add((task, row.Client ?? ""));
                }
            }

            return left.ToImmutable();
        },
        cancellation);

    /// <summary>Notes that an order that an earlier run left is begun again.</summary>
    /// <param name="id">The job.</param>
    /// <param name="cancellation">Gives up.</param>
    public Task BeginAgainAsync(string id, CancellationToken cancellation) =>
        ChangeAsync(id, row => row.Ticket = (TriesOf(row) + 1).ToString(CultureInfo.InvariantCulture), cancellation);

    /// <summary>Forgets an order.</summary>
    /// <param name="id">The job.</param>
    /// <param name="cancellation">Gives up before it is forgotten.</param>
    /// <returns>Whether there was one.</returns>
    public Task<bool> RemoveAsync(string id, CancellationToken cancellation) => studio.WriteAsync(
        async context => await context.Jobs.Where(job => job.Id == id).ExecuteDeleteAsync(cancellation) > 0, cancellation);

    /// <summary>
    /// Takes an order on. An entry of the queue stands for a turn, not for an order: of the client whose last turn is longest
    /// ago the oldest order is taken. An entry that is given out again, because its planner is gone, comes back to its order.
    /// </summary>
    /// <param name="ticket">The queue's entry.</param>
    /// <param name="planner">Who takes it on.</param>
    /// <param name="cancellation">Gives up.</param>
    /// <returns>The order; null where none waits, or this entry's is ended.</returns>
    public Task<PlanTask?> TakeAsync(string ticket, string planner, CancellationToken cancellation) => studio.WriteAsync(
        async context =>
        {
            // An older program took the order that the entry is named after.
            JobRow? row = await context.Jobs.FirstOrDefaultAsync(
                job => job.Ticket == ticket || (job.Id == ticket && job.Ticket == null && job.State == Planning), cancellation);
            if (row is not null && !Open.Contains(row.State))
            {
                return null;
            }

            row ??= await NextAsync(context, cancellation);
            if (row is null)
            {
                return null;
            }

            row.State = Planning;
            row.Planner = planner;
            row.Ticket = ticket;
            row.TakenAt ??= clock.GetUtcNow().ToUnixTimeMilliseconds();
            return StoreJson.Read<PlanTask>(row.Filled);
        },
        cancellation);

    /// <summary>The order of a job; null where there is none.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<PlanTask?> TaskOfAsync(string id, CancellationToken cancellation) =>
        await studio.ReadAsync(context => context.Jobs.Where(job => job.Id == id).Select(job => job.Filled).FirstOrDefaultAsync(cancellation), cancellation) is { } filled
            ? StoreJson.Read<PlanTask>(filled)
            : null;

    /// <summary>How a job stands; null where there is none.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancellation">Gives up.</param>
    public Task<JobStatus?> StatusAsync(string id, CancellationToken cancellation) => studio.ReadAsync(
        async context =>
        {
            var row = await context.Jobs.Where(job => job.Id == id)
                .Select(job => new { job.State, job.SpentMinor, job.LeastPossibleMinor, job.StopAsked, job.Problem })
                .FirstOrDefaultAsync(cancellation);
            return row is null
                ? null
                : new JobStatus(StoreJson.Word<JobState>(row.State), AmountOf(row.SpentMinor), AmountOf(row.LeastPossibleMinor), row.StopAsked, row.Problem);
        },
        cancellation);

    /// <summary>Says how far a planner has come.</summary>
    /// <param name="id">The job.</param>
    /// <param name="spent">What the best plan so far spends.</param>
    /// <param name="leastPossible">The bound so far.</param>
    /// <param name="cancellation">Gives up.</param>
    public Task ReportAsync(string id, Money? spent, Money? leastPossible, CancellationToken cancellation) => ChangeAsync(
        id,
        row =>
        {
            row.SpentMinor = spent?.Minor;
            row.LeastPossibleMinor = leastPossible?.Minor;
        },
        cancellation);

    /// <summary>Ends a job.</summary>
    /// <param name="id">The job.</param>
    /// <param name="state">Done, failed or dropped.</param>
    /// <param name="problem">Why there is no plan.</param>
    /// <param name="cancellation">Gives up.</param>
    public Task EndAsync(string id, JobState state, string? problem, CancellationToken cancellation) => ChangeAsync(
        id,
        row =>
        {
            row.State = StoreJson.Word(state);
            row.Problem = problem;
        },
        cancellation);

    /// <summary>Asks whoever plans it for the best plan so far.</summary>
    /// <param name="id">The job.</param>
    /// <param name="cancellation">Gives up.</param>
    public Task StopAsync(string id, CancellationToken cancellation) => ChangeAsync(id, row => row.StopAsked = true, cancellation);

    private static int TriesOf(JobRow row) => row.Ticket is { } tries ? int.Parse(tries, CultureInfo.InvariantCulture) : 0;

    private JobRow RowOf(PlanTask task, string client) => new()
    {
        Id = task.Id,
        Filled = StoreJson.Write(task),
        Client = client,
        CreatedAt = clock.GetUtcNow().ToUnixTimeMilliseconds(),
        State = Waiting,
    };

    private static async Task<JobRow?> NextAsync(StudioContext context, CancellationToken cancellation)
    {
        var waiting = await context.Jobs.Where(job => job.State == Waiting)
            .Select(job => new { job.Id, job.Client, job.CreatedAt }).ToArrayAsync(cancellation);
        string?[] clients = [.. waiting.Select(job => job.Client).Distinct()];
        var turns = await context.Jobs.Where(job => job.TakenAt != null && clients.Contains(job.Client))
            .GroupBy(job => job.Client).Select(of => new { Client = of.Key, Last = of.Max(job => job.TakenAt) }).ToArrayAsync(cancellation);
        string? next = waiting.OrderBy(job => turns.FirstOrDefault(turn => turn.Client == job.Client)?.Last ?? 0)
            .ThenBy(job => job.CreatedAt).ThenBy(job => job.Id, StringComparer.Ordinal).FirstOrDefault()?.Id;
        return next is null ? null : await context.Jobs.FirstAsync(job => job.Id == next, cancellation);
    }

    // What has ended stays as it ended.
    private Task<bool> ChangeAsync(string id, Action<JobRow> change, CancellationToken cancellation) => studio.WriteAsync(
        async context =>
        {
            JobRow? row = await context.Jobs.FirstOrDefaultAsync(job => job.Id == id, cancellation);
            if (row is not null && Open.Contains(row.State))
            {
                change(row);
            }

            return true;
        },
        cancellation);

    private static Money? AmountOf(long? minor) => minor is { } known ? new Money(known) : null;
}
