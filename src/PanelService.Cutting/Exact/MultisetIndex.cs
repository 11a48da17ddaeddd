namespace PanelService.Cutting.Exact;

/// <summary>
/// Numbers every choice of 0 to demand copies of each type, as digits of a mixed radix: parts of a choice always have
/// smaller numbers than the choice itself, and the number of a union is the sum of the parts' numbers.
/// </summary>
internal sealed class MultisetIndex
{
    private readonly int[] _demand;
    private readonly int[] _stride;

    /// <summary>Numbers the choices.</summary>
    /// <param name="demand">How many of each type there are.</param>
    public MultisetIndex(int[] demand)
    {
        _demand = demand;
        _stride = new int[demand.Length];
        Count = 1;
        for (int t = 0; t < demand.Length; t++)
        {
            _stride[t] = Count;
            Count = checked(Count * (demand[t] + 1));
        }
    }

    /// <summary>How many choices there are, the empty one (number 0) and the whole (the last) included.</summary>
    public int Count { get; }

    /// <summary>How many types.</summary>
    public int Types => _demand.Length;

    /// <summary>What adding one of a type adds to a choice's number.</summary>
    /// <param name="type">The type.</param>
    public int One(int type) => _stride[type];

    /// <summary>How many of a type a choice holds.</summary>
    /// <param name="choice">The choice's number.</param>
    /// <param name="type">The type.</param>
    public int Digit(int choice, int type) => choice / _stride[type] % (_demand[type] + 1);

    /// <summary>How many of each type a choice holds.</summary>
    /// <param name="choice">The choice's number.</param>
    public int[] Digits(int choice)
    {
        int[] digits = new int[_demand.Length];
        for (int t = 0; t < digits.Length; t++)
        {
            digits[t] = Digit(choice, t);
        }

        return digits;
    }

    /// <summary>What two choices have in common.</summary>
    /// <param name="one">One choice's number.</param>
    /// <param name="other">The other's.</param>
    public int Common(int one, int other)
    {
        int common = 0;
        for (int t = 0; t < Types; t++)
        {
            common += Math.Min(Digit(one, t), Digit(other, t)) * _stride[t];
        }

        return common;
    }

    /// <summary>Every part of a choice by rising number: the empty one first, the choice itself last.</summary>
    /// <param name="choice">The choice's number.</param>
    public IEnumerable<int> Parts(int choice)
    {
        int[] digits = Digits(choice);
        int[] part = new int[digits.Length];
        int number = 0;
        while (true)
        {
            yield return number;
            int t = 0;
            while (t < digits.Length && part[t] == digits[t])
            {
                number -= part[t] * _stride[t];
                part[t++] = 0;
            }

            if (t == digits.Length)
            {
                yield break;
            }

            part[t]++;
            number += _stride[t];
        }
    }

    /// <summary>How many choices there would be.</summary>
    /// <param name="demand">How many of each type there are.</param>
    public static double Number(IEnumerable<int> demand) => demand.Aggregate(1.0, (number, d) => number * (d + 1.0));
}
