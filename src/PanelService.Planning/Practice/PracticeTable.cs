using System.Collections.Immutable;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Practice;

/// <summary>
/// Every default that an order may leave to us, with its source. The values are read from the settings' own
/// defaults, so that the table cannot say anything else than what is computed with.
/// </summary>
public static class PracticeTable
{
    private static readonly SawSettings _saw = new();
    private static readonly BenchSettings _bench = new();
    private static readonly ScheduleSettings _schedule = new();

    /// <summary>The defaults, in the order of the order's fields.</summary>
    public static ImmutableArray<PracticeDefault> Defaults { get; } = [.. Saw(), .. Bench(), .. Thickness(), .. StrengthPractice.Defaults, .. Work()];

    private static ImmutableArray<PracticeDefault> Saw() =>
    [
        Practice("saw.kerf", new PracticeLength(_saw.Kerf), "a full-kerf blade; a thin one takes 3/32 in"),
        Practice("saw.edgeTrim", new PracticeLength(_saw.EdgeTrim), "clean factory edges are used as they are"),
        Practice("saw.undersize", new PracticeLength(_saw.Undersize), "cut to nominal; 1/16 to 1/8 in under still sits in a standard frame"),
        Practice("saw.smallestKept", new PracticeSize(_saw.SmallestKeptWidth, _saw.SmallestKeptHeight), "anything smaller is not worth a place on the rack"),
        Practice("saw.leastFenceLength", new PracticeLength(_saw.LeastFenceLength), "a part under 10 to 12 in long is not ripped along the fence but goes on a sled"),
        Practice("saw.fenceReach", new PracticeNoLimit(), "how far your fence goes stands in the saw's manual"),
        Practice("saw.heaviest", new PracticeNoLimit(), "what you can hold level against a fence; board weighs 1000 kg/m³ (hardboard), 880 (thin MDF), 670 (birch plywood)"),
        Practice("saw.largest", new PracticeNoLimit(), "a whole 48 x 96 in sheet wants two people, in-feed and out-feed support, or the supplier's panel saw"),
        Practice("saw.carry", new PracticeNoLimit(), "measure your car's floor; larger sheets are first cut where they are bought"),
        Practice("saw.supplierKerf", new PracticeLength(_saw.SupplierKerf), "a panel saw's blade; ask the supplier"),
    ];

    private static ImmutableArray<PracticeDefault> Bench() =>
    [
        Practice("bench.margin", new PracticeSize(_bench.MarginSides, _bench.MarginEnds), "cut 1/2 in over on every side, some cut 1 in"),
        Practice("bench.smallestCloth", new PracticeSize(_bench.SmallestClothWidth, _bench.SmallestClothHeight), "anything smaller is a rag"),
        Practice("bench.pressHours", new PracticeNumber(_bench.PressHours, "hours"), "overnight under weight"),
        Practice("bench.pressSpaces", new PracticeNumber(_bench.PressSpaces, "stacks"), "stacks that stand under weight at once"),
        Practice("bench.stackHeight", new PracticeNumber(_bench.StackHeight, "panels"), "panels of one size share a stack and its weight"),
        Practice("bench.shrinkage", new PracticeNumber(_bench.ShrinkageWidth, "percent"), "washed or primed cloth hardly shrinks; raw cloth that is wetted may"),
        Practice("bench.pressure", new PracticeNumber(_bench.Pressure, "kPa"), "20 kg on 12 x 16 in: contact pressure"),
        Memory("bench.openMinutes", new PracticeNumber(_bench.OpenMinutes, "minutes"), "a poly(vinyl acetate) dispersion: 5 to 10, from memory"),
        Practice("bench.dryHours", new PracticeNumber(_bench.DryHours, "hours"), "between coats of an acrylic ground"),
        Memory("bench.restHours", new PracticeNumber(_bench.RestHours, "hours"), "a poly(vinyl acetate) dispersion has its full strength after a day, from memory"),
        Practice("bench.clampHours", new PracticeNumber(_bench.ClampHours, "hours"), "a cradle stays clamped"),
        Memory("liquid.leastTemperature.water", new PracticeNumber(Care.CareMaker.LeastWaterTemperature, "°C"), "poly(vinyl acetate) dispersions: not below about 10 °C, from memory"),
        Practice("schedule.from", new PracticeNumber(_schedule.FromMinute / 60m, "o'clock"), "nine o'clock"),
        Practice("schedule.dayMinutes", new PracticeNumber(_schedule.DayMinutes, "minutes"), "eight hours"),
        Practice("schedule.hands", new PracticeNumber(_schedule.Hands, "pairs of hands"), "one painter"),
    ];

    private static ImmutableArray<PracticeDefault> Thickness() =>
    [
        Practice("thickness.small", new PracticeLength(ThicknessRule.Thin), "hardboard for a panel that fits inside 16 x 20 in and is smaller than it"),
        Practice("thickness.large", new PracticeLength(ThicknessRule.Thick), "hardboard from 16 x 20 in up"),
        Practice("thickness.tolerance", new PracticeLength(ThicknessRule.Tolerance), "a board this near to a nominal thickness counts as that"),
    ];

    private static ImmutableArray<PracticeDefault> Work() =>
    [
        Practice("labour.board", Minutes(WorkMinutes.Board), "to cut, ease the edges and dust one panel"),
        Practice("labour.cloth", Minutes(WorkMinutes.Cloth), "to cut one cloth"),
        Practice("labour.mount", Minutes(WorkMinutes.Mount), "to glue, lay, press and trim one panel"),
        Practice("labour.coat", Minutes(WorkMinutes.Coat), "to brush and sand one coat on one panel's face"),
        Practice("labour.seal", Minutes(WorkMinutes.Seal), "to seal one panel's back"),
        Practice("labour.brace", Minutes(WorkMinutes.Brace), "to glue one cradle on"),
        Practice("labour.errand", Minutes(WorkMinutes.Errand), "the shop trip; not counted as labour"),
    ];

    private static PracticeDefault Memory(string setting, PracticeValue value, string source) =>
        new(setting, value, SourceMark.FromMemory, source);

    private static PracticeNumber Minutes(int minutes) => new(minutes, "minutes");

    private static PracticeDefault Practice(string setting, PracticeValue value, string source) =>
        new(setting, value, SourceMark.CommonPractice, source);
}
