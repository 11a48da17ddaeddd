using PanelService.Cutting.Patterns;

namespace PanelService.Cutting.Tests.Patterns;

/// <summary>Scales of whole numbers: what truly fits fits in them, too, and they lose little.</summary>
public sealed class LengthScaleTests
{
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Whatever_truly_fits_fits_in_units(int seed)
    {
        var random = new Random(seed);
        long whole = random.Next(2_000, 100_000);
        (long Length, double Weight)[] lengths = [.. Enumerable.Range(0, 12).Select(_ => (random.NextInt64(whole / 20, whole), 1.0))];
        var scale = LengthScale.Make(lengths, whole, whole / random.Next(30, 300), CancellationToken.None);

        for (int trial = 0; trial < 2_000; trial++)
        {
            // A row of pieces as full as chance makes it, in an axis or a part of one.
            long room = trial % 2 == 0 ? whole : random.NextInt64(1, whole);
            long left = room;
            int units = 0;
            for (int tries = 0; tries < 30; tries++)
            {
                long length = lengths[random.Next(lengths.Length)].Length;
                if (length <= left)
                {
                    left -= length;
                    units += scale.Of(length);
                }
            }

            Assert.InRange(units, 0, scale.Of(room));
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Nearly_nothing_is_lost(int seed)
    {
        // Thirty lengths between a twelfth and more than half of an axis of some 300 units: rounded down each would lose half a unit.
        var random = new Random(seed);
        const long Whole = 12_232;
        const long Unit = 40;
        (long Length, double Weight)[] lengths = [.. Enumerable.Range(0, 30).Select(_ => (random.NextInt64(1_032, 7_033), 1.0))];
        var scale = LengthScale.Make(lengths, Whole, Unit, CancellationToken.None);

        double plain = lengths.Average(one => (double)(one.Length / Unit) / (Whole / Unit) / ((double)one.Length / Whole));
        double raised = lengths.Average(one => (double)scale.Of(one.Length) / scale.Of(Whole) / ((double)one.Length / Whole));
        Assert.InRange(1 - raised, double.NegativeInfinity, 0.6 * (1 - plain));
    }

    [Fact]
    public void A_length_beside_which_nothing_fits_is_as_long_as_the_axis()
    {
        var scale = LengthScale.Make([(600, 1), (700, 1)], 1000, 90, CancellationToken.None);

        Assert.Equal(scale.Of(1000), scale.Of(600));
        Assert.Equal(scale.Of(1000), scale.Of(700));
        Assert.Equal(0, scale.Of(599));
    }

    [Fact]
    public void An_axis_that_nothing_fits_has_no_units() =>
        Assert.Equal(0, LengthScale.Make([], 1000, 90, CancellationToken.None).Of(1000));

    public static TheoryData<int> Seeds() => [.. Enumerable.Range(1, 12)];
}
