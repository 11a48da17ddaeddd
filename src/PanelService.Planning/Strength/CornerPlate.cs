// Problem: how far does a thin rectangular plate that is held at its four corners alone sag at its middle?
// Idea:    no series in closed form is known; Ritz: the sag is a sum of even Legendre polynomials in both directions, raised so
//          that it is nothing at the corners, with the weights that make the energy least. Free edges are natural to the
//          energy: nothing else has to hold. The matrix comes from integrals of polynomials, taken exactly by Gauss's points.
// Source:  Ritz's method: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., art. 80; checked in the tests
//          against the square's 0.0255 q a⁴ / D, a long strip's beam, and a plate stiff one way.
// Cost:    a linear system of 63 unknowns: some tenths of a millisecond.
// Not:     above the true energy, which converges from one side. The square's own sag is right to a millionth with these terms, that
//          under a load at a point to a fifth of a percent.
namespace PanelService.Planning.Strength;

/// <summary>Bending of a plate held at its four corners; SI units throughout.</summary>
public static class CornerPlate
{
    private const int Terms = 8;

    // Gauss's rule of so many points is exact for the products of all polynomials used here.
    private const int Points = (2 * Terms) + 1;

    private static readonly Basis _basis = Basis.Make();

    /// <summary>Sag at the middle under a uniform load of 1 Pa and under a load of 1 N there, m.</summary>
    /// <param name="rigidity">The plate's; x along the first side.</param>
    /// <param name="x">Side along x, m.</param>
    /// <param name="y">Side along y, m.</param>
    public static (double Uniform, double AtMiddle) Sag(PlateRigidity rigidity, double x, double y)
    {
        const int unknowns = (Terms * Terms) - 1;
        var matrix = new double[unknowns, unknowns];
        var uniform = new double[unknowns];
        var middle = new double[unknowns];
        for (int p = 0; p < unknowns; p++)
        {
            var (i, j) = Place(p);

            // A polynomial above the constant holds as much above its mean as below; raised, it is one less everywhere.
            uniform[p] = -x * y;
            middle[p] = (_basis.AtMiddle[i] * _basis.AtMiddle[j]) - 1;
            for (int r = 0; r <= p; r++)
            {
                matrix[p, r] = matrix[r, p] = Energy(rigidity, (x, y), (i, j), Place(r));
            }
        }

        Factor(matrix);
        return (Product(middle, Solved(matrix, uniform)), Product(middle, Solved(matrix, middle)));
    }

    private static (int I, int J) Place(int unknown) => ((unknown + 1) / Terms, (unknown + 1) % Terms);

    /// <summary>What two terms hold of bending energy together, twice.</summary>
    private static double Energy(PlateRigidity rigidity, (double X, double Y) side, (int I, int J) a, (int I, int J) b)
    {
        double kx = 4 / (side.X * side.X), ky = 4 / (side.Y * side.Y);
        return side.X * side.Y / 4 * (
            (rigidity.Dx * kx * kx * _basis.Bends[a.I, b.I] * _basis.Itself[a.J, b.J])
            + (rigidity.Dy * ky * ky * _basis.Itself[a.I, b.I] * _basis.Bends[a.J, b.J])
            + (rigidity.D1 * kx * ky * ((_basis.Mixed[a.I, b.I] * _basis.Mixed[b.J, a.J]) + (_basis.Mixed[b.I, a.I] * _basis.Mixed[a.J, b.J])))
            + (4 * rigidity.Dxy * kx * ky * _basis.Slopes[a.I, b.I] * _basis.Slopes[a.J, b.J]));
    }

    /// <summary>Cholesky's factor, in the lower half.</summary>
    private static void Factor(double[,] matrix)
    {
        int n = matrix.GetLength(0);
        for (int j = 0; j < n; j++)
        {
            for (int i = j; i < n; i++)
            {
                double rest = matrix[i, j];
                for (int k = 0; k < j; k++)
                {
                    rest -= matrix[i, k] * matrix[j, k];
                }

                matrix[i, j] = i == j ? Math.Sqrt(rest) : rest / matrix[j, j];
            }
        }
    }

