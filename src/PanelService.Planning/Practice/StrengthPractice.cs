using System.Collections.Immutable;
using PanelService.Planning.Orders;
using PanelService.Planning.Strength;

namespace PanelService.Planning.Practice;

/// <summary>The defaults of what panels bear and are made of, with their sources.</summary>
internal static class StrengthPractice
{
    private static readonly StrengthSettings _settings = new();

    public static ImmutableArray<PracticeDefault> Defaults { get; } =
    [
        Practice("strength.load", Number(_settings.Load.Grams, "g"), "a hand leaning lightly on the middle"),
        Practice("strength.limit", Number(_settings.Limit, "of the short side"), "a share of 1/300 is not seen"),
        Practice("strength.faces.back", Number(_settings.BackHumidity, "percent"), "room air behind the panel"),
        Practice("strength.faces.front", Number(_settings.FrontHumidity, "percent"), "a face just glued or brushed takes up moisture first"),
        Published("strength.humidity.driest", Number(_settings.DriestHumidity, "percent"), "where board data begin: AS/NZS 1859"),
        Published("strength.humidity.dampest", Number(_settings.DampestHumidity, "percent"), "where board data end: AS/NZS 1859"),
        Practice("strength.temperature", Number(_settings.Temperature, "°C"), "a room"),
        Published("strength.stripWidth", new PracticeLength(_settings.StripWidth), "a nominal 1 x 2 as it measures: PS 20, American Softwood Lumber Standard"),
        Published("strength.stripDepth", new PracticeLength(_settings.StripDepth), "a nominal 1 x 2 as it measures: PS 20, American Softwood Lumber Standard"),
        Practice("strength.cradleInset", new PracticeLength(_settings.CradleInset), "clears a frame's rabbet"),
        Practice("strength.smallestStrip", new PracticeLength(_settings.SmallestStrip), "anything shorter is kindling"),
        Practice("strength.frameEase", new PracticeLength(StrengthMaker.FrameEase), "how much larger than nominal an opening is"),
        Practice("strength.stripDensity", Number(StripPractice.Density, "kg/m³"), "dry softwood"),
        Practice("strength.dryLiquid", Number(StripPractice.DryPerMillilitre, "g/mL"), "what is left of adhesive or ground when it has dried"),
        Published("cloth.weight.cotton", Number(StripPractice.Cotton, "g/m²"), "cotton duck number 12: the numbered ducks of ASTM D230"),
        Practice("cloth.weight.linen", Number(StripPractice.Linen, "g/m²"), "a painter's linen"),
        .. BoardMaterials.All.SelectMany(row => Board(row.Kind, row.Material)),
        .. Board("plywood.threePlies", BoardMaterials.ThinPlywood),
        .. Board("plywood.sevenPlies", BoardMaterials.ThickPlywood),
        .. BoardMaterials.All.Select(row => Practice($"strength.braceFrom.{row.Kind}", new PracticeLength(row.BraceFrom), "sources disagree")),
    ];

    private static IEnumerable<PracticeDefault> Board(string kind, BoardMaterial material)
    {
        yield return new($"board.{kind}.density", Number(material.Density, "kg/m³"), material.Mark, material.Source);
        yield return new($"board.{kind}.elasticity", Number(material.Elasticity, "MPa"), material.Mark, material.Source);
        if (material.ElasticityAcross is { } across)
        {
            yield return new($"board.{kind}.elasticityAcross", Number(across, "MPa"), material.Mark, material.Source);
        }

        if (material.Shear is { } shear)
        {
            yield return new($"board.{kind}.shear", Number(shear, "MPa"), material.Mark, material.Source);
        }

        yield return new($"board.{kind}.poisson", Number(material.Poisson, "(ratio)"), SourceMark.FromMemory, "a usual figure, from memory");
        yield return new($"board.{kind}.expansion", Number(material.Expansion, "percent"), material.Mark, material.Source);
    }

    private static PracticeNumber Number(decimal number, string unit) => new(number, unit);

    private static PracticeDefault Practice(string setting, PracticeValue value, string source) =>
        new(setting, value, SourceMark.CommonPractice, source);

    private static PracticeDefault Published(string setting, PracticeValue value, string source) =>
        new(setting, value, SourceMark.Published, source);
}
