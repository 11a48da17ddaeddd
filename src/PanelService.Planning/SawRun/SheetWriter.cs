// Problem: the cuts of a sheet are chosen; where do its parts lie then, and which panel is which?
// Idea:    from the whole sheet down, every cut lays its two parts side by side. Waste and slivers that are all dust lie on
//          the far side. Panels of one size become the panels of that size the sheet held before, in
//          their order; every other part is an offcut.
// Cost:    linear in the cuts.
using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.SawRun.Graph;
using PanelService.Planning.SawRun.Search;
using PanelService.Planning.Sizes;

namespace PanelService.Planning.SawRun;

/// <summary>Writes one sheet as its chosen cuts leave it.</summary>
internal sealed class SheetWriter
{
    private readonly SheetLayout _sheet;
    private readonly SawSettings _saw;
    private readonly CutChooser _chooser;
    private readonly long _kerf;
    private readonly ILookup<(Length Width, Length Height), PlacedPanel> _panels;
    private readonly Dictionary<(Length Width, Length Height), int> _placed = [];
    private readonly List<PlacedPanel> _pieces = [];
    private readonly List<(Offcut Offcut, bool FromTrim)> _offcuts = [];
    private readonly List<MadeCut> _cuts = [];
    private readonly List<SizedPanel> _sized = [];

    private SheetWriter(SheetLayout sheet, SawSettings saw, CutChooser chooser)
    {
        _sheet = sheet;
        _saw = saw;
        _chooser = chooser;
        _kerf = sheet.Kerf.Steps;
        _panels = sheet.Pieces.ToLookup(piece => (piece.Width, piece.Height));
    }

    /// <summary>Writes.</summary>
    /// <param name="sheet">The sheet as it was laid out.</param>
    /// <param name="parts">What of it comes to the saw, with the shapes.</param>
    /// <param name="saw">What is kept.</param>
    /// <param name="chooser">How everything is cut.</param>
    public static WrittenSheet Write(
        SheetLayout sheet, ImmutableArray<CutPart> parts, SawSettings saw, CutChooser chooser)
    {
        var writer = new SheetWriter(sheet, saw, chooser);
        foreach (var (part, root) in parts)
        {
            writer.Place(root, part.At.X, part.At.Y, new Made(0, part.Width, part.Height));
        }

        return writer.Written();
    }

    private WrittenSheet Written()
    {
        var first = _sheet.Cuts.Where(cut => cut.BySupplier).ToImmutableArray();
        ImmutableArray<MadeCut> cuts = [.. _cuts
            .OrderBy(cut => cut.Step)
            .Select((cut, i) => cut with { Cut = cut.Cut with { Number = first.Length + i + 1 } })];
        var sheet = _sheet with
        {
            Pieces = [.. _pieces.OrderBy(piece => (piece.Y, piece.X))],
            Offcuts = [.. _offcuts.Select(one => one.Offcut).OrderBy(offcut => (offcut.Y, offcut.X))],
            Cuts = [.. first, .. cuts.Select(cut => cut.Cut)],
            Waste = Waste(),
        };
        return new WrittenSheet(sheet, cuts, [.. _sized]);
    }

    private void Place(CutShape shape, long x, long y, Made made)
    {
        if (shape.IsDone)
        {
            Leave(new Rectangle(x, y, shape.Width - _kerf, shape.Height - _kerf), isTrim: false, shape.Arrangement.HoldsPanel ? made : null);
            return;
        }

        var chosen = _chooser.Of(shape, made.From) ?? throw new InvalidOperationException("The run does not cut this workpiece.");
        var split = chosen.Split;
        long room = split.Axis == Axis.X ? shape.Width : shape.Height;
        bool swapped = !split.IsTrim && split.NearSize <= _kerf;
        long firstSize = swapped ? room - split.NearSize : split.NearSize;
        bool firstAtFence = chosen.NearAtFence != swapped;
        AddCut(shape, x, y, (split, firstSize, chosen.Step, firstAtFence));
        PlacePart(
            swapped ? split.Far : split.Near,
            PartOf(shape, split.Axis, (x, y), (0, firstSize)),
            split.IsTrim,
            made.After(split.Axis, chosen.Step, firstAtFence));
        PlacePart(
            swapped ? split.Near : split.Far,
            PartOf(shape, split.Axis, (x, y), (firstSize, room - firstSize)),
            split.IsTrim,
            made.After(split.Axis, chosen.Step, !firstAtFence));
    }

    private void AddCut(CutShape shape, long x, long y, (CutSplit Split, long FirstSize, int Step, bool FirstAtFence) made)
    {
        long at = (made.Split.Axis == Axis.X ? x : y) + made.FirstSize - _kerf;
        var cut = new SheetCut(
            0,
            Length.FromSteps(x),
            Length.FromSteps(y),
            Length.FromSteps(shape.Width - _kerf),
            Length.FromSteps(shape.Height - _kerf),
            made.Split.Axis,
            Length.FromSteps(at),
            made.Split.IsTrim);
        _cuts.Add(new MadeCut(_sheet.Number, cut, made.Step, made.FirstAtFence));
    }

    private static Rectangle PartOf(CutShape shape, Axis axis, (long X, long Y) corner, (long From, long Size) along) => axis == Axis.X
        ? new Rectangle(corner.X + along.From, corner.Y, along.Size, shape.Height)
        : new Rectangle(corner.X, corner.Y + along.From, shape.Width, along.Size);

    private void PlacePart(CutShape? part, Rectangle grown, bool isTrim, Made made)
    {
        if (part is not null)
        {
            Place(part, grown.X, grown.Y, made);
            return;
        }

        Leave(grown with { Width = grown.Width - _kerf, Height = grown.Height - _kerf }, isTrim, asPanel: null);
    }

    private void Leave(Rectangle at, bool isTrim, Made? asPanel)
    {
        if (at.Width <= 0 || at.Height <= 0)
        {
            return;
        }

        var offcut = Shapes.Offcut(at);
        var size = (offcut.Width, offcut.Height);
        if (asPanel is { } made)
        {
            int placed = _placed.GetValueOrDefault(size);
            var panel = _panels[size].ElementAt(placed);
            _placed[size] = placed + 1;
            _pieces.Add(panel with { X = offcut.X, Y = offcut.Y });
            _sized.Add(new SizedPanel(panel.Mark, panel.Turned ? PanelSide.Height : PanelSide.Width, panel.Width, made.Width, _sheet.Copies));
            _sized.Add(new SizedPanel(panel.Mark, panel.Turned ? PanelSide.Width : PanelSide.Height, panel.Height, made.Height, _sheet.Copies));
            return;
        }

        bool kept = !isTrim && Shapes.Holds(offcut, _saw.SmallestKeptWidth, _saw.SmallestKeptHeight);
        _offcuts.Add((offcut with { Kept = kept }, isTrim));
    }

    private SheetWaste Waste() => SheetWaste.Of(
        (_sheet.Board.Width, _sheet.Board.Height),
        _sheet.EdgeTrim,
        Shapes.Sum(_pieces.Select(piece => piece.Width * piece.Height)),
        [.. _offcuts.Where(one => !one.FromTrim).Select(one => one.Offcut)]);

    /// <summary>From which step on a part is there, and what gave it its extents.</summary>
    private readonly record struct Made(int From, SizedBy Width, SizedBy Height)
    {
        public Made After(Axis axis, int step, bool atFence) => axis == Axis.X
            ? new Made(step, Width.After(step, atFence), Height)
            : new Made(step, Width, Height.After(step, atFence));
    }
}
