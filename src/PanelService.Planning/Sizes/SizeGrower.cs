// Problem: patterns were found with every line at its smallest allowed size; panels are to be no smaller than that saves.
// Idea:    a pattern's need grows with its pieces, so whether all patterns still fit is monotone in every size. Lines
//          become nominal where all their patterns allow it, both ways at once first; what is left over is given
//          out line by line, each to the largest size a tape shows that still fits (by bisection).
// Cost:    lines × the patterns that hold them × the bisection's dozen steps.
// Not:     the most lines at nominal size that any order of giving could reach; nor what other patterns of the same boards, or
//          other cuts through the same places, would have room for: of 145 reduced sides in 120 drawn orders the second was
//          true of two.
using System.Collections.Immutable;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Sizes;

/// <summary>Grows cut sizes back towards nominal as far as every sheet and cloth that holds them allows.</summary>
internal sealed class SizeGrower
{
    private readonly ImmutableArray<CutSize> _nominal;
    private readonly CutSize[] _sizes;
    private readonly ILookup<int, Room> _rooms;
    private readonly long _tape;

    private SizeGrower(ImmutableArray<CutSize> smallest, ImmutableArray<CutSize> nominal, IEnumerable<Room> rooms, Length tape)
    {
        _nominal = nominal;
        _sizes = [.. smallest];
        _rooms = rooms.SelectMany(room => room.Lines().Select(line => (line, room))).ToLookup(p => p.line, p => p.room);
        _tape = tape.Steps;
    }

    /// <summary>Grows.</summary>
    /// <param name="smallest">Sizes at which all patterns fit.</param>
    /// <param name="nominal">Sizes not to be passed.</param>
    /// <param name="rooms">The patterns and their room.</param>
    /// <param name="tape">What sizes between the two are rounded down to.</param>
    public static ImmutableArray<CutSize> Grow(
        ImmutableArray<CutSize> smallest, ImmutableArray<CutSize> nominal, IEnumerable<Room> rooms, Length tape) =>
        new SizeGrower(smallest, nominal, rooms, tape).Grow();

    /// <summary>What a tape shows: 1/64 in, or 0.5 mm.</summary>
    /// <param name="unit">The order's unit.</param>
    public static Length Tape(LengthUnit unit) =>
        unit == LengthUnit.Inch ? Length.FromSteps(Length.StepsPerInch / 64) : Length.FromMillimetres(0.5m);

    private ImmutableArray<CutSize> Grow()
    {
        ForEachLine(line => TrySet(line, _nominal[line]));
        ForEachLine(line => TrySet(line, _sizes[line] with { Width = _nominal[line].Width }));
        ForEachLine(line => TrySet(line, _sizes[line] with { Height = _nominal[line].Height }));
        ForEachLine(line => Stretch(_sizes[line].Width, _nominal[line].Width, w => TrySet(line, _sizes[line] with { Width = w })));
        ForEachLine(line => Stretch(_sizes[line].Height, _nominal[line].Height, h => TrySet(line, _sizes[line] with { Height = h })));
        return [.. _sizes];
    }

    private void ForEachLine(Action<int> act)
    {
        for (int line = 0; line < _sizes.Length; line++)
        {
            act(line);
        }
    }

    /// <summary>Sets the largest tape mark between the two lengths that is taken; marks taken on the way stay valid.</summary>
    private void Stretch(Length from, Length to, Func<Length, bool> trySet)
    {
        long low = from.Steps / _tape;
        long high = (to.Steps - 1) / _tape;
        while (low < high)
        {
            long middle = low + ((high - low + 1) / 2);
            (low, high) = trySet(Length.FromSteps(middle * _tape)) ? (middle, high) : (low, middle - 1);
        }
    }

    private bool TrySet(int line, CutSize size)
    {
        var before = _sizes[line];
        _sizes[line] = size;
        if (_rooms[line].All(room => room.Holds(_sizes)))
        {
            return true;
        }

        _sizes[line] = before;
        return false;
    }
}
