using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;
using PanelService.Planning.SawRun.Graph;
using PanelService.Planning.SawRun.Search;

namespace PanelService.Planning.SawRun;

/// <summary>One run over given sheets: settings, sequence, cuts, and the proof.</summary>
internal sealed class SettingsRun
{
    private readonly SawSettings _saw;
    private readonly ImmutableArray<SheetLayout> _sheets;
    private readonly SawEffort _effort;
    private readonly CancellationToken _cancellation;
    private readonly CutGraph _graph;
    private readonly ImmutableArray<CutShape> _roots;
    private readonly ImmutableArray<ImmutableArray<CutPart>> _parts;
    private readonly bool _all;

    /// <summary>Reads the sheets.</summary>
    public SettingsRun(
        SawSettings saw, ImmutableArray<SheetLayout> sheets, bool all, SawEffort effort, long graphWork, CancellationToken cancellation)
    {
        _saw = saw;
        _sheets = sheets;
        _all = all;
        _effort = effort;
        _cancellation = cancellation;
        var rules = new GraphRules(saw.Kerf.Steps, saw.LeastFenceLength.Steps, SawPractice.LeastAtFence.Steps);
        rules = saw.FenceReach is { } reach ? rules with { FenceReach = reach.Steps } : rules;
        _graph = new CutGraph(rules, wasteIsFree: !all, graphWork);
        _parts = [.. sheets.Select(PartsOf)];
        _roots = [.. _parts.SelectMany(parts => parts.Select(part => part.Root))];
        _graph.Finish();
    }

    /// <summary>Plans; null where nothing serves.</summary>
    public SawPlan? Plan()
    {
        var few = Few(out var table);
        if (few.Count == 0)
        {
            return null;
        }

        int least = 0;
        if (_all)
        {
            (int[] settings, least) = SettingsBound.Find(_graph, _roots, few[0], _effort.Proof, _cancellation);
            few = settings.Length < few[0].Length && table.CanCut(settings) ? [settings] : few;
        }

        int[] sequence = RunSequence.Find(_graph, _roots, few, _effort.Sequence, _cancellation);
        return Write(sequence, new SawProof(few[0].Length, least, sequence.Length)
        {
            LeastCuts = _all ? LeastCuts.Of(_sheets, _parts) : 0,
        });
    }

    /// <summary>How many settings a search as long as the effort says gets by with; <see cref="int.MaxValue"/>: none serve.</summary>
    public int Settings() => Few(out _) is [var first, ..] ? first.Length : int.MaxValue;

    /// <summary>A run of these sheets with as few steps as are found, and what is known of how few there could be.</summary>
    /// <param name="known">The run as planned.</param>
    public SawPlan Shortest(SawPlan known)
    {
        var proof = known.Proof;
        var (shorter, leastSteps) = FewestSteps.Find(_graph, _roots, proof.Settings, proof.Steps, _effort.Steps, _cancellation);
        proof = proof with { LeastSteps = Math.Min(leastSteps, proof.Steps) };
        return shorter is not null && RunTable.CanCut(_graph, _roots, shorter) ? Write(shorter, proof) : known with { Proof = proof };
    }

    private List<int[]> Few(out SplitTable table)
    {
        table = new SplitTable(_graph, _roots);
        return FewSettings.Find(table, Math.Min(_effort.Settings, _effort.Passes * table.Work), _cancellation);
    }

    private ImmutableArray<CutPart> PartsOf(SheetLayout sheet) =>
        [.. SheetPart.Of(sheet).Select(part => new CutPart(part, SheetReading.Into(_graph, sheet, part, _all)))];

    private SawPlan Write(int[] sequence, SawProof known)
    {
        long kerf = _saw.Kerf.Steps;
        var panels = _sheets.SelectMany(sheet => sheet.Pieces)
            .Select(piece => (piece.Width.Steps + kerf, piece.Height.Steps + kerf)).ToHashSet();
        var chooser = new CutChooser(sequence, (width, height) => panels.Contains((width, height)));
        var written = _sheets.Zip(_parts, (sheet, parts) => SheetWriter.Write(sheet, parts, _saw, chooser)).ToList();
        ImmutableArray<SheetLayout> sheets = [.. written.Select(one => one.Sheet)];
        var made = written.SelectMany(one => one.Cuts).ToLookup(cut => cut.Step);
        ImmutableArray<SawStep> steps = [.. Enumerable.Range(0, sequence.Length)
            .Where(step => made[step].Any())
            .Select((step, i) => StepOf(i + 1, _graph.Settings[sequence[step]], [.. made[step]], sheets))];
        var unmatched = Matching.Unmatched(written.SelectMany(one => one.Sized), step => sequence[step]);
        int settings = steps.Select(step => (step.Tool, step.Fence)).Distinct().Count();
        var proof = new SawProof(settings, Math.Min(known.LeastPossible, settings), steps.Length)
        {
            LeastSteps = Math.Min(known.LeastSteps, steps.Length),
            Cuts = sheets.Sum(sheet => (long)sheet.Copies * sheet.Cuts.Count(cut => !cut.BySupplier)),
            LeastCuts = known.LeastCuts,
        };
        return new SawPlan(sheets, steps, proof, unmatched, [.. written.SelectMany(one => one.Sized)]);
    }

    private static SawStep StepOf(int number, SawSetting setting, ImmutableArray<MadeCut> cuts, ImmutableArray<SheetLayout> sheets)
    {
        var fence = Length.FromSteps(setting.Size);
        return new SawStep(number, setting.Tool, fence, [.. cuts.Select(cut => PassOf(cut, sheets[cut.Sheet - 1]))], Cautions: []);
    }

    private static SawPass PassOf(MadeCut made, SheetLayout sheet)
    {
        var cut = made.Cut;
        var (edge, atSheet) = (cut.Axis, made.NearAtFence) switch
        {
            (Axis.X, true) => (SheetEdge.Left, cut.X == Length.Zero),
            (Axis.X, false) => (SheetEdge.Right, cut.X + cut.Width == sheet.Board.Width),
            (_, true) => (SheetEdge.Top, cut.Y == Length.Zero),
            (_, false) => (SheetEdge.Bottom, cut.Y + cut.Height == sheet.Board.Height),
        };
        return new SawPass(made.Sheet, cut.Number, edge, atSheet ? EdgeMaker.Factory : EdgeMaker.Cut);
    }
}
