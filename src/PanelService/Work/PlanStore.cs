using System.Security.Cryptography;
using Microsoft.Extensions.Options;
using PanelService.Wire.Plans;

namespace PanelService.Work;

/// <summary>The plans in memory, made and in the making: bounded, the oldest made ones left to the database first.</summary>
internal sealed class PlanStore(IOptions<PlanningOptions> options)
{
    // 128 random bits: an address cannot be guessed.
    private const int IdBytes = 16;

    private readonly Lock _gate = new();
    private readonly OrderedDictionary<string, PlanJob> _jobs = new(StringComparer.Ordinal);

    internal static string NewId() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(IdBytes));

    internal void Add(PlanJob job)
    {
        lock (_gate)
        {
            _jobs[job.Id] = job;
            MakeRoom();
        }
    }

    internal PlanJob? Find(string id)
    {
        lock (_gate)
        {
            return _jobs.GetValueOrDefault(id);
        }
    }

    /// <summary>Takes a plan out; null where there is none. Whoever does so drops its job.</summary>
    internal PlanJob? Remove(string id)
    {
        lock (_gate)
        {
            return _jobs.Remove(id, out PlanJob? job) ? job : null;
        }
    }

    /// <summary>Leaves all plans that are made to the database: what is held here is held for speed alone.</summary>
    internal void Shed()
    {
        lock (_gate)
        {
            string[] made = [.. _jobs.Where(job => job.Value.Look().Snapshot.Plan is not null).Select(job => job.Key)];
            Array.ForEach(made, id => _jobs.Remove(id));
        }
    }

    private void MakeRoom()
    {
        while (_jobs.Count > options.Value.Kept)
        {
            int oldest = Enumerable.Range(0, _jobs.Count)
                .FirstOrDefault(index => _jobs.GetAt(index).Value.Look().Snapshot.State != PlanState.Planning, -1);
            if (oldest < 0)
            {
                // All are in the making, here or on other hosts of the same queue: none is dropped for that.
                return;
            }

            _jobs.RemoveAt(oldest);
        }
    }
}
