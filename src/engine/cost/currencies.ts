/**
 * How many decimals a currency is written with (the minor unit of ISO 4217), and with that how many of its smallest
 * units make one. A currency that is not listed here is refused and never taken for one with two decimals.
 *
 * Source: ISO 4217, list one (current currency and funds codes), read in two republished copies of the maintenance
 * agency's table; national currencies only, no funds, no metals, no retired codes. For CLP one copy had 2; the other
 * copy and the CLDR have 0, which stands here.
 */
const CODES_BY_DECIMALS: Readonly<Record<number, string>> = {
  0: "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF",
  2: `AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP CRC
    CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD
    KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK
    NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SOS SRD SSP SVC SYP SZL THB TJS TMT
    TOP TRY TTD TWD TZS UAH USD UYU UZS WST XCD YER ZAR ZMW`,
  3: "BHD IQD JOD KWD LYD OMR TND",
}

const DECIMALS: ReadonlyMap<string, number> = new Map(
  Object.entries(CODES_BY_DECIMALS).flatMap(([decimals, codes]) =>
    codes.split(/\s+/).map((code) => [code, Number(decimals)] as const),
  ),
)

/** Codes that money can be kept in, in order of the alphabet. */
export const CURRENCIES: readonly string[] = [...DECIMALS.keys()].toSorted()

/**
 * Decimals of a currency, or null for one that is not known.
 *
 * @example
 * decimalsOf("JPY") // => 0
 */
export function decimalsOf(currency: string): number | null {
  return DECIMALS.get(currency) ?? null
}
