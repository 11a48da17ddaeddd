using System.Globalization;
using PanelService.Http;
using PanelService.Planning.Measures;
using PanelService.Planning.Practice;

namespace PanelService.Wire.Practice;

/// <summary>The practice table and the formats as the wire shows them.</summary>
internal static class PracticeTranslation
{
    private const int Decimals = 6;

    internal static PracticeResponse Table() =>
        new(Defaults.Units, Defaults.Currency.Code, [.. PracticeTable.Defaults.Select(Setting)]);

    internal static FormatSeriesResponse Series(FormatSeries series) => new(
        series.Name,
        series.Units,
        series.Mark,
        series.Source,
        [.. series.Formats.Select(f => new FormatResponse(f.Name, f.Width.In(series.Units), f.Height.In(series.Units)))]);

    private static PracticeSettingResponse Setting(PracticeDefault setting) => setting.Value switch
    {
        PracticeLength value => Lengths(setting, value.Length),
        PracticeSize value => Lengths(setting, value.First, value.Second),
        PracticeNumber value => new(
            setting.Setting, string.Create(CultureInfo.InvariantCulture, $"{value.Number} {value.Unit}"), null, null, value.Number, value.Unit, setting.Mark, setting.Source),
        PracticeNoLimit => new(setting.Setting, "no limit", null, null, null, null, setting.Mark, setting.Source),
        _ => throw new InvalidOperationException($"A practice value of an unknown sort: {setting.Value.GetType().Name}."),
    };

    private static PracticeSettingResponse Lengths(PracticeDefault setting, params Length[] lengths) => new(
        setting.Setting,
        string.Join(" × ", lengths.Select(length => LengthText.Format(length, LengthUnit.Inch))),
        [.. lengths.Select(length => Math.Round(length.Inches, Decimals))],
        [.. lengths.Select(length => Math.Round(length.Millimetres, Decimals))],
        null,
        null,
        setting.Mark,
        setting.Source);
}
