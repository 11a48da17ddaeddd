using Microsoft.AspNetCore.Mvc;

namespace PanelService.Http;

/// <summary>A problem with a body: documents what <see cref="Problems.Invalid"/> answers.</summary>
internal sealed class FaultsProblem : ProblemDetails
{
    /// <summary>The JSON path of each wrong field (<c>panels[2].width</c>) to what is wrong and what would be right.</summary>
    public required Dictionary<string, string[]> Errors { get; init; }
}

/// <summary>A problem with an order that cannot be made: documents what <see cref="Problems.Impossible"/> answers.</summary>
internal sealed class ImpossibleProblem : ProblemDetails
{
    /// <summary>What cannot be made and what is missing.</summary>
    public required Unmakeable[] Marks { get; init; }
}
