using System.Collections.Immutable;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Practice;

/// <summary>A series of formats that go together.</summary>
/// <param name="Name">What it is called: "French".</param>
/// <param name="Units">The unit its sizes are whole in.</param>
/// <param name="Mark">How well it is founded.</param>
/// <param name="Source">Where the sizes come from.</param>
/// <param name="Formats">The formats, in the order of the series.</param>
public sealed record FormatSeries(
    string Name, LengthUnit Units, SourceMark Mark, string Source, ImmutableArray<StandardFormat> Formats);

/// <summary>One format, standing upright where its sides differ.</summary>
/// <param name="Name">What the series calls it: "8F", "A4", "8 × 10".</param>
/// <param name="Width">The shorter side.</param>
/// <param name="Height">The longer side.</param>
public sealed record StandardFormat(string Name, Length Width, Length Height);
