using System.Xml.Linq;
using PanelService.Planning.Days;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Tests;

/// <summary>The chart of the bench days names the day that its heading says the batch is done on.</summary>
public sealed class ScheduleDrawingTests
{
    private const int Hour = 60;
    private const int Day = 24 * Hour;

    // Work begins at nine: the third day's hours are an hour long on the axis, 3 mm of 215.
    [Theory]
    [InlineData((2 * Day) + (9 * Hour) + 56, "day 3", "day 1", "day 2")]
    [InlineData((2 * Day) + (4 * Hour), "day 3", "day 1", "day 2")]
    [InlineData((1 * Day) + (20 * Hour), "day 2", "day 1")]
    [InlineData((12 * Hour), "day 1")]
    [InlineData((40 * Day) + (9 * Hour) + 5, "day 41", "day 1", "day 5", "day 9", "day 13", "day 17", "day 21", "day 25", "day 29", "day 33")]
    public void Day_the_batch_is_done_is_named(int finish, string done, params string[] others)
    {
        XElement[] names = [.. Names(finish)];

        Assert.Contains($"done {done} ", Chart(finish).Root.Value, StringComparison.Ordinal);
        Assert.Equal([done, .. others], names.Select(name => name.Value).OrderBy(name => name == done ? 0 : 1));
    }

    [Theory]
    [InlineData((2 * Day) + (9 * Hour) + 56)]
    [InlineData((13 * Day) + (10 * Hour))]
    [InlineData((14 * Day) + (10 * Hour))]
    [InlineData((40 * Day) + (9 * Hour) + 5)]
    public void Names_of_days_do_not_run_into_one_another(int finish)
    {
        // A letter of a usual sans-serif is half as wide as it is high, on an average.
        (double From, double To)[] extents = [.. Names(finish).Select(Extent).OrderBy(extent => extent.From)];

        Assert.All(extents.Zip(extents.Skip(1)), pair => Assert.True(pair.First.To < pair.Second.From, $"{pair}"));
        Assert.All(extents, extent => Assert.InRange(extent.To, 0, 297 - 8));
    }

    // The page shows the sheet of 297 mm some 848 pixels wide, paper at two thirds.
    [Fact]
    public void Letters_are_ten_pixels_on_the_page_and_six_points_on_paper()
    {
        double[] sizes = [.. Chart(12 * Hour).Elements("text").Select(text => Svg.Number((string)text.Attribute("font-size")!))];

        Assert.All(sizes, size => Assert.True(size * 848 / 297 >= 10, $"{size} mm"));
        Assert.All(sizes, size => Assert.True(size * 186 / 297 * 72 / 25.4 >= 6, $"{size} mm"));
    }

    private static (double From, double To) Extent(XElement text)
    {
        double x = Svg.Number((string)text.Attribute("x")!);
        double width = text.Value.Length * 0.5 * Svg.Number((string)text.Attribute("font-size")!);
        return (string?)text.Attribute("text-anchor") == "end" ? (x - width, x) : (x, x + width);
    }

    private static IEnumerable<XElement> Names(int finish) => Chart(finish).Classed("days").Elements().Where(element => element.Name.LocalName == "text");

    /// <summary>One job at nine on the first day that then rests to the end.</summary>
    private static Svg Chart(int finish)
    {
        var job = new BenchJob { Number = 1, Task = BenchTask.Glue, Steps = [], Panels = [new MarkCount("A", 1)], Hands = Hour, Wait = finish - (10 * Hour) };
        var bench = new BenchPlan { Jobs = [new ScheduledJob(job, 9 * Hour)], Finish = finish, LeastFinish = finish };
        Plan plan = Samples.Plan("Week", LengthUnit.Inch);
        return new Svg(ScheduleDrawing.Render(plan, bench));
    }
}
