using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace PanelService.Browser.Tests;

/// <summary>One page of paper as it comes out of the printer.</summary>
/// <param name="Text">What stands on it, without white space: how words are spaced is the printer's matter.</param>
/// <param name="Width">Of the paper, in points.</param>
/// <param name="Height">Of the paper, in points.</param>
/// <param name="Left">How far the leftmost letter stands from the edge, in points.</param>
/// <param name="Right">How far the rightmost letter stands from the edge.</param>
/// <param name="Bottom">How far the lowest letter stands from the edge.</param>
internal sealed record Printed(string Text, double Width, double Height, double Left, double Right, double Bottom)
{
    /// <summary>The pages of a PDF.</summary>
    public static IReadOnlyList<Printed> Read(byte[] pdf)
    {
        using PdfDocument document = PdfDocument.Open(pdf);
        return [.. document.GetPages().Select(Read)];
    }

    /// <summary>Text as <see cref="Text"/> has it.</summary>
    public static string Close(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private static Printed Read(Page page)
    {
        Letter[] letters = [.. page.Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value))];
        return new Printed(
            Close(string.Concat(letters.Select(letter => letter.Value))),
            page.Width,
            page.Height,
            letters.Select(letter => letter.StartBaseLine.X).DefaultIfEmpty(page.Width).Min(),
            page.Width - letters.Select(letter => letter.EndBaseLine.X).DefaultIfEmpty(0).Max(),
            letters.Select(letter => letter.StartBaseLine.Y).DefaultIfEmpty(page.Height).Min());
    }
}
