namespace PanelService.Planning.Strength;

/// <summary>What strips and dried liquids weigh, common practice without a source.</summary>
public static class StripPractice
{
    /// <summary>Dry softwood, kg/m³.</summary>
    public const decimal Density = 450;

    /// <summary>What is left of a millilitre of adhesive or ground when it has dried, g.</summary>
    public const decimal DryPerMillilitre = 0.6m;

    /// <summary>Cotton duck number 12: 11.45 oz a square yard, g/m² (the numbered ducks: ASTM D230).</summary>
    public const decimal Cotton = 388;

    /// <summary>A painter's linen, g/m².</summary>
    public const decimal Linen = 300;
}
