using CsCheck;
using PanelService.Planning.Measures;

namespace PanelService.Planning.Tests.Measures;

public sealed class LengthTextTests
{
    [Theory]
    [InlineData("16 1/2", 134112)]
    [InlineData("16-1/2", 134112)]
    [InlineData("16 - 1/2", 134112)]
    [InlineData("16.5", 134112)]
    [InlineData("16,5", 134112)]
    [InlineData(".5", 4064)]
    [InlineData("7 11/16", 62484)]
    [InlineData("3/16", 1524)]
    [InlineData("3 / 16", 1524)]
    [InlineData("41 cm", 131200)]
    [InlineData("41CM", 131200)]
    [InlineData("410 mm", 131200)]
    [InlineData("0.41 m", 131200)]
    [InlineData("8 in", 65024)]
    [InlineData("8 in.", 65024)]
    [InlineData("8 inches", 65024)]
    [InlineData("8\"", 65024)]
    [InlineData("8''", 65024)]
    [InlineData("8\u2033", 65024)]
    [InlineData("2 ft", 195072)]
    [InlineData("2\u2032", 195072)]
    [InlineData("3 yd", 877824)]
    [InlineData("2' 6\"", 243840)]
    [InlineData("2'6\"", 243840)]
    [InlineData("2'-6\"", 243840)]
    [InlineData("2' 6", 243840)]
    [InlineData("2\u2019 6\u201D", 243840)]
    [InlineData("2 ft 6 in", 243840)]
    [InlineData("2' 6 1/2\"", 247904)]
    [InlineData("1 yd 1 ft", 390144)]
    [InlineData("1 m 20 cm", 384000)]
    [InlineData("20,5 cm", 65600)]
    [InlineData("16\u00BD", 134112)]
    [InlineData("16 \u00BD in", 134112)]
    [InlineData("\u215E\"", 7112)]
    [InlineData("16 1\u20442", 134112)]
    [InlineData("16\u20131/2", 134112)]
    [InlineData("\u00A016\u00A01/2 ", 134112)]
    [InlineData("0", 0)]
    public void Parse_form_a_painter_writes_in_an_inch_order_is_read(string text, long steps) =>
        Assert.Equal(new LengthRead(Length.FromSteps(steps)), LengthText.Parse(text, LengthUnit.Inch));

    [Theory]
    [InlineData(LengthUnit.Inch, 8128)]
    [InlineData(LengthUnit.Centimetre, 3200)]
    [InlineData(LengthUnit.Millimetre, 320)]
    public void Parse_text_without_a_unit_takes_the_orders(LengthUnit unit, long steps) =>
        Assert.Equal(new LengthRead(Length.FromSteps(steps)), LengthText.Parse("1", unit));

    [Theory]
    [InlineData("", "empty")]
    [InlineData("   ", "empty")]
    [InlineData("wide", "is no length")]
    [InlineData("16 furlongs", "\"furlongs\" is no unit")]
    [InlineData("-3", "less than 0")]
    [InlineData("\u22123", "less than 0")]
    [InlineData("3/0", "cannot be 0")]
    [InlineData("8 10", "is no length")]
    [InlineData("8 x 10", "is no unit")]
    [InlineData("1/2/3", "is no length")]
    [InlineData("6\" 2'", "smaller")]
    [InlineData("2 ft 30 cm", "smaller")]
    [InlineData("2 in 3", "needs its unit")]
    [InlineData("1.234,5", "is no length")]
    [InlineData("1e3", "is no unit")]
    [InlineData("NaN", "is no length")]
    [InlineData("1234567890123", "too many digits")]
    [InlineData("0000000000000000000000000000000000000000000001", "more than 40")]
    public void Parse_text_that_is_no_length_says_what_is_wrong_and_what_was_expected(string text, string wrong)
    {
        var reading = Assert.IsType<LengthNotRead>(LengthText.Parse(text, LengthUnit.Inch));

        Assert.Contains(wrong, reading.Message, StringComparison.Ordinal);
        Assert.Contains("xpected a number of in", reading.Message, StringComparison.Ordinal);
    }

