using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using PanelService.Drawing;
using PanelService.Wire.Reading;

namespace PanelService.Http;

/// <summary>Which page of labels or of the saw slip, on which paper.</summary>
/// <param name="Paper">"a4" or "letter"; a4 where not said.</param>
/// <param name="Page">1 and up; 1 where not said.</param>
internal sealed record LabelsQuery(
    [property: FromQuery(Name = "paper")] string? Paper, [property: FromQuery(Name = "page")] string? Page)
{
    /// <summary>Both, or the problem with them.</summary>
    internal (LabelPaper Paper, int Page, ProblemHttpResult? Fault) Read()
    {
        var faults = new Faults();
        LabelPaper? paper = Paper switch
        {
            null or "a4" => LabelPaper.A4,
            "letter" => LabelPaper.Letter,
            _ => null,
        };
        if (paper is null)
        {
            faults.Add("paper", "Expected \"a4\" or \"letter\"; a4 where it is not said.");
        }

        int page = 1;
        if (Page is not null && !(int.TryParse(Page, NumberStyles.None, CultureInfo.InvariantCulture, out page) && page >= 1))
        {
            faults.Add("page", "Expected a whole number from 1: the page; 1 where it is not said. The header Page-Count says how many there are.");
        }

        return (paper ?? LabelPaper.A4, page, faults.Any ? Problems.Invalid(faults) : null);
    }
}
