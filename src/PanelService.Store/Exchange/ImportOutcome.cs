namespace PanelService.Store.Exchange;

/// <summary>What importing a studio comes to.</summary>
public abstract record ImportOutcome
{
    private protected ImportOutcome()
    {
    }
}

/// <summary>It is all there.</summary>
/// <param name="Supplies">How many supplies.</param>
/// <param name="Stock">How many heaps.</param>
/// <param name="Movements">How many lines of the ledger.</param>
/// <param name="Plans">How many plans.</param>
public sealed record Imported(int Supplies, int Stock, int Movements, int Plans) : ImportOutcome;

/// <summary>It is no such document, or does not hold together.</summary>
/// <param name="Text">What is wrong.</param>
public sealed record NotAStudio(string Text) : ImportOutcome, IRefusal;

/// <summary>There is something in this studio already, and nothing is ever overwritten.</summary>
public sealed record StudioNotEmpty : ImportOutcome, IRefusal;
