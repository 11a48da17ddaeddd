using System.Collections.Immutable;
using PanelService.Planning.Plans;

namespace PanelService.Store.Cuts;

/// <summary>Everything that was spoiled while a plan was made.</summary>
/// <param name="Panels">Panels, line by line.</param>
/// <param name="Sheets">Whole sheets.</param>
public sealed record Spoilage(ImmutableArray<Spoiling> Panels, ImmutableArray<SpoiledSheet> Sheets)
{
    /// <summary>Nothing.</summary>
    public static Spoilage None { get; } = new([], []);

    /// <summary>The panels, and those that were to come out of the spoiled sheets.</summary>
    internal ImmutableArray<Spoiling> AllPanels(Plan plan) =>
    [
        .. Panels,
        .. from spoiled in Sheets
           let sheet = plan.Sheets.First(sheet => sheet.Number == spoiled.Number)
           from pieces in sheet.Pieces.GroupBy(piece => piece.Mark, StringComparer.Ordinal)
           select new Spoiling(pieces.Key, pieces.Count() * spoiled.Count) { Sheet = spoiled.Number },
    ];

    /// <summary>How many copies of a layout were spoiled.</summary>
    internal int CopiesOf(SheetLayout sheet) => Sheets.Where(spoiled => spoiled.Number == sheet.Number).Sum(spoiled => spoiled.Count);

    /// <summary>What cannot be: an unknown line or layout, or more than was made. Sheets are looked at first.</summary>
    internal ImmutableArray<SpoilingFault> Faults(Plan plan)
    {
        ImmutableArray<SpoilingFault> sheets = [.. SheetFaults(plan)];
        return sheets.IsEmpty ? [.. PanelFaults(plan)] : sheets;
    }

    private IEnumerable<SpoilingFault> SheetFaults(Plan plan)
    {
        var sums = new Dictionary<int, long>();
        for (int index = 0; index < Sheets.Length; index++)
        {
            SpoiledSheet one = Sheets[index];
            SheetLayout? sheet = plan.Sheets.FirstOrDefault(sheet => sheet.Number == one.Number);
            long sum = sums[one.Number] = sums.GetValueOrDefault(one.Number) + one.Count;
            if (sheet is null)
            {
                yield return new(OfSheet: true, index, "sheet", $"The plan has no sheet {one.Number}; it has {(plan.Sheets.IsEmpty ? "none" : $"1 to {plan.Sheets.Max(known => known.Number)}")}.");
            }
            else if (sum > sheet.Copies)
            {
                yield return new(OfSheet: true, index, "count", $"Of sheet {one.Number} {sum} are said to be spoiled, and {sheet.Copies} were cut.");
            }
        }
    }

    // What lay on spoiled sheets is gone already.
    private IEnumerable<SpoilingFault> PanelFaults(Plan plan)
    {
        Dictionary<string, long> sums = AllPanels(plan).Where(one => one.Sheet is not null)
            .GroupBy(one => one.Mark, StringComparer.Ordinal).ToDictionary(one => one.Key, one => one.Sum(of => (long)of.Count), StringComparer.Ordinal);
        for (int index = 0; index < Panels.Length; index++)
        {
            Spoiling one = Panels[index];
            PanelResult? panel = plan.Panels.FirstOrDefault(panel => panel.Line.Mark == one.Mark);
            long sum = sums[one.Mark] = sums.GetValueOrDefault(one.Mark) + one.Count;
            if (panel is null)
            {
                yield return new(OfSheet: false, index, "mark", $"The plan has no line \"{one.Mark}\"; it has {string.Join(", ", plan.Panels.Select(line => line.Line.Mark))}.");
            }
            else if (sum > panel.Made + panel.Bought)
            {
                yield return new(OfSheet: false, index, "count", $"Of \"{one.Mark}\" {sum} are said to be spoiled, and {panel.Made + panel.Bought} were made.");
            }
        }
    }
}
