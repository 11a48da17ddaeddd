using System.Net.Http.Json;
using PanelService.Api.Tests.Hosts;
using PanelService.FrontDoor;

namespace PanelService.Api.Tests.FrontDoor;

/// <summary>The service open to the network, with a data folder and a key of its own.</summary>
internal sealed class OpenHost : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("panel-service-door-");
    private readonly TestHost _host;

    internal OpenHost(params (string Key, string Value)[] settings)
    {
        Key = new AccessKey(_folder.FullName).Make();
        _host = new TestHost(null, [("urls", "http://0.0.0.0:5180"), ("PanelService:DataFolder", _folder.FullName), .. settings]);
    }

    internal string Key { get; private set; }

    public void Dispose()
    {
        _host.Dispose();
        _folder.Delete(recursive: true);
    }

    /// <summary>A client that keeps its cookies; with a key or without.</summary>
    internal HttpClient Client(string? key = null)
    {
        HttpClient client = _host.CreateClient();
        if (key is not null)
        {
            client.DefaultRequestHeaders.Authorization = new("Bearer", key);
        }

        return client;
    }

    /// <summary>A client over TLS, by an address of the network; without a jar for cookies where the test handles them itself.</summary>
    internal HttpClient SecureClient(bool keepsCookies = true) => _host.CreateClient(
        new() { BaseAddress = new Uri("https://192.0.2.7"), HandleCookies = keepsCookies });

    /// <summary>What the host keeps in its data folder under a name.</summary>
    internal FileInfo[] Kept(string folder, string pattern) => new DirectoryInfo(Path.Combine(_folder.FullName, folder)).GetFiles(pattern);

    internal void MakeOtherKey() => Key = new AccessKey(_folder.FullName).Make();

    internal async Task<string> NewCodeAsync()
    {
        using HttpClient script = Client(Key);
        using HttpResponseMessage response = await script.PostAsync("/api/access/codes", null);
        return (await Json.ReadAsync(response)).GetProperty("code").GetString()!;
    }

    internal static Task<HttpResponseMessage> JoinAsync(HttpClient client, string code) => client.PostAsJsonAsync("/api/access/join", new { code });
}
