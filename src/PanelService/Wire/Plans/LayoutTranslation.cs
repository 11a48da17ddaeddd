using PanelService.Planning.Plans;

namespace PanelService.Wire.Plans;

/// <summary>Sheets, cloths and the saw run as the wire shows them.</summary>
internal sealed class LayoutTranslation(Plan plan, DrawingLinks drawings)
{
    private readonly WireNumbers _numbers = new(plan.Order);

    internal SheetResponse Sheet(SheetLayout sheet) => new()
    {
        Number = sheet.Number,
        Copies = sheet.Copies,
        Board = sheet.Board.Id,
        Name = sheet.Board.Name,
        Source = sheet.Source,
        Width = _numbers.Of(sheet.Board.Width),
        Height = _numbers.Of(sheet.Board.Height),
        Thickness = _numbers.Of(sheet.Board.Thickness),
        Kerf = _numbers.Of(sheet.Kerf),
        EdgeTrim = _numbers.Of(sheet.EdgeTrim),
        Pieces = [.. sheet.Pieces.Select(Piece)],
        Offcuts = [.. sheet.Offcuts.Select(o => new OffcutResponse(_numbers.Of(o.X), _numbers.Of(o.Y), _numbers.Of(o.Width), _numbers.Of(o.Height), o.Kept))],
        Cuts = [.. sheet.Cuts.Select(Cut)],
        Waste = new(_numbers.Of(sheet.Waste.Kerf), _numbers.Of(sheet.Waste.Trim), _numbers.Of(sheet.Waste.Scrap)),
        CutLength = _numbers.Of(sheet.CutLength),
        Drawing = drawings.SheetAddress(sheet.Number),
        Svg = drawings.SheetInline(plan, sheet.Number),
    };

    internal ClothResponse Cloth(ClothLayout cloth) => new()
    {
        Number = cloth.Number,
        Copies = cloth.Copies,
        Cloth = cloth.Cloth.Id,
        Name = cloth.Cloth.Name,
        Source = cloth.Source,
        Remnant = cloth.Remnant?.Id,
        Width = _numbers.Of(cloth.Width),
        Length = _numbers.Of(cloth.Length),
        Selvedge = _numbers.Of(cloth.Selvedge),
        Pieces = [.. cloth.Pieces.Select(Piece)],
        Offcuts = [.. cloth.Offcuts.Select(o => new ClothOffcutResponse(_numbers.Of(o.X), _numbers.Of(o.Y), _numbers.Of(o.Width), _numbers.Of(o.Height), o.Kept))],
        Waste = _numbers.Of(cloth.Waste),
        CutLength = _numbers.Of(cloth.CutLength),
        Drawing = drawings.ClothAddress(cloth.Number),
        Svg = drawings.ClothInline(plan, cloth.Number),
    };

    internal SawStepResponse Step(SawStep step) => new(
        step.Step,
        step.Tool,
        _numbers.Of(step.Fence),
        [.. step.Passes.Select(pass => new PassResponse(pass.Sheet, pass.Cut, pass.Edge, pass.EdgeBy))],
        [.. step.Cautions.Select(caution => new CautionResponse(caution.Id, caution.Text, caution.Here))]);

    private PieceResponse Piece(PlacedPanel piece) => new(
        piece.Mark, _numbers.Of(piece.X), _numbers.Of(piece.Y), _numbers.Of(piece.Width), _numbers.Of(piece.Height), piece.Turned);

    private CutResponse Cut(SheetCut cut) => new(
        cut.Number,
        new(_numbers.Of(cut.X), _numbers.Of(cut.Y), _numbers.Of(cut.Width), _numbers.Of(cut.Height)),
        cut.Axis,
        _numbers.Of(cut.At),
        cut.BySupplier ? "supplier" : "saw",
        cut.SupplierKerf is { } kerf ? _numbers.Of(kerf) : null);
}
