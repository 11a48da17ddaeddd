namespace PanelService.Cutting.Search;

/// <summary>The exact programmes of all grids, filled for one set of values: best value and pattern of every stock.</summary>
internal sealed class Pricing
{
    private const double ValueRoom = int.MaxValue / 2;

    private readonly Model _model;
    private readonly WorkMeter _work;

    /// <summary>Makes it.</summary>
    /// <param name="model">The model.</param>
    /// <param name="work">Where its work is counted.</param>
    public Pricing(Model model, WorkMeter work)
    {
        _model = model;
        _work = work;
    }

    /// <summary>Rounds duals down to whole values and finds the best pattern value of every stock.</summary>
    /// <param name="duals">Values per type in price units, 0 or more.</param>
    public DualVector Evaluate(double[] duals)
    {
        int shift = ShiftFor(duals);
        double scale = Math.ScaleB(1, shift);
        int[] values = [.. duals.Select(d => (int)Math.Floor(d * scale))];
        long[] best = new long[_model.Stocks.Length];
        foreach (var stockClass in _model.Classes)
        {
            stockClass.Programme.Fill(values);
            _work.Spend(50 + (stockClass.Grid.Work / 4000));
            foreach (int s in stockClass.Members)
            {
                best[s] = stockClass.Programme.Value(_model.Stock(s).Width, _model.Stock(s).Height);
            }
        }

        return new DualVector(values, shift, best);
    }

    /// <summary>A best pattern of a stock under the values last evaluated; null where it is worth nothing.</summary>
    /// <param name="stock">The stock.</param>
    public Column? Best(int stock)
    {
        var block = _model.Classes[_model.ClassOf[stock]].Programme
            .Pattern(_model.Stock(stock).Width, _model.Stock(stock).Height);
        return block is null ? null : new Column(stock, Patterns.BlockMath.Counts(block, _model.Types.Length), block);
    }

    /// <summary>The largest power of two that no pattern's value can outgrow the programme with.</summary>
    private int ShiftFor(double[] duals)
    {
        double density = 0;
        for (int i = 0; i < duals.Length; i++)
        {
            var (width, height) = _model.Sizes[i];
            density = Math.Max(density, duals[i] / ((double)(width + _model.Kerf) * (height + _model.Kerf)));
        }

        double area = Enumerable.Range(0, _model.Stocks.Length).Max(s =>
            (double)(_model.Stock(s).Width + _model.Kerf) * (_model.Stock(s).Height + _model.Kerf));

        // The grid's corner may lie beyond every stock (a wide and a high one share it).
        foreach (var stockClass in _model.Classes)
        {
            area = Math.Max(area, (double)stockClass.Grid.X.Points[^1] * stockClass.Grid.Y.Points[^1]);
        }

        double worth = density * area;
        return worth <= 0 ? 0 : Math.Clamp((int)Math.Floor(Math.Log2(ValueRoom / worth)), -30, 40);
    }
}
