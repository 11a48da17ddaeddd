using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.Strength;

/// <summary>Writes what each line's panels weigh and bear, once for every board they are cut from.</summary>
internal static class StrengthMaker
{
    /// <summary>An opening of nominal size is this much larger than that; a panel that grows by more than it has jams. 1/32 in (common practice).</summary>
    public static Length FrameEase { get; } = Length.FromInches(0.03125m);

    /// <summary>Writes.</summary>
    /// <param name="order">The order.</param>
    /// <param name="panels">The lines and wishes as made.</param>
    /// <param name="sheets">The sheets they are cut from.</param>
    /// <param name="coverings">What is on them.</param>
    public static ImmutableArray<PanelStrength> Of(
        Order order, ImmutableArray<PanelResult> panels, ImmutableArray<SheetLayout> sheets, Coverings coverings) =>
    [
        .. from panel in panels
           from cut in sheets
               .Select(sheet => (sheet.Board, Count: (long)sheet.Copies * sheet.Pieces.Count(piece => piece.Mark == panel.Line.Mark)))
               .Where(cut => cut.Count > 0)
               .GroupBy(cut => cut.Board)
           select Of(order, panel, (cut.Key, cut.Sum(part => part.Count)), coverings.On(panel)),
    ];

    /// <summary>What the finished panels weigh; a pack takes a line's panels from its boards in the order they are cut.</summary>
    public static Weights Weigh(ImmutableArray<PanelResult> panels, ImmutableArray<PanelStrength> strength)
    {
        var batch = strength.Aggregate(default(Weight), (sum, one) => sum + (one.Weight * one.Count));
        var pack = default(Weight);
        foreach (var panel in panels)
        {
            long left = panel.Line.Pack;
            foreach (var one in strength.Where(one => one.Mark == panel.Line.Mark))
            {
                long taken = Math.Min(left, one.Count);
                pack += one.Weight * taken;
                left -= taken;
            }
        }

        return new Weights(batch, pack);
    }

    private static PanelStrength Of(Order order, PanelResult panel, (BoardSupply Board, long Count) cut, double covering)
    {
        var (board, settings) = (cut.Board, order.Strength);
        var material = BoardMaterials.Of(board);
        var size = new CutSize(panel.CutWidth, panel.CutHeight);
        var plate = LoadedPlate.Of((Metres(size.Width), Metres(size.Height)), board, covering, settings);
        double thickness = Metres(board.Thickness);
        double sag = plate.SagUnderHand(thickness);
        double growth = WoodMoisture.Growth(
            material, Share(settings.DriestHumidity), Share(settings.DampestHumidity), (double)settings.Temperature);
        var cradle = panel.Line.Cradle
            ? CradleDesign.Of(order, panel.Line)
            : sag > plate.Short / (double)settings.Limit ? CradleDesign.Of(size, board, settings) : null;
        var boardWeight = new Weight((size.Width * size.Height).SquareMetres * board.Thickness.Millimetres * material.Density);
        return new PanelStrength
        {
            Mark = panel.Line.Mark,
            Board = board.Id,
            Count = cut.Count,
            Thickness = board.Thickness,
            Material = material,
            BoardWeight = boardWeight,
            Weight = boardWeight + Covering(size, covering) + (panel.Line.Cradle ? StripWeight(cradle, settings) : default),
            Sag = Millimetres(plate.OwnSag(thickness)),
            SagUnderHand = Millimetres(sag),
            CornerSag = Millimetres(plate.CornerSag(thickness)),
            CornerSagUnderHand = Millimetres(plate.CornerSagUnderHand(thickness)),
            Grain = material.ElasticityAcross is null ? null : plate.Grain,
            Allowed = Millimetres(plate.Short / (double)settings.Limit),
            WithinTheory = sag <= thickness / 2,
            Bow = Millimetres(MoistureBow.Of(plate.Long, thickness, Math.Abs(OneSided(material, settings)))),
            LeastThickness = Millimetres(plate.LeastThickness((double)settings.Limit)),
            ThumbThickness = ThicknessRule.LeastFor(panel.Line.Width, panel.Line.Height),
            ThumbBraces = Length.Max(size.Width, size.Height) >= (settings.BraceFrom ?? BoardMaterials.BraceFrom(board.Kind)),
            Cradle = cradle,
            Cradled = panel.Line.Cradle && cradle is not null,
            GrowthWidth = Millimetres(Metres(size.Width) * growth),
            GrowthHeight = Millimetres(Metres(size.Height) * growth),
            TightInFrame = Jams(panel.Line.Width - size.Width, size.Width, growth) || Jams(panel.Line.Height - size.Height, size.Height, growth),
        };
    }

    private static double OneSided(BoardMaterial material, StrengthSettings settings) => WoodMoisture.Growth(
        material, Share(settings.BackHumidity), Share(settings.FrontHumidity), (double)settings.Temperature);

    private static bool Jams(Length clearance, Length side, double growth) => Metres(side) * growth > Metres(clearance + FrameEase);

    private static Weight Covering(CutSize size, double covering) =>
        new((size.Width * size.Height).SquareMetres * (decimal)covering * 1000);

    private static Weight StripWeight(Cradle? cradle, StrengthSettings settings) => new(
        (cradle?.Strips ?? []).Sum(strip => strip.Count * strip.Length.Millimetres)
        * settings.StripWidth.Millimetres * settings.StripDepth.Millimetres * StripPractice.Density / 1_000_000);

    private static double Share(decimal percent) => (double)percent / 100;

    private static double Metres(Length length) => (double)length.Millimetres / 1000;

    private static double Millimetres(double metres) => metres * 1000;
}
