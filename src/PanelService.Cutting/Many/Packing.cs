// Problem: searches over many single pieces try changes by the hundred thousand, and most are taken back.
// Idea:    bins, and the pieces that lie in none; the bins touched since the last Begin are copied, and copied back.
// Source:  ours.
// Cost:    a copy of the bins touched.
using System.Collections.Immutable;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Many;

/// <summary>
/// Bins with what lies in them, and the pieces that have no place. Changes can be taken back to the last
/// <see cref="Begin"/>: only the bins touched since then are copied.
/// </summary>
internal sealed class Packing
{
    private const int PerChange = 4;

    private readonly PieceTable _table;
    private readonly SlicingBin[] _bins;
    private readonly SlicingBin[] _before;
    private readonly int[] _touchedAt;
    private readonly int[] _touched;
    private readonly int[] _shapes;
    private readonly int[] _outBefore;
    private int _touchedCount;
    private int _turn;
    private int _outCountBefore;

    /// <summary>Starts with no bin open and every piece out.</summary>
    /// <param name="table">Pieces and stocks.</param>
    public Packing(PieceTable table)
    {
        _table = table;
        _bins = new SlicingBin[table.Pieces];
        _before = new SlicingBin[table.Pieces];
        _touchedAt = new int[table.Pieces];
        _touched = new int[table.Pieces];
        _shapes = new int[table.Pieces];
        _outBefore = new int[table.Pieces];
        Out = new int[table.Pieces];
        Used = new int[table.Stocks.Length];
        for (int t = 0; t < table.Types; t++)
        {
            for (int copy = 0; copy < table.Demand[t]; copy++)
            {
                Out[OutCount++] = t;
                OutArea += table.Area[t];
            }
        }
    }

    /// <summary>Types of the pieces without a place; the first <see cref="OutCount"/> entries count.</summary>
    public int[] Out { get; }

    /// <summary>How many pieces have no place.</summary>
    public int OutCount { get; set; }

    /// <summary>Their area.</summary>
    public double OutArea { get; set; }

    /// <summary>The open bins' price.</summary>
    public long Price { get; private set; }

    /// <summary>Nodes walked and copied by all changes so far, with a few for every change.</summary>
    public long Walked { get; private set; }

    /// <summary>Per stock: how many bins of it are open.</summary>
    public int[] Used { get; }

    /// <summary>Bins ever opened: indices below this may be asked for.</summary>
    public int Bins { get; private set; }

    /// <summary>Whether a bin is open; it holds something then.</summary>
    /// <param name="bin">Its index.</param>
    public bool IsOpen(int bin) => _bins[bin].Root >= 0;

    /// <summary>A bin.</summary>
    /// <param name="bin">Its index.</param>
    public SlicingBin Bin(int bin) => _bins[bin];

    /// <summary>Changes from here on can be taken back.</summary>
    public void Begin()
    {
        _turn++;
        _touchedCount = 0;
        _outCountBefore = OutCount;
        Out.AsSpan(0, OutCount).CopyTo(_outBefore);
    }

    /// <summary>Takes everything back to the last <see cref="Begin"/>.</summary>
    public void TakeBack()
    {
        for (int i = 0; i < _touchedCount; i++)
        {
            int bin = _touched[i];
            Count(bin, -1);
            (_bins[bin], _before[bin]) = (_before[bin], _bins[bin]);
            Count(bin, +1);
        }

        OutCount = _outCountBefore;
        _outBefore.AsSpan(0, OutCount).CopyTo(Out);
        OutArea = 0;
        for (int i = 0; i < OutCount; i++)
        {
            OutArea += _table.Area[Out[i]];
        }
    }

    /// <summary>Puts a piece into a place; the caller takes it off <see cref="Out"/>.</summary>
    /// <param name="bin">The bin.</param>
    /// <param name="slot">The place.</param>
    /// <param name="shape">The piece's shape.</param>
    public void Insert(int bin, int slot, int shape)
    {
        Touch(bin);
        _bins[bin].Insert(slot, shape, _table.Width[shape], _table.Height[shape]);
        Walked += PerChange + _bins[bin].Nodes;
    }

    /// <summary>Opens a bin with one piece in it; the caller takes the piece off <see cref="Out"/>.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="shape">The piece's shape; it may lie there.</param>
    public void Open(int stock, int shape)
    {
        int bin = FirstClosed();
        Touch(bin);
        _bins[bin].Open(stock, _table.Stocks[stock].Width, _table.Stocks[stock].Height);
        _bins[bin].Insert(0, shape, _table.Width[shape], _table.Height[shape]);
        Count(bin, +1);
    }

    /// <summary>Takes a node of a bin out; a bin with nothing in it is closed.</summary>
    /// <param name="bin">The bin.</param>
    /// <param name="node">The node.</param>
    /// <returns>How many pieces came out.</returns>
    public int Remove(int bin, int node)
    {
        Touch(bin);
        Count(bin, -1);
        int count = 0;
        _bins[bin].Remove(node, _shapes, ref count);
        Count(bin, +1);
        _bins[bin].Refresh();
        Walked += PerChange + _bins[bin].Nodes;
        for (int i = 0; i < count; i++)
        {
            int type = _shapes[i] >> 1;
            Out[OutCount++] = type;
            OutArea += _table.Area[type];
        }

        return count;
    }

    /// <summary>How badly the packing stands: area out, less a little for slack that hangs together.</summary>
    /// <param name="gathered">The weight of that little.</param>
    public double Badness(double gathered)
    {
        double sum = 0;
        for (int bin = 0; bin < Bins; bin++)
        {
            if (_bins[bin].Root >= 0)
            {
                sum += _bins[bin].Gathered;
            }
        }

        return (OutArea / _table.StockArea) - (gathered * sum);
    }

    /// <summary>The open bins as columns.</summary>
    public List<ColumnUse> Columns()
    {
        var uses = new List<ColumnUse>();
        for (int bin = 0; bin < Bins; bin++)
        {
            if (_bins[bin].Root >= 0)
            {
                var block = BlockOf(_bins[bin], _bins[bin].Root);
                uses.Add(new ColumnUse(new Column(_bins[bin].Stock, BlockMath.Counts(block, _table.Types), block), 1));
            }
        }

        return uses;
    }

    private static Block BlockOf(SlicingBin bin, int node)
    {
        var it = bin.Node(node);
        if (it.Kind >= 0)
        {
            return new PieceBlock(it.Kind >> 1, (it.Kind & 1) == 1);
        }

        var parts = ImmutableArray.CreateBuilder<Block>();
        for (int part = it.First; part >= 0; part = bin.Node(part).Next)
        {
            parts.Add(BlockOf(bin, part));
        }

        return new StackBlock(it.Kind == SlicingNode.StackX ? Axis.X : Axis.Y, parts.ToImmutable());
    }

    private int FirstClosed()
    {
        for (int bin = 0; bin < Bins; bin++)
        {
            if (_bins[bin].Root < 0)
            {
                return bin;
            }
        }

        (_bins[Bins], _before[Bins]) = (new SlicingBin(), new SlicingBin());
        return Bins++;
    }

    private void Touch(int bin)
    {
        if (_touchedAt[bin] != _turn)
        {
            _touchedAt[bin] = _turn;
            _touched[_touchedCount++] = bin;
            _before[bin].CopyFrom(_bins[bin]);
            Walked += PerChange;
        }
    }

    private void Count(int bin, int sign)
    {
        if (_bins[bin].Root >= 0)
        {
            Used[_bins[bin].Stock] += sign;
            Price += sign * _table.Stocks[_bins[bin].Stock].Price;
        }
    }
}
