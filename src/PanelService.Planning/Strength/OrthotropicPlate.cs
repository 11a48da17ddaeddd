// Problem: how far does a thin rectangular plate that is stiffer along its grain than across it, simply supported along its
//          four edges, sag at its middle?
// Idea:    Navier's double sine series is exact; its inner sum has a closed form. With the roots r of the quadratic that the
//          denominator is in n², Σ 1/(n² + r) over odd n is π tanh(π√r/2) / 4√r, and Σ ±1/(n (n² + r)) is
//          π (1 − 1/cosh(π√r/2)) / 4r; what is left is a single series that converges like m⁻⁵ and m⁻³. The roots are complex
//          where H² < Dx·Dy, as for plywood, and equal for a plate that is alike both ways.
// Source:  Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., art. 85 and 86 (equation and rigidities).
//          Checked in the tests: alike both ways it is PlateTheory's plate, stiff one way a beam's, else Navier's sum itself.
// Cost:    some hundred terms of complex exponentials.
// Not:     right past a deflection of half the thickness, nor for boards thick enough to shear.
using System.Numerics;

namespace PanelService.Planning.Strength;

/// <summary>Bending of a plate simply supported on four edges; SI units throughout.</summary>
public static class OrthotropicPlate
{
    private const int LastUniform = 79;
    private const int LastPoint = 299;

    // Roots closer than this, relatively, are one: the difference quotient would lose its digits.
    private const double Same = 1e-5;

    // Past this the hyperbolic tangent is 1 and the secant 0, to double precision.
    private const double FarAway = 40;

    /// <summary>Sag at the middle under a uniform load of 1 Pa, m.</summary>
    /// <param name="rigidity">The plate's; x along the first side.</param>
    /// <param name="x">Side along x, m.</param>
    /// <param name="y">Side along y, m.</param>
    public static double UniformLoad(PlateRigidity rigidity, double x, double y)
    {
        // The single series runs along the shorter side: the other way a long plate would want as many terms as it is long.
        if (x > y)
        {
            return UniformLoad(rigidity.Turned, y, x);
        }

        double sum = 0;
        for (int m = LastUniform; m >= 1; m -= 2)
        {
            sum += (m % 4 == 1 ? 1 : -1) * Inner(rigidity, (x, y), m, AlternatingSum) / m;
        }

        return 16 / Math.Pow(Math.PI, 6) * sum;
    }

    /// <summary>Sag at the middle under a load of 1 N there, m.</summary>
    /// <param name="rigidity">The plate's; x along the first side.</param>
    /// <param name="x">Side along x, m.</param>
    /// <param name="y">Side along y, m.</param>
    public static double LoadAtMiddle(PlateRigidity rigidity, double x, double y)
    {
        if (x > y)
        {
            return LoadAtMiddle(rigidity.Turned, y, x);
        }

        double sum = 0;
        for (int m = LastPoint; m >= 1; m -= 2)
        {
            sum += Inner(rigidity, (x, y), m, PlainSum);
        }

        return 4 / (Math.Pow(Math.PI, 4) * x * y) * sum;
    }

    /// <summary>The sum over n for one m: a series over 1 / ((n² + r1)(n² + r2)), parted into simple fractions.</summary>
    private static double Inner(
        PlateRigidity rigidity, (double X, double Y) side, int m, Func<Complex, (Complex Sum, Complex Slope)> series)
    {
        double scale = m * m * Math.Pow(side.Y / side.X, 2) / rigidity.Dy;
        var spread = Complex.Sqrt(new Complex((rigidity.H * rigidity.H) - (rigidity.Dx * rigidity.Dy), 0));
        var (first, second) = ((rigidity.H + spread) * scale, (rigidity.H - spread) * scale);
        var parted = Complex.Abs(first - second) < Same * Complex.Abs(first)
            ? -series((first + second) / 2).Slope
            : (series(second).Sum - series(first).Sum) / (first - second);
        return parted.Real * Math.Pow(side.Y, 4) / rigidity.Dy;
    }

    // Σ 1/(n² + r) over odd n.
    private static (Complex Sum, Complex Slope) PlainSum(Complex r)
    {
        var root = Complex.Sqrt(r);
        var (tanh, sech) = At(Math.PI / 2 * root);
        var sum = Math.PI / 4 * tanh / root;
        return (sum, ((Math.PI * Math.PI / 16 * sech * sech) - (sum / 2)) / r);
    }

    // Σ ±1/(n (n² + r)) over odd n, the signs taking turns.
    private static (Complex Sum, Complex Slope) AlternatingSum(Complex r)
    {
        var root = Complex.Sqrt(r);
        var (tanh, sech) = At(Math.PI / 2 * root);
        var sum = Math.PI / 4 * (1 - sech) / r;
        return (sum, ((Math.PI * Math.PI / 16 * sech * tanh / root) - sum) / r);
    }

    private static (Complex Tanh, Complex Sech) At(Complex u) =>
        u.Real > FarAway ? (Complex.One, Complex.Zero) : (Complex.Tanh(u), 1 / Complex.Cosh(u));
}
