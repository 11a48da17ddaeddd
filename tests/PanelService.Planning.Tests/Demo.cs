using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;

namespace PanelService.Planning.Tests;

/// <summary>Small orders to build tests from, in inches and cents.</summary>
internal static class Demo
{
    public static BoardSupply Hardboard { get; } = new()
    {
        Id = "hb3",
        Kind = "hardboard",
        Thickness = Inches(0.125m),
        Width = Inches(24),
        Height = Inches(48),
        Price = new Money(610),
    };

    public static ClothSupply Linen { get; } = new()
    {
        Id = "lin",
        Kind = "linen",
        Width = Inches(62),
        Selvedge = Inches(0.5m),
        Sale = new SaleByLength(Inches(36), new Money(3100), AtMost: null),
    };

    public static LiquidSupply Glue { get; } = new()
    {
        Id = "glue",
        CoverageArea = Inches(8) * Inches(10),
        CoverageVolume = Volume.From(0.4m, LengthUnit.Inch),
        Containers = [new Container(Volume.From(8, LengthUnit.Inch), new Money(790)), new Container(Volume.From(32, LengthUnit.Inch), new Money(2100))],
    };

    public static Length Inches(decimal inches) => Length.FromInches(inches);

    public static PanelLine Line(string mark, decimal width, decimal height, int quantity) => new()
    {
        Mark = mark,
        Width = Inches(width),
        Height = Inches(height),
        Quantity = quantity,
    };

    public static Order OrderOf(params PanelLine[] lines) => new()
    {
        Units = LengthUnit.Inch,
        Currency = new Currency("EUR", 2),
        Panels = [.. lines],
        Boards = [Hardboard],
        Cloths = [Linen],
        Adhesives = [Glue],
        Effort = Effort.Quick,
    };

    public static Plan Planned(Order order) => Assert.IsType<Planned>(Planner.Plan(order)).Plan;
}
