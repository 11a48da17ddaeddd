using PanelService.Planning.Measures;

namespace PanelService.Validation;

/// <summary>
/// What the service takes on, so that nothing it adds up can overflow and no request can make it drown. The contract
/// sets the panels' numbers; the others are ours and lie far beyond any workshop.
/// </summary>
internal static class WireLimits
{
    internal const int Lines = 500;

    /// <summary>Spare board is filled anew for each plan that is tried: with 500 formats that took 2.9 GiB.</summary>
    internal const int Wishes = 100;
    internal const int Quantity = 100_000;

    /// <summary>Over all lines: five hundred formats of a hundred thousand each took 80 s to be refused.</summary>
    internal const int Panels = 1_000_000;

    internal const int Goods = 200;
    internal const int Liquids = 50;
    internal const int Containers = 50;
    internal const int Remnants = 1000;
    internal const int Overheads = 100;
    internal const int Shops = 50;
    internal const int PriceSteps = 20;
    internal const decimal TaxPercent = 100;
    internal const int Wear = 100;
    internal const decimal LeastLasts = 0.01m;
    internal const decimal MostLasts = 1_000_000_000;
    internal const int Stock = 1_000_000;
    internal const int Coats = 100;
    internal const int BenchCount = 1000;
    internal const decimal LeastHours = 0.01m;
    internal const decimal PressHours = 1000;

    internal const int MarkLength = 16;
    internal const int IdLength = 64;
    internal const int NameLength = 200;

    /// <summary>In minor units of the currency: 10 million of a currency with cents.</summary>
    internal const long MoneyMinor = 1_000_000_000;

    internal const decimal LeastGrams = 50;
    internal const decimal Grams = 1_000_000;

    internal const decimal LeastVolume = 0.000001m;
    internal const decimal Volume = 1_000_000;
    internal const decimal LeastArea = 0.001m;
    internal const decimal CoverageArea = 1_000_000_000;

    /// <summary>More containers of one size than this are no studio's order.</summary>
    internal const decimal ContainersBought = 1_000_000;

    /// <summary>A thousand kilometres of cloth by the millimetre; more would be more than are counted.</summary>
    internal const int ClothSteps = 1_000_000_000;

    /// <summary>The smallest panel either way: smaller ones are lost in the kerf.</summary>
    internal static readonly Length Panel = Length.FromMillimetres(1);

    /// <summary>The longest board: longer ones cannot be had, let alone sawn.</summary>
    internal static readonly Length Board = Length.FromMillimetres(10_000);

    /// <summary>A fence that goes no farther than this holds nothing.</summary>
    internal static readonly Length FenceReach = Length.FromInches(1);

    /// <summary>Nobody's car or hands take so little; smaller limits would have a sheet cut into hundreds of parts.</summary>
    internal static readonly Length Handled = Length.FromMillimetres(50);

    internal static readonly Length Side = Length.FromMillimetres(100_000);
    internal static readonly Length Thickness = Length.FromMillimetres(1_000);
    internal static readonly Length Kerf = Length.FromInches(1);
    internal static readonly Length Margin = Length.FromMillimetres(1_000);
}
