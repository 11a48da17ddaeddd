using System.Globalization;
using PanelService.Planning.Curves;
using PanelService.Planning.Measures;

namespace PanelService.Drawing.Curves;

/// <summary>The chart in words.</summary>
internal static class CurveWords
{
    public const string Making = "making is cheaper than buying, tools in";
    public const string Roll = "the roll beats cloth by length";
    public const string Hollow = "a cheaper plan may exist";

    /// <summary>Minor units in one of the major unit.</summary>
    public static decimal Minor(Currency currency) => 1 / new Money(1).In(currency.MinorDigits);

    /// <summary>An amount with the currency's digits, or without where it is whole.</summary>
    public static string Amount(decimal amount, Currency currency) => amount == decimal.Truncate(amount)
        ? amount.ToString("0", CultureInfo.InvariantCulture)
        : amount.ToString("F" + Math.Max(1, currency.MinorDigits), CultureInfo.InvariantCulture);

    /// <summary>What one point says.</summary>
    public static string Point(BatchCurve curve, CurvePoint point)
    {
        string each = Amount(Math.Round(point.EachMinor / Minor(curve.Order.Currency), curve.Order.Currency.MinorDigits), curve.Order.Currency);
        return string.Create(CultureInfo.InvariantCulture, $"{point.Times} times, {point.Panels} panels: {each} {curve.Order.Currency.Code} each, {(point.Plan.Proof.Proven ? "no cheaper plan exists" : Hollow)}");
    }

    /// <summary>All of it, for who cannot see it.</summary>
    public static string Describe(BatchCurve curve) => string.Join(". ", [
        .. curve.Points.Select(point => Point(curve, point)),
        .. curve.MakingFrom is { } making ? [string.Create(CultureInfo.InvariantCulture, $"From {making.Panels} panels on {Making}")] : Array.Empty<string>(),
        .. curve.RollFrom is { } roll ? [string.Create(CultureInfo.InvariantCulture, $"From {roll.Panels} panels on {Roll}")] : Array.Empty<string>(),
    ]) + ".";
}
