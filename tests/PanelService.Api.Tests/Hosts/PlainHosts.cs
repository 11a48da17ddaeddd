using PanelService.FrontDoor;
using PanelService.Tests.Shared;

namespace PanelService.Api.Tests.Hosts;

/// <summary>The service as it comes, started once for a class of tests that neither change nor count what it keeps.</summary>
public sealed class PlainHosts : IDisposable
{
    private readonly Lazy<TestHost> _plain = new(() => new TestHost());
    private readonly Lazy<TestHost> _named;
    private readonly DataFolder _folder = new();

    /// <summary>Starts none yet.</summary>
    public PlainHosts() => _named = new(() =>
    {
        _ = new AccessKey(_folder.Path).Make();
        return new TestHost(null, (DataFolder.Setting, _folder.Path), ("FrontDoor:Hosts:0", "ticket.workshop.example"));
    });

    /// <summary>With no settings at all.</summary>
    internal TestHost Plain => _plain.Value;

    /// <summary>Known as ticket.workshop.example as well, and so with a key.</summary>
    internal TestHost Named => _named.Value;

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (Lazy<TestHost> host in new[] { _plain, _named }.Where(host => host.IsValueCreated))
        {
            host.Value.Dispose();
        }

        _folder.Dispose();
    }
}
