using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Tests.Days;

/// <summary>Margins that differ by side, shrinkage, and liquids by coats, faces, thinning and loss.</summary>
public sealed class KeeperTests
{
    private static readonly Order _cloth = Demo.OrderOf(Demo.Line("A", 8, 10, 2) with { Surface = Surface.Cloth });

    // 8 in and 1 and 2 in of margin, 10 in and 1/2 and 3 in; then 4 % more across and 2 % more along.
    [Theory]
    [InlineData(0, 0, 11, 13.5)]
    [InlineData(4, 2, 11.44, 13.77)]
    public void Cloth_measures_its_margins_side_by_side_and_its_shrinkage(double across, double along, double width, double height)
    {
        var order = _cloth with
        {
            Bench = new BenchSettings
            {
                MarginSides = Demo.Inches(1),
                MarginRight = Demo.Inches(2),
                MarginEnds = Demo.Inches(0.5m),
                MarginBottom = Demo.Inches(3),
                ShrinkageWidth = (decimal)across,
                ShrinkageHeight = (decimal)along,
            },
            Cloths = [Demo.Linen with { Warp = Grain.Height }],
        };
        var piece = Demo.Planned(order).Cloth[0].Pieces[0];
        Assert.Equal((Length.FromInches((decimal)width), Length.FromInches((decimal)height)), (piece.Width, piece.Height));
    }

    // 80 sq in take 0.4 fl oz; two faces twice that; a tenth of it water leaves 0.9; a twentieth lost asks for 1.05.
    [Fact]
    public void Liquid_needed_counts_faces_thinning_and_loss()
    {
        var order = _cloth with { Adhesives = [Demo.Glue with { Faces = 2, Thinning = 10, Loss = 5 }] };
        Assert.Equal(2 * 0.4m * 2 * 0.9m * 1.05m, Math.Round(Demo.Planned(order).Liquids[0].Needed.In(LengthUnit.Inch), 9));
    }

    [Fact]
    public void Cloth_mounted_later_takes_no_adhesive_and_no_mounting_work_now()
    {
        var plan = Demo.Planned(_cloth with { Panels = [_cloth.Panels[0] with { MountLater = true }], LabourPerHour = new Money(6000) });
        Assert.Empty(plan.Liquids);

        // 3 min of board and 1 min of cloth, twice, at 1.00 a minute.
        Assert.Equal(800, plan.Cost.Lines[0].Labour.Minor);
    }
}
