// Problem: make every cut of a batch, each after the one that leaves its workpiece, with few changes of the fence.
// Idea:    greedy: of all settings take the one at which the most cuts can be made now, and make at it all that can be
//          made, also cuts whose workpieces those cuts leave; then take the next. Equal ones: the larger distance first,
//          since large parts come off first.
// Cost:    settings × steps, plus the cuts.
// Not:     the fewest settings there are.
using System.Collections.Immutable;
using PanelService.Planning.Measures;
using PanelService.Planning.Plans;
using PanelService.Planning.SawRun.Cautions;

namespace PanelService.Planning.SawRun;

/// <summary>Puts the cuts of a batch in an order to make them in.</summary>
internal sealed class SawRunPlanner
{
    private readonly ImmutableArray<SawNode> _nodes;

    // Cuts that can be made now, by setting. A cut with two settings stands under both until it is made.
    private readonly Dictionary<(SawTool Tool, Length Fence), SortedSet<int>> _ready = [];

    private SawRunPlanner(ImmutableArray<SawNode> nodes)
    {
        _nodes = nodes;
    }

    /// <summary>Plans the run.</summary>
    /// <param name="sheets">The sheets.</param>
    public static ImmutableArray<SawStep> Plan(ImmutableArray<SheetLayout> sheets)
    {
        var steps = new SawRunPlanner(SawGraph.Of(sheets)).Plan();
        return steps.IsEmpty ? steps : WithGeneralCautions(steps);
    }

    private ImmutableArray<SawStep> Plan()
    {
        for (int node = 0; node < _nodes.Length; node++)
        {
            if (_nodes[node].IsFirst)
            {
                MakeReady(node);
            }
        }

        var steps = ImmutableArray.CreateBuilder<SawStep>();
        while (_ready.Count > 0)
        {
            var (tool, fence) = _ready.MaxBy(setting => (setting.Value.Count, setting.Key.Fence, setting.Key.Tool)).Key;
            steps.Add(MakeAllAt(tool, fence, steps.Count + 1));
        }

        return steps.ToImmutable();
    }

    private SawStep MakeAllAt(SawTool tool, Length fence, int number)
    {
        var made = new List<SawNode>();
        while (_ready.TryGetValue((tool, fence), out var now))
        {
            int node = now.Min;
            Make(node);
            made.Add(_nodes[node]);
        }

        return new SawStep(
            number,
            tool,
            fence,
            [.. made.Select(node => new SawPass(node.Sheet, node.Cut.Number))],
            CautionBook.Raised([.. made.Select(node => new SawCutFacts(node.Cut, tool, fence))]));
    }

    private void Make(int node)
    {
        foreach (var fence in _nodes[node].Fences)
        {
            var setting = (_nodes[node].Tool, fence);
            _ready[setting].Remove(node);
            if (_ready[setting].Count == 0)
            {
                _ready.Remove(setting);
            }
        }

        foreach (int next in _nodes[node].Next)
        {
            MakeReady(next);
        }
    }

    private void MakeReady(int node)
    {
        foreach (var fence in _nodes[node].Fences)
        {
            var setting = (_nodes[node].Tool, fence);
            if (!_ready.TryGetValue(setting, out var cuts))
            {
                _ready.Add(setting, cuts = []);
            }

            cuts.Add(node);
        }
    }

    private static ImmutableArray<SawStep> WithGeneralCautions(ImmutableArray<SawStep> steps)
    {
        var withFirst = steps.SetItem(0, steps[0] with { Cautions = [.. CautionBook.General, .. steps[0].Cautions] });
        var last = withFirst[^1];
        return withFirst.SetItem(withFirst.Length - 1, last with { Cautions = last.Cautions.Add(CautionBook.Closing) });
    }
}
