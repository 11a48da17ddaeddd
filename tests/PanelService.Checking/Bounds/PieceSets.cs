namespace PanelService.Checking.Bounds;

/// <summary>
/// The sets of pieces within a demand as numbers: a digit per piece, from 0 to its demand. The difference of a set and
/// a part of it is the number of the rest, and every part has a smaller number.
/// </summary>
internal sealed class PieceSets
{
    private readonly int[] _demand;
    private readonly int[] _one;

    /// <summary>Numbers them.</summary>
    /// <param name="demand">Per piece.</param>
    public PieceSets(int[] demand)
    {
        _demand = demand;
        _one = new int[demand.Length];
        int count = 1;
        for (int i = 0; i < demand.Length; i++)
        {
            _one[i] = count;
            count = checked(count * (demand[i] + 1));
        }

        Count = count;
    }

    /// <summary>How many there are.</summary>
    public int Count { get; }

    /// <summary>How many pairs of a set and a part of it there are.</summary>
    /// <param name="demand">Per piece.</param>
    public static double Pairs(IEnumerable<int> demand) => demand.Aggregate(1.0, (pairs, d) => pairs * (d + 1) * (d + 2) / 2);

    /// <summary>The piece a set consists of; null where it is not just one.</summary>
    /// <param name="set">The set.</param>
    public int? Single(int set)
    {
        int at = Array.IndexOf(_one, set);
        return at < 0 ? null : at;
    }

    /// <summary>Every part of a set but none and all of it.</summary>
    /// <param name="set">The set.</param>
    public IEnumerable<int> PartsOf(int set)
    {
        int[] digits = Digits(set);
        int[] part = new int[digits.Length];
        int number = 0;
        while (true)
        {
            int i = 0;
            while (i < digits.Length && part[i] == digits[i])
            {
                number -= part[i] * _one[i];
                part[i++] = 0;
            }

            if (i == digits.Length)
            {
                yield break;
            }

            part[i]++;
            number += _one[i];
            if (number != set)
            {
                yield return number;
            }
        }
    }

    /// <summary>How many of each piece a set holds.</summary>
    /// <param name="set">The set.</param>
    public int[] Digits(int set) => [.. _demand.Select((d, i) => set / _one[i] % (d + 1))];
}
