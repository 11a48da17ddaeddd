using PanelService.Api.Tests.Hosts;
using PanelService.Planning.Orders;

namespace PanelService.Api.Tests.Orders;

/// <summary>One service for all tests of bodies that must never reach its planner.</summary>
public sealed class RefusingService : IDisposable
{
    private readonly SamplePlanner _planner = new();
    private readonly TestHost _host;

    public RefusingService()
    {
        _host = new TestHost(_planner.PlanAtOnce);
        Client = _host.CreateClient();
    }

    internal HttpClient Client { get; }

    internal IReadOnlyList<Order> Planned => _planner.Orders;

    public void Dispose()
    {
        Client.Dispose();
        _host.Dispose();
        _planner.Dispose();
    }
}
