using PanelService.Planning.Measures;
using PanelService.Planning.Practice;

namespace PanelService.Wire.Practice;

/// <summary>The practice table.</summary>
/// <param name="Units">The unit an order that names none is read in.</param>
/// <param name="Currency">The currency of an order that names none.</param>
/// <param name="Settings">Every default, in the order of an order's fields.</param>
internal sealed record PracticeResponse(LengthUnit Units, string Currency, IReadOnlyList<PracticeSettingResponse> Settings);

/// <summary>What a setting is where the painter says nothing.</summary>
/// <param name="Setting">The order's field: "saw.kerf".</param>
/// <param name="Text">The value in words: "1/8 in".</param>
/// <param name="Inches">Its lengths in inches; null for a number.</param>
/// <param name="Millimetres">Its lengths in millimetres; null for a number.</param>
/// <param name="Number">The number; null for lengths.</param>
/// <param name="Unit">The number's unit: "hours", "minutes", "panels".</param>
/// <param name="Mark">How well it is founded: published, commonPractice or fromMemory.</param>
/// <param name="Source">The source, or what practice it is.</param>
internal sealed record PracticeSettingResponse(
    string Setting,
    string Text,
    IReadOnlyList<decimal>? Inches,
    IReadOnlyList<decimal>? Millimetres,
    decimal? Number,
    string? Unit,
    SourceMark Mark,
    string Source);

/// <summary>A series of formats that go together.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Units">The unit its sizes are in.</param>
/// <param name="Mark">How well it is founded.</param>
/// <param name="Source">Where the sizes come from.</param>
/// <param name="Formats">The formats, in the order of the series.</param>
internal sealed record FormatSeriesResponse(
    string Name, LengthUnit Units, SourceMark Mark, string Source, IReadOnlyList<FormatResponse> Formats);

/// <summary>One format, standing upright where its sides differ.</summary>
/// <param name="Name">What the series calls it.</param>
/// <param name="Width">The shorter side.</param>
/// <param name="Height">The longer side.</param>
internal sealed record FormatResponse(string Name, decimal Width, decimal Height);
