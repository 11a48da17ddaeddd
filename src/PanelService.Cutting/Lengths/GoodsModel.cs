using System.Collections.Immutable;
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Lengths;

/// <summary>A problem made ready: equal pieces joined, goods that nothing fits left out, one grid for goods alike.</summary>
internal sealed class GoodsModel
{
    // The programme looks at lengths up to so many of the longest piece; what is longer is bounded by its threads.
    private const int PiecesAlong = 12;

    private readonly LengthProblem _problem;

    /// <summary>Prepares a problem.</summary>
    /// <param name="problem">The problem.</param>
    public GoodsModel(LengthProblem problem)
    {
        _problem = problem;
        long longest = problem.Pieces.Max(piece => Math.Max(piece.Width, piece.Height));
        Reach = Math.Max(PiecesAlong * longest, problem.Sheets.Select(sheet => sheet.Height).DefaultIfEmpty(0).Max());
        var lengths = problem.Lengths.Select(length =>
            new Stock(length.Width, Math.Min(Reach, length.Step * length.Limit), length.Price, length.Limit));
        Model = new Model(new CuttingProblem([.. problem.Sheets, .. lengths], problem.Pieces, Kerf: 0));
        int pieces = (int)Math.Min(int.MaxValue, Model.Demand.Sum(d => (long)d));
        Goods = [.. Enumerable.Range(0, Model.Stocks.Length).Select(s => GoodOf(s, pieces))];
    }

    /// <summary>Pieces and goods as the engine sees them: of each length the longest that the programme looks at.</summary>
    public Model Model { get; }

    /// <summary>The goods, in the order of the model's stocks.</summary>
    public ImmutableArray<Good> Goods { get; }

    /// <summary>The longest length that the programme looks at.</summary>
    public long Reach { get; }

    /// <summary>How many pieces are wanted in all.</summary>
    public long Pieces => Model.Demand.Sum(d => (long)d);

    /// <summary>Every single piece in the sizes that were given, with its type: types may have width and length swapped.</summary>
    public IEnumerable<(int Type, long Width, long Length)> Given => Enumerable.Range(0, _problem.Pieces.Length)
        .SelectMany(p => Enumerable.Repeat((Model.TypeOf(p), _problem.Pieces[p].Width, _problem.Pieces[p].Height), _problem.Pieces[p].Demand));

    /// <summary>The grid of a good.</summary>
    /// <param name="good">Its index.</param>
    public GridLevel LevelOf(int good) => Model.Classes[Model.ClassOf[good]].Level(0);

    /// <summary>How many whole steps a pattern takes of what is sold by length; 0 of a sheet.</summary>
    /// <param name="use">The pattern, in terms of the problem.</param>
    public int StepsOf(PatternUse use)
    {
        if (use.Stock < _problem.Sheets.Length)
        {
            return 0;
        }

        long step = _problem.Lengths[use.Stock - _problem.Sheets.Length].Step;
        ImmutableArray<(long Width, long Height)> sizes = [.. _problem.Pieces.Select(piece => (piece.Width, piece.Height))];
        return (int)((BlockMath.Size(use.Block, sizes, kerf: 0).Height + step - 1) / step);
    }

    private Good GoodOf(int s, int pieces)
    {
        int stock = Model.Stocks[s];
        if (stock >= _problem.Sheets.Length)
        {
            var length = _problem.Lengths[stock - _problem.Sheets.Length];
            long shortest = Shape.Of(Model.Types, [.. Model.Types.Select(type => type.On[stock])], kerf: 0)
                .Where(shape => shape.Width <= length.Width).Min(shape => shape.Height);
            int least = (int)Math.Min(length.Limit, (shortest + length.Step - 1) / length.Step);
            return new Good(s, ByLength: true, length.Width, length.Step, length.Price, least, length.Limit, length.Paid);
        }

        var sheet = _problem.Sheets[stock];
        return new Good(s, ByLength: false, sheet.Width, sheet.Height, sheet.Price, Least: 1, Math.Min(pieces, sheet.Limit ?? pieces));
    }
}
