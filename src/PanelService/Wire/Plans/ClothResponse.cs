using PanelService.Planning.Plans;

namespace PanelService.Wire.Plans;

/// <summary>One distinct way of cutting a length, a roll or a remnant. y runs along the roll.</summary>
internal sealed record ClothResponse
{
    /// <summary>1, 2, …</summary>
    public required int Number { get; init; }

    /// <summary>How many are cut so.</summary>
    public required int Copies { get; init; }

    /// <summary>The cloth's id.</summary>
    public required string Cloth { get; init; }

    /// <summary>The cloth's name, where it has one.</summary>
    public string? Name { get; init; }

    /// <summary>Bought or on hand.</summary>
    public required Source Source { get; init; }

    /// <summary>The remnant's id, where it is one.</summary>
    public string? Remnant { get; init; }

    /// <summary>Full width, selvedges included.</summary>
    public required decimal Width { get; init; }

    /// <summary>Length along the roll.</summary>
    public required decimal Length { get; init; }

    /// <summary>Lost at each side.</summary>
    public required decimal Selvedge { get; init; }

    /// <summary>The pieces of one copy, margins included.</summary>
    public required IReadOnlyList<PieceResponse> Pieces { get; init; }

    /// <summary>The leftovers of one copy.</summary>
    public required IReadOnlyList<ClothOffcutResponse> Offcuts { get; init; }

    /// <summary>Area of one copy that is neither piece nor kept.</summary>
    public required decimal Waste { get; init; }

    /// <summary>How far the knife cuts on one copy, between the selvedges, to part pieces and leftovers.</summary>
    public required decimal CutLength { get; init; }

    /// <summary>Where its drawing is; left out for a plan that is not kept.</summary>
    public string? Drawing { get; init; }

    /// <summary>The drawing itself; only with <c>?drawings=inline</c>.</summary>
    public string? Svg { get; init; }
}

/// <summary>A leftover of a cloth.</summary>
/// <param name="X">Along the width.</param>
/// <param name="Y">Along the roll.</param>
/// <param name="Width">Along x.</param>
/// <param name="Length">Along the roll.</param>
/// <param name="Kept">Whether it is kept.</param>
internal sealed record ClothOffcutResponse(decimal X, decimal Y, decimal Width, decimal Length, bool Kept);

/// <summary>How much of a liquid the batch takes and where it comes from.</summary>
/// <param name="Id">The liquid's id.</param>
/// <param name="Kind">"adhesive" or "primer".</param>
/// <param name="Needed">What the batch takes.</param>
/// <param name="FromHand">How much of that is on hand.</param>
/// <param name="Bought">The containers bought.</param>
/// <param name="Left">What is left afterwards, on hand and bought together.</param>
/// <param name="Name">Its name, where it has one.</param>
internal sealed record LiquidResponse(
    string Id, string Kind, decimal Needed, decimal FromHand, IReadOnlyList<ContainerResponse> Bought, decimal Left, string? Name);

/// <summary>Containers of one size.</summary>
/// <param name="Volume">What is in one.</param>
/// <param name="Count">How many.</param>
/// <param name="Price">Price of one.</param>
internal sealed record ContainerResponse(decimal Volume, int Count, decimal Price);
