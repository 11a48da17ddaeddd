using PanelService.Drawing.Drafting;

namespace PanelService.Drawing.Curves;

/// <summary>A field of the chart: amounts from 0 up, numbers of times from left to right.</summary>
/// <param name="Field">Where it lies on paper.</param>
/// <param name="Times">The greatest number of times.</param>
/// <param name="Greatest">The greatest amount to be shown; above 0.</param>
internal sealed record CurveAxis(Box Field, int Times, decimal Greatest)
{
    private const int MostTicks = 5;

    /// <summary>The distance of two ticks: 1, 2 or 5 times a power of ten.</summary>
    public decimal Tick
    {
        get
        {
            decimal power = 1;
            while (power * 10 <= Greatest)
            {
                power *= 10;
            }

            while (power > Greatest)
            {
                power /= 10;
            }

            return new[] { power / 10, power / 5, power / 2, power, power * 2 }.First(tick => Greatest / tick <= MostTicks);
        }
    }

    /// <summary>The amounts that have a tick.</summary>
    public IEnumerable<decimal> Ticks
    {
        get
        {
            for (decimal amount = 0; amount <= Top; amount += Tick)
            {
                yield return amount;
            }
        }
    }

    /// <summary>Where a number of times stands: the first and the last a little in from the edges.</summary>
    /// <param name="times">The number.</param>
    public double X(int times) => Field.X + (Field.Width * (times - 0.5) / Times);

    /// <summary>Where an amount stands.</summary>
    /// <param name="amount">The amount.</param>
    public double Y(decimal amount) => Field.Bottom - (Field.Height * (double)(amount / Top));

    private decimal Top => Math.Ceiling(Greatest / Tick) * Tick;
}
