// Problem: which patterns of a stock are close enough to its best for a plan that may waste only so much?
// Idea:    those that waste no more than a given amount, as LabelProgramme lists them; whoever plans asks for more waste step by
//          step, up to what a plan may waste of one stock: then the list is complete.
// Source:  see LabelProgramme.
// Cost:    see LabelProgramme; too many labels end a step, and the list before it stays.
using PanelService.Cutting.Patterns;
using PanelService.Cutting.Search;

namespace PanelService.Cutting.Exact;

/// <summary>The patterns of one stock that waste little, as far as they are listed.</summary>
internal sealed class CloseList
{
    private readonly ValueProgramme _programme;
    private readonly int[] _values;
    private readonly int[] _demand;
    private readonly WorkMeter _work;
    private IReadOnlyList<CoverPattern>? _patterns;

    /// <summary>Starts with no patterns.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="count">How many of it there are.</param>
    /// <param name="programme">The programme over its true points, filled with the values.</param>
    /// <param name="values">Value of one of each type, above 0: patterns of pieces worth nothing would not be listed.</param>
    /// <param name="demand">How many of each type are wanted.</param>
    /// <param name="work">Where work is counted.</param>
    public CloseList(int stock, int count, ValueProgramme programme, int[] values, int[] demand, WorkMeter work)
    {
        (Stock, Count, _programme, _values, _demand, _work) = (stock, count, programme, values, demand, work);
        Most = programme.At(programme.Grid.X.Count - 1, programme.Grid.Y.Count - 1);
    }

    /// <summary>The stock.</summary>
    public int Stock { get; }

    /// <summary>How many of it there are.</summary>
    public int Count { get; }

    /// <summary>No pattern of the stock is worth more.</summary>
    public long Most { get; }

    /// <summary>The patterns listed.</summary>
    public IReadOnlyList<CoverPattern> Patterns => _patterns ?? [];

    /// <summary>Whether they are all that can be of use.</summary>
    public bool IsComplete { get; private set; }

    /// <summary>Whether it is of no use to ask for more.</summary>
    public bool IsDone { get; private set; }

    /// <summary>What one of the stock wastes at the least, in a plan or left empty; 0 where that is not known.</summary>
    public long Least { get; private set; }

    /// <summary>Lists the patterns that waste no more than this; keeps what it has where they are too many.</summary>
    /// <param name="spare">The most that one may waste.</param>
    /// <param name="labels">So many labels are too many.</param>
    /// <param name="all">Whether no plan wastes more of one of the stock.</param>
    /// <returns>Whether they are listed.</returns>
    public bool Extend(long spare, int labels, bool all)
    {
        var key = new CountKey(_demand);
        _work.Spend(_programme.Grid.Work / 300);
        var programme = new LabelProgramme(_programme, _values, key, Math.Max(1, Most - spare), _work);
        if (!key.Complete || !programme.Run(labels))
        {
            return false;
        }

        _patterns = [.. programme.Whole().Select(label => new CoverPattern(
            Stock,
            [.. _demand.Select((_, t) => key.Count(label.Key, t))],
            Most - label.Net,
            () => programme.Trace(label.Index)))];
        IsComplete = IsDone = all;
        Least = all ? Patterns.Select(pattern => pattern.Waste).Append(Most).Min() : 0;
        return true;
    }

    /// <summary>No more is asked for.</summary>
    public void GiveUp() => IsDone = true;
}
