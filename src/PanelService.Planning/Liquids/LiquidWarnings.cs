using PanelService.Planning.Plans;

namespace PanelService.Planning.Liquids;

/// <summary>What to tell the painter where a liquid is missing.</summary>
internal static class LiquidWarnings
{
    /// <summary>No liquid of the order covers these lines.</summary>
    public static Warning None(bool isAdhesive, IEnumerable<LiquidDemand> demands)
    {
        string marks = string.Join(", ", demands.Select(d => d.Mark));
        return isAdhesive
            ? new Warning("adhesive-missing", $"No adhesive of this order covers {marks}; it costs nothing in this plan. Add one to have it counted.")
            : new Warning("primer-missing", $"No primer of this order covers {marks}; it costs nothing in this plan. Add one to have it counted.");
    }

    /// <summary>The liquid its lines name is not for sale and there is too little on hand.</summary>
    public static Warning Short(bool isAdhesive, LiquidUse use)
    {
        string id = isAdhesive ? "adhesive-short" : "primer-short";
        return new Warning(
            id,
            $"There is too little {use.Liquid.Name ?? use.Liquid.Id} on hand and no container to buy; what is missing costs nothing in this plan.");
    }
}
