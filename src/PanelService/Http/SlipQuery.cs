using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Net.Http.Headers;
using PanelService.Drawing;
using PanelService.Wire.Reading;

namespace PanelService.Http;

/// <summary>Which page of a slip, on which paper, in which language.</summary>
/// <param name="Paper">"a4" or "letter"; a4 where not said.</param>
/// <param name="Page">1 and up; 1 where not said.</param>
/// <param name="Lang">"en" or "fr"; where not said the first of these that Accept-Language names, else en.</param>
internal sealed record SlipQuery(
    [property: FromQuery(Name = "paper")] string? Paper,
    [property: FromQuery(Name = "page")] string? Page,
    [property: FromQuery(Name = "lang")] string? Lang)
{
    /// <summary>Paper and page.</summary>
    internal LabelsQuery Place => new(Paper, Page);

    /// <summary>The language, or the problem with it.</summary>
    internal (SlipLanguage Language, ProblemHttpResult? Fault) Language(HttpRequest request)
    {
        switch (Lang)
        {
            case null:
                return (Accepted(request), null);
            case "en":
                return (SlipLanguage.English, null);
            case "fr":
                return (SlipLanguage.French, null);
            default:
                var faults = new Faults();
                faults.Add("lang", "Expected \"en\" or \"fr\"; where it is not said, what Accept-Language asks for, else en.");
                return (SlipLanguage.English, Problems.Invalid(faults));
        }
    }

    private static SlipLanguage Accepted(HttpRequest request) =>
        StringWithQualityHeaderValue.TryParseList(request.Headers.AcceptLanguage, out var wished)
            && wished.Where(one => one.Quality != 0)
                .OrderByDescending(one => one.Quality ?? 1)
                .Select(one => one.Value.Value?.Split('-')[0])
                .FirstOrDefault(code => code is "en" or "fr") == "fr"
            ? SlipLanguage.French
            : SlipLanguage.English;
}
