using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Tests;

/// <summary>Plans to draw: as much of one as a drawing reads.</summary>
internal static class Samples
{
    public static readonly Length EighthInch = Length.FromInches(0.125m);

    public static readonly BoardSupply SmallSheet = new()
    {
        Id = "hb3",
        Name = "Hardboard 1/8, 2 x 4 ft",
        Kind = "hardboard",
        Thickness = EighthInch,
        Width = Length.FromInches(24),
        Height = Length.FromInches(48),
        Price = new Money(610),
    };

    public static readonly BoardSupply LargeSheet = SmallSheet with
    {
        Id = "hb-large",
        Name = "Hardboard 3.2, large",
        Width = Length.FromMillimetres(1220),
        Height = Length.FromMillimetres(2440),
    };

    public static Length Inch(decimal inches) => Length.FromInches(inches);

    public static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);

    /// <summary>So many pieces of one size.</summary>
    public static IEnumerable<(string Mark, Length Width, Length Height)> Of(int count, string mark, Length width, Length height) =>
        Enumerable.Repeat((mark, width, height), count);

    /// <summary>The study week's sheet: twelve 8 × 10, two 6 × 8, a row of small ones.</summary>
    public static Plan StudyWeek(string title = "Tern Island study week") => Plan(title, LengthUnit.Inch, Shelves.Fill(
        SmallSheet,
        EighthInch,
        [.. Of(6, "A", Inch(7.9375m), Inch(9.9375m)), .. Of(3, "B", Inch(6), Inch(8)), .. Of(4, "C", Inch(5), Inch(5)), .. Of(3, "D", Inch(2.5m), Inch(3.5m))]));

    /// <summary>A large sheet full of small pieces.</summary>
    public static Plan Crowded(int count, string mark, Length width, Length height) => Plan(
        "Crowded", LengthUnit.Inch, Shelves.Fill(LargeSheet, EighthInch, Of(count, mark, width, height)));

    public static Plan Plan(string title, LengthUnit unit, params SheetLayout[] sheets) => Empty(title, unit) with
    {
        Sheets = [.. sheets],
        Panels = Lines(sheets.SelectMany(sheet => sheet.Pieces)),
    };

    public static Plan Plan(string title, LengthUnit unit, ClothLayout cloth) => Empty(title, unit) with { Cloth = [cloth] };

    /// <summary>Two rows of 9 × 11 pieces on a yard of linen 62 wide with a selvedge.</summary>
    public static ClothLayout Linen()
    {
        Length selvedge = Inch(0.5m);
        IEnumerable<PlacedPanel> row(int n) => Enumerable.Range(0, 6).Select(i => new PlacedPanel(
            "A", selvedge + (Inch(9) * i), Inch(11) * n, Inch(9), Inch(11), false));
        return new ClothLayout
        {
            Number = 1,
            Copies = 1,
            Cloth = new ClothSupply { Id = "lin-wide", Name = "Primed linen", Width = Inch(62), Selvedge = selvedge, Warp = Grain.Height },
            Source = Source.Bought,
            Width = Inch(62),
            Length = Inch(36),
            Selvedge = selvedge,
            CostEach = new Money(3100),
            Steps = 1,
            Pieces = [.. row(0), .. row(1), new PlacedPanel("B", selvedge, Inch(22), Inch(17), Inch(13), true)],
            Offcuts =
            [
                new Offcut(Inch(54.5m), Length.Zero, Inch(7), Inch(22), true),
                new Offcut(Inch(17.5m), Inch(22), Inch(44), Inch(14), true),
                new Offcut(selvedge, Inch(35), Inch(17), Inch(1), false),
            ],
            Waste = Area.Zero,
        };
    }

    private static ImmutableArray<PanelResult> Lines(IEnumerable<PlacedPanel> pieces) =>
    [
        .. pieces.GroupBy(piece => piece.Mark).Select(group => new PanelResult(
            new PanelLine
            {
                Mark = group.Key,
                Width = Nominal(group.First().Width),
                Height = Nominal(group.First().Height),
                Quantity = group.Count(),
            },
            IsWish: false,
            group.First().Width,
            group.First().Height,
            group.Count(),
            Bought: 0,
            [])),
    ];

    // The nominal size of a piece cut a little under: the next half inch.
    private static Length Nominal(Length cut) => Inch(Math.Ceiling(cut.Inches * 2) / 2);

    private static Plan Empty(string title, LengthUnit unit) => new()
    {
        Order = new Order { Title = title, Units = unit, Currency = new Currency("EUR", 2), Panels = [] },
        Panels = [],
        Proof = new Proof(Money.Zero, Money.Zero),
        BoardProof = new Proof(Money.Zero, Money.Zero),
        ClothProof = new Proof(Money.Zero, Money.Zero),
        Sheets = [],
        SawRun = [],
        SawProof = new SawProof(0, 0, 0),
        Cloth = [],
        Liquids = [],
        Buy = [],
        Cost = new Tally
        {
            Cash = Money.Zero,
            OnHandUsed = Money.Zero,
            Used = Money.Zero,
            BackOnRack = Money.Zero,
            Lines = [],
            Waste = new WasteTally(Area.Zero, Area.Zero, Area.Zero, Area.Zero, Money.Zero, Money.Zero),
        },
        Warnings = [],
    };
}
