using System.Text.Json;
using Ical.Net.CalendarComponents;
using PanelService.Api.Tests.Hosts;

namespace PanelService.Api.Tests.Plans;

/// <summary>The batch's days, read back as iCalendar (RFC 5545) by a library.</summary>
public sealed class CalendarTests(PlainHosts hosts) : IClassFixture<PlainHosts>
{
    // Twelve panels with cloth in stacks of five, two stacks at once: stacks of 5, 5 and 2; twelve primed ones beside them. By
    // the minutes of common practice: saw 24 × 1.5, cloth 12 × 1, gluing 4 each, trimming, edges and label 2.25 each.
    private const string TwoRounds =
        """
        { "title": "Tern Island; study, week", "units": "inch", "currency": "EUR",
          "panels": [ { "width": 8, "height": 10, "quantity": 12, "surface": "cloth" }, { "width": 5, "height": 7, "quantity": 12, "surface": "primed" } ],
          "boards": [ { "id": "hb3", "thickness": "1/8", "width": 48, "height": 48, "price": 6.10 } ],
          "cloths": [ { "id": "duck", "width": 54, "sale": { "by": "length", "step": 36, "price": 12 } } ],
          "adhesives": [ { "id": "glue", "coverage": { "area": 1000, "volume": 8 }, "containers": [ { "volume": 8, "price": 7.90 } ] } ],
          "primers": [ { "id": "ground", "coats": 2, "coverage": { "area": 1000, "volume": 8 }, "containers": [ { "volume": 32, "price": 18 } ] } ],
          "bench": { "pressHours": 12, "pressSpaces": 2, "stackHeight": 5 } }
        """;

    [Fact]
    public async Task Calendar_has_the_errand_the_saw_every_stack_of_the_press_and_the_coats()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        CalendarEvent[] events = await EventsAsync(client, await CreateAsync(client, TwoRounds), "start=2026-12-01T09:00&zone=Europe/Paris");

        // Paris is an hour ahead of UTC in December.
        Assert.Equal(("errand", "12-01 08:00", 60), (Task(events[0]), At(events[0]), Minutes(events[0])));
        Assert.Equal(36, Minutes(events.Single(e => Task(e) == "saw")));
        Assert.Equal(12, Minutes(events.Single(e => Task(e) == "cutcloth")));
        Assert.Equal([20, 20, 8], events.Where(e => Task(e) == "glue").Select(Minutes));
        Assert.Equal([5, 12, 12], events.Where(e => Task(e) == "trim").Select(Minutes).Order());
        Assert.Equal(2, events.Count(e => Task(e) == "coat"));

