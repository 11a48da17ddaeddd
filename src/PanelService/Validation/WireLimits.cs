using PanelService.Planning.Measures;

namespace PanelService.Validation;

/// <summary>
/// What the service takes on, so that nothing it adds up can overflow and no request can make it drown. The contract
/// sets the panels' numbers; the others are ours and lie far beyond any workshop.
/// </summary>
internal static class WireLimits
{
    internal const int Lines = 500;
    internal const int Quantity = 100_000;
    internal const int Goods = 200;
    internal const int Liquids = 50;
    internal const int Containers = 50;
    internal const int Remnants = 1000;
    internal const int Overheads = 100;
    internal const int Stock = 1_000_000;
    internal const int Coats = 100;
    internal const int BenchCount = 1000;
    internal const decimal PressHours = 1000;

    internal const int MarkLength = 16;
    internal const int IdLength = 64;
    internal const int NameLength = 200;

    /// <summary>In minor units of the currency: 10 million of a currency with cents.</summary>
    internal const long MoneyMinor = 1_000_000_000;

    internal const decimal Volume = 1_000_000;
    internal const decimal CoverageArea = 1_000_000_000;

    internal static readonly Length Side = Length.FromMillimetres(100_000);
    internal static readonly Length Thickness = Length.FromMillimetres(1_000);
    internal static readonly Length Kerf = Length.FromInches(1);
    internal static readonly Length Margin = Length.FromMillimetres(1_000);
}
