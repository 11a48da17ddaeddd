using Microsoft.Extensions.Configuration;
using PanelService.FrontDoor;

namespace PanelService.Api.Tests.FrontDoor;

/// <summary>Which configurations open the service to the network, and that those do not start without a key.</summary>
public sealed class ReachTests
{
    [Theory]
    [InlineData("urls", "http://localhost:5180", false)]
    [InlineData("urls", "http://127.0.0.1:5180;http://[::1]:5180", false)]
    [InlineData("urls", "http://0.0.0.0:5180", true)]
    [InlineData("urls", "http://*:5180", true)]
    [InlineData("urls", "http://+:5180", true)]
    [InlineData("urls", "http://[::]:5180", true)]
    [InlineData("urls", "http://localhost:5180;http://192.0.2.7:5180", true)]
    [InlineData("urls", "http://localhost.evil.example:80", true)]
    [InlineData("urls", "nonsense", true)]
    [InlineData("http_ports", "8080", true)]
    [InlineData("https_ports", "8443", true)]
    [InlineData("Kestrel:Endpoints:Http:Url", "http://localhost:5180", false)]
    [InlineData("Kestrel:Endpoints:Http:Url", "http://0.0.0.0:5180", true)]
    [InlineData("FORWARDEDHEADERS_ENABLED", "True", true)]
    [InlineData("FORWARDEDHEADERS_ENABLED", "false", false)]
    [InlineData("FrontDoor:Hosts:0", "ticket.workshop.example", true)]
    [InlineData("FrontDoor:Hosts:0", "127.0.0.2", false)]
    public void Only_addresses_of_this_machine_without_a_proxy_are_not_open(string setting, string value, bool open)
    {
        IConfiguration configuration = new ConfigurationBuilder().AddInMemoryCollection([new(setting, value)]).Build();
        Assert.Equal(open, Reach.Of(configuration).Open);
    }

    [Theory]
    [InlineData(false, false, true)]
    [InlineData(true, false, false)]
    [InlineData(true, true, true)]
    public void Open_without_a_key_it_does_not_start_and_says_why(bool open, bool key, bool starts)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("panel-service-door-");
        try
        {
            if (key)
            {
                _ = DoorCommands.MakeKey(folder.FullName, TextWriter.Null);
            }

            using var said = new StringWriter();
            Assert.Equal(starts, DoorCommands.MayStart(new Reach(open), folder.FullName, said));
            Assert.Equal(!starts, said.ToString().Contains("there is no key yet", StringComparison.Ordinal));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void The_key_is_shown_once_and_never_written_down()
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("panel-service-door-");
        try
        {
            using var shown = new StringWriter();
            _ = DoorCommands.MakeKey(folder.FullName, shown);
            string key = shown.ToString().Split(Environment.NewLine)[0];

            string kept = string.Concat(folder.EnumerateFiles().Select(file => File.ReadAllText(file.FullName)));
            Assert.DoesNotContain(key, kept, StringComparison.Ordinal);
            Assert.True(new AccessKey(folder.FullName).Matches(key));
            Assert.False(new AccessKey(folder.FullName).Matches(key + "x"));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
