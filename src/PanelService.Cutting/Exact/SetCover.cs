// Problem: sets that fit stocks at a price are given; what is the cheapest way to cover the whole order?
// Idea:    price(S) = least of a stock's price and the price of what one of its greatest sets leaves of S. Covering too
//          much does no harm, so greatest sets suffice, and some stock must hold the first piece of S. A stock of
//          which there is one unit is let in by one more sweep over the prices known without it.
// Source:  programme over subsets: Held and Karp, J. SIAM 10 (1962).
// Cost:    sets × greatest sets × types for the unlimited stocks, and the same for every limited unit.
namespace PanelService.Cutting.Exact;

/// <summary>The cheapest cover of every set of pieces.</summary>
internal sealed class SetCover
{
    private const long None = long.MaxValue;

    private readonly MultisetIndex _sets;
    private readonly Search.WorkMeter _work;
    private readonly ushort[] _digits;
    private readonly List<(int Stock, int Set, long Price)> _unlimited = [];
    private readonly List<Layer> _layers = [];
    private long[] _price;

    /// <summary>Starts with nothing to cover with.</summary>
    /// <param name="sets">The numbering of the sets; no type more than 65,535 times.</param>
    /// <param name="work">Where work is counted.</param>
    public SetCover(MultisetIndex sets, Search.WorkMeter work)
    {
        (_sets, _work) = (sets, work);
        _price = new long[sets.Count];
        _digits = new ushort[checked(sets.Count * sets.Types)];
        for (int set = 0; set < sets.Count; set++)
        {
            for (int t = 0; t < sets.Types; t++)
            {
                _digits[(set * sets.Types) + t] = (ushort)sets.Digit(set, t);
            }
        }
    }

    /// <summary>The least price of the whole order with what was let in so far; <see cref="long.MaxValue"/>: none.</summary>
    public long Price => _price[^1];

    /// <summary>Adds a stock of which there are enough. Cheaper stocks come first.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="price">Its price.</param>
    /// <param name="fits">Whether a set fits it.</param>
    public void AddUnlimited(int stock, long price, Func<int, bool> fits)
    {
        var cheaper = _unlimited.Select(entry => entry.Set).ToHashSet();
        _unlimited.AddRange(Greatest(fits).Where(set => !cheaper.Contains(set)).Select(set => (stock, set, price)));
    }

    /// <summary>Prices every set by the unlimited stocks.</summary>
    /// <returns>Whether the work sufficed.</returns>
    public bool FillUnlimited()
    {
        int[] choice = new int[_sets.Count];
        for (int set = 1; set < _sets.Count; set++)
        {
            int first = FirstType(set);
            (_price[set], choice[set]) = (None, -1);
            for (int i = 0; i < _unlimited.Count; i++)
            {
                var (_, with, price) = _unlimited[i];
                if (_digits[(with * _sets.Types) + first] == 0)
                {
                    continue;
                }

                long rest = _price[Less(set, with)];
                if (rest != None && rest + price < _price[set])
                {
                    (_price[set], choice[set]) = (rest + price, i);
                }
            }

            if (!Spend(set, _unlimited.Count))
            {
                return false;
            }
        }

        _layers.Add(new Layer(-1, [], choice));
        return true;
    }

    /// <summary>Lets in one unit of a stock, after <see cref="FillUnlimited"/>.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="price">Its price.</param>
    /// <param name="fits">Whether a set fits it.</param>
    /// <returns>Whether the work sufficed.</returns>
    public bool LetIn(int stock, long price, Func<int, bool> fits)
    {
        int[] greatest = [.. Greatest(fits)];
        int[] choice = new int[_sets.Count];
        long[] then = [.. _price];
        for (int set = 0; set < _sets.Count; set++)
        {
            choice[set] = -1;
            for (int i = 0; i < greatest.Length; i++)
            {
                long rest = _price[Less(set, greatest[i])];
                if (rest != None && rest + price < then[set])
                {
                    (then[set], choice[set]) = (rest + price, i);
                }
            }

            if (!Spend(set, greatest.Length))
            {
                return false;
            }
        }

        _price = then;
        _layers.Add(new Layer(stock, greatest, choice));
        return true;
    }

    /// <summary>The cheapest cover of the whole order; its sets may overlap.</summary>
    public IEnumerable<(int Stock, int Set)> Uses()
    {
        int set = _sets.Count - 1;
        for (int layer = _layers.Count - 1; layer > 0; layer--)
        {
            if (_layers[layer].Choice[set] is >= 0 and var i)
            {
                yield return (_layers[layer].Stock, _layers[layer].Greatest[i]);
                set = Less(set, _layers[layer].Greatest[i]);
            }
        }

        while (set > 0)
        {
            var (stock, with, _) = _unlimited[_layers[0].Choice[set]];
            yield return (stock, with);
            set = Less(set, with);
        }
    }

    private bool Spend(int set, int entries)
    {
        _work.Spend((long)entries * _sets.Types / 500);
        return (set & 255) != 0 || !_work.Exhausted;
    }

    private int FirstType(int set)
    {
        int at = set * _sets.Types;
        int type = 0;
        while (_digits[at + type] == 0)
        {
            type++;
        }

        return type;
    }

    private int Less(int set, int taken)
    {
        int a = set * _sets.Types;
        int b = taken * _sets.Types;
        int rest = 0;
        for (int t = 0; t < _sets.Types; t++)
        {
            rest += Math.Max(0, _digits[a + t] - _digits[b + t]) * _sets.One(t);
        }

        return rest;
    }

    /// <summary>The sets that fit and to which nothing can be added.</summary>
    private IEnumerable<int> Greatest(Func<int, bool> fits)
    {
        for (int set = 1; set < _sets.Count; set++)
        {
            if (fits(set) && !Enumerable.Range(0, _sets.Types).Any(t => CanGrow(set, t) && fits(set + _sets.One(t))))
            {
                yield return set;
            }
        }
    }

    private bool CanGrow(int set, int type) => set + _sets.One(type) < _sets.Count && _sets.Digit(set + _sets.One(type), type) > _sets.Digit(set, type);

    /// <summary>What one unit let in is used for.</summary>
    private sealed record Layer(int Stock, int[] Greatest, int[] Choice);
}