    private static double[] Solved(double[,] factor, double[] right)
    {
        double[] solved = [.. right];
        for (int i = 0; i < solved.Length; i++)
        {
            for (int k = 0; k < i; k++)
            {
                solved[i] -= factor[i, k] * solved[k];
            }

            solved[i] /= factor[i, i];
        }

        for (int i = solved.Length - 1; i >= 0; i--)
        {
            for (int k = i + 1; k < solved.Length; k++)
            {
                solved[i] -= factor[k, i] * solved[k];
            }

            solved[i] /= factor[i, i];
        }

        return solved;
    }

    private static double Product(double[] a, double[] b) => a.Zip(b, (one, other) => one * other).Sum();

    /// <summary>Integrals over −1 to 1 of products of the even Legendre polynomials P0, P2, … and of their slopes.</summary>
    private sealed class Basis
    {
        /// <summary>Pi · Pk.</summary>
        public double[,] Itself { get; } = new double[Terms, Terms];

        /// <summary>Pi′ · Pk′.</summary>
        public double[,] Slopes { get; } = new double[Terms, Terms];

        /// <summary>Pi″ · Pk″.</summary>
        public double[,] Bends { get; } = new double[Terms, Terms];

        /// <summary>Pi″ · Pk.</summary>
        public double[,] Mixed { get; } = new double[Terms, Terms];

        /// <summary>Pi(0).</summary>
        public double[] AtMiddle { get; } = new double[Terms];

        public static Basis Make()
        {
            var basis = new Basis();
            for (int point = 0; point < Points; point++)
            {
                var (at, weight) = GaussPoint(point);
                var (value, slope, bend) = Legendre(at);
                for (int i = 0; i < Terms; i++)
                {
                    for (int k = 0; k < Terms; k++)
                    {
                        basis.Itself[i, k] += weight * value[2 * i] * value[2 * k];
                        basis.Slopes[i, k] += weight * slope[2 * i] * slope[2 * k];
                        basis.Bends[i, k] += weight * bend[2 * i] * bend[2 * k];
                        basis.Mixed[i, k] += weight * bend[2 * i] * value[2 * k];
                    }
                }
            }

            var middle = Legendre(0).Value;
            for (int i = 0; i < Terms; i++)
            {
                basis.AtMiddle[i] = middle[2 * i];
            }

            return basis;
        }

        /// <summary>P0, P1, … with their first and second slopes, by their recurrences.</summary>
        private static (double[] Value, double[] Slope, double[] Bend) Legendre(double at)
        {
            var (value, slope, bend) = (new double[Points + 1], new double[Points + 1], new double[Points + 1]);
            (value[0], value[1], slope[1]) = (1, at, 1);
            for (int n = 2; n <= Points; n++)
            {
                value[n] = ((((2 * n) - 1) * at * value[n - 1]) - ((n - 1) * value[n - 2])) / n;
                slope[n] = slope[n - 2] + (((2 * n) - 1) * value[n - 1]);
                bend[n] = bend[n - 2] + (((2 * n) - 1) * slope[n - 1]);
            }

            return (value, slope, bend);
        }

        /// <summary>A root of the Legendre polynomial of the number of points, by Newton's steps, and its weight.</summary>
        private static (double At, double Weight) GaussPoint(int point)
        {
            double at = Math.Cos(Math.PI * (point + 0.75) / (Points + 0.5));
            for (int step = 0; step < 20; step++)
            {
                var (value, slope, _) = Legendre(at);
                at -= value[Points] / slope[Points];
            }

            double steep = Legendre(at).Slope[Points];
            return (at, 2 / ((1 - (at * at)) * steep * steep));
        }
    }
}
