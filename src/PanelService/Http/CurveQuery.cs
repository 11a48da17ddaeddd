using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using PanelService.Wire.Reading;

namespace PanelService.Http;

/// <summary>How far a batch curve goes.</summary>
/// <param name="UpTo">How many times over the order is planned at most, 1 to 20; 10 where it is not said.</param>
internal sealed record CurveQuery([property: FromQuery(Name = "upTo")] string? UpTo)
{
    private const int Usual = 10;
    private const int Most = 20;

    /// <summary>The number, or the problem with it.</summary>
    internal (int Times, ProblemHttpResult? Fault) Read()
    {
        if (UpTo is null)
        {
            return (Usual, null);
        }

        if (int.TryParse(UpTo, NumberStyles.None, CultureInfo.InvariantCulture, out int times) && times is >= 1 and <= Most)
        {
            return (times, null);
        }

        var faults = new Faults();
        faults.Add("upTo", $"Expected a whole number from 1 to {Most}: how many times over the order is planned; {Usual} where it is not said.");
        return (0, Problems.Invalid(faults));
    }
}
