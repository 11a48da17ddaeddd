using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Xml.Linq;
using PanelService.Drawing.Drafting;
using PanelService.Planning.Days;

namespace PanelService.Drawing.Schedules;

/// <summary>The chart's paper: days across, rows down.</summary>
internal sealed class ScheduleChart
{
    public const double Width = 297;

    private const double Edge = 10;
    private const double LabelRoom = 62;
    private const double Left = Edge + LabelRoom;
    private const double Top = 26;
    private const double RowHeight = 6;
    private const double BarHeight = 4;
    /// <summary>Ten pixels where the page shows the sheet 848 wide, and 6 points where paper shows it at two thirds.</summary>
    private const double TextSize = 3.6;
    private const double Foot = 14;
    private const double HatchStep = 1.6;
    private const int DayMinutes = 1440;
    private const int HourMinutes = 60;
    private const double LeastDayWidth = 18;

    private readonly BenchPlan _bench;
    private readonly BenchClock _clock;
    private readonly int _rows;
    private readonly int _from;
    private readonly int _to;

    public ScheduleChart(BenchPlan bench, int rows)
    {
        (_bench, _rows, _clock) = (bench, rows, new BenchClock(bench.Schedule));
        _from = bench.Jobs.IsEmpty ? 0 : bench.Jobs.Min(job => job.Start) / HourMinutes * HourMinutes;
        _to = Math.Max(bench.Finish, _from + DayMinutes);
    }

    public double Height => Top + (Math.Max(1, _rows) * RowHeight) + Foot;

    private double Bottom => Top + (Math.Max(1, _rows) * RowHeight);

    public string Moment(int passed)
    {
        var (day, minute) = _clock.Shows(passed);
        return string.Create(CultureInfo.InvariantCulture, $"{Day(day)} {minute / 60:00}:{minute % 60:00}");
    }

    public IEnumerable<XElement> Draw(string heading, ImmutableArray<ScheduleRow> rows)
    {
        yield return Text(heading, Edge, Edge + 4, 5, Width - (2 * Edge), ("font-weight", "bold"));
        yield return Ink.Group("days", Days());
        for (int row = 0; row < rows.Length; row++)
        {
            yield return Row(rows[row], Top + (row * RowHeight));
        }

        yield return Key();
    }

    private double At(int passed) => Left + ((passed - _from) * (Width - Edge - Left) / (_to - _from));

    private string Day(int day) => _bench.Schedule.Start is { } start
        ? start.AddDays(day).ToString("ddd d MMM", CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"day {day + 1}");

    private IEnumerable<XElement> Days()
    {
        int first = _from / DayMinutes, last = Math.Min((_to / DayMinutes) + 1, 365);

        // Where days are narrow, only some are named.
        int step = (int)Math.Ceiling(LeastDayWidth / (At(_from + DayMinutes) - At(_from)));
        var named = new List<(int Day, double X)>();
        for (int day = first; day <= last; day++)
        {
            if (_clock.Hours(day) is not var (from, to) || from >= _to)
            {
                continue;
            }

            double x = At(Math.Max(from, _from)), right = At(Math.Min(to, _to));
            yield return Ink.Rectangle(new Box(x, Top, right - x, Bottom - Top), Ink.Fine, Ink.Fill("#f1efe9"), new XAttribute("class", "hours"));
            if ((day - first) % step == 0 && x + LeastDayWidth <= Width - Edge + 2)
            {
                named.Add((day, x));
            }
        }

        foreach (XElement name in Names(named))
        {
            yield return name;
        }
    }

    /// <summary>
    /// The days' names where they begin, and always that of the day the batch is done, which ends with the axis: where it began too
    /// late for its name, or is not worked, the name ends with the axis too, and what it would run into is left out.
    /// </summary>
    private IEnumerable<XElement> Names(List<(int Day, double X)> named)
    {
        int done = _clock.Shows(_bench.Finish).Day;
        if (!_bench.Jobs.IsEmpty && !named.Exists(one => one.Day == done))
        {
            double end = At(_bench.Finish);
            double begin = end - (Lettering.Width(Day(done)) * TextSize) - 1;
            named.RemoveAll(one => one.X + (Lettering.Width(Day(one.Day)) * TextSize) > begin);
            double x = _clock.Hours(done) is var (from, _) && from < _bench.Finish ? At(Math.Max(from, _from)) : end;
            yield return DayLine(x);
            yield return Text(Day(done), end, Top - 3, TextSize, LeastDayWidth * 2, ("text-anchor", "end"));
        }

        foreach (var (day, x) in named)
        {
            yield return DayLine(x);
            yield return Text(Day(day), x, Top - 3, TextSize, LeastDayWidth * 2);
        }
    }

