namespace PanelService.Checking;

/// <summary>Collects what one rule finds.</summary>
/// <param name="rule">The rule.</param>
internal sealed class Findings(Rule rule)
{
    private readonly List<Violation> violations = [];

    /// <summary>What was found.</summary>
    public IReadOnlyList<Violation> All => violations;

    /// <summary>Notes a violation unless a condition holds.</summary>
    public void Expect(bool condition, string where, FormattableString words)
    {
        if (!condition)
        {
            violations.Add(new Violation(rule, where, FormattableString.Invariant(words)));
        }
    }
}
