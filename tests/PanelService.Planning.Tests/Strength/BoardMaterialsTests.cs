using PanelService.Planning.Measures;
using PanelService.Planning.Strength;

namespace PanelService.Planning.Tests.Strength;

/// <summary>Birch plywood's moduli are from memory; they are held against clear wood laid crosswise.</summary>
public sealed class BoardMaterialsTests
{
    // Yellow birch at 12 % moisture, bending: 13 900 MPa (USDA Wood Handbook, FPL-GTR-190, table 5-3a). A tenth more without the
    // shear of the test beam, and a twentieth of that across the grain, as veneer is peeled (chapter 5; both from memory).
    private const double Along = 1.1 * 13_900;
    private const double Across = 0.05 * Along;

    private static readonly (int Plies, decimal Thickness)[] Boards = [(3, 4), (5, 6.5m), (7, 9)];

    // European birch is not yellow birch, and plies are not equal once sanded: near, not alike.
    [Fact]
    public void Birch_plywood_bends_about_as_equal_plies_of_yellow_birch_do()
    {
        foreach (var (plies, thickness) in Boards)
        {
            var material = Of(thickness);
            var (along, across) = LaidCrosswise(plies);
            Assert.InRange((double)material.Elasticity / along, 1, 1.125);
            Assert.InRange((double)material.ElasticityAcross!.Value / across, 0.77, 1.27);
        }
    }

    // Where all plies are of one wood, what bending stiffness one way loses the other gains: the sum is that of the wood.
    [Fact]
    public void Moduli_along_and_across_sum_to_the_same_for_any_number_of_plies()
    {
        decimal[] sums = [.. Boards.Select(board => Of(board.Thickness)).Select(material => material.Elasticity + material.ElasticityAcross!.Value)];
        Assert.InRange(sums.Max() / sums.Min(), 1, 1.01m);
        Assert.InRange((double)sums.Average() / (Along + Across), 1, 1.1);
    }

    private static BoardMaterial Of(decimal thickness) => BoardMaterials.Of(Demo.Hardboard with { Kind = "birch plywood", Thickness = Length.FromMillimetres(thickness) });

    // A ply between a and b of the half thickness bears (b³ − a³) of the bending; the outermost run along.
    private static (double Along, double Across) LaidCrosswise(int plies)
    {
        double along = 0;
        for (int ply = plies; ply >= 1; ply -= 2)
        {
            double share = (Math.Pow(ply, 3) - Math.Pow(Math.Max(0, ply - 2), 3)) / Math.Pow(plies, 3);
            bool isAlong = (plies - ply) / 2 % 2 == 0;
            along += share * (isAlong ? Along : Across);
        }

        return (along, Along + Across - along);
    }
}
