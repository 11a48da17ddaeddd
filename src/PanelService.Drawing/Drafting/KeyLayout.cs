namespace PanelService.Drawing.Drafting;

/// <summary>
/// The key's entries in columns, on paper of some width. What does not fit beside its mark goes on below it: the size to cut
/// may stand nowhere else on the drawing, so it is never cut short. An entry is not parted over two columns.
/// </summary>
internal sealed class KeyLayout
{
    public const double Size = 2.5;

    // In line with the text of the title strip.
    public const double Indent = 2.4;

    private const int MostRows = 26;
    private const double Column = 56;
    private const double LeastMark = 7;

    private readonly List<KeyEntry> _entries;

    /// <summary>Lays the key out.</summary>
    /// <param name="keys">What it says.</param>
    /// <param name="width">The paper's width, in millimetres of paper.</param>
    public KeyLayout(IReadOnlyCollection<DraftKey> keys, double width)
    {
        Columns = Math.Max(1, (int)(width / Column));
        ColumnWidth = width / Columns;
        double room = ColumnWidth - Indent - 1;

        // The texts stand in line beside the longest mark that leaves them room.
        double beside = keys.Select(key => (Lettering.Width(key.Mark) + 1) * Size).Where(mark => mark <= room * 0.5).Append(LeastMark).Max();
        _entries = [.. keys.Select(key => EntryOf(key, beside, room))];

        // One line is kept for the hatchings.
        Rows = Math.Min(MostRows, (_entries.Sum(entry => entry.Height) + Columns) / Columns);
        while (Rows < MostRows && Placed().Count() < _entries.Count)
        {
            Rows++;
        }
    }

    /// <summary>How many columns.</summary>
    public int Columns { get; }

    /// <summary>How wide each is, in millimetres of paper.</summary>
    public double ColumnWidth { get; }

    /// <summary>How many lines a column has.</summary>
    public int Rows { get; }

    /// <summary>The entries there is room for, each with its column and its first line.</summary>
    public IEnumerable<(KeyEntry Entry, int Column, int Row)> Placed()
    {
        int at = 0;
        foreach (var entry in _entries)
        {
            int left = Rows - (at % Rows);
            at += entry.Height > left ? left : 0;
            if (entry.Height > Rows || at + entry.Height > (Columns * Rows) - 1)
            {
                yield break;
            }

            yield return (entry, at / Rows, at % Rows);
            at += entry.Height;
        }
    }

    private static KeyEntry EntryOf(DraftKey key, double beside, double room)
    {
        string[] parts = key.Text.Split(", ");
        string[] clauses = [.. parts.Select((part, i) => i < parts.Length - 1 ? part + "," : part)];
        bool hasRoom = (Lettering.Width(key.Mark) + 1) * Size <= beside;
        if (hasRoom && Fits(key.Text, room - beside))
        {
            return new KeyEntry(key.Mark, [key.Text], beside, IsBeside: true);
        }

        return hasRoom && Array.TrueForAll(clauses, clause => Fits(clause, room - beside))
            ? new KeyEntry(key.Mark, clauses, beside, IsBeside: true)
            : new KeyEntry(
                Lettering.Fit(key.Mark, Size, room),
                [.. clauses.SelectMany(clause => Lettering.Wrapped(clause, Size, room - LeastMark))],
                LeastMark,
                IsBeside: false);
    }

    private static bool Fits(string text, double room) => Lettering.Width(text) * Size <= room;
}

/// <summary>An entry of the key.</summary>
/// <param name="Mark">The mark; where it has a line of its own, shortened to that.</param>
/// <param name="Lines">What it is, in lines that fit.</param>
/// <param name="Offset">Where the lines begin, from where the mark does.</param>
/// <param name="IsBeside">Whether the first line stands beside the mark; else below it.</param>
internal sealed record KeyEntry(string Mark, IReadOnlyList<string> Lines, double Offset, bool IsBeside)
{
    /// <summary>How many lines it takes.</summary>
    public int Height => Lines.Count + (IsBeside ? 0 : 1);
}
