using System.Text.Json.Serialization;
using PanelService.Cutting;
using PanelService.Planning.Plans;

namespace PanelService.Wire.Plans;

/// <summary>One distinct way of cutting a sheet. x runs along the width, y along the height, from one corner.</summary>
internal sealed record SheetResponse
{
    /// <summary>1, 2, …</summary>
    public required int Number { get; init; }

    /// <summary>How many sheets are cut so.</summary>
    public required int Copies { get; init; }

    /// <summary>The board's id.</summary>
    public required string Board { get; init; }

    /// <summary>The board's name, where it has one: an order that took it from the shelf does not say it.</summary>
    public string? Name { get; init; }

    /// <summary>Bought or on hand.</summary>
    public required Source Source { get; init; }

    /// <summary>Full width.</summary>
    public required decimal Width { get; init; }

    /// <summary>Full height.</summary>
    public required decimal Height { get; init; }

    /// <summary>Thickness.</summary>
    public required decimal Thickness { get; init; }

    /// <summary>What one cut turns to dust.</summary>
    public required decimal Kerf { get; init; }

    /// <summary>What is lost at each factory edge.</summary>
    public required decimal EdgeTrim { get; init; }

    /// <summary>The pieces of one copy.</summary>
    public required IReadOnlyList<PieceResponse> Pieces { get; init; }

    /// <summary>The leftovers of one copy.</summary>
    public required IReadOnlyList<OffcutResponse> Offcuts { get; init; }

    /// <summary>The cuts, in an order they can be made in.</summary>
    public required IReadOnlyList<CutResponse> Cuts { get; init; }

    /// <summary>Areas lost on one copy.</summary>
    public required SheetWasteResponse Waste { get; init; }

    /// <summary>How far the saw cuts on one copy: each cut from edge to edge of its workpiece.</summary>
    public required decimal CutLength { get; init; }

    /// <summary>Where its drawing is; left out for a sheet that belongs to no plan.</summary>
    public string? Drawing { get; init; }

    /// <summary>The drawing itself; only with <c>?drawings=inline</c>, and for a yield.</summary>
    public string? Svg { get; init; }
}

/// <summary>A panel's board, or its cloth, in its place.</summary>
/// <param name="Mark">The line's mark.</param>
/// <param name="X">Along the material's width.</param>
/// <param name="Y">Along the material's height or length.</param>
/// <param name="Width">As it lies.</param>
/// <param name="Height">As it lies.</param>
/// <param name="Turned">Whether the panel's own width lies along y.</param>
internal sealed record PieceResponse(string Mark, decimal X, decimal Y, decimal Width, decimal Height, bool Turned);

/// <summary>A leftover of a sheet.</summary>
/// <param name="X">Along the width.</param>
/// <param name="Y">Along the height.</param>
/// <param name="Width">Along x.</param>
/// <param name="Height">Along y.</param>
/// <param name="Kept">Whether it goes back on the rack.</param>
internal sealed record OffcutResponse(decimal X, decimal Y, decimal Width, decimal Height, bool Kept);

/// <summary>One cut: the blade's path is [at, at + kerf], from edge to edge of its workpiece.</summary>
/// <param name="Number">1, 2, … in the order they are made.</param>
/// <param name="Workpiece">What is cut in two.</param>
/// <param name="Axis">The axis cut across: "x" when the blade travels along y.</param>
/// <param name="At">Where the blade's path begins.</param>
/// <param name="By">Who cuts: "saw", the painter's own, or "supplier", where the sheet is bought; the supplier's cuts come first.</param>
/// <param name="Kerf">What the supplier's cut turns to dust; left out for the saw's, which is the sheet's.</param>
internal sealed record CutResponse(
    int Number,
    WorkpieceResponse Workpiece,
    Axis Axis,
    decimal At,
    string By,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] decimal? Kerf);

/// <summary>A rectangle that is cut in two.</summary>
/// <param name="X">Its corner.</param>
/// <param name="Y">Its corner.</param>
/// <param name="Width">Along x.</param>
/// <param name="Height">Along y.</param>
internal sealed record WorkpieceResponse(decimal X, decimal Y, decimal Width, decimal Height);

/// <summary>Areas lost.</summary>
/// <param name="Kerf">Turned to dust inside the trimmed sheet.</param>
/// <param name="Trim">Lost at the factory edges, the trimming cuts included.</param>
/// <param name="Scrap">Leftovers too small to keep.</param>
internal sealed record SheetWasteResponse(decimal Kerf, decimal Trim, decimal Scrap);

