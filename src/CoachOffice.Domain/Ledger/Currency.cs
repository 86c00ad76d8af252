using System.Collections.Frozen;

namespace CoachOffice.Domain.Ledger;

/// <summary>
/// A currency of ISO 4217 list one and the number of decimals its smallest unit has (table from memory of the list; funds codes, metals and test codes left out).
/// Never taken from culture data: that says 0 for the forint, ISO says 2. Two units with five parts (MRU, MGA) have 2 as in the list.
/// </summary>
public sealed record Currency
{
    private const string None = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF";
    private const string Three = "BHD IQD JOD KWD LYD OMR TND";
    private const string Four = "CLF UYW";

    private const string Two =
        "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD "
        + "HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON "
        + "RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VED VES WST XCD XCG YER ZAR ZMW ZWG";

    private static readonly FrozenDictionary<string, Currency> Known =
        new[] { (None, 0), (Two, 2), (Three, 3), (Four, 4) }
            .SelectMany(list => list.Item1.Split(' ').Select(code => new Currency(code, list.Item2)))
            .ToFrozenDictionary(currency => currency.Code, StringComparer.Ordinal);

    private Currency(string code, int decimals) => (Code, Decimals) = (code, decimals);

    /// <summary>Three capital letters.</summary>
    public string Code { get; }

    /// <summary>Decimals of an amount: 0, 2, 3 or 4.</summary>
    public int Decimals { get; }

    /// <summary>Smallest units in one whole: 1, 100, 1,000 or 10,000.</summary>
    public long MinorPerWhole => Decimals switch { 0 => 1, 2 => 100, 3 => 1_000, _ => 10_000 };

    /// <summary>The currency with a code; a code that is not in the list is a defect here and throws.</summary>
    public static Currency Of(string code) => Find(code) ?? throw new ArgumentException($"'{code}' is no currency of ISO 4217.", nameof(code));

    /// <summary>The currency with a code, or null.</summary>
    public static Currency? Find(string? code) => code is null ? null : Known.GetValueOrDefault(code);

    /// <summary>The code.</summary>
    public override string ToString() => Code;
}