        // Two spaces: the third stack is laid when the first two are out, the morning after.
        CalendarEvent[] presses = [.. events.Where(e => Task(e) == "press")];
        Assert.All(presses, press => Assert.Equal(720, Minutes(press)));
        Assert.Equal(["12-01", "12-01", "12-02"], presses.Select(press => At(press)[..5]));
        Assert.Equal("12-02 08:00", At(events.Where(e => Task(e) == "glue").ElementAt(2)));
        Assert.All(events, e => Assert.StartsWith("Tern Island; study, week: ", e.Summary, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Calendar_is_the_schedule_of_the_plan_to_the_minute()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string order = Json.With(TwoRounds, "schedule", """{ "start": "2026-12-01", "from": "08:30", "to": "16:30", "days": ["tuesday", "thursday", "friday"], "hands": 2, "zone": "Europe/Paris" }""");
        string address = await CreateAsync(client, order);
        JsonElement bench = (await client.GetJsonAsync(address)).GetProperty("benchPlan");

        CalendarEvent[] events = await EventsAsync(client, address, "");

        // Paris is an hour ahead of UTC in December.
        Assert.Equal(
            bench.GetProperty("schedule").GetProperty("jobs").EnumerateArray().Select(job => (job.GetProperty("begins").GetProperty("date").GetString()!, job.GetProperty("begins").GetProperty("time").GetString()!, job.GetProperty("hands").GetDouble())).Order(),
            events.Where(e => Task(e) != "press").Select(e => (e.Start!.AsUtc.AddHours(1).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), e.Start.AsUtc.AddHours(1).ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture), Minutes(e))).Order());
        Assert.All(events.Where(e => Task(e) != "press"), e => Assert.Contains(e.Start!.AsUtc.DayOfWeek, new[] { DayOfWeek.Tuesday, DayOfWeek.Thursday, DayOfWeek.Friday }));
        Assert.Equal("12-01 07:30", At(events[0]));
        Assert.True(bench.GetProperty("scheduleProof").GetProperty("proven").GetBoolean());
    }

    [Fact]
    public async Task Calendar_twice_with_the_same_start_is_the_same_but_for_its_stamp()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string address = await CreateAsync(client, TwoRounds);

        var first = await EventsAsync(client, address, "start=2026-10-24T09:00&zone=Europe/Paris");
        var second = await EventsAsync(client, address, "start=2026-10-24T09:00&zone=Europe/Paris");

        Assert.Equal(first.Select(e => (e.Uid, At(e), Minutes(e))), second.Select(e => (e.Uid, At(e), Minutes(e))));
    }

    // Clocks in Paris go back from 03:00 to 02:00 on 25 October 2026 (Directive 2000/84/EC: the last Sunday in October, 01:00 UTC).
    [Fact]
    public async Task Calendar_over_a_change_of_clocks_presses_by_elapsed_time_and_begins_at_nine_again()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        CalendarEvent[] events = await EventsAsync(client, await CreateAsync(client, Json.With(TwoRounds, "bench.pressHours", "20")), "start=2026-10-24T09:00&zone=Europe/Paris");

        Assert.Equal("10-24 07:00", At(events.Single(e => Task(e) == "errand")));
        Assert.All(events.Where(e => Task(e) == "press"), press => Assert.Equal(1200, Minutes(press)));
        Assert.Equal("10-25 08:00", At(events.First(e => At(e).StartsWith("10-25", StringComparison.Ordinal))));
    }

    // Clocks in Paris skip 02:00 to 03:00 on 28 March 2027: half past two is half past three, 01:30 UTC.
    [Fact]
    public async Task Calendar_from_an_hour_the_clocks_skip_begins_an_hour_on()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        CalendarEvent[] events = await EventsAsync(client, await CreateAsync(client, TwoRounds), "start=2027-03-28T02:30&zone=Europe/Paris");

        Assert.Equal("03-28 01:30", At(events[0]));
    }

    [Fact]
    public async Task Calendar_of_no_start_begins_tomorrow_at_nine()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string address = await CreateAsync(client, TwoRounds);
        DateTime before = DateTime.UtcNow;

        CalendarEvent[] events = await EventsAsync(client, address, "");

        Assert.InRange(events[0].Start!.AsUtc, before.Date.AddDays(1).AddHours(9), DateTime.UtcNow.Date.AddDays(1).AddHours(9));
    }

    [Fact]
    public async Task Calendar_work_of_more_than_a_day_goes_on_the_next_morning()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string address = await CreateAsync(client, Json.With(SampleOrders.Smallest, "panels[0].quantity", "200"));

        CalendarEvent[] events = await EventsAsync(client, address, "start=2026-12-01T09:00");

        // An hour's errand, then 200 × 1.5 minutes at the saw and 200 × 1.5 to ease, dust and label: what is left of eight
        // hours, and the rest the next day.
        Assert.Equal((60d, "12-01 09:00"), (Minutes(events[0]), At(events[0])));
        Assert.Equal(660, events.Sum(Minutes), 3d);
        Assert.Equal(["12-01", "12-02"], events.Select(e => At(e)[..5]).Distinct());
        Assert.All(events, e => Assert.InRange(e.End!.AsUtc.TimeOfDay, TimeSpan.FromHours(9), TimeSpan.FromHours(17)));
    }

    [Fact]
    public async Task Calendar_twice_has_the_same_identifiers_and_each_once()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string address = await CreateAsync(client, TwoRounds);

        string?[] first = [.. (await EventsAsync(client, address, "")).Select(e => e.Uid)];
        string?[] second = [.. (await EventsAsync(client, address, "zone=America/New_York")).Select(e => e.Uid)];

        Assert.Equal(first, second);
        Assert.Equal(first.Length, first.Distinct().Count());
    }

    [Fact]
    public async Task Calendar_is_crlf_lines_of_75_octets_and_a_file_to_keep()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string address = await CreateAsync(client, TwoRounds);

        using HttpResponseMessage response = await client.GetAsync(new Uri($"{address}/calendar.ics", UriKind.Relative));

        string text = await response.Content.ReadAsStringAsync();
        Assert.Equal("text/calendar", response.Content.Headers.ContentType?.MediaType);
        Assert.Equal("attachment; filename=\"calendar.ics\"", response.Content.Headers.ContentDisposition?.ToString());
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"), line => Assert.InRange(System.Text.Encoding.UTF8.GetByteCount(line), 0, 75));
    }

    [Theory]
    [InlineData("start=tomorrow", "start")]
    [InlineData("start=2026-12-01", "start")]
    [InlineData("start=2026-02-30T09:00", "start")]
    [InlineData("start=1999-12-31T09:00", "start")]
    [InlineData("start=9999-12-31T09:00", "start")]
    [InlineData("zone=Tern/Island", "zone")]
    [InlineData("zone=", "zone")]
    public async Task Calendar_from_when_or_where_there_is_not_is_400_naming_it(string query, string field)
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string address = await CreateAsync(client, SampleOrders.Smallest);

        using HttpResponseMessage response = await client.GetAsync(new Uri($"{address}/calendar.ics?{query}", UriKind.Relative));

        JsonElement problem = await Json.ReadProblemAsync(response, 400, "/problems/invalid-request");
        Assert.Equal([field], problem.GetProperty("errors").EnumerateObject().Select(error => error.Name));
    }

    [Fact]
    public async Task Calendar_of_more_than_a_year_is_422()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string order = Json.With(Json.With(TwoRounds, "panels[0].quantity", "400"), "bench", """{ "pressSpaces": 1, "stackHeight": 1 }""");
        string address = await CreateAsync(client, order);

        using HttpResponseMessage response = await client.GetAsync(new Uri($"{address}/calendar.ics", UriKind.Relative));

        await Json.ReadProblemAsync(response, 422, "/problems/too-many-days");
    }

    [Fact]
    public async Task Calendar_of_no_plan_is_404()
    {
        using HttpClient client = hosts.Plain.CreateClient();

        using HttpResponseMessage response = await client.GetAsync(new Uri("/api/plans/none/calendar.ics", UriKind.Relative));

        await Json.ReadProblemAsync(response, 404, "/problems/no-such-plan");
    }

    // Samoa crossed the date line: its Thursday, 29 December 2011, was followed by Saturday.
    [Fact]
    public async Task Calendar_over_a_day_that_a_zone_left_out_goes_on_the_day_after_it()
    {
        using HttpClient client = hosts.Plain.CreateClient();
        string order = Json.With(TwoRounds, "schedule", """{ "start": "2011-12-29", "days": ["thursday", "friday", "saturday"], "zone": "Pacific/Apia" }""");

        CalendarEvent[] events = await EventsAsync(client, await CreateAsync(client, order), "");

        // 9:00 is 19:00 UTC on either side of the line, a day after the other.
        Assert.Equal("12-29 19:00", At(events[0]));
        Assert.Equal("12-30 19:00", At(events.Where(e => Task(e) == "glue").ElementAt(2)));
    }

    private static async Task<string> CreateAsync(HttpClient client, string order)
    {
        using HttpResponseMessage made = await client.PostOrderAsync(order);
        Assert.True(made.StatusCode == HttpStatusCode.Created, await made.Content.ReadAsStringAsync());
        return made.Headers.Location!.OriginalString;
    }

    private static async Task<CalendarEvent[]> EventsAsync(HttpClient client, string address, string query)
    {
        string text = await client.GetStringAsync($"{address}/calendar.ics?{query}");
        return [.. Ical.Net.Calendar.Load(text)!.Events.OrderBy(e => e.Start!.AsUtc)];
    }

    private static string Task(CalendarEvent entry) => entry.Uid!.Split('-')[1];

    private static string At(CalendarEvent entry) =>
        entry.Start!.AsUtc.ToString("MM-dd HH:mm", System.Globalization.CultureInfo.InvariantCulture);

    private static double Minutes(CalendarEvent entry) => (entry.End!.AsUtc - entry.Start!.AsUtc).TotalMinutes;
}
