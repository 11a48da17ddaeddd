using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using PanelService.Drawing.Drafting;
using PanelService.Drawing.Schedules;
using PanelService.Planning.Days;
using PanelService.Planning.Plans;

namespace PanelService.Drawing;

/// <summary>
/// The work at the bench as bars over days, on a landscape sheet in millimetres: hands filled, what is left alone
/// hatched (under weight) or open (drying, resting), working hours banded. No script, no style sheet, no ids.
/// </summary>
public static class ScheduleDrawing
{
    /// <summary>Draws.</summary>
    /// <param name="plan">The plan, for its title.</param>
    /// <param name="bench">The bench with its schedule.</param>
    /// <returns>An SVG document, the same for the same schedule.</returns>
    public static string Render(Plan plan, BenchPlan bench)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(bench);
        ImmutableArray<ScheduleRow> rows = ScheduleRow.Of(bench);
        var chart = new ScheduleChart(bench, rows.Length);
        string title = Lettering.Clean(plan.Order.Title);
        string heading = bench.TooLong
            ? "More than a year of work: no schedule"
            : rows.IsEmpty ? "Nothing to do at the bench" : $"Bench days: done {chart.Moment(bench.Finish)}";
        return new XElement(
            Ink.Svg + "svg",
            new XAttribute("viewBox", $"0 0 {Ink.Number(ScheduleChart.Width)} {Ink.Number(chart.Height)}"),
            new XAttribute("width", Ink.Number(ScheduleChart.Width) + "mm"),
            new XAttribute("height", Ink.Number(chart.Height) + "mm"),
            new XAttribute("class", "drawing schedule"),
            new XAttribute("role", "img"),
            new XAttribute("font-family", Lettering.Family),
            Ink.Fill(Ink.Black),
            Ink.Title(title.Length == 0 ? heading : $"{title}: {heading}"),
            new XElement(Ink.Svg + "desc", Describe(bench, chart)),
            Ink.Rectangle(new Box(0, 0, ScheduleChart.Width, chart.Height), Ink.Fill(Ink.White), new XAttribute("class", "paper")),
            chart.Draw(title.Length == 0 ? heading : $"{title}. {heading}", rows)).ToString(SaveOptions.DisableFormatting);
    }

    private static string Describe(BenchPlan bench, ScheduleChart chart) => string.Create(
        CultureInfo.InvariantCulture,
        $"{bench.Jobs.Length} jobs by {bench.Schedule.Hands} pair(s) of hands. {string.Join("; ", bench.Jobs.Take(40).Select(job => $"{ScheduleRow.Words(job.Job)}, {chart.Moment(job.Start)}"))}.");
}
