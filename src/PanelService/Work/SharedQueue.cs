using Hangfire;
using Hangfire.PostgreSql;
using Hangfire.PostgreSql.Factories;
using Microsoft.Extensions.Options;
using PanelService.Store;

namespace PanelService.Work;

/// <summary>
/// The queue that several hosts share: durable jobs in the studio's own PostgreSQL. A host with planners takes jobs from it;
/// one without (a station) only hands them in.
/// </summary>
internal sealed class SharedQueue(IServiceProvider services, Studio studio, IOptions<PlanningOptions> options) : IHostedService, IDisposable
{
    private readonly Lazy<PostgreSqlStorage> _storage = new(() => Open(studio.Options.Postgres!, options.Value));
    private BackgroundJobServer? _server;

    /// <summary>Puts jobs in.</summary>
    internal BackgroundJobClient Client => new(_storage.Value);

    /// <inheritdoc/>
    public Task StartAsync(CancellationToken cancellationToken)
    {
        if (options.Value.Planners > 0)
        {
            _server = new BackgroundJobServer(
                new BackgroundJobServerOptions
                {
                    WorkerCount = options.Value.Planners,
                    Activator = new Activation(services),
                    ShutdownTimeout = TimeSpan.FromSeconds(options.Value.GraceSeconds),
                },
                _storage.Value);
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task StopAsync(CancellationToken cancellationToken)
    {
        _server?.SendStop();
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public void Dispose() => _server?.Dispose();

    private static PostgreSqlStorage Open(string connection, PlanningOptions options) => new(
        new NpgsqlConnectionFactory(connection, new PostgreSqlStorageOptions()),
        new PostgreSqlStorageOptions
        {
            SchemaName = "queue",
            QueuePollInterval = TimeSpan.FromMilliseconds(250),

            // A planner that lives says so all the time; one that has been silent this long is dead, and its job goes to another.
            InvisibilityTimeout = TimeSpan.FromSeconds(options.LostAfterSeconds),
            UseSlidingInvisibilityTimeout = true,
        });

    private sealed class Activation(IServiceProvider services) : JobActivator
    {
        public override object ActivateJob(Type jobType) => services.GetRequiredService(jobType);
    }
}
