using System.Collections.Immutable;
using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Search;

/// <summary>
/// A problem made ready for the search: equal pieces are one type, stocks that nothing fits are left out, and stocks
/// on which everything may lie alike share one grid.
/// </summary>
internal sealed class Model
{
    private readonly CuttingProblem _problem;
    private readonly int[] _typeOf;
    private readonly bool[] _swapped;

    /// <summary>Prepares a problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="cancellation">Ends the making of a grid half-way, with an exception: grids are made when first asked for.</param>
    public Model(CuttingProblem problem, CancellationToken cancellation = default)
    {
        _problem = problem;
        _typeOf = new int[problem.Pieces.Length];
        _swapped = new bool[problem.Pieces.Length];
        Types = GroupPieces();
        Kerf = problem.Kerf;
        bool limits = problem.FenceReach is { } reach
            && problem.Stocks.Any(stock => Math.Max(stock.Width, stock.Height) + Kerf >= 2 * (reach + Kerf));
        MostNear = limits ? problem.FenceReach!.Value + Kerf : long.MaxValue;
        Stocks = [.. Enumerable.Range(0, problem.Stocks.Length)
            .Where(s => problem.Stocks[s].Limit != 0 && Types.Any(type => Fits(type, s)))];
        Demand = [.. Types.Select(t => t.Demand)];
        Sizes = [.. Types.Select(t => (t.Width, t.Height))];
        (Classes, ClassOf) = GroupStocks(cancellation);
    }

    /// <summary>The distinct pieces that fit some stock; <see cref="Piece.On"/> is by the problem's stocks.</summary>
    public ImmutableArray<Piece> Types { get; }

    /// <summary>Demand per type.</summary>
    public int[] Demand { get; }

    /// <summary>Size as cut per type.</summary>
    public ImmutableArray<(long Width, long Height)> Sizes { get; }

    /// <summary>The kerf.</summary>
    public long Kerf { get; }

    /// <summary>The widest that the narrower part of a cut may be, kerf included; <see cref="long.MaxValue"/>: no cut is too wide.</summary>
    public long MostNear { get; }

    /// <summary>Whether the saw's fence limits what can be cut: what does not know that is left out.</summary>
    public bool IsLimited => MostNear != long.MaxValue;

    /// <summary>The problem's stocks that serve anything, as indices of the problem.</summary>
    public int[] Stocks { get; }

    /// <summary>The grids.</summary>
    public StockClass[] Classes { get; }

    /// <summary>Whether some stock's points are too many for an exact programme, so that its grids are coarse.</summary>
    public bool HasOddSizes => Classes.Any(c => !c.IsExact);

    /// <summary>Per entry of <see cref="Stocks"/>: its class.</summary>
    public int[] ClassOf { get; }

    /// <summary>A stock of the problem.</summary>
    /// <param name="index">Its place in <see cref="Stocks"/>.</param>
    public Stock Stock(int index) => _problem.Stocks[Stocks[index]];

    /// <summary>A type's area, kerf included.</summary>
    /// <param name="type">The type.</param>
    public double PieceArea(int type) => (double)(Sizes[type].Width + Kerf) * (Sizes[type].Height + Kerf);

    /// <summary>A stock's usable area, one kerf included each way.</summary>
    /// <param name="index">Its place in <see cref="Stocks"/>.</param>
    public double StockArea(int index) => (double)(Stock(index).Width + Kerf) * (Stock(index).Height + Kerf);

    /// <summary>Whether the saw can make every cut of a block: of a stack no more than one part is wider than the fence reaches.</summary>
    /// <param name="block">In terms of this model.</param>
    public bool CanCut(Block block) => !IsLimited || BlockMath.IsWithin(block, Sizes, Kerf, MostNear - Kerf);

    /// <summary>Puts the original pieces back in the place of the types.</summary>
    /// <param name="found">Patterns in terms of this model, with exactly the demand less what is missing.</param>
    public (ImmutableArray<PatternUse> Patterns, ImmutableArray<int> Missing) Translate(IEnumerable<PatternUse> found)
    {
        int[] open = [.. _problem.Pieces.Select(p => p.Demand)];
        var uses = new List<PatternUse>();
        foreach (var use in found)
        {
            int[] counts = BlockMath.Counts(use.Block, Types.Length);
            for (int copies = use.Copies; copies > 0;)
            {
                int alike = Alike(counts, open, copies);
                Add(uses, use with { Stock = Stocks[use.Stock], Block = NameTypes(use.Block, open, alike), Copies = alike });
                copies -= alike;
            }
        }

        return ([.. uses], [.. open]);
    }

    /// <summary>The type of a piece of the problem; −1 where it fits nothing.</summary>
    /// <param name="piece">The piece.</param>
    public int TypeOf(int piece) => _typeOf[piece];

    /// <summary>A block of the problem's pieces as a block of types.</summary>
    /// <param name="block">The block; every piece in it fits some stock.</param>
    public Block ToTypes(Block block) => block switch
    {
        StackBlock stack => stack with { Parts = [.. stack.Parts.Select(ToTypes)] },
        PieceBlock piece => new PieceBlock(_typeOf[piece.Piece], piece.Turned != _swapped[piece.Piece]),
        _ => throw new InvalidOperationException("Blocks are a closed family."),
    };

