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

    /// <summary>How many choices there would be.</summary>
    /// <param name="demand">How many of each type there are.</param>
    public static double Number(IEnumerable<int> demand) => demand.Aggregate(1.0, (number, d) => number * (d + 1.0));
}
