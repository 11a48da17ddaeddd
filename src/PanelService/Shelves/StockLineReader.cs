using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using FluentValidation;
using PanelService.Planning.Measures;
using PanelService.Store.Stock;
using PanelService.Store.Supplies;
using PanelService.Validation;
using PanelService.Wire.Reading;
using PanelService.Wire.Studio;

namespace PanelService.Shelves;

/// <summary>Lines of a table as heaps that enter the stock; faults are told with their line.</summary>
internal sealed class StockLineReader(IValidator<StockRequest> rules, ImmutableArray<Supply> supplies, OrderMeasures usual, Faults faults)
{
    private static readonly string[] AnswerFields = ["addedAt", "version"];

    /// <summary>The heap; null where something is wrong.</summary>
    internal StockDraft? Read(long line, JsonObject record)
    {
        var found = new Faults();
        StockDraft? draft = Read(record, found);
        foreach ((string field, string[] texts) in found.ToDictionary())
        {
            faults.Add($"{CsvTable.At(line)}, {field}", string.Join(" ", texts));
        }

        return found.Any ? null : draft;
    }

    private StockDraft? Read(JsonObject record, Faults found)
    {
        foreach (string field in AnswerFields)
        {
            record.Remove(field);
        }

        if (record.Remove("id"))
        {
            found.Add("id", "An id names a piece that is in stock already, and a table adds pieces: leave it empty.");
        }

        LengthUnit units = Enum.TryParse(record["units"]?.ToString(), ignoreCase: true, out LengthUnit said) ? said : usual.Units;
        using JsonDocument document = JsonDocument.Parse(record.ToJsonString());
        StockRequest? request = new JsonBinder(units, found).Read<StockRequest>(document.RootElement);
        if (request is null)
        {
            return null;
        }

        var measures = new OrderMeasures(units, Currencies.Find(request.Currency ?? "") ?? usual.Currency);
        foreach (FluentValidation.Results.ValidationFailure failure in rules.Validate(measures.ContextFor(request)).Errors)
        {
            string path = JsonPath.FromProperty(failure.PropertyName);
            if (!found.At(path))
            {
                found.Add(path, failure.ErrorMessage);
            }
        }

        return found.Any ? null : StockReader.Read(request, measures, supplies, found);
    }
}
