namespace PanelService.Cutting.Lengths;

/// <summary>Something to cut from, seen alike whether it is a sheet or sold by length.</summary>
/// <param name="Stock">Its place in <see cref="Search.Model.Stocks"/>.</param>
/// <param name="ByLength">Whether several of it are one longer piece.</param>
/// <param name="Width">Usable width.</param>
/// <param name="Extent">A sheet's length, or that of one step.</param>
/// <param name="Price">Price of one.</param>
/// <param name="Least">Fewer hold nothing; 1 for a sheet.</param>
/// <param name="Most">At most so many are there, or of any use.</param>
/// <param name="Paid">The first so many cost nothing; 0 for a sheet.</param>
internal sealed record Good(int Stock, bool ByLength, long Width, long Extent, long Price, int Least, int Most, int Paid = 0)
{
    /// <summary>What so many cost.</summary>
    /// <param name="count">How many.</param>
    public long PriceOf(int count) => Math.Max(0, count - Paid) * Price;

    /// <summary>The length of the rectangle that so many make: steps are one piece, sheets are not.</summary>
    /// <param name="count">How many.</param>
    public long LengthOf(int count) => ByLength ? Extent * count : Extent;

    /// <summary>How many rectangles so many make.</summary>
    /// <param name="count">How many.</param>
    public int Rectangles(int count) => ByLength ? Math.Min(1, count) : count;
}
