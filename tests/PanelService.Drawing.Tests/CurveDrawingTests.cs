using System.Xml.Linq;
using PanelService.Planning.Curves;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Tests;

public sealed class CurveDrawingTests
{
    [Fact]
    public void Hollow_dots_are_explained_beside_one_of_their_kind()
    {
        Svg svg = Curve(true, false, true);

        XElement key = Assert.Single(svg.Classed("hollow-key"));
        XElement hollow = Assert.Single(svg.Classed("dots").Elements(), dot => (string?)dot.Attribute("fill") == "#ffffff");
        XElement swatch = Assert.Single(key.Elements(), element => element.Name.LocalName == "circle");
        Assert.Equal("a cheaper plan may exist", key.Value);
        Assert.Equal(Look(hollow), Look(swatch));
    }

    [Fact]
    public void Where_no_dot_is_hollow_none_is_explained() => Assert.Empty(Curve(true, true).Classed("hollow-key"));

    private static (string?, string?, string?) Look(XElement circle) =>
        ((string?)circle.Attribute("fill"), (string?)circle.Attribute("stroke"), (string?)circle.Attribute("r"));

    /// <summary>An order made once, twice …, with so many points.</summary>
    private static Svg Curve(params bool[] proven)
    {
        Plan plan = Samples.Plan("Week", LengthUnit.Inch);
        return new Svg(CurveDrawing.Render(new BatchCurve(
            plan.Order,
            [.. proven.Select((one, i) => new CurvePoint(i + 1, 12 * (i + 1), plan with { Proof = new Proof(new Money(610), new Money(one ? 610 : 600)) }))],
            EndsBecause: null)));
    }
}
