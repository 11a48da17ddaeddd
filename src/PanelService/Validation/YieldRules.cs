using FluentValidation;
using PanelService.Planning.Measures;
using PanelService.Wire.Orders;
using PanelService.Wire.Yields;

namespace PanelService.Validation;

/// <summary>What holds for a question about yields.</summary>
internal sealed class YieldRules : AbstractValidator<YieldRequest>
{
    /// <summary>Sets the rules out.</summary>
    public YieldRules()
    {
        RuleFor(y => y.Currency).Fault(code => code is not null && Currencies.Find(code) is null
            ? $"\"{code}\" is no currency code of ISO 4217, such as \"EUR\", \"USD\" or \"JPY\"."
            : null);
        RuleFor(y => y.Panel).Needed("the panel's size, such as { \"width\": 8, \"height\": 10 }");
        RuleFor(y => y.Panel).SetValidator(new YieldPanelRules()!);
        RuleFor(y => y.Board).Must((y, board) => board is null || y.Boards is null)
            .WithMessage("Either board or boards: both are here.");
        RuleFor(y => y.Boards).Must((y, boards) => boards is { Count: > 0 } || y.Board is not null)
            .WithMessage("Required: the boards asked about, such as [{ \"width\": 24, \"height\": 48 }]; none is saved or in stock.");
        RuleFor(y => y.Board).SetValidator(new BoardShapeRules()!);
        RuleFor(y => y.Boards).AtMostItems(WireLimits.Goods);
        RuleForEach(y => y.Boards).SetValidator(new BoardShapeRules()!);
        RuleFor(y => y.Saw).SetValidator(new SawRules()!);
        RuleFor(y => y).Custom(Fits);
    }

    private static void Fits(YieldRequest question, ValidationContext<YieldRequest> context)
    {
        foreach ((BoardRequest? board, int index) in (question.Boards ?? []).Append(question.Board).Select((b, i) => (b, i)))
        {
            if (board is not null)
            {
                string path = ReferenceEquals(board, question.Board) ? "Board" : $"Boards[{index}]";
                Trim.Check(board, question.Saw, path, (at, message) => context.AddFailure(at, message));
            }
        }

        if (question is { Panel: { Width: { } width, Height: { } height }, Saw.Undersize: { } undersize }
            && undersize > Length.Zero
            && undersize >= Length.Min(width, height))
        {
            context.AddFailure("Saw.Undersize", "This leaves nothing of the panel.");
        }
    }
}

/// <summary>What holds for the panel asked about.</summary>
internal sealed class YieldPanelRules : AbstractValidator<YieldPanelRequest>
{
    /// <summary>Sets the rules out.</summary>
    public YieldPanelRules()
    {
        RuleFor(p => p.Width).Needed("the panel's width");
        RuleFor(p => p.Width).Size(WireLimits.Panel, WireLimits.Side);
        RuleFor(p => p.Height).Needed("the panel's height");
        RuleFor(p => p.Height).Size(WireLimits.Panel, WireLimits.Side);
        RuleFor(p => p.Board).Word(WireLimits.IdLength);
        RuleFor(p => p.Thickness).Size(WireLimits.Thickness);
    }
}
