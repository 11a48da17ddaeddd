using Microsoft.Net.Http.Headers;
using PanelService.Drawing;
using PanelService.Wire.Reading;

namespace PanelService.Http;

/// <summary>The language of what is printed: as it is asked for, else as the browser prefers.</summary>
internal static class PaperLanguage
{
    /// <summary>Reads it.</summary>
    /// <param name="lang">"en" or "fr"; null: not said.</param>
    /// <param name="request">Where Accept-Language stands.</param>
    /// <param name="faults">Told where it is neither.</param>
    internal static SlipLanguage Read(string? lang, HttpRequest request, Faults faults)
    {
        switch (lang)
        {
            case null:
                return Accepted(request);
            case "en":
                return SlipLanguage.English;
            case "fr":
                return SlipLanguage.French;
            default:
                faults.Add("lang", "Expected \"en\" or \"fr\"; where it is not said, what Accept-Language asks for, else en.");
                return SlipLanguage.English;
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
