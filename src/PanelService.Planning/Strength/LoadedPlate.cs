using System.Collections.Immutable;
using PanelService.Planning.Orders;

namespace PanelService.Planning.Strength;

/// <summary>
/// A rectangle of board that carries itself, what is on it, and a hand: on its four edges, or on its corners alone. Where
/// nobody knows which way its grain runs, the weaker way counts.
/// </summary>
/// <param name="Short">Short side, m.</param>
/// <param name="Long">Long side, m.</param>
/// <param name="Material">The board.</param>
/// <param name="Covering">What is glued or brushed on, kg/m².</param>
/// <param name="Hand">What leans on the middle, kg.</param>
internal sealed record LoadedPlate(double Short, double Long, BoardMaterial Material, double Covering, double Hand)
{
    /// <summary>Standard gravity, m/s² (exact by definition, NIST SP 811).</summary>
    public const double Gravity = 9.80665;

    private ImmutableArray<Yielding> _onEdges = [];
    private ImmutableArray<Yielding> _onCorners = [];

    /// <summary>Which way the face grain runs.</summary>
    public FaceGrain Grain { get; init; }

    // Per way the grain may run: the sag of a board 1 m thick, under 1 Pa and under 1 N; it goes with the thickness cubed.
    private ImmutableArray<Yielding> OnEdges => _onEdges.IsEmpty ? _onEdges = OnEdgesNow() : _onEdges;

    private ImmutableArray<Yielding> OnCorners => _onCorners.IsEmpty
        ? _onCorners = [.. Rigidities().Select(rigidity => CornerPlate.Sag(rigidity, Long, Short)).Select(sag => new Yielding(sag.Uniform, sag.AtMiddle))]
        : _onCorners;

    /// <summary>Sag at the middle under its own weight and covering, on four edges, m.</summary>
    /// <param name="thickness">Thickness, m.</param>
    public double OwnSag(double thickness) => Worst(OnEdges, thickness, hand: 0);

    /// <summary>That with the hand, m.</summary>
    /// <param name="thickness">Thickness, m.</param>
    public double SagUnderHand(double thickness) => Worst(OnEdges, thickness, Hand);

    /// <summary>Sag at the middle under its own weight and covering, held at its corners alone, m.</summary>
    /// <param name="thickness">Thickness, m.</param>
    public double CornerSag(double thickness) => Worst(OnCorners, thickness, hand: 0);

    /// <summary>That with the hand, m.</summary>
    /// <param name="thickness">Thickness, m.</param>
    public double CornerSagUnderHand(double thickness) => Worst(OnCorners, thickness, Hand);

    /// <summary>The least thickness with which the sag under the hand stays within the short side's share, m.</summary>
    /// <param name="limit">The share's denominator: 300 for L/300.</param>
    public double LeastThickness(double limit)
    {
        // The sag falls as the board gets thicker: halving finds the place where it meets the limit. 100 mm is no board.
        var (thin, thick) = (1e-5, 0.1);
        for (int i = 0; i < 60; i++)
        {
            double middle = (thin + thick) / 2;
            (thin, thick) = SagUnderHand(middle) <= Short / limit ? (thin, middle) : (middle, thick);
        }

        return thick;
    }

    /// <summary>The plate of a line's panels as cut.</summary>
    /// <param name="sides">Both sides, m.</param>
    /// <param name="board">The board; its grain, where it says one, runs along the height.</param>
    /// <param name="covering">What is on it, kg/m².</param>
    /// <param name="settings">The hand.</param>
    public static LoadedPlate Of((double Width, double Height) sides, BoardSupply board, double covering, StrengthSettings settings) => new(
        Math.Min(sides.Width, sides.Height),
        Math.Max(sides.Width, sides.Height),
        BoardMaterials.Of(board),
        covering,
        (double)settings.Load.Grams / 1000)
    {
        Grain = board.Grain != Orders.Grain.Height ? FaceGrain.Unknown
            : sides.Height >= sides.Width ? FaceGrain.AlongLong : FaceGrain.AlongShort,
    };

    /// <summary>All that a plate takes from its board: of boards alike in it one answers for all.</summary>
    /// <param name="board">The board.</param>
    public static (BoardMaterial Material, Measures.Length Thickness, Orders.Grain Grain) FactsOf(BoardSupply board) =>
        (BoardMaterials.Of(board), board.Thickness, board.Grain);

    private double Worst(ImmutableArray<Yielding> ways, double thickness, double hand)
    {
        double load = Gravity * (((double)Material.Density * thickness) + Covering);
        return ways.Max(way => (way.Uniform * load) + (way.AtMiddle * Gravity * hand)) / Math.Pow(thickness, 3);
    }

    private ImmutableArray<Yielding> OnEdgesNow()
    {
        if (Material.ElasticityAcross is not null)
        {
            return [.. Rigidities().Select(rigidity => new Yielding(
                OrthotropicPlate.UniformLoad(rigidity, Long, Short), OrthotropicPlate.LoadAtMiddle(rigidity, Long, Short)))];
        }

        double rigidity = PlateTheory.Rigidity((double)Material.Elasticity * 1e6, 1, (double)Material.Poisson);
        return
        [
            new Yielding(
                PlateTheory.UniformLoad(Long / Short) * Math.Pow(Short, 4) / rigidity,
                PlateTheory.LoadAtMiddle(Long / Short) * Short * Short / rigidity),
        ];
    }

    // Of a board 1 m thick; x runs along the long side.
    private IEnumerable<PlateRigidity> Rigidities()
    {
        var along = PlateRigidity.Of(Material, 1);
        if (Grain != FaceGrain.AlongShort)
        {
            yield return along;
        }

        if (Material.ElasticityAcross is not null && Grain != FaceGrain.AlongLong)
        {
            yield return along.Turned;
        }
        else if (Grain == FaceGrain.AlongShort)
        {
            yield return along;
        }
    }

    private sealed record Yielding(double Uniform, double AtMiddle);
}

/// <summary>Which way a board's face grain runs in a panel.</summary>
public enum FaceGrain
{
    /// <summary>Nobody says: the weaker way counts.</summary>
    Unknown,

    /// <summary>Along the long side.</summary>
    AlongLong,

    /// <summary>Along the short side.</summary>
    AlongShort,
}
