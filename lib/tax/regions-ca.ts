import { localDate } from "../calendar/local-date.ts";
import { decimal } from "../decimal.ts";
import type { TaxComponent, TaxRegion } from "./region.ts";

const CRA = "accounting-firm page reproducing the CRA history table";
const CRA_CHANGES = "CRA page on HST changes";
const TABLE_2017 = "accountant page, 2017 table";
const RATES_PACKAGE = "npm sales-tax 2.23.0";

/** The taxes a registered buyer gets back; PST and RST are cost (Gov. of B.C., PST FAQs 2024: no input tax credit). */
const RECOVERABLE: readonly string[] = ["GST", "HST", "QST"];

/** One row: both days count; no last day: in force so far as the sources seen say on 2026-11-25. */
function row(
  name: string,
  ratePercent: string,
  from: string,
  until: string | null,
  evidence: string,
  base: TaxComponent["base"] = "price",
): TaxComponent {
  return {
    name,
    ratePercent: decimal(ratePercent),
    from: localDate(from),
    until: until === null ? null : localDate(until),
    base,
    recoverable: RECOVERABLE.includes(name),
    evidence,
    fromMemory: evidence.includes("from memory"),
  };
}

const gst7 = (until = "2006-06-30") => row("GST", "7", "1991-01-01", until, CRA);
const gst6 = () => row("GST", "6", "2006-07-01", "2007-12-31", CRA);
const gst5 = (until: string | null = null) => row("GST", "5", "2008-01-01", until, CRA);
const gst = () => [gst7(), gst6(), gst5()];

/** NB, NL and NS harmonised together. */
const earlyHst = () => [
  gst7("1997-03-31"),
  row("HST", "15", "1997-04-01", "2006-06-30", CRA),
  row("HST", "14", "2006-07-01", "2007-12-31", CRA),
];
const hstOfNbAndNl = () => [
  ...earlyHst(),
  row("HST", "13", "2008-01-01", "2016-06-30", `${CRA}; end date from memory`),
  row("HST", "15", "2016-07-01", null, `${TABLE_2017} (rate); date from memory`),
];

function region(code: string, name: string, completeFrom: string, components: TaxComponent[]): TaxRegion {
  return { code: `CA-${code}`, name, country: "CA", completeFrom: localDate(completeFrom), components };
}

/**
 * Sales tax of every Canadian province and territory, dated, with the evidence of each row; a row whose rate or date
 * was set down from memory says so. completeFrom: the first day from which no provincial tax is missing. The provincial
 * taxes before harmonisation (NB, NL, NS, ON, PE, BC) and before the first row here (MB, QC, SK) are not listed.
 * Units: percent.
 */
export const CANADA: readonly TaxRegion[] = [
  region("AB", "Alberta", "1991-01-01", gst()),
  region("BC", "British Columbia", "2010-07-01", [
    gst7(),
    gst6(),
    gst5("2010-06-30"),
    row("HST", "12", "2010-07-01", "2013-03-31", `${CRA}; ${CRA_CHANGES}`),
    row("GST", "5", "2013-04-01", null, CRA_CHANGES),
    row("PST", "7", "2013-04-01", null, `${CRA_CHANGES} (date); ${RATES_PACKAGE} (rate)`),
  ]),
  region("MB", "Manitoba", "2013-07-01", [
    ...gst(),
    row("RST", "8", "2013-07-01", "2019-06-30", `${TABLE_2017} (rate in 2017); dates from memory`),
    row("RST", "7", "2019-07-01", null, `${RATES_PACKAGE} (rate); date from memory`),
  ]),
  region("NB", "New Brunswick", "1997-04-01", hstOfNbAndNl()),
  region("NL", "Newfoundland and Labrador", "1997-04-01", hstOfNbAndNl()),
  region("NS", "Nova Scotia", "1997-04-01", [
    ...earlyHst(),
    row("HST", "13", "2008-01-01", "2010-06-30", CRA),
    row("HST", "15", "2010-07-01", "2025-03-31", `${CRA}; ${RATES_PACKAGE} (end)`),
    row("HST", "14", "2025-04-01", null, `${RATES_PACKAGE}; public page on the NS cut`),
  ]),
  region("NT", "Northwest Territories", "1991-01-01", gst()),
  region("NU", "Nunavut", "1991-01-01", gst()),
  region("ON", "Ontario", "2010-07-01", [
    gst7(),
    gst6(),
    gst5("2010-06-30"),
    row("HST", "13", "2010-07-01", null, CRA),
  ]),
  region("PE", "Prince Edward Island", "2013-04-01", [
    gst7(),
    gst6(),
    gst5("2013-03-31"),
    row("HST", "14", "2013-04-01", "2016-09-30", `${CRA_CHANGES}; end date from memory`),
    row("HST", "15", "2016-10-01", null, `${TABLE_2017} (rate); date from memory`),
  ]),
  region("QC", "Quebec", "1998-01-01", [
    ...gst(),
    row("QST", "7.5", "1998-01-01", "2010-12-31", "from memory", "price-plus-other-tax"),
    row("QST", "8.5", "2011-01-01", "2011-12-31", "from memory", "price-plus-other-tax"),
    row("QST", "9.5", "2012-01-01", "2012-12-31", "from memory", "price-plus-other-tax"),
    row("QST", "9.975", "2013-01-01", null, `${RATES_PACKAGE} (rate); accountant page (2013-01-01)`),
  ]),
  region("SK", "Saskatchewan", "2006-10-28", [
    ...gst(),
    row("PST", "5", "2006-10-28", "2017-03-22", `${TABLE_2017} (rate, end date); start from memory`),
    row("PST", "6", "2017-03-23", null, `${TABLE_2017}; ${RATES_PACKAGE}`),
  ]),
  region("YT", "Yukon", "1991-01-01", gst()),
];
