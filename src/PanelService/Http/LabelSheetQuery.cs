using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using PanelService.Drawing;
using PanelService.Wire.Reading;

namespace PanelService.Http;

/// <summary>Which page of labels, on which sheet, with which date, in which language.</summary>
/// <param name="Paper">"a4" or "letter"; a4 where not said.</param>
/// <param name="Page">1 and up; 1 where not said.</param>
/// <param name="Grid">"plain" or a grid of common label sheets, such as "3x8"; plain where not said.</param>
/// <param name="Date">A day such as 2026-12-01 to stand on the labels; room to write it where not said.</param>
/// <param name="Lang">"en" or "fr"; where not said the first of these that Accept-Language names, else en.</param>
internal sealed record LabelSheetQuery(
    [property: FromQuery(Name = "paper")] string? Paper,
    [property: FromQuery(Name = "page")] string? Page,
    [property: FromQuery(Name = "grid")] string? Grid,
    [property: FromQuery(Name = "date")] string? Date,
    [property: FromQuery(Name = "lang")] string? Lang)
{
    /// <summary>All of it, or the problem with it.</summary>
    internal (LabelSheet Sheet, int Page, SlipLanguage Language, ProblemHttpResult? Fault) Read(HttpRequest request)
    {
        var (paper, page, fault) = new LabelsQuery(Paper, Page).Read();
        if (fault is not null)
        {
            return (LabelSheet.All[0], page, SlipLanguage.English, fault);
        }

        var faults = new Faults();
        SlipLanguage language = PaperLanguage.Read(Lang, request, faults);
        LabelSheet? sheet = LabelSheet.Find(paper, Grid ?? "plain");
        if (sheet is null)
        {
            faults.Add("grid", $"Expected one of {string.Join(", ", LabelSheet.All.Where(one => one.Paper == paper).Select(one => $"\"{one.Name}\""))} on this paper; plain where it is not said.");
        }

        if (Date is not null && !DateOnly.TryParseExact(Date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
        {
            faults.Add("date", "Expected a day such as 2026-12-01; room to write it where it is not said.");
        }

        return (sheet ?? LabelSheet.All[0], page, language, faults.Any ? Problems.Invalid(faults) : null);
    }
}
