using PanelService.Planning.Measures;

namespace PanelService.Planning.Sizes;

/// <summary>The size a line is cut to.</summary>
/// <param name="Width">Along the panel's width.</param>
/// <param name="Height">Along the panel's height.</param>
internal readonly record struct CutSize(Length Width, Length Height);
