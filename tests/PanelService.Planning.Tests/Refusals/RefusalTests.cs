using PanelService.Cutting;
using PanelService.Planning.Batches;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Refusals;
using static PanelService.Planning.Tests.Demo;

namespace PanelService.Planning.Tests.Refusals;

public sealed class RefusalTests
{
    [Fact]
    public void Plan_without_a_thick_board_names_thickness_and_size()
    {
        var no = Refused(OrderOf(Line("A", 24, 36, 2)));
        Assert.Equal(CannotReason.NoBoardFits, no.Reason);
        Assert.Equal(new UnmakeableLine("A", "no board of 3/16 or thicker is at least 24 × 36 in", 2), Assert.Single(no.Marks));
    }

    [Fact]
    public void Plan_without_a_kind_names_the_kind_and_the_thickness_asked_for()
    {
        var no = Refused(OrderOf(Line("A", 8, 10, 1) with { Board = "plywood", Thickness = Inches(0.25m) }));
        Assert.StartsWith("no plywood of 1/4 is at least 8 × 10 in", Assert.Single(no.Marks).Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_in_centimetres_speaks_centimetres()
    {
        var no = Refused(OrderOf(Line("A", 24, 36, 1) with { Width = Length.FromMillimetres(700), Height = Length.FromMillimetres(900) }) with { Units = LengthUnit.Centimetre });
        Assert.Equal("no board of 4.8 mm or thicker is at least 70 × 90 cm", Assert.Single(no.Marks).Missing);
    }

    [Fact]
    public void Plan_with_too_few_sheets_counts_what_is_missing()
    {
        var no = Refused(OrderOf(Line("A", 8, 10, 25)) with { Boards = [Hardboard with { ForSale = 2 }] });
        Assert.Equal(CannotReason.NotEnoughStock, no.Reason);
        Assert.Equal(5, Assert.Single(no.Marks).Count);
    }

    [Fact]
    public void Plan_with_a_board_of_which_there_is_none_says_there_is_too_little()
    {
        var no = Refused(OrderOf(Line("A", 8, 10, 2)) with { Boards = [Hardboard with { ForSale = 0, OnHand = 0 }] });
        Assert.Equal(CannotReason.NotEnoughStock, no.Reason);
        Assert.Equal(new UnmakeableLine("A", "2 of 2 find no room on the boards there is for them", 2), Assert.Single(no.Marks));
    }

    [Fact]
    public void Plan_with_cloth_of_which_there_is_none_says_there_is_too_little()
    {
        var no = Refused(OrderOf(Line("A", 8, 10, 2) with { Surface = Surface.Cloth }) with
        {
            Cloths = [Linen with { Sale = new SaleByLength(Inches(36), new Money(100), 0), Remnants = [] }],
        });
        Assert.Equal((CannotReason.NotEnoughStock, 2), (no.Reason, Assert.Single(no.Marks).Count));
    }

    // A piece of 15 × 19 in with its margins: the remnant of 17 × 35 in holds one of the two.
    [Theory]
    [InlineData(null)]
    [InlineData(1)]
    public void Plan_with_too_little_cloth_is_refused_while_somebody_listens(int? atMost)
    {
        var remnants = Linen with
        {
            Width = Inches(28),
            Sale = atMost is null ? null : new SaleByLength(Inches(10), new Money(100), atMost),
            Remnants = [new Remnant("r", Inches(17), Inches(35), 1, Money.Zero)],
        };
        var heard = new Heard();

        var no = Assert.IsType<CannotBeMade>(Planner.Plan(
            OrderOf(Line("A", 14, 18, 2) with { Surface = Surface.Cloth }) with { Cloths = [remnants] }, heard));

        Assert.Equal((CannotReason.NotEnoughStock, 1), (no.Reason, Assert.Single(no.Marks).Count));
        Assert.All(heard.Told, told => Assert.InRange(told.LeastPossible.Minor, 0, 10_000));
    }

    [Fact]
    public void Plan_without_wide_cloth_names_the_piece_with_its_margins()
    {
        var no = Refused(OrderOf(Line("A", 70, 70, 1) with { Surface = Surface.Loose }));
        Assert.Equal(CannotReason.NoClothFits, no.Reason);
        Assert.StartsWith("no cloth is at least 71 × 71 in", Assert.Single(no.Marks).Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_of_a_panel_that_may_be_bought_buys_what_no_board_holds()
    {
        var plan = Planned(OrderOf(Line("A", 24, 36, 2) with { MayBuy = true, ShopPrice = new Money(1900) }));
        Assert.Equal(2, plan.Panels[0].Bought);
        Assert.Equal(new Proof(new Money(3800), new Money(3800)), plan.Proof);
    }

    [Fact]
    public void Batch_with_more_places_than_can_be_written_out_is_refused_with_both_numbers()
    {
        var batch = BatchPlanner.Cheapest(OrderOf(Line("A", 8, 10, 2)), new Search(null, default, default)).Best;
        var pattern = batch.Boards.Patterns[0];

        var most = TooManyPlaces.Check(With(TooManyPlaces.Most));
        var refused = TooManyPlaces.Check(With(TooManyPlaces.Most + 1));

        Assert.Null(most);
        Assert.Equal(CannotReason.TooManyPlaces, refused!.Reason);
        Assert.Contains("500001 places", refused.Detail, StringComparison.Ordinal);

        Batch With(int pieces) => batch with
        {
            Boards = batch.Boards with { Patterns = [pattern with { Block = new StackBlock(Axis.X, [.. Enumerable.Repeat<Block>(new PieceBlock(0, false), pieces)]) }] },
        };
    }

    private static CannotBeMade Refused(Order order) => Assert.IsType<CannotBeMade>(Planner.Plan(order));
}
