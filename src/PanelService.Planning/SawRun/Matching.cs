using System.Collections.Immutable;
using PanelService.Planning.Plans;

namespace PanelService.Planning.SawRun;

/// <summary>Panels of one line match when all of them get a size at one setting, between fence and blade.</summary>
internal static class Matching
{
    /// <summary>The lines and sizes where they do not.</summary>
    /// <param name="panels">What gave every panel its sizes.</param>
    /// <param name="settingOf">Per step: its setting.</param>
    public static ImmutableArray<UnmatchedSize> Unmatched(IEnumerable<SizedPanel> panels, Func<int, int> settingOf) =>
    [
        .. panels
            .GroupBy(panel => (panel.Mark, panel.Side))
            .OrderBy(group => group.Key.Mark, StringComparer.Ordinal).ThenBy(group => group.Key.Side)
            .Select(group => Of([.. group], settingOf))
            .Where(one => one.Otherwise > 0 && one.Otherwise + one.AtOneSetting > 1),
    ];

    private static UnmatchedSize Of(ImmutableArray<SizedPanel> panels, Func<int, int> settingOf)
    {
        int all = panels.Sum(panel => panel.Copies);
        int most = panels.Where(panel => panel.By.AtFence)
            .GroupBy(panel => settingOf(panel.By.Step))
            .Select(group => group.Sum(panel => panel.Copies))
            .DefaultIfEmpty(0).Max();
        bool asBought = panels.All(panel => panel.By == SizedBy.Sheet);
        return new UnmatchedSize(panels[0].Mark, panels[0].Side, panels[0].Size, asBought ? all : most, asBought ? 0 : all - most);
    }
}
