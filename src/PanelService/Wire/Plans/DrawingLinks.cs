using System.Globalization;
using PanelService.Drawing;
using PanelService.Planning.Plans;

namespace PanelService.Wire.Plans;

/// <summary>Where a plan's drawings are, and the drawings themselves where they are wanted in the document.</summary>
/// <param name="PlanAddress">The plan's own address; null where it has none.</param>
/// <param name="Inline">Whether each sheet and cloth carries its drawing.</param>
internal sealed record DrawingLinks(string? PlanAddress, bool Inline)
{
    /// <summary>What is kept nowhere has no addresses; whoever answers adds the drawing.</summary>
    internal static DrawingLinks None { get; } = new(null, false);

    internal string? SheetAddress(int number) => Address("sheets", number);

    internal string? ClothAddress(int number) => Address("cloth", number);

    internal string? Schedule => PlanAddress is null ? null : $"{PlanAddress}/schedule.svg";

    internal string? SheetInline(Plan plan, int number) => Inline ? SheetDrawing.Render(plan, number) : null;

    internal string? ClothInline(Plan plan, int number) => Inline ? ClothDrawing.Render(plan, number) : null;

    private string? Address(string part, int number) => PlanAddress is null
        ? null
        : string.Create(CultureInfo.InvariantCulture, $"{PlanAddress}/{part}/{number}.svg");
}
