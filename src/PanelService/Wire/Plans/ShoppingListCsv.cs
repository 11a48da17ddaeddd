using System.Globalization;
using CsvHelper;
using PanelService.Planning.Plans;
using PanelService.Wire.Reading;

namespace PanelService.Wire.Plans;

/// <summary>The shopping list as RFC 4180 has it; text that a spreadsheet would take for a formula is disarmed.</summary>
internal static class ShoppingListCsv
{
    private static readonly CsvWriterOptions Format = CsvWriterOptions.Default with { Injection = CsvInjection.Escape };

    private static readonly string[] Header = ["id", "name", "quantity", "saleUnit", "unitPrice", "cost", "currency"];

    internal static string Write(Plan plan)
    {
        var numbers = new WireNumbers(plan.Order);
        string money = "F" + plan.Order.Currency.MinorDigits.ToString(CultureInfo.InvariantCulture);
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(text, Format, leaveOpen: true))
        {
            csv.WriteRecord(Header);
            foreach (Purchase purchase in plan.Buy)
            {
                csv.WriteRecord(
                    Formulas.Disarm(purchase.Id),
                    Formulas.Disarm(purchase.Name),
                    purchase.Quantity.ToString(CultureInfo.InvariantCulture),
                    JsonPath.Camel(purchase.SaleUnit.ToString()),
                    numbers.Of(purchase.UnitPrice).ToString(money, CultureInfo.InvariantCulture),
                    numbers.Of(purchase.Cost).ToString(money, CultureInfo.InvariantCulture),
                    plan.Order.Currency.Code);
            }
        }

        return text.ToString();
    }
}
