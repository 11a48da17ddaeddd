using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using PanelService.Store.Plans;
using PanelService.Wire.Reading;

namespace PanelService.Http;

/// <summary>Which stored plans are listed.</summary>
/// <param name="Title">Part of the title, whatever its case.</param>
/// <param name="From">The first day, or the moment from which on.</param>
/// <param name="To">The last day, or the moment before which.</param>
/// <param name="Skip">How many to pass over; 0 where not said.</param>
/// <param name="Take">How many at most, 1 to 500; 50 where not said.</param>
internal sealed record PlanListQuery(
    [property: FromQuery(Name = "title")] string? Title,
    [property: FromQuery(Name = "from")] string? From,
    [property: FromQuery(Name = "to")] string? To,
    [property: FromQuery(Name = "skip")] string? Skip,
    [property: FromQuery(Name = "take")] string? Take)
{
    private const int Usual = 50;
    private const int Most = 500;
    private const string Day = "yyyy-MM-dd";

    /// <summary>The search, or the problem with it.</summary>
    internal (PlanSearch Search, ProblemHttpResult? Fault) Read()
    {
        var faults = new Faults();
        var search = new PlanSearch(
            Title,
            Moment(From, "from", dayAfter: false, faults),
            Moment(To, "to", dayAfter: true, faults),
            Whole(Skip, "skip", 0, 0, int.MaxValue, faults),
            Whole(Take, "take", Usual, 1, Most, faults));
        return (search, faults.Any ? Problems.Invalid(faults) : null);
    }

    private static DateTimeOffset? Moment(string? text, string name, bool dayAfter, Faults faults)
    {
        if (string.IsNullOrEmpty(text))
        {
            return null;
        }

        if (DateOnly.TryParseExact(text, Day, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) && day < DateOnly.MaxValue)
        {
            return new DateTimeOffset((dayAfter ? day.AddDays(1) : day).ToDateTime(TimeOnly.MinValue), TimeSpan.Zero);
        }

        if (text.Contains('T', StringComparison.Ordinal)
            && DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset moment))
        {
            return moment;
        }

        faults.Add(name, "Expected a day such as 2026-11-25, or a moment such as 2026-11-25T09:00:00Z.");
        return null;
    }

    private static int Whole(string? text, string name, int usual, int least, int most, Faults faults)
    {
        if (string.IsNullOrEmpty(text))
        {
            return usual;
        }

        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= least && number <= most)
        {
            return number;
        }

        faults.Add(name, string.Create(CultureInfo.InvariantCulture, $"Expected a whole number from {least} to {most}; {usual} where it is not said."));
        return usual;
    }
}
