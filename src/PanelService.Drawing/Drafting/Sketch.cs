using System.Text;
using System.Xml.Linq;

namespace PanelService.Drawing.Drafting;

/// <summary>One drawing while it is made: what is drawn, how it lies on paper, and where text stands already.</summary>
internal sealed class Sketch(Draft draft, PaperFit fit)
{
    public Draft Draft { get; } = draft;

    public PaperFit Fit { get; } = fit;

    public LabelPlacer Labels { get; } = new(8 * fit.Scale);

    /// <summary>All dimension lines: one path, since a crowded sheet has thousands.</summary>
    public StringBuilder Dimensions { get; } = new();

    /// <summary>Sizes.</summary>
    public List<XElement> Letters { get; } = [];

    /// <summary>Marks.</summary>
    public List<XElement> Marks { get; } = [];

    /// <summary>Pieces too small to carry their mark: each gets a leader line to the margin.</summary>
    public List<DraftPiece> Unmarked { get; } = [];

    /// <summary>How many texts found no place at all: the key says so.</summary>
    public int Left { get; set; }

    /// <summary>Millimetres of paper as millimetres of the material.</summary>
    public double Paper(double millimetres) => millimetres * Fit.Scale;
}
