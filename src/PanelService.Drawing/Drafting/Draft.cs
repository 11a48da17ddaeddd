using System.Collections.Immutable;
using PanelService.Planning.Measures;

namespace PanelService.Drawing.Drafting;

/// <summary>
/// What is to be drawn, whatever the material: a sheet of board, a length of cloth, the answer to a yield
/// question. All boxes are in millimetres of the material from its corner.
/// </summary>
internal sealed record Draft
{
    /// <summary>One word for the style sheet of whoever shows it: "sheet", "cloth" or "yield".</summary>
    public required string Sort { get; init; }

    /// <summary>The batch's name; may be empty.</summary>
    public required string Batch { get; init; }

    /// <summary>"Sheet 1 of 3".</summary>
    public required string Name { get; init; }

    /// <summary>"Cut 2 like this".</summary>
    public required string Copies { get; init; }

    /// <summary>What it is cut from, in words, with its size and where it comes from.</summary>
    public required string Material { get; init; }

    /// <summary>What a person who cannot see the drawing needs: every piece and leftover in a sentence.</summary>
    public required string Description { get; init; }

    /// <summary>The unit sizes are written in.</summary>
    public required LengthUnit Unit { get; init; }

    /// <summary>The whole material.</summary>
    public required Length Width { get; init; }

    /// <summary>The whole material.</summary>
    public required Length Height { get; init; }

    /// <summary>The pieces.</summary>
    public required ImmutableArray<DraftPiece> Pieces { get; init; }

    /// <summary>The leftovers.</summary>
    public required ImmutableArray<DraftOffcut> Offcuts { get; init; }

    /// <summary>The blade's paths; none on cloth.</summary>
    public ImmutableArray<DraftCut> Cuts { get; init; } = [];

    /// <summary>Strips that hold nothing: selvedges.</summary>
    public ImmutableArray<Box> Bands { get; init; } = [];

    /// <summary>What a band is called.</summary>
    public string BandWord { get; init; } = "";

    /// <summary>One line of the key for every mark: the mark, then what it is.</summary>
    public required ImmutableArray<DraftKey> Keys { get; init; }

    /// <summary>What runs along the height: "grain" or "warp"; null where it does not matter.</summary>
    public string? Along { get; init; }

    /// <summary>Whether a long one may be drawn in parts, side by side: nothing on it may run across all of its length but leftovers and bands.</summary>
    public bool MayFold { get; init; }

    /// <summary>The parts, from the beginning to the end; none where it is drawn in one piece.</summary>
    public ImmutableArray<DraftPart> Parts { get; init; } = [];

    /// <summary>The material as a box; in parts, all of them with the room between.</summary>
    public Box Outline => Parts.IsEmpty
        ? new(0, 0, Millimetres.Of(Width), Millimetres.Of(Height))
        : new(0, 0, Parts[^1].Box.Right, Parts.Max(part => part.Box.Height));
}

/// <summary>A part of what is too long to be drawn in one piece.</summary>
/// <param name="From">Where on the material it begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Box">Where it is drawn.</param>
internal sealed record DraftPart(Length From, Length To, Box Box);

/// <summary>A piece in its place.</summary>
/// <param name="Mark">Its mark.</param>
/// <param name="Box">Where it lies.</param>
/// <param name="Width">Its size along x, as written.</param>
/// <param name="Height">Its size along y, as written.</param>
/// <param name="Turned">Whether it lies on its side.</param>
/// <param name="Panel">The panel under a piece of cloth; null where the piece is the panel.</param>
internal sealed record DraftPiece(string Mark, Box Box, Length Width, Length Height, bool Turned, Box? Panel = null);

/// <summary>A leftover.</summary>
/// <param name="Box">Where it lies.</param>
/// <param name="Width">Its size along x, as written.</param>
/// <param name="Height">Its size along y, as written.</param>
/// <param name="Kept">Whether it goes back on the rack.</param>
/// <param name="Named">Whether it is named here; of one that lies in several parts only the largest is.</param>
internal sealed record DraftOffcut(Box Box, Length Width, Length Height, bool Kept, bool Named = true);

/// <summary>A cut.</summary>
/// <param name="Number">Its number on the sheet.</param>
/// <param name="Path">What the blade turns to dust, as far as it lies on the material.</param>
/// <param name="AlongY">Whether the blade travels along y.</param>
/// <param name="Note">What it does, for who points at it.</param>
/// <param name="BySupplier">Whether it is made where the sheet is bought.</param>
internal sealed record DraftCut(int Number, Box Path, bool AlongY, string Note, bool BySupplier = false);

/// <summary>A line of the key.</summary>
/// <param name="Mark">The mark as drawn.</param>
/// <param name="Text">How many of what size.</param>
internal sealed record DraftKey(string Mark, string Text);
