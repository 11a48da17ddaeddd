using System.Collections.Immutable;
using PanelService.Cutting;
using PanelService.Planning.Measures;
using PanelService.Planning.Orders;
using PanelService.Planning.Plans;
using PanelService.Planning.Practice;
using PanelService.Planning.SawRun.Graph;
using PanelService.Planning.SawRun.Search;
using PanelService.Planning.Sizes;

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

    // The settings in the order of the run last written.
    private int[] _made = [];

    /// <summary>Reads the sheets.</summary>
    public SettingsRun(
        SawSettings saw, ImmutableArray<SheetLayout> sheets, bool all, SawEffort effort, long graphWork, PlanStop stop)
    {
        _saw = saw;
        _sheets = sheets;
        _effort = effort;
        _cancellation = stop.Search;
        var rules = new GraphRules(saw.Kerf.Steps, saw.LeastFenceLength.Steps, SawPractice.LeastAtFence.Steps);
        rules = saw.FenceReach is { } reach ? rules with { FenceReach = reach.Steps } : rules;
        _graph = new CutGraph(rules, wasteIsFree: !all, graphWork, stop.Everything);
        _parts = [.. sheets.Select(sheet => PartsOf(sheet, all))];
        _roots = [.. _parts.SelectMany(parts => parts.Select(part => part.Root))];
        _graph.Finish();
    }

    /// <summary>Plans, without any proof; null where nothing serves.</summary>
    public SawPlan? Plan()
    {
        var few = Few();
        return few.Count == 0 ? null : Write(Sequence(few), new SawProof(few[0].Length, Math.Min(1, few[0].Length), 0));
    }

    /// <summary>How many settings a search as long as the effort says gets by with; <see cref="int.MaxValue"/>: none serve.</summary>
    public int Settings() => Few() is [var first, ..] ? first.Length : int.MaxValue;

    /// <summary>The run as planned, or a better one where the proof comes upon it, with what is known of how good it could be.</summary>
    /// <param name="known">The run as planned, of sheets of which everything that comes out is named.</param>
    public SawPlan Proven(SawPlan known)
    {
        int[] run = _made;
        int[] settings = [.. run.Distinct().Order()];
        var (fewer, least) = SettingsBound.Find(_graph, _roots, settings, _effort.Proof, _cancellation);
        if (fewer.Length < settings.Length && new SplitTable(_graph, _roots).CanCut(fewer))
        {
            known = Write(Sequence([fewer]), known.Proof);
            run = _made;
        }

        int count = run.Distinct().Count();
        double work = count > _effort.MostProven ? 0 : _effort.Steps;
        var (shorter, leastSteps) = FewestSteps.Find(_graph, _roots, (run, least == count), work, _cancellation);
        known = shorter is not null && RunTable.CanCut(_graph, _roots, shorter) ? Write(shorter, known.Proof) : known;
        return known with
        {
            Proof = known.Proof with
            {
                LeastPossible = Math.Min(least, known.Proof.Settings),
                LeastSteps = Math.Min(leastSteps, known.Proof.Steps),
                LeastCuts = LeastCuts.Of(known.Sheets, _parts),
            },
        };
    }

    private long KeptOf(long width, long height)
    {
        var (across, along) = (Length.FromSteps(width) - _saw.Kerf, Length.FromSteps(height) - _saw.Kerf);
        return Shapes.Holds((across, along), (_saw.SmallestKeptWidth, _saw.SmallestKeptHeight)) ? across.Steps * along.Steps : 0;
    }

    private List<int[]> Few()
    {
        var table = new SplitTable(_graph, _roots);
        var panels = _sheets.SelectMany(sheet => sheet.Pieces.SelectMany(piece => new[] { piece.Width, piece.Height }.Select(side => (side.Steps, sheet.Copies))))
            .GroupBy(side => side.Steps).ToDictionary(group => group.Key, group => group.Sum(side => side.Copies));
        int[] matching = [.. _graph.Settings.Select(setting => panels.GetValueOrDefault(setting.Size))];
        return FewSettings.Find(table, matching, Math.Min(_effort.Settings, _effort.Passes * table.Work), _cancellation);
    }

    private int[] Sequence(List<int[]> few) => RunSequence.Find(_graph, _roots, few, _effort.Sequence, _cancellation);

    private ImmutableArray<CutPart> PartsOf(SheetLayout sheet, bool all) =>
        [.. SheetPart.Of(sheet).Select(part => new CutPart(part, SheetReading.Into(_graph, sheet, part, all)))];

    private SawPlan Write(int[] sequence, SawProof known)
    {
        var chooser = new CutChooser(sequence, KeptOf);
        var written = _sheets.Zip(_parts, (sheet, parts) => SheetWriter.Write(sheet, parts, _saw, chooser)).ToList();
        ImmutableArray<SheetLayout> sheets = [.. written.Select(one => one.Sheet)];
        var made = written.SelectMany(one => one.Cuts).ToLookup(cut => cut.Step);
        ImmutableArray<SawStep> steps = [.. Enumerable.Range(0, sequence.Length)
            .Where(step => made[step].Any())
            .Select((step, i) => StepOf(i + 1, _graph.Settings[sequence[step]], [.. made[step]], sheets))];
        _made = [.. sequence.Where((_, step) => made[step].Any())];
        var unmatched = Matching.Unmatched(written.SelectMany(one => one.Sized), step => sequence[step]);
        int settings = steps.Select(step => (step.Tool, step.Fence)).Distinct().Count();
        var proof = new SawProof(settings, Math.Min(known.LeastPossible, settings), steps.Length)
        {
            Cuts = sheets.Sum(sheet => (long)sheet.Copies * sheet.Cuts.Count(cut => !cut.BySupplier)),
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
