using System.Collections.Immutable;
using PanelService.Http;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Wire.Orders;

/// <summary>What a plan says about how its order was read.</summary>
internal static class Remarks
{
    internal static ImmutableArray<Warning> On(OrderRequest order)
    {
        var remarks = ImmutableArray.CreateBuilder<Warning>();
        if (order.Units is null)
        {
            remarks.Add(new("units-assumed", $"The order names no units; its bare numbers were read as {LengthText.Abbreviation(Defaults.Units)}."));
        }

        if (order.Currency is null)
        {
            remarks.Add(new("currency-assumed", $"The order names no currency; its amounts were read as {Defaults.Currency.Code}."));
        }

        return remarks.ToImmutable();
    }
}
