namespace PanelService.Checking;

/// <summary>Something in a plan that breaks a rule every plan must keep.</summary>
/// <param name="Rule">Which of the nine rules.</param>
/// <param name="Where">The part of the plan: "sheet 2, cut 5".</param>
/// <param name="Words">What is wrong there.</param>
public sealed record Violation(Rule Rule, string Where, string Words)
{
    /// <inheritdoc/>
    public override string ToString() => $"rule {(int)Rule} ({Rule}), {Where}: {Words}";
}
