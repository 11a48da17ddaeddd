using System.Collections.Immutable;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Slips;

/// <summary>One entry of the slip: a setting, or what of a long one goes on here.</summary>
/// <param name="Step">The step.</param>
/// <param name="Passes">Its passes that stand in this entry.</param>
/// <param name="Continued">Whether an entry before this one began the step.</param>
/// <param name="Lines">What goes through and what comes out, in lines that fit beside the pictures.</param>
/// <param name="Cautions">What is to be minded, in lines; said where the step begins.</param>
internal sealed record SlipEntry(
    SawStep Step, ImmutableArray<SawPass> Passes, bool Continued, ImmutableArray<SlipLine> Lines, ImmutableArray<string> Cautions)
{
    public const double HeadHeight = 10;
    public const double LineHeight = 4.9;
    public const double PictureHeight = 25;
    public const double PictureWidth = 15;
    public const double CautionHeight = 3.5;

    private const double Gap = 4;
    private const int Pictures = 3;

    /// <summary>The sheets that go through, as many as are drawn.</summary>
    public ImmutableArray<int> Drawn => [.. DrawnOf(Passes)];

    /// <summary>Height on paper, in millimetres.</summary>
    public double Height => Math.Max(PictureHeight, HeadHeight + (Lines.Length * LineHeight)) + (Cautions.Length * CautionHeight) + Gap;

    /// <summary>Width on paper that the pictures of some passes take, in millimetres.</summary>
    public static double ForPictures(IEnumerable<SawPass> passes) => (DrawnOf(passes).Count() * (PictureWidth + 1)) + 2;

    private static IEnumerable<int> DrawnOf(IEnumerable<SawPass> passes) => passes.Select(pass => pass.Sheet).Distinct().Take(Pictures);
}

/// <summary>A line of an entry.</summary>
/// <param name="Text">What it says.</param>
/// <param name="IsFirst">Whether a pass begins with it, so that there is a box to tick.</param>
internal sealed record SlipLine(string Text, bool IsFirst);
