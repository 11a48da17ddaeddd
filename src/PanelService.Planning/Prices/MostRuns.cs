using PanelService.Cutting;

namespace PanelService.Planning.Prices;

/// <summary>How many choices of prices or shops are planned.</summary>
internal static class MostRuns
{
    /// <summary>For an effort.</summary>
    public static int Of(Effort effort) => effort switch
    {
        Effort.Quick => 16,
        Effort.Steady => 40,
        _ => 120,
    };
}
