using PanelService.Cutting.Exact;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Tests.Exact;

/// <summary>Counts of one sheet that the large formats fill to the last place, and small ones for what lies beside them.</summary>
public sealed class CountsDecisionTests
{
    // Eighths of an inch, with how many squares of 12 in each takes: a sheet of 48 x 96 in has room for three by seven.
    private static readonly (int Width, int Height, int Demand, int Squares)[] Formats =
    [
        (192, 288, 14, 6), (96, 128, 9, 1), (96, 96, 17, 1), (96, 192, 8, 2),
        (40, 56, 13, 0), (88, 112, 10, 0), (48, 64, 19, 0), (64, 128, 2, 0), (40, 40, 13, 0), (64, 80, 14, 0), (80, 80, 29, 0),
    ];

    [Fact]
    public void Values_known_from_elsewhere_are_used_where_they_are_tighter()
    {
        var own = Look(sheets: 6, known: false);
        var known = Look(sheets: 6, known: true);

        Assert.True(Share(own, 6) > 0.05, $"own values leave {Share(own, 6)}: the order is no test of this any more");
        Assert.InRange(Share(known, 6), 0, 1e-6);
    }

    [Fact]
    public void They_forbid_counts_that_own_values_leave_open()
    {
        Assert.False(Look(sheets: 5, known: false).Impossible);
        Assert.True(Look(sheets: 5, known: true).Impossible);
    }

    private static CountsAnswer Look(int sheets, bool known)
    {
        var model = Order();
        var work = new WorkMeter(3_000_000, CancellationToken.None);
        double[] squares = [.. model.Types.Select(type => (double)Formats.Single(f => (f.Width, f.Height) == (type.Width, type.Height)).Squares)];
        DualVector[] vectors = known ? [new Pricing(model, work).Evaluate(squares)] : [];
        return new CountsDecision(model, new ColumnPool(), vectors, work).Look([sheets], briefly: true);
    }

    private static Model Order() => new(new CuttingProblem(
        [new Stock(384, 768, 1980, null)],
        [.. Formats.Select(f => new Piece(f.Width, f.Height, f.Demand, [Turning.Either]))],
        Kerf: 1));

    private static double Share(CountsAnswer answer, int sheets)
    {
        var vector = answer.Tight!;
        int[] demand = Order().Demand;
        return (double)vector.Spare(demand, [sheets]) / (double)vector.Covered(demand);
    }
}
