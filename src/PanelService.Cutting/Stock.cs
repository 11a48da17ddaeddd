namespace PanelService.Cutting;

/// <summary>One kind of rectangle that pieces are cut from: a sheet, an offcut, a length of cloth.</summary>
/// <param name="Width">Usable width (trims already taken off), in the caller's whole units; above 0.</param>
/// <param name="Height">Usable height, in the same units; above 0.</param>
/// <param name="Price">What using one costs, in whole money units; 0 or more.</param>
/// <param name="Limit">How many there are; null: any number.</param>
public sealed record Stock(long Width, long Height, long Price, int? Limit);