    // A step is 1/8128 in: 1/16256 in is half of one, however it is written.
    [Theory]
    [InlineData("1/16256", 1)]
    [InlineData("3/16256", 2)]
    [InlineData("0.0015625 mm", 1)]
    [InlineData("0.0015624 mm", 0)]
    [InlineData("0.0046875 mm", 2)]
    public void Parse_half_a_step_is_rounded_away_from_zero(string text, long steps) =>
        Assert.Equal(new LengthRead(Length.FromSteps(steps)), LengthText.Parse(text, LengthUnit.Inch));

    [Theory]
    [InlineData(134112, LengthUnit.Inch, "16 1/2 in")]
    [InlineData(1524, LengthUnit.Inch, "3/16 in")]
    [InlineData(65024, LengthUnit.Inch, "8 in")]
    [InlineData(0, LengthUnit.Inch, "0 in")]
    [InlineData(127, LengthUnit.Inch, "1/64 in")]
    [InlineData(63, LengthUnit.Inch, "0 in ±")]
    [InlineData(64, LengthUnit.Inch, "1/64 in ±")]
    [InlineData(65023, LengthUnit.Inch, "8 in ±")]
    [InlineData(-134112, LengthUnit.Inch, "-16 1/2 in")]
    [InlineData(131200, LengthUnit.Millimetre, "410 mm")]
    [InlineData(131200, LengthUnit.Centimetre, "41 cm")]
    [InlineData(1016, LengthUnit.Millimetre, "3.2 mm ±")]
    [InlineData(16, LengthUnit.Millimetre, "0.1 mm ±")]
    [InlineData(15, LengthUnit.Millimetre, "0 mm ±")]
    [InlineData(65632, LengthUnit.Centimetre, "20.51 cm")]
    public void Format_length_is_shown_as_a_tape_shows_it(long steps, LengthUnit unit, string text) =>
        Assert.Equal(text, LengthText.Format(Length.FromSteps(steps), unit));

    [Fact]
    public void FormatFigure_length_carries_no_unit() =>
        Assert.Equal("7 11/16", LengthText.FormatFigure(Length.FromInches(7.6875m), LengthUnit.Inch));

    [Fact]
    public void Parse_of_format_is_identity_for_what_a_tape_shows() =>
        Gen.Select(Gen.Long[0, 1_000_000], Gen.Enum<LengthUnit>()).Sample((parts, unit) =>
        {
            Length length = Length.FromSteps(parts * (unit == LengthUnit.Inch ? 127 : 32));
            Assert.Equal(new LengthRead(length), LengthText.Parse(LengthText.Format(length, unit), LengthUnit.Millimetre));
            Assert.Equal(new LengthRead(length), LengthText.Parse(LengthText.FormatFigure(length, unit), unit));
        });

    [Fact]
    public void Parse_of_format_is_within_half_of_the_finest_part_and_marked_where_not_exact() =>
        Gen.Select(Gen.Long[0, 1_000_000_000], Gen.Enum<LengthUnit>()).Sample((steps, unit) =>
        {
            string text = LengthText.Format(Length.FromSteps(steps), unit);
            var shown = Assert.IsType<LengthRead>(LengthText.Parse(text, unit));
            long off = Math.Abs(shown.Length.Steps - steps);
            Assert.True(2 * off <= (unit == LengthUnit.Inch ? 127 : 32), $"{steps} steps shown as {text}");
            Assert.Equal(off != 0, text.EndsWith('±'));
        });

    [Fact]
    public void Parse_any_text_at_all_is_answered_with_a_value() =>
        Gen.String[Gen.Char["0123456789 /-.,'\"infcmyd½±e+"], 0, 45].Sample(text =>
            Assert.True(LengthText.Parse(text, LengthUnit.Inch) is LengthRead { Length.Steps: >= 0 } or LengthNotRead { Message.Length: > 20 }));
}
