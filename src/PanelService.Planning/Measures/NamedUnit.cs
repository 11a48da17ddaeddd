namespace PanelService.Planning.Measures;

/// <summary>A unit of length that text may name.</summary>
/// <param name="Steps">How many steps of 3.125 µm one is; exact for each (NIST SP 811, appendix B: 1 in = 25.4 mm, 1 ft = 12 in, 1 yd = 3 ft).</param>
/// <param name="Metric">Metric, or of the yard's family.</param>
internal sealed record NamedUnit(long Steps, bool Metric)
{
    internal bool IsFoot => Steps == 12 * Length.StepsPerInch;

    internal static NamedUnit Of(LengthUnit unit) => unit switch
    {
        LengthUnit.Inch => new(Length.StepsPerInch, false),
        LengthUnit.Centimetre => new(10 * Length.StepsPerMillimetre, true),
        LengthUnit.Millimetre => new(Length.StepsPerMillimetre, true),
        _ => throw new ArgumentOutOfRangeException(nameof(unit)),
    };

    internal static Dictionary<string, NamedUnit> ByName()
    {
        (NamedUnit Unit, string[] Names)[] all =
        [
            (Of(LengthUnit.Millimetre), ["mm", "millimetre", "millimetres", "millimeter", "millimeters"]),
            (Of(LengthUnit.Centimetre), ["cm", "centimetre", "centimetres", "centimeter", "centimeters"]),
            (new(1000 * Length.StepsPerMillimetre, true), ["m", "metre", "metres", "meter", "meters"]),
            (Of(LengthUnit.Inch), ["in", "inch", "inches", "\""]),
            (new(12 * Length.StepsPerInch, false), ["ft", "foot", "feet", "'"]),
            (new(36 * Length.StepsPerInch, false), ["yd", "yds", "yard", "yards"]),
        ];
        return all.SelectMany(u => u.Names.Select(name => (name, u.Unit))).ToDictionary(p => p.name, p => p.Unit, StringComparer.Ordinal);
    }
}
