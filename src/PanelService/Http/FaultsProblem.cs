using Microsoft.AspNetCore.Mvc;

namespace PanelService.Http;

/// <summary>A problem with a request, field by field.</summary>
internal sealed class FaultsProblem : ProblemDetails
{
    /// <summary>The JSON path of each wrong field (<c>panels[2].width</c>) to what is wrong and what would be right.</summary>
    public required Dictionary<string, string[]> Errors { get; init; }
}

/// <summary>A problem with an order that is right in itself but cannot be made.</summary>
internal sealed class ImpossibleProblem : ProblemDetails
{
    /// <summary>What cannot be made and what is missing.</summary>
    public required Unmakeable[] Marks { get; init; }
}
