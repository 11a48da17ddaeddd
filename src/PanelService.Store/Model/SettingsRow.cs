namespace PanelService.Store.Model;

/// <summary>The studio's own settings: one row at most.</summary>
internal sealed class SettingsRow
{
    public const int Only = 1;

    public int Id { get; init; } = Only;

    public required string Units { get; set; }

    public required string Currency { get; set; }

    public required string Document { get; set; }

    public required int Version { get; set; }
}
