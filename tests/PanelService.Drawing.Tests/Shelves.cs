using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Tests;

/// <summary>
/// Lays pieces on a sheet in shelves, the plainest guillotine pattern: not a good plan, but a real one, with every
/// cut, kerf and leftover where the wire contract's rules say.
/// </summary>
internal sealed class Shelves(Length width, Length height, Length kerf)
{
    private readonly List<PlacedPanel> _pieces = [];
    private readonly List<Offcut> _offcuts = [];
    private readonly List<SheetCut> _cuts = [];

    public static SheetLayout Fill(BoardSupply board, Length kerf, IEnumerable<(string Mark, Length Width, Length Height)> wanted)
    {
        var shelves = new Shelves(board.Width, board.Height, kerf);
        shelves.Lay(new Queue<(string, Length, Length)>(wanted));
        return new SheetLayout
        {
            Number = 1,
            Copies = 1,
            Board = board,
            Source = Source.Bought,
            EdgeTrim = Length.Zero,
            Kerf = kerf,
            Pieces = [.. shelves._pieces],
            Offcuts = [.. shelves._offcuts],
            Cuts = [.. shelves._cuts],
            Waste = new SheetWaste(Area.Zero, Area.Zero, Area.Zero),
        };
    }

    private void Lay(Queue<(string Mark, Length Width, Length Height)> wanted)
    {
        Length y = Length.Zero;
        while (wanted.TryPeek(out (string Mark, Length Width, Length Height) first) && y + first.Height <= height)
        {
            Length shelf = first.Height;
            Cut(new Offcut(Length.Zero, y, width, height - y, false), Axis.Y, y + shelf, y + shelf < height);
            LayShelf(wanted, y, shelf);
            y = y + shelf + kerf;
        }

        Leave(new Offcut(Length.Zero, y, width, height - y, true));
    }

    private void LayShelf(Queue<(string Mark, Length Width, Length Height)> wanted, Length y, Length shelf)
    {
        Length x = Length.Zero;
        while (wanted.TryPeek(out (string Mark, Length Width, Length Height) next) && next.Height <= shelf && x + next.Width <= width)
        {
            wanted.Dequeue();
            Cut(new Offcut(x, y, width - x, shelf, false), Axis.X, x + next.Width, x + next.Width < width);
            Cut(new Offcut(x, y, next.Width, shelf, false), Axis.Y, y + next.Height, next.Height < shelf);
            _pieces.Add(new PlacedPanel(next.Mark, x, y, next.Width, next.Height, false));
            Leave(new Offcut(x, y + next.Height + kerf, next.Width, shelf - next.Height - kerf, false));
            x = x + next.Width + kerf;
        }

        Leave(new Offcut(x, y, width - x, shelf, false));
    }

    private void Cut(Offcut work, Axis axis, Length at, bool needed)
    {
        if (needed)
        {
            _cuts.Add(new SheetCut(_cuts.Count + 1, work.X, work.Y, work.Width, work.Height, axis, at, false));
        }
    }

    private void Leave(Offcut offcut)
    {
        if (offcut.Width > Length.Zero && offcut.Height > Length.Zero)
        {
            _offcuts.Add(offcut);
        }
    }
}
