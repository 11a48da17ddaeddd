namespace PanelService.Planning.Measures;

/// <summary>
/// The currencies of ISO 4217 with their minor digits (list one, "current currency &amp; funds", as of 2024; codes for
/// funds, metals and testing are left out).
/// </summary>
public static class Currencies
{
    private const string NoMinorUnit = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF";

    private const string ThreeDigits = "BHD IQD JOD KWD LYD OMR TND";

    private const string TwoDigits =
        "AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY "
        + "COP CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS "
        + "INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR "
        + "MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD "
        + "SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VED VES WST XCD XCG YER ZAR ZMW ZWG";

    private static readonly Dictionary<string, Currency> ByCode =
        new[] { (NoMinorUnit, 0), (TwoDigits, 2), (ThreeDigits, 3) }
            .SelectMany(group => group.Item1.Split(' ').Select(code => new Currency(code, group.Item2)))
            .ToDictionary(currency => currency.Code, StringComparer.Ordinal);

    /// <summary>The currency with a code; null where there is none.</summary>
    /// <param name="code">An alphabetic code in upper case, such as "EUR".</param>
    public static Currency? Find(string code) => ByCode.GetValueOrDefault(code);
}