    /// <summary>Per piece of the problem what is known of its type; 0 where the piece fits nothing.</summary>
    /// <param name="perType">What is known.</param>
    public ImmutableArray<long> ByPiece(long[] perType) => [.. _typeOf.Select(type => type < 0 ? 0 : perType[type])];

    /// <summary>Per stock of the problem what is known of it; 0 where it is of no use.</summary>
    /// <param name="perStock">What is known, per entry of <see cref="Stocks"/>.</param>
    public ImmutableArray<T> ByStock<T>(T[] perStock)
        where T : struct
    {
        var all = new T[_problem.Stocks.Length];
        for (int s = 0; s < Stocks.Length; s++)
        {
            all[Stocks[s]] = perStock[s];
        }

        return [.. all];
    }

    private static void Add(List<PatternUse> uses, PatternUse use)
    {
        if (uses.Count > 0 && uses[^1] == use with { Copies = uses[^1].Copies })
        {
            uses[^1] = uses[^1] with { Copies = uses[^1].Copies + use.Copies };
        }
        else
        {
            uses.Add(use);
        }
    }

    /// <summary>How many copies can be named alike: as long as the first open piece of every type lasts.</summary>
    private int Alike(int[] counts, int[] open, int copies)
    {
        int alike = copies;
        for (int type = 0; type < counts.Length; type++)
        {
            if (counts[type] > 0)
            {
                alike = Math.Min(alike, open[FirstOpen(type, open)] / counts[type]);
            }
        }

        return Math.Max(1, alike);
    }

    private int FirstOpen(int type, int[] open)
    {
        int piece = Array.FindIndex(_typeOf, t => t == type);
        while (_typeOf[piece] != type || open[piece] == 0)
        {
            piece++;
        }

        return piece;
    }

    private bool Fits(Piece piece, int stock)
    {
        var (width, height, _, _) = _problem.Stocks[stock];
        return (piece.On[stock].HasFlag(Turning.Upright) && piece.Width <= width && piece.Height <= height)
            || (piece.On[stock].HasFlag(Turning.Turned) && piece.Height <= width && piece.Width <= height);
    }

    private ImmutableArray<Piece> GroupPieces()
    {
        var types = ImmutableArray.CreateBuilder<Piece>();
        var known = new Dictionary<(long, long, string), int>();
        for (int i = 0; i < _problem.Pieces.Length; i++)
        {
            var piece = _problem.Pieces[i];
            _typeOf[i] = -1;
            if (!Enumerable.Range(0, _problem.Stocks.Length).Any(s => _problem.Stocks[s].Limit != 0 && Fits(piece, s)))
            {
                continue;
            }

            // Where it may lie either way wherever it may lie at all, 8 × 10 and 10 × 8 are the same piece.
            bool free = piece.On.All(t => t is Turning.Either or Turning.None);
            _swapped[i] = free && piece.Width > piece.Height;
            var (width, height) = _swapped[i] ? (piece.Height, piece.Width) : (piece.Width, piece.Height);
            var key = (width, height, string.Concat(piece.On.Select(t => (char)('0' + (int)t))));
            if (known.TryGetValue(key, out int type))
            {
                types[type] = types[type] with { Demand = checked(types[type].Demand + piece.Demand) };
            }
            else
            {
                type = known[key] = types.Count;
                types.Add(piece with { Width = width, Height = height });
            }

            _typeOf[i] = type;
        }

        return types.ToImmutable();
    }

    private (StockClass[] Classes, int[] ClassOf) GroupStocks(CancellationToken cancellation)
    {
        var groups = Enumerable.Range(0, Stocks.Length)
            .GroupBy(s => string.Concat(Types.Select(t => (char)('0' + (int)t.On[Stocks[s]]))), StringComparer.Ordinal)
            .ToArray();
        int[] classOf = new int[Stocks.Length];
        var classes = new StockClass[groups.Length];
        for (int c = 0; c < groups.Length; c++)
        {
            int[] members = [.. groups[c]];
            foreach (int member in members)
            {
                classOf[member] = c;
            }

            Turning[] turning = [.. Types.Select(t => t.On[Stocks[members[0]]])];
            var area = new GridArea(Types, turning, members.Max(s => Stock(s).Width), members.Max(s => Stock(s).Height), Kerf)
            {
                MostNear = MostNear,
            };
            classes[c] = new StockClass(members, area, cancellation);
        }

        return (classes, classOf);
    }

    /// <summary>The block with each type replaced by a piece of it that is still wanted, for some copies of it.</summary>
    private Block NameTypes(Block block, int[] open, int copies) => block switch
    {
        StackBlock stack => stack with { Parts = [.. stack.Parts.Select(part => NameTypes(part, open, copies))] },
        PieceBlock piece => NamePiece(piece, open, copies),
        _ => throw new InvalidOperationException("Blocks are a closed family."),
    };

    private PieceBlock NamePiece(PieceBlock block, int[] open, int copies)
    {
        int piece = FirstOpen(block.Piece, open);
        open[piece] -= copies;
        return new PieceBlock(piece, block.Turned != _swapped[piece]);
    }
}
