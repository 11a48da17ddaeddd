using PanelService.Planning.Measures;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Tests.Days;

/// <summary>Care notes: each has an order that raises it, and one beside it that just does not.</summary>
public sealed class CareTests
{
    private static readonly Order _cloth = Demo.OrderOf(Demo.Line("A", 8, 10, 2) with { Surface = Surface.Cloth });
    private static readonly LiquidSupply _ground = new()
    {
        Id = "ground",
        Coats = 1,
        CoverageArea = Demo.Glue.CoverageArea,
        CoverageVolume = Demo.Glue.CoverageVolume,
        Containers = Demo.Glue.Containers,
    };

    // 8 × 10 in are 0.0516 m²: nine coated panels stay under half a square metre, ten are over it.
    private static Order Primed(int quantity) =>
        Demo.OrderOf(Demo.Line("A", 8, 10, quantity) with { Surface = Surface.Primed }) with { Primers = [_ground] };

    [Fact]
    public void Oil_primed_cloth_with_water_borne_glue_is_told_and_with_solvent_glue_or_mounted_later_is_not()
    {
        var oil = _cloth with { Cloths = [Demo.Linen with { Ground = ClothGround.Oil }] };
        Assert.Contains("oil-ground-water-glue", Care(oil));
        Assert.DoesNotContain("oil-ground-water-glue", Care(_cloth with { Cloths = [Demo.Linen with { Ground = ClothGround.Acrylic }] }));
        Assert.DoesNotContain("oil-ground-water-glue", Care(oil with { Adhesives = [Demo.Glue with { Base = LiquidBase.Solvent }] }));
        Assert.DoesNotContain("oil-ground-water-glue", Care(oil with { Panels = [oil.Panels[0] with { MountLater = true }] }));
    }

    [Fact]
    public void Solvent_wants_open_windows_and_water_does_not()
    {
        Assert.Contains("ventilation", Care(_cloth with { Adhesives = [Demo.Glue with { Base = LiquidBase.Solvent }] }));
        Assert.DoesNotContain("ventilation", Care(_cloth));

        // A solvent on the shelf that nothing is coated with does not matter.
        Assert.DoesNotContain("ventilation", Care(_cloth with { Primers = [_ground with { Base = LiquidBase.Solvent }] }));
    }

    [Fact]
    public void Oil_wants_care_of_its_rags_and_solvent_alone_does_not()
    {
        Assert.Contains("oily-rags", Care(Primed(2) with { Primers = [_ground with { Base = LiquidBase.Oil }] }));
        Assert.DoesNotContain("oily-rags", Care(Primed(2) with { Primers = [_ground with { Base = LiquidBase.Solvent }] }));
    }

    [Fact]
    public void Sanding_of_more_than_half_a_square_metre_is_told_and_of_less_is_not()
    {
        Assert.Contains("sanding-dust", Care(Primed(10)));
        Assert.DoesNotContain("sanding-dust", Care(Primed(9)));
    }

    // Poly(vinyl acetate) dispersions: not below about 10 °C, from memory.
    [Fact]
    public void Room_colder_than_the_glue_bears_is_told_and_one_just_as_warm_is_not()
    {
        Assert.Contains("too-cold", Care(_cloth with { Bench = new BenchSettings { RoomTemperature = 9.9m } }));
        Assert.DoesNotContain("too-cold", Care(_cloth with { Bench = new BenchSettings { RoomTemperature = 10 } }));
        Assert.DoesNotContain("too-cold", Care(_cloth with { Bench = new BenchSettings { RoomTemperature = 9.9m }, Adhesives = [Demo.Glue with { LeastTemperature = 5 }] }));
    }

    // A panel takes about four minutes to glue and lay.
    [Fact]
    public void Glue_open_for_less_than_a_panel_takes_is_told_and_for_as_long_is_not()
    {
        Assert.Contains("open-time", Care(_cloth with { Adhesives = [Demo.Glue with { OpenMinutes = 3 }] }));
        Assert.DoesNotContain("open-time", Care(_cloth with { Adhesives = [Demo.Glue with { OpenMinutes = 4 }] }));
    }

    // Hardboard grows by 0.16 % from 35 to 80 %: 19.5 in by just less than 1/32 in, 20 in by just more.
    [Fact]
    public void Panel_that_grows_by_more_than_its_frame_has_room_for_is_told_and_one_by_less_is_not()
    {
        Assert.Contains("tight-frame", Care(Demo.OrderOf(Demo.Line("A", 8, 20, 1))));
        Assert.DoesNotContain("tight-frame", Care(Demo.OrderOf(Demo.Line("A", 8, 19.5m, 1))));
    }

    [Fact]
    public void One_face_wetted_is_told_and_both_faces_sealed_are_not()
    {
        var large = Demo.OrderOf(Demo.Line("A", 20, 24, 1) with { Surface = Surface.Cloth, Thickness = Demo.Inches(0.125m) });
        var small = Demo.OrderOf(Demo.Line("A", 15, 18, 1) with { Surface = Surface.Cloth });
        Assert.DoesNotContain("one-sided", Care(small));
        Assert.Contains("one-sided", Care(large));
        Assert.DoesNotContain("one-sided", Care(large with { Adhesives = [Demo.Glue with { Faces = 2 }] }));
    }

    private static IEnumerable<string> Care(Order order) => Demo.Planned(order).Care.Select(note => note.Id);
}
