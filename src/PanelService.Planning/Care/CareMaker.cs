using System.Collections.Immutable;
using System.Globalization;
using PanelService.Planning.Days;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;

namespace PanelService.Planning.Care;

/// <summary>
/// Care and safety at the bench, each note only where the batch's goods and surfaces make it matter. Common practice
/// where no source is named; labels, data sheets and local rules come first. Cautions at the saw stand in the saw run.
/// </summary>
internal static class CareMaker
{
    /// <summary>A water-borne adhesive or ground is not used below this, from memory: 10 °C.</summary>
    public const decimal LeastWaterTemperature = 10;

    // A bow of a hundredth of the long side is seen on the wall: common practice.
    private const double BowShare = 100;

    // A coat or two of ground on a few panels is no cloud; from half a square metre on one sands for a while.
    private const decimal DustyArea = 0.5m;

    /// <summary>The notes that matter, in the order of the work.</summary>
    /// <param name="plan">The plan.</param>
    public static ImmutableArray<CareNote> Of(Plan plan) =>
        [.. new[] { OilGround(plan), Ventilation(plan), Rags(plan), SandingDust(plan), Cold(plan), OpenTime(plan), TightFrame(plan), OneSided(plan) }.OfType<CareNote>()];

    private static CareNote? OilGround(Plan plan)
    {
        bool glues = plan.Liquids.Any(use => use.IsAdhesive && use.Liquid.Base == LiquidBase.Water);
        string[] marks = [.. plan.Panels.Where(panel => panel.Line.MountsNow && panel.Made > 0)
            .Select(panel => panel.Line.Mark)
            .Where(mark => plan.Cloth.Any(layout => layout.Cloth.Ground == ClothGround.Oil && layout.Pieces.Any(piece => piece.Mark == mark)))];
        return glues && marks.Length > 0
            ? new CareNote("oil-ground-water-glue", $"{Marks(marks)}: a water-borne adhesive dries through an oil-primed cloth only slowly, through board and edges; keep glue off the primed face, press longer, and try a piece first.")
            : null;
    }

    private static CareNote? Ventilation(Plan plan)
    {
        string[] names = [.. plan.Liquids.Where(use => use.Liquid.Base != LiquidBase.Water).Select(Name)];
        return names.Length > 0
            ? new CareNote("ventilation", $"{Marks(names)}: open the windows while it is used and dries, no flame near it. A dust mask does not hold solvent vapour: a respirator for organic vapours does.")
            : null;
    }

    private static CareNote? Rags(Plan plan) => plan.Liquids.Any(use => use.Liquid.Base == LiquidBase.Oil)
        ? new CareNote("oily-rags", "Rags with drying oil heat themselves and can catch fire: lay them flat outdoors to dry, or keep them under water in a metal can with a lid (fire-service guidance).")
        : null;

    private static CareNote? SandingDust(Plan plan)
    {
        decimal sanded = plan.Panels.Sum(panel => BenchMinutes.UseOf(panel.Line, plan.Liquids, isAdhesive: false) is { } use
            ? (panel.Line.Area * panel.Made).SquareMetres * use.Liquid.Coats * use.Liquid.Faces
            : 0);
        return sanded > DustyArea
            ? new CareNote("sanding-dust", "Sanding a ground makes fine dust (chalk, titanium white): sand damp or with extraction, wear a fitting respirator, and wipe up instead of sweeping.")
            : null;
    }

    private static CareNote? Cold(Plan plan)
    {
        var cold = plan.Liquids
            .Select(use => (Use: use, Least: use.Liquid.LeastTemperature ?? (use.Liquid.Base == LiquidBase.Water ? LeastWaterTemperature : null)))
            .Where(pair => pair.Least is { } least && plan.Order.Bench.RoomTemperature < least)
            .ToList();
        return cold.Count > 0
            ? new CareNote("too-cold", string.Create(
                CultureInfo.InvariantCulture,
                $"{Marks([.. cold.Select(pair => Name(pair.Use))])}: not below {cold.Max(pair => pair.Least):0.#} °C, and the room may be at {plan.Order.Bench.RoomTemperature:0.#}: warm room, board and pot, or wait; a dispersion that dries too cold forms no film."))
            : null;
    }

    private static CareNote? OpenTime(Plan plan)
    {
        decimal open = plan.Liquids.Where(use => use.IsAdhesive).Select(use => use.Liquid.OpenMinutes ?? plan.Order.Bench.OpenMinutes).DefaultIfEmpty(WorkMinutes.Lay).Min();
        return plan.Panels.Any(panel => panel.Line.MountsNow && panel.Made > 0) && plan.Liquids.Any(use => use.IsAdhesive) && open < WorkMinutes.Lay
            ? new CareNote("open-time", string.Create(
                CultureInfo.InvariantCulture,
                $"The adhesive is open for {open:0.#} min, and a panel takes about {WorkMinutes.Lay:0.#} to glue and lay: spread less at a time, work from the centre outwards, or thin it as its maker allows."))
            : null;
    }

    private static CareNote? TightFrame(Plan plan)
    {
        string[] marks = [.. plan.Strength.Where(one => one.TightInFrame).Select(one => one.Mark).Distinct()];
        return marks.Length > 0
            ? new CareNote("tight-frame", string.Create(
                CultureInfo.InvariantCulture,
                $"{Marks(marks)}: grows by up to {Grown(plan)} between {plan.Order.Strength.DriestHumidity:0.#} and {plan.Order.Strength.DampestHumidity:0.#} % relative humidity; leave room in the frame, or cut smaller. Keep at 45 to 60 % (conservation guidance)."))
            : null;
    }

    private static CareNote? OneSided(Plan plan)
    {
        string[] marks = [.. plan.Panels
            .Where(panel => panel.Made > 0 && panel.Line.NeedsBoard && panel.Line.Surface is Surface.Cloth or Surface.Primed && !panel.Line.MountLater)
            .Where(panel => plan.Liquids.Any(use => use.Liquid.Base == LiquidBase.Water && use.Liquid.Faces == 1 && use.Shares.Any(share => share.Mark == panel.Line.Mark)))
            .Where(panel => plan.Strength.Any(one => one.Mark == panel.Line.Mark && one.Bow > LongSide(panel) / BowShare && !one.Cradled))
            .Select(panel => panel.Line.Mark)];
        return marks.Length > 0
            ? new CareNote("one-sided", $"{Marks(marks)}: one face only gets water-borne adhesive or ground and may bow; seal back and edges too (faces: 2), or dry it under weight.")
            : null;
    }

    private static double LongSide(PanelResult panel) => (double)Length.Max(panel.CutWidth, panel.CutHeight).Millimetres;

    private static string Grown(Plan plan)
    {
        double most = plan.Strength.Where(one => one.TightInFrame).Max(one => Math.Max(one.GrowthWidth, one.GrowthHeight));
        return plan.Order.Units == LengthUnit.Inch
            ? string.Create(CultureInfo.InvariantCulture, $"{most / 25.4:0.00} in")
            : string.Create(CultureInfo.InvariantCulture, $"{most:0.0} mm");
    }

    private static string Name(LiquidUse use) => use.Liquid.Name ?? use.Liquid.Id;

    private static string Marks(string[] marks) => string.Join(", ", marks);
}
