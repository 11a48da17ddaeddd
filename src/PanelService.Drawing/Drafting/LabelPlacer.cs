namespace PanelService.Drawing.Drafting;

/// <summary>
/// Remembers where text stands, so that none overlaps another. Boxes are found again through a coarse grid:
/// a sheet of a thousand pieces carries several thousand texts, and asking each about each would take seconds.
/// </summary>
internal sealed class LabelPlacer(double cell)
{
    private readonly Dictionary<(int Column, int Row), List<Box>> _taken = [];

    /// <summary>Takes the place if nothing stands there yet.</summary>
    /// <returns>Whether it was free.</returns>
    public bool TryTake(Box box)
    {
        if (!IsFree(box))
        {
            return false;
        }

        Take(box);
        return true;
    }

    public bool IsFree(Box box)
    {
        foreach ((int Column, int Row) at in Cells(box))
        {
            if (_taken.TryGetValue(at, out List<Box>? there) && there.Exists(box.Overlaps))
            {
                return false;
            }
        }

        return true;
    }

    public void Take(Box box)
    {
        foreach ((int Column, int Row) at in Cells(box))
        {
            if (!_taken.TryGetValue(at, out List<Box>? there))
            {
                _taken[at] = there = [];
            }

            there.Add(box);
        }
    }

    private IEnumerable<(int Column, int Row)> Cells(Box box)
    {
        for (int column = Cell(box.X); column <= Cell(box.Right); column++)
        {
            for (int row = Cell(box.Y); row <= Cell(box.Bottom); row++)
            {
                yield return (column, row);
            }
        }
    }

    private int Cell(double at) => (int)Math.Floor(at / cell);
}
