namespace PanelService.Api.Tests.Hosts;

/// <summary>The service as it comes, started once for a class of tests that neither change nor count what it keeps.</summary>
public sealed class PlainHosts : IDisposable
{
    private readonly Lazy<TestHost> _plain = new(() => new TestHost());
    private readonly Lazy<TestHost> _named = new(() => new TestHost(null, ("FrontDoor:Hosts:0", "ticket.workshop.example")));

    /// <summary>With no settings at all.</summary>
    internal TestHost Plain => _plain.Value;

    /// <summary>Known as ticket.workshop.example as well.</summary>
    internal TestHost Named => _named.Value;

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (Lazy<TestHost> host in new[] { _plain, _named }.Where(host => host.IsValueCreated))
        {
            host.Value.Dispose();
        }
    }
}
