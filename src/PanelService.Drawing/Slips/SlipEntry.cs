using System.Collections.Immutable;
using PanelService.Planning.Plans;

namespace PanelService.Drawing.Slips;

/// <summary>One entry of the slip: a setting, or what of a long one goes on here.</summary>
/// <param name="Step">The step.</param>
/// <param name="Passes">Its passes that stand in this entry.</param>
/// <param name="Continued">Whether an entry before this one began the step.</param>
internal sealed record SlipEntry(SawStep Step, ImmutableArray<SawPass> Passes, bool Continued)
{
    public const double HeadHeight = 10;
    public const double LineHeight = 4.4;
    public const double PictureHeight = 25;

    private const double Gap = 4;
    private const double CautionHeight = 3.4;

    /// <summary>What is to be minded, said where the step begins.</summary>
    public ImmutableArray<Warning> Cautions => Continued ? [] : Step.Cautions;

    /// <summary>The sheets that go through.</summary>
    public ImmutableArray<int> Sheets => [.. Passes.Select(pass => pass.Sheet).Distinct()];

    /// <summary>Height on paper, in millimetres.</summary>
    public double Height(int cautionLines) =>
        Math.Max(PictureHeight, HeadHeight + (Passes.Length * LineHeight)) + (cautionLines * CautionHeight) + Gap;
}
