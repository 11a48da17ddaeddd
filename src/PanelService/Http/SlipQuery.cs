using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
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
        var faults = new Faults();
        SlipLanguage language = PaperLanguage.Read(Lang, request, faults);
        return (language, faults.Any ? Problems.Invalid(faults) : null);
    }
}
