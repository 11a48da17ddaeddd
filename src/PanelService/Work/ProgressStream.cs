using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using Microsoft.Extensions.Options;
using PanelService.Wire.Plans;

namespace PanelService.Work;

/// <summary>A job's states one after another, the last one last; the current one again as a sign of life.</summary>
internal sealed class ProgressStream(IOptions<PlanningOptions> options, TimeProvider clock)
{
    internal async IAsyncEnumerable<SseItem<PlanStateResponse>> WatchAsync(
        PlanJob job, [EnumeratorCancellation] CancellationToken cancellation)
    {
        while (true)
        {
            (PlanSnapshot now, Task changed) = job.Look();
            yield return new SseItem<PlanStateResponse>(PlanStates.Write(job, now));
            if (now.State != PlanState.Planning)
            {
                yield break;
            }

            await ChangeOrHeartbeatAsync(changed, cancellation);
        }
    }

    private async Task ChangeOrHeartbeatAsync(Task changed, CancellationToken cancellation)
    {
        using var enough = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        Task heartbeat = Task.Delay(TimeSpan.FromSeconds(options.Value.HeartbeatSeconds), clock, enough.Token);
        await Task.WhenAny(changed, heartbeat);
        await enough.CancelAsync();
        cancellation.ThrowIfCancellationRequested();
    }
}