/// <summary>Cuts made at one setting.</summary>
/// <param name="Step">1, 2, … in the order they are made.</param>
/// <param name="Tool">fence or sled.</param>
/// <param name="Fence">The size of the part kept between fence (or stop) and blade.</param>
/// <param name="Passes">The cuts, each for all copies of its sheet.</param>
/// <param name="Cautions">What to mind; the saw's manual, local rules and an experienced person come first.</param>
internal sealed record SawStepResponse(
    int Step, SawTool Tool, decimal Fence, IReadOnlyList<PassResponse> Passes, IReadOnlyList<CautionResponse> Cautions);

/// <summary>A danger at the saw that cuts of a step raise.</summary>
/// <param name="Id">Stable, lower case with hyphens.</param>
/// <param name="Text">In words, the measures at its end.</param>
/// <param name="Here">The measures of these cuts that raise it, as the tape shows them, the smallest first: "5 in", "24 × 16 in"; left out where no measure does.</param>
internal sealed record CautionResponse(string Id, string Text, string? Here);

/// <summary>One cut of one sheet, made on all its copies.</summary>
/// <param name="Sheet">The sheet's number.</param>
/// <param name="Cut">The cut's number on that sheet.</param>
/// <param name="Edge">The edge of the workpiece, as drawn, that runs along the fence (or lies against the stop).</param>
/// <param name="EdgeBy">What made that edge: the factory or an earlier cut.</param>
internal sealed record PassResponse(int Sheet, int Cut, SheetEdge Edge, EdgeMaker EdgeBy);

/// <summary>How many settings, changes and cuts the saw run has, and how few of each there could be.</summary>
/// <param name="Settings">Distinct settings: fence distances and stops of the sled.</param>
/// <param name="LeastPossible">No run that leaves the same pieces and offcuts has fewer, whatever the order of the cuts and the side of the blade.</param>
/// <param name="Proven">Whether the two are equal.</param>
/// <param name="Steps">Steps of the run; a setting may come back.</param>
/// <param name="Changes">How often the setting is changed: one less than there are steps.</param>
/// <param name="LeastChanges">No run that leaves the same pieces and offcuts at so few settings has fewer changes.</param>
/// <param name="ChangesProven">Whether the two are equal.</param>
/// <param name="Cuts">Cuts at the saw, on all copies of every sheet.</param>
/// <param name="LeastCuts">Nobody leaves the same pieces and offcuts with fewer cuts, at however many settings.</param>
/// <param name="CutsProven">Whether the two are equal.</param>
internal sealed record SawProofResponse(
    int Settings, int LeastPossible, bool Proven, int Steps, int Changes, int LeastChanges, bool ChangesProven, long Cuts, long LeastCuts, bool CutsProven)
{
    /// <summary>As told to the client.</summary>
    public static SawProofResponse Of(SawProof proof) => new(
        proof.Settings,
        proof.LeastPossible,
        proof.Proven,
        proof.Steps,
        proof.Changes,
        proof.LeastChanges,
        proof.ChangesProven,
        proof.Cuts,
        proof.LeastCuts,
        proof.CutsProven);
}

/// <summary>Panels of one line that do not all get one of their sizes at one setting.</summary>
/// <param name="Mark">The line's mark.</param>
/// <param name="Side">Which of its sizes.</param>
/// <param name="Size">As cut.</param>
/// <param name="AtOneSetting">How many get it at the setting that most get it at.</param>
/// <param name="Otherwise">How many get it at another setting, as what another cut leaves, or from the factory.</param>
internal sealed record UnmatchedResponse(string Mark, PanelSide Side, decimal Size, int AtOneSetting, int Otherwise);

/// <summary>How far the panels of one line may come out from their cut size, by the chain of cuts that made them.</summary>
/// <param name="Mark">The line's mark.</param>
/// <param name="Width">Most that the width may be off, either way.</param>
/// <param name="Height">Most that the height may be off, either way.</param>
/// <param name="OutOfSquare">Most that the long side may lean over its length (a sheet's edge: 2 mm/m, EN 622-1, from memory).</param>
/// <param name="Fits">Whether even the largest goes into a frame of the nominal size.</param>
/// <param name="HidesGap">Whether even the smallest, pushed aside, shows no gap behind a 1/4 in lip.</param>
internal sealed record ToleranceResponse(string Mark, decimal Width, decimal Height, decimal OutOfSquare, bool Fits, bool HidesGap);
