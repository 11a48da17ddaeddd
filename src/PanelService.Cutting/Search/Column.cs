namespace PanelService.Cutting.Search;

/// <summary>A pattern on a stock of the model.</summary>
/// <param name="Stock">The stock's place in the model.</param>
/// <param name="Counts">How many of each type it holds.</param>
/// <param name="Block">How they lie.</param>
internal sealed record Column(int Stock, int[] Counts, Block Block)
{
    /// <summary>What it costs less what its pieces are worth: below 0 where it improves a relaxation.</summary>
    /// <param name="price">What it costs.</param>
    /// <param name="values">Value of one of each type.</param>
    public double ReducedCost(double price, double[] values)
    {
        double reduced = price;
        for (int t = 0; t < Counts.Length; t++)
        {
            reduced -= Counts[t] * values[t];
        }

        return reduced;
    }

    /// <summary>Takes what it holds off what is still wanted; of a type that it holds too often nothing is wanted then.</summary>
    /// <param name="open">What is still wanted of each type.</param>
    /// <param name="copies">How often it is used.</param>
    public void TakeOff(int[] open, int copies)
    {
        for (int t = 0; t < open.Length; t++)
        {
            open[t] = Math.Max(0, open[t] - (copies * Counts[t]));
        }
    }
}

/// <summary>A column and how often it is used.</summary>
/// <param name="Column">The column.</param>
/// <param name="Copies">How often, 1 or more.</param>
internal readonly record struct ColumnUse(Column Column, int Copies);
