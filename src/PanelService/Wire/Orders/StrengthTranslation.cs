using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Practice;
using PanelService.Planning.Strength;

namespace PanelService.Wire.Orders;

/// <summary>What bears on strength, field by field: what the request leaves out is common practice.</summary>
internal static class StrengthTranslation
{
    private const decimal OuncesPerSquareYard = 33.9057m;

    internal static StrengthSettings Settings(StrengthRequest? request, LengthUnit units)
    {
        var practice = new StrengthSettings();
        return new StrengthSettings
        {
            Load = request?.Load is { } load ? Weight.From(load, units) : practice.Load,
            Limit = request?.Limit ?? practice.Limit,
            BackHumidity = request?.Faces?[0] ?? practice.BackHumidity,
            FrontHumidity = request?.Faces?[1] ?? practice.FrontHumidity,
            DriestHumidity = request?.Humidity?[0] ?? practice.DriestHumidity,
            DampestHumidity = request?.Humidity?[1] ?? practice.DampestHumidity,
            Temperature = request?.Temperature ?? practice.Temperature,
            Brace = request?.Brace ?? practice.Brace,
            BraceFrom = request?.BraceFrom,
            StripWidth = request?.StripWidth ?? practice.StripWidth,
            StripDepth = request?.StripDepth ?? practice.StripDepth,
            CradleInset = request?.CradleInset ?? practice.CradleInset,
            SmallestStrip = request?.SmallestStrip ?? practice.SmallestStrip,
        };
    }

    /// <summary>A board's own figures in the place of the table's; null where it gives none.</summary>
    internal static BoardMaterial? Material(BoardRequest board, BoardSupply supply)
    {
        if ((board.Density ?? board.Elasticity ?? board.ElasticityAcross ?? board.Shear ?? board.Poisson ?? board.Expansion) is null)
        {
            return null;
        }

        var table = BoardMaterials.Of(supply);
        return new BoardMaterial(
            board.Density ?? table.Density,
            board.Elasticity ?? table.Elasticity,
            board.Poisson ?? table.Poisson,
            board.Expansion ?? table.Expansion,
            SourceMark.CommonPractice,
            "as the order gives them; what it leaves out: " + table.Source)
        {
            ElasticityAcross = board.ElasticityAcross ?? (board.Elasticity is null ? table.ElasticityAcross : null),
            Shear = board.Shear ?? ((board.Elasticity ?? board.ElasticityAcross) is null ? table.Shear : null),
        };
    }

    /// <summary>Grams a square metre: a cloth's weight is oz a square yard for inch, g a square metre otherwise.</summary>
    internal static decimal? ClothWeight(decimal? weight, LengthUnit units) =>
        units == LengthUnit.Inch ? weight * OuncesPerSquareYard : weight;
}
