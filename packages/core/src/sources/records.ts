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
  | "Abt1989"
  | "AIDR2017"
  | "ArcementSchneider1989"
  | "ASCE1963"
  | "Bathurst1985"
  | "Bray1979"
  | "BrownLawler2003"
  | "BrungsJones1977"
  | "CGPM1901"
  | "Chow1959"
  | "Coles1956"
  | "CommonPractice"
  | "CountyReview"
  | "Cowan1956"
  | "Cox2010"
  | "Defra2006"
  | "DLMF"
  | "EPA2003"
  | "Ferguson2007"
  | "FOWG2002"
  | "FritschCarlson1980"
  | "GregoryNorthcote1993"
  | "Griffiths1981"
  | "Hey1979"
  | "Hoerner1965"
  | "HughesDill1990"
  | "IAPWS1994"
  | "IAPWS2011"
  | "ISO1100"
  | "ISO748"
  | "Jarrett1984"
  | "JCGM100"
  | "Jeffreys1946"
  | "Karvonen2000"
  | "Katul2002"
  | "Keulegan1938"
  | "Lamb1932"
  | "LaneFay1997"
  | "LeopoldMaddock1953"
  | "LeopoldWolman1957"
  | "Limerinos1970"
  | "Maynord1991"
  | "NezuNakagawa1993"
  | "NezuRodi1986"
  | "OurAssumption"
  | "Piccolo2008"
  | "Pode1951"
  | "Rantz1982"
  | "RickenmannRecking2011"
  | "RosenfeldTaylor2009"
  | "Schlichting1979"
  | "Strickler1923"
  | "Subramanya2008"
  | "SuckerBrauer1975"
  | "Wentworth1922"
  | "WSDE2006"
  | "Yang2004"
  | "ZimmermannKennedy1978";

const record = /* @__NO_SIDE_EFFECTS__ */ (
  authors: string,
  year: number | null,
  title: string,
  access: SourceAccess,
): Source => ({
  authors,
  year,
  title,
  access,
});

