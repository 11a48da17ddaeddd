using System.Collections.Immutable;

namespace PanelService.Drawing;

/// <summary>How labels lie on a sheet of paper. Sizes in mm.</summary>
/// <param name="Name">"plain", or columns × rows as common label sheets have them: "3x8".</param>
/// <param name="Paper">The paper.</param>
/// <param name="Columns">Labels across.</param>
/// <param name="Rows">Labels down.</param>
/// <param name="Width">Width of a label.</param>
/// <param name="Height">Height of a label.</param>
/// <param name="Left">From the paper's left edge to the first label.</param>
/// <param name="Top">From its top edge.</param>
/// <param name="GapAcross">Between two columns.</param>
public sealed record LabelSheet(
    string Name, LabelPaper Paper, int Columns, int Rows, double Width, double Height, double Left, double Top, double GapAcross)
{
    /// <summary>How many labels a sheet has.</summary>
    public int Count => Columns * Rows;

    /// <summary>Whether it is plain paper, with marks to cut along.</summary>
    public bool IsPlain => Name == "plain";

    /// <summary>Plain A4 and Letter, then the grids that self-adhesive sheets commonly have (common practice; measure yours).</summary>
    public static ImmutableArray<LabelSheet> All { get; } =
    [
        new("plain", LabelPaper.A4, 2, 6, 90, 41, 15, 25.5, 0),
        new("2x4", LabelPaper.A4, 2, 4, 99.1, 67.7, 4.65, 13.1, 2.5),
        new("2x7", LabelPaper.A4, 2, 7, 99.1, 38.1, 4.65, 15.15, 2.5),
        new("3x7", LabelPaper.A4, 3, 7, 63.5, 38.1, 7.25, 15.15, 2.5),
        new("3x8", LabelPaper.A4, 3, 8, 70, 37, 0, 0.5, 0),
        new("plain", LabelPaper.Letter, 2, 6, 90, 41, 17.95, 16.7, 0),
        new("2x5", LabelPaper.Letter, 2, 5, 101.6, 50.8, 3.95, 12.7, 4.8),
        new("2x7", LabelPaper.Letter, 2, 7, 101.6, 33.8, 3.95, 21.4, 4.8),
        new("3x10", LabelPaper.Letter, 3, 10, 66.7, 25.4, 4.8, 12.7, 3.1),
    ];

    /// <summary>The sheet of a name on a paper; null: there is none.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="name">The name.</param>
    public static LabelSheet? Find(LabelPaper paper, string name) => All.FirstOrDefault(sheet => sheet.Paper == paper && sheet.Name == name);

    /// <summary>The paper's width and height.</summary>
    public (double Width, double Height) PaperSize => Paper == LabelPaper.A4 ? (210, 297) : (215.9, 279.4);
}
