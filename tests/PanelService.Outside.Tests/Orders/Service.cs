using System.Net;
using System.Text;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using PanelService.Tests.Shared;

namespace PanelService.Outside.Tests.Orders;

/// <summary>The whole service in this process, spoken to over HTTP like any client does.</summary>
public sealed class Service : IDisposable
{
    private readonly DataFolder data = new();
    private readonly WebApplicationFactory<Program> host;
    private readonly HttpClient client;

    /// <summary>Starts the service.</summary>
    public Service()
    {
        host = new WebApplicationFactory<Program>().WithWebHostBuilder(builder => builder.UseSetting(DataFolder.Setting, data.Path));
        client = host.CreateClient();
    }

    /// <summary>Sends an order.</summary>
    /// <param name="order">The order's document.</param>
    /// <returns>Status and body, whatever they are.</returns>
    public async Task<(HttpStatusCode Status, string Body)> Plan(string order)
    {
        using var body = new StringContent(order, Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync(new Uri("/api/plans", UriKind.Relative), body);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync());
    }

    /// <summary>Reads what stands at an address.</summary>
    /// <param name="address">Path and query.</param>
    /// <exception cref="HttpRequestException">The answer is no success.</exception>
    public Task<string> Get(string address) => client.GetStringAsync(new Uri(address, UriKind.Relative));

    /// <inheritdoc/>
    public void Dispose()
    {
        client.Dispose();
        host.Dispose();
        data.Dispose();
    }
}
