using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Search;

/// <summary>Stocks that share a grid, with the programmes over it from coarse to fine.</summary>
internal sealed class StockClass
{
    // Cell visits: about 5 ms, 50 ms and 500 ms a programme. A grid that is exact has no finer one. Of 44 orders of a
    // furniture plant, sizes in millimetres, the second level leaves 20 coarse, the third none.
    private static readonly long[] LevelWork = [16_000_000, 160_000_000, 4_000_000_000];

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

    /// <summary>No programme of a level is more work than this, in cell visits.</summary>
    /// <param name="level">From 0, the coarsest.</param>
    public static long MostWork(int level) => LevelWork[level];

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

    private GridLevel Made(int level) => _levels[level] ??= GridLevel.Make(Area, LevelWork[level], _cancellation);
}

/// <summary>The two programmes of one fineness.</summary>
/// <param name="Upper">Its values are bounds; its patterns need not fit.</param>
/// <param name="Lower">Its patterns fit; the same programme where sizes are the true ones.</param>
internal sealed record GridLevel(ValueProgramme Upper, ValueProgramme Lower)
{
    /// <summary>Whether sizes are the true ones.</summary>
    public bool IsExact => ReferenceEquals(Upper, Lower);

    /// <summary>Makes a level.</summary>
    /// <param name="area">What the grid is made for.</param>
    /// <param name="work">The most work of one programme.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    public static GridLevel Make(GridArea area, long work, CancellationToken cancellation)
    {
        var down = Grid.Within(area, up: false, work, cancellation);
        var upper = new ValueProgramme(down);
        return new GridLevel(upper, down.IsExact ? upper : new ValueProgramme(Grid.Within(area, up: true, work, cancellation)));
    }
}
