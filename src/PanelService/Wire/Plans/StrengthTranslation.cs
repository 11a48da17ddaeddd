using PanelService.Planning.Plans;

namespace PanelService.Wire.Plans;

/// <summary>What panels weigh and bear, as the wire shows it.</summary>
internal sealed class StrengthTranslation(WireNumbers numbers)
{
    internal StiffeningResponse Write(Stiffening ways) => new(
        ways.Marks,
        ways.Strips is { } strips ? numbers.Of(strips) : null,
        ways.Thicker is { } thicker ? numbers.Of(thicker) : null,
        ways.ThickerIsCheaper switch
        {
            true => "thicker",
            false => "strips",
            null => null,
        },
        [.. ways.Pieces.Select(piece => new StiffeningPieceResponse(piece.Mark, numbers.Of(piece.Length), piece.Each, piece.Count))]);

    internal StrengthResponse Write(PanelStrength one) => new()
    {
        Mark = one.Mark,
        Board = one.Board,
        Count = one.Count,
        Thickness = numbers.Of(one.Thickness),
        Material = new(one.Material.Density, one.Material.Elasticity, one.Material.Poisson, one.Material.Expansion, one.Material.Mark, one.Material.Source, one.Material.ElasticityAcross, one.Material.Shear),
        BoardWeight = numbers.Of(one.BoardWeight),
        Weight = numbers.Of(one.Weight),
        Sag = numbers.OfMillimetres(one.Sag),
        SagUnderHand = numbers.OfMillimetres(one.SagUnderHand),
        CornerSag = one.CornerSag > 0 ? numbers.OfMillimetres(one.CornerSag) : null,
        CornerSagUnderHand = one.CornerSag > 0 ? numbers.OfMillimetres(one.CornerSagUnderHand) : null,
        Grain = one.Grain,
        Allowed = numbers.OfMillimetres(one.Allowed),
        WithinTheory = one.WithinTheory,
        Bow = numbers.OfMillimetres(one.Bow),
        LeastThickness = numbers.OfMillimetres(one.LeastThickness),
        ThumbThickness = numbers.Of(one.ThumbThickness),
        ThumbBraces = one.ThumbBraces,
        BraceIt = one.SagUnderHand > one.Allowed && !one.Cradled,
        Cradle = one.Cradle is { } cradle
            ? new(one.Cradled, [.. cradle.Strips.Select(strip => new CradleStripResponse(numbers.Of(strip.Length), strip.Count))])
            : null,
        Growth = [numbers.OfMillimetres(one.GrowthWidth), numbers.OfMillimetres(one.GrowthHeight)],
        TightInFrame = one.TightInFrame,
    };
}
