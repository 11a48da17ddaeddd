using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Search;

/// <summary>Stocks that share a grid, with the programmes over it from coarse to fine.</summary>
internal sealed class StockClass
{
    // Cell visits: about 5 ms and 50 ms a programme. A grid that is exact at the first level has no second.
    private static readonly long[] LevelWork = [40_000_000, 400_000_000];

    private readonly GridLevel?[] _levels = new GridLevel?[LevelWork.Length];

    /// <summary>Makes the first level.</summary>
    /// <param name="members">The stocks' places in <see cref="Model.Stocks"/>.</param>
    /// <param name="area">What the grid is made for.</param>
    public StockClass(int[] members, GridArea area)
    {
        (Members, Area) = (members, area);
        _levels[0] = GridLevel.Make(area, LevelWork[0]);
    }

    /// <summary>The stocks' places in <see cref="Model.Stocks"/>.</summary>
    public int[] Members { get; }

    /// <summary>What the grid is made for.</summary>
    public GridArea Area { get; }

    /// <summary>Whether the first level already has the true sizes.</summary>
    public bool IsExact => Level(0).IsExact;

    /// <summary>How many levels there are.</summary>
    public int Levels => IsExact ? 1 : LevelWork.Length;

    /// <summary>A level; the finest there is where that is coarser than asked for.</summary>
    /// <param name="level">From 0, the coarsest.</param>
    public GridLevel Level(int level)
    {
        int at = level > 0 && IsExactAtFirst ? 0 : level;
        return _levels[at] ??= GridLevel.Make(Area, LevelWork[at]);
    }

    private bool IsExactAtFirst => _levels[0] is { IsExact: true };
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
    public static GridLevel Make(GridArea area, long work)
    {
        var down = Grid.Within(area, up: false, work);
        var upper = new ValueProgramme(down);
        return new GridLevel(upper, down.IsExact ? upper : new ValueProgramme(Grid.Within(area, up: true, work)));
    }
}
