namespace PanelService.Checking.Reading;

/// <summary>What saw, person and car can handle, in steps and grams; null: no limit.</summary>
internal sealed record HandlingFacts(
    long? FenceReach, decimal? HeaviestGrams, (long A, long B)? Largest, (long A, long B)? Carry, long SupplierKerf);