/** Every source that the code cites, by key. */
export const sources: Readonly<Record<SourceKey, Source>> = {
  Abt1989: record(
    "Abt, S. R.; Wittler, R. J.; Taylor, A.; Love, D. J.",
    1989,
    "Human stability in a high flood hazard zone, Water Resour. Bull. 25(4):881-890",
    "from-memory",
  ),
  AIDR2017: record(
    "Australian Institute for Disaster Resilience",
    2017,
    "Flood hazard, guideline 7-3",
    "from-memory",
  ),
  ArcementSchneider1989: record(
    "Arcement, G. J.; Schneider, V. R.",
    1989,
    "Guide for selecting Manning's roughness coefficients for natural channels and flood plains, USGS Water-Supply Paper 2339",
    "second-hand",
  ),
  ASCE1963: record(
    "ASCE Task Force on Friction Factors in Open Channels",
    1963,
    "Friction factors in open channels, J. Hydraul. Div. 89(HY2):97-143 (Colebrook's law with 4 R for the diameter)",
    "from-memory",
  ),
  Bathurst1985: record(
    "Bathurst, J. C.",
    1985,
    "Flow resistance estimation in mountain rivers, J. Hydraul. Eng. 111(4):625-643",
    "second-hand",
  ),
  Bray1979: record(
    "Bray, D. I.",
    1979,
    "Estimating average velocity in gravel-bed rivers, J. Hydraul. Div. ASCE 105(HY9):1103-1122",
    "second-hand",
  ),
  BrownLawler2003: record(
    "Brown, P. P.; Lawler, D. F.",
    2003,
    "Sphere drag and settling velocity revisited, J. Environ. Eng. 129(3):222-231",
    "second-hand",
  ),
  BrungsJones1977: record(
    "Brungs, W. A.; Jones, B. R.",
    1977,
    "Temperature criteria for freshwater fish: protocol and procedures, EPA-600/3-77-061, as quoted by a state agency",
    "second-hand",
  ),
  CGPM1901: record(
    "General Conference on Weights and Measures",
    1901,
    "Standard acceleration of gravity, 9.80665 m/s2",
    "from-memory",
  ),
  Chow1959: record("Chow, V. T.", 1959, "Open-Channel Hydraulics, Table 5-6 and ch. 9-10", "second-hand"),
  Coles1956: record(
    "Coles, D.",
    1956,
    "The law of the wake in the turbulent boundary layer, J. Fluid Mech. 1:191-226",
    "second-hand",
  ),
  CommonPractice: record("-", null, "Common practice of the trade, no source", "common-practice"),
  CountyReview: record("San Joaquin County", null, "Agency review, juvenile Chinook (undated)", "read"),
  Cowan1956: record(
    "Cowan, W. L.",
    1956,
    "Estimating hydraulic roughness coefficients, Agric. Eng. 37(7):473-475",
    "second-hand",
  ),
  Cox2010: record(
    "Cox, R. J.; Shand, T. D.; Blacka, M. J.",
    2010,
    "Appropriate safety criteria for people, Australian Rainfall and Runoff revision project 10, P10/S1/006",
    "from-memory",
  ),
  Defra2006: record(
    "Defra; Environment Agency",
    2006,
    "Flood risks to people, FD2320 and FD2321",
    "from-memory",
  ),
  DLMF: record(
    "NIST",
    2010,
    "Digital Library of Mathematical Functions, sec. 8.17 incomplete beta functions",
    "from-memory",
  ),
  EPA2003: record(
    "US Environmental Protection Agency, Region 10",
    2003,
    "Guidance for state and tribal temperature water quality standards, EPA 910-B-03-002, partly from memory",
    "from-memory",
  ),
  Ferguson2007: record(
    "Ferguson, R.",
    2007,
    "Flow resistance equations for gravel- and boulder-bed streams, Water Resour. Res. 43:W05427",
    "second-hand",
  ),
  FOWG2002: record(
    "Swiss Federal Office for Water and Geology",
    2002,
    "Danger levels of flood waves, on a trade page",
    "second-hand",
  ),
  FritschCarlson1980: record(
    "Fritsch, F. N.; Carlson, R. E.",
    1980,
    "Monotone piecewise cubic interpolation, SIAM J. Numer. Anal. 17(2):238-246",
    "from-memory",
  ),
  GregoryNorthcote1993: record(
    "Gregory, R. S.; Northcote, T. G.",
    1993,
    "Surface, planktonic and benthic foraging by juvenile chinook in turbid laboratory conditions, Can. J. Fish. Aquat. Sci. 50:233-240, as evaluated by Hayes et al. 2016",
    "second-hand",
  ),
  Griffiths1981: record(
    "Griffiths, G. A.",
    1981,
    "Flow resistance in coarse gravel bed rivers, J. Hydraul. Div. ASCE 107(HY7):899-918",
    "second-hand",
  ),
  Hey1979: record(
    "Hey, R. D.",
    1979,
    "Flow resistance in gravel-bed rivers, J. Hydraul. Div. ASCE 105(HY4):365-379",
    "second-hand",
  ),
  Hoerner1965: record("Hoerner, S. F.", 1965, "Fluid-Dynamic Drag, ch. 3", "second-hand"),
  HughesDill1990: record(
    "Hughes, N. F.; Dill, L. M.",
    1990,
    "Position choice by drift-feeding salmonids, Can. J. Fish. Aquat. Sci. 47:2039-2048",
    "second-hand",
  ),
  ISO1100: record(
    "ISO",
    2010,
    "ISO 1100-2 Hydrometry - Determination of the stage-discharge relationship",
    "from-memory",
  ),
  ISO748: record(
    "ISO",
    2007,
    "ISO 748 Hydrometry: measurement of liquid flow in open channels using current-meters or floats",
    "second-hand",
  ),
  IAPWS1994: record("IAPWS", 2014, "R1-76(2014) Surface tension of ordinary water substance", "second-hand"),
  IAPWS2011: record("IAPWS", 2011, "SR6-08(2011) Properties of liquid water at 0.1 MPa", "second-hand"),
  Jarrett1984: record(
    "Jarrett, R. D.",
    1984,
    "Hydraulics of high-gradient streams, J. Hydraul. Eng. 110(11):1519-1539",
    "second-hand",
  ),
  JCGM100: record(
    "Joint Committee for Guides in Metrology",
    2008,
    "JCGM 100 Guide to the expression of uncertainty in measurement, 4.2",
    "from-memory",
  ),
  Jeffreys1946: record(
    "Jeffreys, H.",
    1946,
    "An invariant form for the prior probability in estimation problems, Proc. R. Soc. A 186:453-461",
    "from-memory",
  ),
  Karvonen2000: record(
    "Karvonen, R. A.; Hepojoki, A.; Huhta, H.-K.; Louhio, A.",
    2000,
    "The use of physical models in dam-break analysis, RESCDAM final report, Helsinki University of Technology",
    "from-memory",
  ),
  Katul2002: record(
    "Katul, G.; Wiberg, P.; Albertson, J.; Hornberger, G.",
    2002,
    "A mixing layer theory for flow resistance in shallow streams, Water Resour. Res. 38(11):1250",
    "from-memory",
  ),
  Keulegan1938: record(
    "Keulegan, G. H.",
    1938,
    "Laws of turbulent flow in open channels, J. Res. Natl. Bur. Stand. 21:707-741",
    "second-hand",
  ),
  Lamb1932: record(
    "Lamb, H.",
    1932,
    "Hydrodynamics, added mass of a sphere and of a circular cylinder, art. 68 and 92",
    "from-memory",
  ),
  LaneFay1997: record(
    "Lane, S. L.; Fay, R. G.",
    1997,
    "Safety in field activities, USGS National Field Manual, Techniques of Water-Resources Investigations 9-A9",
    "second-hand",
  ),
  LeopoldMaddock1953: record(
    "Leopold, L. B.; Maddock, T.",
    1953,
    "The hydraulic geometry of stream channels and some physiographic implications, USGS Prof. Paper 252",
    "second-hand",
  ),
  LeopoldWolman1957: record(
    "Leopold, L. B.; Wolman, M. G.",
    1957,
    "River channel patterns: braided, meandering and straight, USGS Prof. Paper 282-B",
    "second-hand",
  ),
  Limerinos1970: record(
    "Limerinos, J. T.",
    1970,
    "Determination of the Manning coefficient from measured bed roughness in natural channels, USGS Water-Supply Paper 1898-B",
    "second-hand",
  ),
  Maynord1991: record(
    "Maynord, S. T.",
    1991,
    "Flow resistance of riprap, J. Hydraul. Eng. 117(6):687-696",
    "second-hand",
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
  Piccolo2008: record(
    "Piccolo, J. J.; Hughes, N. F.; Bryant, M. D.",
    2008,
    "Effects of water velocity on prey detection and capture by drift-feeding juvenile coho salmon and steelhead, Can. J. Fish. Aquat. Sci. 65:266-275, as quoted in public code",
    "second-hand",
  ),
  Pode1951: record(
    "Pode, L.",
    1951,
    "Tables for computing the equilibrium configuration of a flexible cable in a uniform stream, DTMB 687",
    "second-hand",
  ),
  Rantz1982: record(
    "Rantz, S. E.",
    1982,
    "Measurement and computation of streamflow, USGS Water-Supply Paper 2175",
    "second-hand",
  ),
  RickenmannRecking2011: record(
    "Rickenmann, D.; Recking, A.",
    2011,
    "Evaluation of flow resistance in gravel-bed rivers through a large field data set, Water Resour. Res. 47:W07538",
    "second-hand",
  ),
  RosenfeldTaylor2009: record(
    "Rosenfeld, J. S.; Taylor, J.",
    2009,
    "Prey abundance, channel structure and the allometry of growth rate potential for juvenile trout, Fish. Manag. Ecol. 16:202-218, as quoted in public code",
    "second-hand",
  ),
  Schlichting1979: record(
    "Schlichting, H.",
    1979,
    "Boundary-Layer Theory, 7th ed., ch. 24 free turbulent flows",
    "from-memory",
  ),
  Strickler1923: record(
    "Strickler, A.",
    1923,
    "Contributions to the question of a velocity formula and roughness data for streams, channels and closed pipelines",
    "second-hand",
  ),
  Subramanya2008: record(
    "Subramanya, K.",
    2008,
    "Engineering Hydrology, sec. 4.4 and example 4.1",
    "from-memory",
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
  WSDE2006: record(
    "Washington State Department of Ecology",
    2006,
    "Water quality standards for surface waters, temperature criteria, as tabulated by NMFS",
    "second-hand",
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
