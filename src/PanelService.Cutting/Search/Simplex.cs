using Google.OrTools.LinearSolver;

namespace PanelService.Cutting.Search;

/// <summary>A simplex run that a stop reaches: thousands of columns can take it tens of milliseconds.</summary>
internal static class Simplex
{
    /// <summary>Solves.</summary>
    /// <param name="solver">The programme.</param>
    /// <param name="cancellation">Ends it half-way, with an exception.</param>
    /// <returns>How it ended.</returns>
    /// <exception cref="OperationCanceledException">A stop was asked for.</exception>
    public static Solver.ResultStatus Run(Solver solver, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        using var stop = cancellation.Register(() => solver.InterruptSolve());
        var status = solver.Solve();
        cancellation.ThrowIfCancellationRequested();
        return status;
    }
}
