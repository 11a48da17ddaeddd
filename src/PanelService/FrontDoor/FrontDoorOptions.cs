using System.ComponentModel.DataAnnotations;

namespace PanelService.FrontDoor;

/// <summary>Who may come in when the service is open to the network; section "FrontDoor" of the configuration.</summary>
internal sealed class FrontDoorOptions
{
    /// <summary>The section's name.</summary>
    internal const string Section = "FrontDoor";

    /// <summary>Names this service is reached by, beside localhost, the machine's own name (alone and with .local) and plain addresses. Whoever gives one
    /// expects clients from elsewhere, through a proxy perhaps: a key is wanted then.</summary>
    public string[] Hosts { get; set; } = [];

    /// <summary>Days a browser that has joined stays joined, 1 to 400. Default 90.</summary>
    [Range(1, 400)]
    public int SessionDays { get; set; } = 90;

    /// <summary>Minutes a six-digit code can be typed in, 1 to 60. Default 5.</summary>
    [Range(1, 60)]
    public int CodeMinutes { get; set; } = 5;

    /// <summary>Requests one client of the network may make in a minute, 10 to 100 000. Default 1200. Clients on this machine are not counted.</summary>
    [Range(10, 100_000)]
    public int RequestsPerMinute { get; set; } = 1200;

    /// <summary>Codes and links that all clients together may try in a minute; further ones are refused, 1 to 1000. Default 20.</summary>
    [Range(1, 1000)]
    public int TriesPerMinute { get; set; } = 20;
}
