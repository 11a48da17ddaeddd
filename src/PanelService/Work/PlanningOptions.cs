using System.ComponentModel.DataAnnotations;

namespace PanelService.Work;

/// <summary>How much planning this service takes on; section "Planning" of the configuration.</summary>
internal sealed class PlanningOptions : IValidatableObject
{
    /// <summary>The section's name.</summary>
    internal const string Section = "Planning";

    private const long Mebibyte = 1024 * 1024;

    /// <summary>Orders planned at once, 0 to 64; 0 makes a station that leaves planning to others. Default: one for each processor.</summary>
    [Range(0, 64)]
    public int Planners { get; set; } = Math.Clamp(Environment.ProcessorCount, 1, 64);

    /// <summary>Orders that may wait for a planner, 1 to 1000; one more is answered with 503. Default 16.</summary>
    [Range(1, 1000)]
    public int Waiting { get; set; } = 16;

    /// <summary>Plans held in memory, more than are planned and waiting, to 100 000; the oldest are read from the database again. Default 200.</summary>
    [Range(1, 100_000)]
    public int Kept { get; set; } = 200;

    /// <summary>Seconds after which a search that runs away is ended with the best plan so far, 1 to 3600. Default 60.</summary>
    [Range(1, 3600)]
    public double SafetyStopSeconds { get; set; } = 60;

    /// <summary>Seconds a planner has to answer once it was told to end, 0.01 to 600; then whoever waits is answered without it. Default 20.</summary>
    [Range(0.01, 600)]
    public double GraceSeconds { get; set; } = 20;

    /// <summary>
    /// MiB the process may hold before searches are ended with the best plan so far, 64 to 1 000 000. Default 1280, or three
    /// quarters of what the machine or the container has, where that is less.
    /// </summary>
    [Range(64, 1_000_000)]
    public int MostMegabytes { get; set; } = (int)Math.Clamp(GC.GetGCMemoryInfo().TotalAvailableMemoryBytes / Mebibyte * 3 / 4, 64, 1280);

    /// <summary>Whether hosts on one PostgreSQL share one queue of orders. Default true; on SQLite there is none.</summary>
    public bool Shared { get; set; } = true;

    /// <summary>Seconds after which a planner that is silent is taken for dead and its order given to another, 2 to 3600. Default 30.</summary>
    [Range(2, 3600)]
    public double LostAfterSeconds { get; set; } = 30;

    /// <summary>Seconds between signs of life on a progress stream, 0.01 to 60. Default 10.</summary>
    [Range(0.01, 60)]
    public double HeartbeatSeconds { get; set; } = 10;

    /// <summary>Seconds a refused client is asked to wait, 1 to 3600. Default 5.</summary>
    [Range(1, 3600)]
    public int RetryAfterSeconds { get; set; } = 5;

    /// <inheritdoc/>
    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        if (Kept <= Planners + Waiting)
        {
            yield return new ValidationResult(
                $"{Section}:{nameof(Kept)} must be more than {nameof(Planners)} and {nameof(Waiting)} together, or work in progress would be dropped.",
                [nameof(Kept)]);
        }
    }
}
