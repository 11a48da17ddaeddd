using System.Text.Json;
using Microsoft.AspNetCore.Http.Json;
using Microsoft.Extensions.Options;
using PanelService.Planning;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Wire.Plans;

namespace PanelService.Work;

/// <summary>
/// Plans, draws and writes a small order of its own as soon as the service is up. The runtime compiles what is called for
/// the first time and compiles again what is called often; the first painter of the day should not wait for that. It gives way to
/// whoever asks for something, keeps nothing, and runs once in a process.
/// </summary>
internal sealed partial class WarmUp(IHostApplicationLifetime lifetime, IOptions<JsonOptions> json, ILogger<WarmUp> log) : IHostedService
{
    // The engine's inner methods are called by the thousand in each; more rounds made the first plan no faster.
    internal const int Rounds = 3;

    private static int _begun;

    /// <inheritdoc/>
    public Task StartAsync(CancellationToken cancellationToken)
    {
        if (Interlocked.Exchange(ref _begun, 1) == 0)
        {
            lifetime.ApplicationStarted.Register(() => _ = PlannerThread.RunAsync(Run));
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    private void Run()
    {
        try
        {
            for (int round = 0; round < Rounds; round++)
            {
                if (Planner.Plan(OrderOf(round), progress: null, lifetime.ApplicationStopping) is Planned { Plan: var plan })
                {
                    _ = JsonSerializer.Serialize(
                        new PlanTranslation("warm-up", plan, new DrawingLinks(null, true)).Write(PlanState.Done), json.Value.SerializerOptions);
                }
            }

            Warm(log);
        }
        catch (OperationCanceledException) when (lifetime.ApplicationStopping.IsCancellationRequested)
        {
            // The service goes down before it was warm.
        }
        catch (Exception fault)
        {
            // The service works as well cold.
            Cold(log, fault);
        }
    }

    /// <summary>Some panels of every surface, of two boards and two cloths; a little more of each every round.</summary>
    internal static Order OrderOf(int round)
    {
        (decimal Width, decimal Height, Surface Surface)[] lines =
            [(8, 10, Surface.Cloth), (5, 7, Surface.Primed), (11, 14, Surface.Cloth), (9, 12, Surface.Bare), (16, 20, Surface.Cloth)];
        return new Order
        {
            Units = LengthUnit.Inch,
            Currency = new Currency("EUR", 2),
            Effort = Cutting.Effort.Steady,
            Panels = [.. lines.Select((line, i) => new PanelLine
            {
                Mark = $"W{i}",
                Width = Length.FromInches(line.Width),
                Height = Length.FromInches(line.Height),
                Quantity = 3 + round + i,
                Surface = line.Surface,
            })],
            Boards = [Board("half", 0.125m, 24, 610), Board("whole", 0.125m, 48, 1120), Board("thick", 0.1875m, 48, 1640)],
            Cloths = [Cloth("narrow", 54, 1900), Cloth("wide", 72, 2600)],
            Adhesives = [Liquid("glue", 80, 0.4m)],
            Primers = [Liquid("ground", 400, 1)],
        };
    }

    private static BoardSupply Board(string id, decimal thickness, int width, int price) => new()
    {
        Id = id,
        Thickness = Length.FromInches(thickness),
        Width = Length.FromInches(width),
        Height = Length.FromInches(48),
        Price = new Money(price),
    };

    private static ClothSupply Cloth(string id, int width, int price) => new()
    {
        Id = id,
        Width = Length.FromInches(width),
        Sale = new SaleByLength(Length.FromInches(36), new Money(price), null),
    };

    private static LiquidSupply Liquid(string id, decimal area, decimal volume) => new()
    {
        Id = id,
        CoverageArea = Area.From(area, LengthUnit.Inch),
        CoverageVolume = Volume.From(volume, LengthUnit.Inch),
        Containers = [new Container(Volume.From(8, LengthUnit.Inch), new Money(790)), new Container(Volume.From(32, LengthUnit.Inch), new Money(2100))],
    };

    [LoggerMessage(Level = LogLevel.Debug, Message = "The planner is warm")]
    private static partial void Warm(ILogger log);

    [LoggerMessage(Level = LogLevel.Warning, Message = "The planner could not be warmed up")]
    private static partial void Cold(ILogger log, Exception fault);
}
