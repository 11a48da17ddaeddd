namespace PanelService.Cutting;

/// <summary>An axis-parallel rectangle in whole units, from its corner nearest the origin.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Y">Lower edge in sheet coordinates (y runs along the sheet's height).</param>
/// <param name="Width">Extent along x.</param>
/// <param name="Height">Extent along y.</param>
public readonly record struct Rectangle(long X, long Y, long Width, long Height);

/// <summary>A piece in its place.</summary>
/// <param name="Piece">The piece's index.</param>
/// <param name="At">Where it lies, as it lies (width and height exchanged where turned).</param>
/// <param name="Turned">Whether its own width lies along y.</param>
public readonly record struct PlacedPiece(int Piece, Rectangle At, bool Turned);

/// <summary>What is left over in one piece after all cuts.</summary>
/// <param name="At">Where it lay.</param>
/// <param name="FromTrim">Whether it is a strip trimmed off a factory edge.</param>
/// <param name="Untrimmed">Whether it still has a factory edge that would have to be trimmed.</param>
public readonly record struct Leftover(Rectangle At, bool FromTrim, bool Untrimmed = false);

/// <summary>One cut from edge to edge of its workpiece.</summary>
/// <param name="Workpiece">The rectangle cut, as earlier cuts left it.</param>
/// <param name="Axis">The axis cut across: <see cref="Axis.X"/> parts it into left and right.</param>
/// <param name="At">Where the blade's path [At, At + kerf] begins; it may hang over either edge by part of a kerf.</param>
/// <param name="IsTrim">Whether it trims a factory edge.</param>
/// <param name="IsFirst">Whether it is one of the sheet's <see cref="FirstCuts"/>, made elsewhere with their kerf.</param>
public readonly record struct CutLine(Rectangle Workpiece, Axis Axis, long At, bool IsTrim, bool IsFirst = false);