    private XElement DayLine(double x) =>
        Ink.Path(Ink.Line(x, Top - 2, x, Bottom), Ink.Fill("none"), Ink.Stroke(Ink.Grey), Ink.Weight(0.15));

    private XElement Row(ScheduleRow row, double y)
    {
        XElement group = Ink.Group("row", Ink.Title(string.Join("; ", row.Jobs.Take(20).Select(job => $"{ScheduleRow.Words(job.Job)}: {Moment(job.Start)} to {Moment(job.HandsUntil)}"))));
        group.Add(Text(row.Label, Edge, y + BarHeight - 0.4, TextSize, LabelRoom - 2));
        var hatch = new StringBuilder();
        foreach (ScheduledJob job in row.Jobs)
        {
            if (job.Job.Wait > 0)
            {
                group.Add(Wait(job, y, hatch));
            }

            double x = At(job.Start);
            group.Add(Ink.Rectangle(new Box(x, y, Math.Max(0.6, At(job.HandsUntil) - x), BarHeight), Ink.Fine, Ink.Fill(Ink.Black), new XAttribute("class", "hands")));
        }

        if (hatch.Length > 0)
        {
            group.Add(Ink.Path(hatch.ToString(), Ink.Fill("none"), Ink.Stroke(Ink.Accent), Ink.Weight(0.2), new XAttribute("class", "weight")));
        }

        return group;
    }

    private XElement Wait(ScheduledJob job, double y, StringBuilder hatch)
    {
        var box = new Box(At(job.HandsUntil), y + 0.6, At(job.Until) - At(job.HandsUntil), BarHeight - 1.2);
        if (job.Job.TakesSpace)
        {
            for (double x = box.X; x + box.Height <= box.Right; x += HatchStep)
            {
                hatch.Append(Ink.Line(x, box.Y + box.Height, x + box.Height, box.Y));
            }
        }

        return Ink.Rectangle(
            box, Ink.Fine, Ink.Fill(Ink.White), Ink.Stroke(job.Job.TakesSpace ? Ink.Accent : Ink.Grey), Ink.Weight(0.2), new XAttribute("class", job.Job.TakesSpace ? "press" : "wait"));
    }

    private XElement Key() => Ink.Group(
        "key",
        Ink.Rectangle(new Box(Left, Bottom + 5, 8, 3), Ink.Fine, Ink.Fill(Ink.Black)),
        Text("hands", Left + 10, Bottom + 7.6, TextSize, 30),
        Ink.Rectangle(new Box(Left + 40, Bottom + 5, 8, 3), Ink.Fine, Ink.Fill(Ink.White), Ink.Stroke(Ink.Accent), Ink.Weight(0.2)),
        Ink.Path(Ink.Line(Left + 41, Bottom + 8, Left + 44, Bottom + 5) + Ink.Line(Left + 44, Bottom + 8, Left + 47, Bottom + 5), Ink.Fill("none"), Ink.Stroke(Ink.Accent), Ink.Weight(0.2)),
        Text("under weight", Left + 50, Bottom + 7.6, TextSize, 30),
        Ink.Rectangle(new Box(Left + 90, Bottom + 5, 8, 3), Ink.Fine, Ink.Fill(Ink.White), Ink.Stroke(Ink.Grey), Ink.Weight(0.2)),
        Text("drying, resting", Left + 100, Bottom + 7.6, TextSize, 40));

    private static XElement Text(string text, double x, double y, double size, double room, params (string Name, string Value)[] more) => new(
        Ink.Svg + "text",
        new XAttribute("x", Ink.Fine(x)),
        new XAttribute("y", Ink.Fine(y)),
        new XAttribute("font-size", Ink.Fine(size)),
        more.Select(attribute => new XAttribute(attribute.Name, attribute.Value)),
        Lettering.Fit(Lettering.Clean(text), more.Length > 0 ? size * 1.08 : size, room));
}
