using System.Collections.Immutable;
using System.Globalization;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Drafting;

/// <summary>The key's lines: "12 of 8 × 10", and the cut size where it differs.</summary>
internal static class Keys
{
    public static ImmutableArray<DraftKey> Of(Plan plan, ImmutableArray<PlacedPanel> pieces, LengthUnit unit)
    {
        Dictionary<string, PanelResult> panels = plan.Panels.ToDictionary(panel => panel.Line.Mark);
        return
        [
            .. pieces
                .GroupBy(piece => piece.Mark)
                .OrderBy(group => Order(plan, group.Key))
                .Select(group => new DraftKey(Lettering.Clean(group.Key), Text(group, panels.GetValueOrDefault(group.Key), unit))),
        ];
    }

    private static int Order(Plan plan, string mark) =>
        plan.Panels.IndexOf(plan.Panels.FirstOrDefault(panel => panel.Line.Mark == mark)!);

    private static string Text(IGrouping<string, PlacedPanel> group, PanelResult? panel, LengthUnit unit)
    {
        string count = group.Count().ToString(CultureInfo.InvariantCulture);
        PlacedPanel first = group.First();
        if (panel is null)
        {
            return $"{count} of {Wording.Size(first.Width, first.Height, unit)}";
        }

        string nominal = $"{count} of {Wording.Size(panel.Line.Width, panel.Line.Height, unit)}";
        (Length width, Length height) = first.Turned ? (first.Height, first.Width) : (first.Width, first.Height);
        return width == panel.Line.Width && height == panel.Line.Height
            ? nominal
            : $"{nominal}, cut {Wording.Size(width, height, unit)}";
    }
}
