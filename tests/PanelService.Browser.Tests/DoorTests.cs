using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using PanelService.FrontDoor;

namespace PanelService.Browser.Tests;

/// <summary>The service open to the network: the studio's browser comes in by the link, the phone by six digits read out.</summary>
[Collection(StudioGroup.Name)]
public sealed class DoorTests(Studio studio)
{
    [BrowserFact]
    public async Task A_phone_comes_in_with_the_digits_another_browser_shows()
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("panel-service-door-");
        await using var host = new OpenHost(folder.FullName);
        _ = new AccessKey(folder.FullName).Make();
        host.UseKestrel(0);
        host.StartServer();
        Uri address = host.ClientOptions.BaseAddress;
        string word = host.Services.GetRequiredService<JoinTickets>().NewLink();

        IPage bench = await studio.OpenAsync(new Uri(address, $"#join={word}"));
        await bench.Lines().First.WaitForAsync();
        await bench.GetByText("Let a phone in").ClickAsync();
        ILocator said = bench.Locator(".let-in [role=status]");
        await Assertions.Expect(said).ToContainTextAsync("and type");
        string code = string.Concat((await said.TextContentAsync())!.Split("and type")[1].Split(',')[0].Where(char.IsDigit));

        IPage phone = await studio.OpenAsync(address, 390, 844);
        await phone.Locator("#join-code").WaitForAsync();
        Assert.Empty(await phone.FaultsAsync("the door"));
        await phone.Locator("#join-code").FillAsync(code == "000000" ? "111111" : "000000");
        await phone.Keyboard.PressAsync("Enter");
        await Assertions.Expect(phone.Locator("#join-said")).ToContainTextAsync("Those do not work");
        Assert.Equal(0, await phone.Lines().CountAsync());
        await phone.Locator("#join-code").FillAsync(code);
        await phone.Keyboard.PressAsync("Enter");
        await phone.PlanAsync();

        // Whoever leaves, or is no longer in, keeps nothing of the studio's.
        await phone.GetByText("Leave, and keep nothing here").ClickAsync();
        await phone.Locator("#join-code").WaitForAsync();
        Assert.Equal(0, await phone.EvaluateAsync<int>("() => localStorage.length"));
        await bench.PlanAsync();
        Assert.NotEqual(0, await bench.EvaluateAsync<int>("() => localStorage.length"));
        _ = new AccessKey(folder.FullName).Make();
        await bench.PlanButton().ClickAsync();
        await bench.Locator("#join-code").WaitForAsync();
        Assert.Equal(0, await bench.EvaluateAsync<int>("() => localStorage.length"));

        Assert.DoesNotContain(word, bench.Url, StringComparison.Ordinal);
        await bench.Context.CloseAsync();
        await phone.Context.CloseAsync();
        folder.Delete(recursive: true);
    }

    private sealed class OpenHost(string folder) : WebApplicationFactory<Program>
    {
        protected override void ConfigureWebHost(IWebHostBuilder builder) =>
            builder.UseSetting("urls", "http://0.0.0.0:0").UseSetting("PanelService:DataFolder", folder);
    }
}
