/** One record per source. `access` says how we know it, so that nobody takes a memory for a reading. */

/** How the record was seen: in the source, in a work that quotes it, from memory, or only as habit of the trade or our own choice. */
export type SourceAccess = "read" | "second-hand" | "from-memory" | "common-practice" | "assumption";

export interface Source {
  readonly authors: string;
  readonly year: number | null;
  readonly title: string;
  readonly access: SourceAccess;
}

export type SourceKey =
  | "BrownLawler2003"
  | "CGPM1901"
  | "Coles1956"
  | "CommonPractice"
  | "FritschCarlson1980"
  | "Hoerner1965"
  | "HughesDill1990"
  | "ISO748"
  | "IAPWS1994"
  | "IAPWS2011"
  | "JCGM100"
  | "Katul2002"
  | "Lamb1932"
  | "NezuNakagawa1993"
  | "NezuRodi1986"
  | "OurAssumption"
  | "Pode1951"
  | "SuckerBrauer1975"
  | "Wentworth1922"
  | "Yang2004"
  | "ZimmermannKennedy1978";

const record = (authors: string, year: number | null, title: string, access: SourceAccess): Source => ({
  authors,
  year,
  title,
  access,
});

/** Every source that the code cites, by key. */
export const sources: Readonly<Record<SourceKey, Source>> = {
  BrownLawler2003: record(
    "Brown, P. P.; Lawler, D. F.",
    2003,
    "Sphere drag and settling velocity revisited, J. Environ. Eng. 129(3):222-231",
    "second-hand",
  ),
  CGPM1901: record(
    "General Conference on Weights and Measures",
    1901,
    "Standard acceleration of gravity, 9.80665 m/s2",
    "from-memory",
  ),
  Coles1956: record(
    "Coles, D.",
    1956,
    "The law of the wake in the turbulent boundary layer, J. Fluid Mech. 1:191-226",
    "second-hand",
  ),
  CommonPractice: record("-", null, "Common practice of the trade, no source", "common-practice"),
  FritschCarlson1980: record(
    "Fritsch, F. N.; Carlson, R. E.",
    1980,
    "Monotone piecewise cubic interpolation, SIAM J. Numer. Anal. 17(2):238-246",
    "from-memory",
  ),
  Hoerner1965: record("Hoerner, S. F.", 1965, "Fluid-Dynamic Drag, ch. 3", "second-hand"),
  HughesDill1990: record(
    "Hughes, N. F.; Dill, L. M.",
    1990,
    "Position choice by drift-feeding salmonids, Can. J. Fish. Aquat. Sci. 47:2039-2048",
    "second-hand",
  ),
  ISO748: record(
    "ISO",
    2007,
    "ISO 748 Hydrometry: measurement of liquid flow in open channels using current-meters or floats",
    "second-hand",
  ),
  IAPWS1994: record("IAPWS", 2014, "R1-76(2014) Surface tension of ordinary water substance", "second-hand"),
  IAPWS2011: record("IAPWS", 2011, "SR6-08(2011) Properties of liquid water at 0.1 MPa", "second-hand"),
  JCGM100: record(
    "Joint Committee for Guides in Metrology",
    2008,
    "JCGM 100 Guide to the expression of uncertainty in measurement, 4.2",
    "from-memory",
  ),
  Katul2002: record(
    "Katul, G.; Wiberg, P.; Albertson, J.; Hornberger, G.",
    2002,
    "A mixing layer theory for flow resistance in shallow streams, Water Resour. Res. 38(11):1250",
    "from-memory",
  ),
  Lamb1932: record(
    "Lamb, H.",
    1932,
    "Hydrodynamics, added mass of a sphere and of a circular cylinder, art. 68 and 92",
    "from-memory",
  ),
  NezuNakagawa1993: record("Nezu, I.; Nakagawa, H.", 1993, "Turbulence in Open-Channel Flows", "from-memory"),
  NezuRodi1986: record(
    "Nezu, I.; Rodi, W.",
    1986,
    "Open-channel flow measurements with a laser Doppler anemometer, J. Hydraul. Eng. 112(5):335-355",
    "second-hand",
  ),
  OurAssumption: record(
    "-",
    null,
    "Our own assumption: no published relation stands behind the value; the caller can set it",
    "assumption",
  ),
  Pode1951: record(
    "Pode, L.",
    1951,
    "Tables for computing the equilibrium configuration of a flexible cable in a uniform stream, DTMB 687",
    "second-hand",
  ),
  SuckerBrauer1975: record(
    "Sucker, D.; Brauer, H.",
    1975,
    "Fluiddynamik bei querangestroemten Zylindern, Waerme- und Stoffuebertragung 8:149-158",
    "second-hand",
  ),
  Wentworth1922: record(
    "Wentworth, C. K.",
    1922,
    "A scale of grade and class terms for clastic sediments, J. Geol. 30:377-392",
    "from-memory",
  ),
  Yang2004: record(
    "Yang, S.-Q.; Tan, S.-K.; Lim, S.-Y.",
    2004,
    "Velocity distribution and dip-phenomenon in smooth uniform open channel flows, J. Hydraul. Eng. 130(12):1179-1186",
    "from-memory",
  ),
  ZimmermannKennedy1978: record(
    "Zimmermann, C.; Kennedy, J. F.",
    1978,
    "Transverse bed slope in curved alluvial streams, J. Hydraul. Div. ASCE 104(HY1):33-48 (power-law exponent m = kappa V/u*)",
    "from-memory",
  ),
};
