using System.Globalization;

namespace PanelService.Store.Stock;

/// <summary>Ids short enough to write on a piece in pencil: a letter for what it is, and a number.</summary>
internal static class PencilLetter
{
    internal static string Of(StockSort sort) => sort switch
    {
        StockSort.Board or StockSort.Offcut => "B",
        StockSort.Cloth or StockSort.Remnant => "C",
        StockSort.Adhesive or StockSort.Primer => "L",
        StockSort.Strip => "S",
        StockSort.Panel => "P",
        _ => throw new ArgumentOutOfRangeException(nameof(sort)),
    };

    internal static string Write(string letter, int number) => string.Create(CultureInfo.InvariantCulture, $"{letter}{number}");
}
