// Problem: pieces without a place are to be laid into bins that are partly full.
// Idea:    one after another, in an order drawn anew each time (large ones mostly first), each where it breaks up the slack
//          least; a place is now and then overlooked on purpose. What fits nowhere opens a bin while the price allows.
// Source:  recreate with blinks: Christiaens and Vanden Berghe, Transportation Science 54 (2020).
// Cost:    one comparison per piece and place; bins with too little slack are passed over at once.
// Not:     complete: what does not fit stays out.
using System.Runtime.CompilerServices;
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Many;

/// <summary>Lays pieces in.</summary>
internal sealed class Recreate
{
    private const double Blink = 0.02;

    // In looks at a place that does not take the piece.
    private const int PerBin = 4;
    private const int PerFit = 10;

    private readonly PieceTable _table;
    private readonly SeededRandom _random;
    private readonly int[] _order;
    private readonly double[] _keys;

    /// <summary>Makes it.</summary>
    /// <param name="table">Pieces and stocks.</param>
    /// <param name="random">Where chance comes from.</param>
    public Recreate(PieceTable table, SeededRandom random)
    {
        (_table, _random) = (table, random);
        _order = new int[table.Pieces];
        _keys = new double[table.Pieces];
    }

    /// <summary>Places looked at so far, each about a nanosecond's work.</summary>
    public long Looked { get; private set; }

    /// <summary>Lays in what is out, as far as it fits.</summary>
    /// <param name="packing">The packing.</param>
    /// <param name="below">The open bins may not cost as much as this.</param>
    public void Run(Packing packing, long below)
    {
        int count = packing.OutCount;
        SetOrder(packing, count);
        int kept = 0;
        for (int i = 0; i < count; i++)
        {
            int type = _order[i];
            if (Place(packing, type) || Open(packing, type, below))
            {
                packing.OutArea -= _table.Area[type];
            }
            else
            {
                packing.Out[kept++] = type;
            }
        }

        packing.OutCount = kept;
        if (kept == 0)
        {
            packing.OutArea = 0;
        }
    }

    private void SetOrder(Packing packing, int count)
    {
        int kind = _random.Below(8);
        for (int i = 0; i < count; i++)
        {
            int type = packing.Out[i];
            double width = _table.Width[2 * type];
            double height = _table.Height[2 * type];
            _order[i] = type;
            _keys[i] = -kind switch
            {
                0 or -1 or -2 => _table.Area[type],
                -3 => Math.Max(width, height),
                -4 => width,
                -5 => height,
                -6 => width + height,
                _ => _random.Share(),
            };
            _keys[i] = -_keys[i] * (0.8 + (0.4 * _random.Share()));
        }

        Array.Sort(_keys, _order, 0, count);
    }

    [MethodImpl(Compiling.AtOnce)]
    private bool Place(Packing packing, int type)
    {
        int bestBin = -1;
        int bestSlot = -1;
        int bestShape = -1;
        double bestLoss = double.PositiveInfinity;
        for (int b = 0; b < packing.Bins; b++)
        {
            var bin = packing.Bin(b);
            if (bin.Root < 0 || bin.Slack < _table.Area[type])
            {
                continue;
            }

            Looked += PerBin;
            for (int shape = 2 * type; shape <= (2 * type) + 1; shape++)
            {
                int width = _table.Width[shape];
                int height = _table.Height[shape];
                if (bin.MostX < width || bin.MostY < height || !_table.MayLie(bin.Stock, shape))
                {
                    continue;
                }

                Looked += bin.Slots;
                for (int slot = bin.NextFit(0, width, height); slot >= 0; slot = bin.NextFit(slot + 1, width, height))
                {
                    Looked += PerFit;
                    double loss = bin.Loss(slot, width, height);
                    if (loss < bestLoss && _random.Share() >= Blink)
                    {
                        (bestBin, bestSlot, bestShape, bestLoss) = (b, slot, shape, loss);
                    }
                }
            }
        }

        if (bestBin < 0)
        {
            return false;
        }

        packing.Insert(bestBin, bestSlot, bestShape);
        return true;
    }

    /// <summary>Opens the stock with the least price for its area, or another by chance.</summary>
    private bool Open(Packing packing, int type, long below)
    {
        int best = -1;
        double bestRatio = double.PositiveInfinity;
        for (int s = 0; s < _table.Stocks.Length; s++)
        {
            var stock = _table.Stocks[s];
            bool upright = _table.MayLie(s, 2 * type);
            if (packing.Used[s] >= stock.Limit || packing.Price > below - 1 - stock.Price || !(upright || _table.MayLie(s, (2 * type) + 1)))
            {
                continue;
            }

            double ratio = stock.Price / ((double)stock.Width * stock.Height) * (0.5 + _random.Share());
            if (ratio < bestRatio)
            {
                (best, bestRatio) = (s, ratio);
            }
        }

        if (best < 0)
        {
            return false;
        }

        int shape = _table.MayLie(best, 2 * type) ? 2 * type : (2 * type) + 1;
        if (shape == 2 * type && _table.MayLie(best, shape + 1) && _random.Below(2) == 0)
        {
            shape++;
        }

        packing.Open(best, shape);
        return true;
    }
}
