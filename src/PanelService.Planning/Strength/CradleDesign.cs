using PanelService.Planning.Boards;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Strength;

/// <summary>
/// How a panel is braced: rails along its long sides, a bar at each end, and as many bars between as keep each bay, taken
/// as a plate on its four edges, within the allowed sag under its own weight and a hand. A bay bears more than that: it
/// runs on over the bars.
/// </summary>
internal static class CradleDesign
{
    private const int MostBars = 200;

    /// <summary>The cradle of a line, the same whichever board it is cut from: the weakest that may serve it decides.</summary>
    /// <param name="order">The order.</param>
    /// <param name="line">A line.</param>
    /// <returns>The cradle; null where the panel is too small for one.</returns>
    public static Cradle? Of(Order order, PanelLine line)
    {
        var size = new CutSize(line.Width - order.Saw.Undersize, line.Height - order.Saw.Undersize);
        return order.Boards
            .Where(board => BoardFit.IsOfKind(line, board) && BoardFit.IsThickEnough(line, board))
            .DistinctBy(LoadedPlate.FactsOf)
            .Select(board => Of(size, board, order.Strength))
            .OfType<Cradle>()
            .MaxBy(cradle => cradle.Bars);
    }

    /// <summary>The cradle of a panel out of one board; null where the panel is too small for one.</summary>
    public static Cradle? Of(CutSize size, BoardSupply board, StrengthSettings settings)
    {
        var (rail, bar) = Lengths(size, settings);
        if (bar <= Length.Zero)
        {
            return null;
        }

        // The more bars, the smaller the bays, and the less they sag: the fewest that hold, by halving.
        int bars = 2;
        int most = MostThatFit(rail, settings);
        while (bars < most)
        {
            int middle = bars + ((most - bars) / 2);
            (bars, most) = Holds((rail, bar), middle, size.Height >= size.Width, board, settings) ? (bars, middle) : (middle + 1, most);
        }

        return new Cradle(rail, bar, bars);
    }

    // Two at least; more only where their bays are as wide as a strip.
    private static int MostThatFit(Length rail, StrengthSettings settings)
    {
        int bars = 2;
        while (bars < MostBars && BayLength(rail, bars + 1, settings) >= settings.StripWidth)
        {
            bars++;
        }

        return bars;
    }

    private static (Length Rail, Length Bar) Lengths(CutSize size, StrengthSettings settings)
    {
        var inset = settings.CradleInset * 2;
        return (
            Length.Max(size.Width, size.Height) - inset,
            Length.Min(size.Width, size.Height) - inset - (settings.StripWidth * 2));
    }

    private static Length BayLength(Length rail, int bars, StrengthSettings settings) =>
        Length.FromSteps((rail.Steps - (settings.StripWidth.Steps * bars)) / (bars - 1));

    // Bays lie one after the other along the panel's longer side.
    private static bool Holds((Length Rail, Length Bar) lengths, int bars, bool isTall, BoardSupply board, StrengthSettings settings)
    {
        var (rail, bar) = lengths;
        var bay = BayLength(rail, bars, settings);
        if (bay <= Length.Zero)
        {
            return true;
        }

        var plate = LoadedPlate.Of(isTall ? (Metres(bar), Metres(bay)) : (Metres(bay), Metres(bar)), board, covering: 0, settings);
        return plate.SagUnderHand(Metres(board.Thickness)) <= plate.Short / (double)settings.Limit;
    }

    private static double Metres(Length length) => (double)length.Millimetres / 1000;
}
