using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Search;

/// <summary>Stocks that share a grid, with the programmes over it from coarse to fine.</summary>
internal sealed class StockClass
{
    // Cell visits: about 5 ms, 50 ms, 150 ms and 500 ms a programme. A grid that is exact has no finer one. Of 44 orders of a
    // furniture plant, sizes in millimetres, the second level leaves 20 coarse, the last none.
    private static readonly long[] LevelWork = [16_000_000, 160_000_000, 800_000_000, 4_000_000_000];

    // Of a coarse grid whose table is narrow: about 2 ms, 25 ms, 120 ms and 600 ms. The last two are for bounds above all
    // (CoarseBound): patterns that fit gain little by them.
    private static readonly long[] NarrowWork = [32_000_000, 500_000_000, 3_000_000_000, 12_000_000_000];

    private readonly GridLevel?[] _levels = new GridLevel?[LevelWork.Length];
    private readonly CancellationToken _cancellation;

    /// <summary>Makes it; a level is made when it is first asked for.</summary>
    /// <param name="members">The stocks' places in <see cref="Model.Stocks"/>.</param>
    /// <param name="area">What the grid is made for.</param>
    /// <param name="cancellation">Ends the making of a level half-way, with an exception.</param>
    public StockClass(int[] members, GridArea area, CancellationToken cancellation) =>
        (Members, Area, _cancellation) = (members, area, cancellation);

    /// <summary>The stocks' places in <see cref="Model.Stocks"/>.</summary>
    public int[] Members { get; }

    /// <summary>What the grid is made for.</summary>
    public GridArea Area { get; }

    /// <summary>Whether the first level already has the true sizes.</summary>
    public bool IsExact => Level(0).IsExact;

    /// <summary>Whether there is a finer level than one. The levels above the second are dear: see <see cref="Level"/>.</summary>
    /// <param name="level">From 0, the coarsest.</param>
    public bool HasFiner(int level) => level + 1 < LevelWork.Length && !Level(level).IsExact;

    /// <summary>A level; the coarsest exact one where a finer one than that is asked for.</summary>
    /// <param name="level">From 0, the coarsest.</param>
    public GridLevel Level(int level)
    {
        int at = 0;
        while (at < level && !Made(at).IsExact)
        {
            at++;
        }

        return Made(at);
    }

    private GridLevel Made(int level) => _levels[level] ??= GridLevel.Make(Area, LevelWork[level], NarrowWork[level], _cancellation);
}

/// <summary>The two programmes of one fineness, each made when it is first asked for.</summary>
internal sealed class GridLevel
{
    private readonly Func<ValueProgramme> _makeUpper;
    private readonly Func<ValueProgramme> _makeLower;
    private ValueProgramme? _upper;
    private ValueProgramme? _lower;

    private GridLevel(Func<ValueProgramme> upper, Func<ValueProgramme> lower, long work) => (_makeUpper, _makeLower, Work) = (upper, lower, work);

    /// <summary>Its values are bounds; its patterns need not fit.</summary>
    public ValueProgramme Upper => _upper ??= _makeUpper();

    /// <summary>Its patterns fit; the same programme where sizes are the true ones.</summary>
    public ValueProgramme Lower => _lower ??= _makeLower();

    /// <summary>Whether sizes are the true ones.</summary>
    public bool IsExact { get; private init; }

    /// <summary>Whether the tables of a coarse grid are narrow: not where pieces are so small that their values would be told roughly.</summary>
    public bool IsNarrow { get; private init; }

    /// <summary>No fill of a programme is more work than this, in cell visits.</summary>
    public long Work { get; }

    /// <summary>Makes a level.</summary>
    /// <param name="area">What the grid is made for.</param>
    /// <param name="work">The most work of one programme of true sizes.</param>
    /// <param name="narrowWork">The most work of one of a coarse grid with narrow tables.</param>
    /// <param name="cancellation">Ends the making of a programme half-way, with an exception.</param>
    public static GridLevel Make(GridArea area, long work, long narrowWork, CancellationToken cancellation)
    {
        if (Grid.ExactWithin(area, work, cancellation) is { } exact)
        {
            var programme = new ValueProgramme(exact);
            return new GridLevel(() => programme, () => programme, exact.Work) { IsExact = true };
        }

        bool narrow = area.MostPieces <= NarrowTable.MostPieces;
        long coarse = narrow ? narrowWork : work;
        return new GridLevel(
            () => new ValueProgramme(Grid.Bounding(area, coarse, cancellation), narrow),
            () => new ValueProgramme(Grid.Fitting(area, coarse, cancellation), narrow),
            narrow ? coarse / ValueProgramme.NarrowShare : coarse)
        {
            IsNarrow = narrow,
        };
    }
}
