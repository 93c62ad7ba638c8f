// Written by scripts/evidence.mjs from src/evidence/tables. Do not edit.
import type { Source } from "../types.js"

export const sources: readonly Source[] = [
  {
    "id": "growth-references/yii2023",
    "citation": "Yii F. Emmetropic eye growth in East Asians and non-East Asians. Ophthalmic Physiol Opt 2023;43(6):1412-1418",
    "doi": "10.1111/opo.13195",
    "where": "public data file (42 rows) + abstract",
    "obtained": "data file of the author read whole; abstract read; curve refitted here and equal to the published results",
    "caveats": "Between-study mean curve, mostly cross-sectional; sexes pooled; no centiles of growth. The file description says 43 rows, the file has 42; sum of n is 4527 because one longitudinal sample of 125 appears twice (4402 without it)."
  },
  {
    "id": "growth-references/tideman2018",
    "citation": "Tideman JWL, Polling JR, Vingerling JR, Jaddoe VWV, Williams C, Guggenheim JA, Klaver CCW. Axial length growth and the risk of developing myopia in European children. Acta Ophthalmol 2018;96(3):301-309",
    "doi": null,
    "where": "abstract only",
    "obtained": "abstract (PMC6002955 and university repository record)",
    "caveats": "Centile table by sex, AL/CR and adult-myopia risk by centile exist in the paper but could not be read: stored copy shows only its opening. File named derived_normal is our arithmetic, not the paper's."
  },
  {
    "id": "growth-references/olsm",
    "citation": "Orinda Longitudinal Study of Myopia, 618-child subset published with Hosmer DW, Lemeshow S, Sturdivant RX. Applied Logistic Regression, 3rd ed. Wiley 2013",
    "doi": null,
    "where": "individual data (MYOPIA data set, R package aplore3 0.9)",
    "obtained": "computed here from the file (sha256 4147ac651d8f1a975be7eefb39a49044e9a0e5a8f97ddfb40bc764f70680784d)",
    "caveats": "1989-2001 cohort, myopes at entry excluded, so the long-eye and myopic tails are trimmed; ages in whole years; only age 6 is well filled; ages 5 and 9 dropped (n 21 and 6). The R help page codes sex 1/2, the raw file 0/1 (0 = male per code sheet)."
  },
  {
    "id": "growth-references/truckenbrod2020",
    "citation": "Truckenbrod C, Meigen C, Brandt M, Vogel M, Wahl S, Jurkutat A, Kiess W. Reference curves for refraction in a German cohort of healthy children and adolescents. PLoS ONE 2020;15(3):e0230291",
    "doi": "10.1371/journal.pone.0230291",
    "where": "cut-off table C3/C50/C97",
    "obtained": "table read through a literature-index copy; ages 3-12 complete, 13 partly, 14-17 not visible, 18 reconstructed from the abstract's changes",
    "caveats": "Non-cycloplegic: young children read more myopic than cycloplegic references. Three centiles only."
  },
  {
    "id": "growth-references/chen2016",
    "citation": "Chen Y et al. Identifying Children at Risk of High Myopia Using Population Centile Curves of Refraction. PLoS ONE 2016 (year and journal from memory; PMID 28030593)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Below the 5th centile: sensitivity 92.9%, specificity 97.9%, PPV 65.0% for SE <= -6 D before 15 in the twin cohort. Local to a high-prevalence city around 2002 (year from memory)."
  },
  {
    "id": "growth-references/mutti2018",
    "citation": "Mutti DO, Sinnott LT, Mitchell GL, Jordan LA, Friedman NE, Frane SL, Lin WK. Ocular Component Development during Infancy and Early Childhood. Optom Vis Sci 2018;95(11):976-985",
    "doi": "10.1097/OPX.0000000000001296",
    "where": "Table 4 (equations)",
    "obtained": "full text table 4 (PMC6212316 table page)",
    "caveats": "Means only."
  },
  {
    "id": "growth-references/life2021-biometry",
    "citation": "Ocular biometry in children and adolescents from 4 to 17 years: a cross-sectional study in central Germany. Ophthalmic Physiol Opt 2021;41(3):496-511 (authors not shown in the record read)",
    "doi": "10.1111/opo.12814",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Year-by-year table not reachable; only end points by sex."
  },
  {
    "id": "growth-references/truckenbrod2021",
    "citation": "Truckenbrod C et al. Longitudinal analysis of axial length growth in a German cohort of healthy children and adolescents. Ophthalmic Physiol Opt 2021;41(3):532-540",
    "doi": "10.1111/opo.12817",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "98th centile: boys longer than girls by 0.93 mm at 3 y, 0.21 mm at 18 y. Centile values by age not reachable."
  },
  {
    "id": "growth-references/he2023",
    "citation": "He X, Sankaridurg P, Naduvilath T, et al. Normative data and percentile curves for axial length and axial length/corneal curvature in Chinese children and adolescents aged 4-18 years. Br J Ophthalmol 2023;107(2):167-175",
    "doi": "10.1136/bjophthalmol-2021-319431",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Centiles published: 3,5,10,25,50,75,90,95 of AL and AL/CR (values NOT obtained). Myopia model sensitivity 86.0%, specificity 84.5%. SE estimated from centiles within 0.50 D in 47.4% and within 1.00 D in 78.9%: too loose to replace refraction. R2 of SE on age 0.45, AL 0.70, AL/CR 0.83."
  },
  {
    "id": "growth-references/sanzdiez2019",
    "citation": "Sanz Diez P, Yang LH, Lu MX, Wahl S, Ohlendorf A. Growth curves of myopia-related parameters to clinically monitor the refractive development in Chinese schoolchildren. Graefes Arch Clin Exp Ophthalmol 2019;257:1045-1053",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Centile values NOT obtained. Centiles below the first quartile stop growing after 12 y."
  },
  {
    "id": "growth-references/sanzdiez2022",
    "citation": "Sanz Diez P, Yang LH, Lu MX, Kiess W, Wahl S. LMS parameters, percentile, and Z-score growth curves for axial length in Chinese schoolchildren in Wuhan. Sci Rep 2022",
    "doi": "10.1038/s41598-022-08907-5",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "The L, M, S table NOT obtained: first thing to transcribe by hand if a person can open the article. LMS and raw P98 at 15 y differ by 0.78 mm (girls) and 0.63 mm (boys): the far tail is method-dependent."
  },
  {
    "id": "growth-references/rozema2019",
    "citation": "Rozema J, Dankert S, Iribarren R, Lanca C, Saw SM. Axial growth and lens power loss at myopia onset in Singaporean children. Invest Ophthalmol Vis Sci 2019;60(8):3091-3099",
    "doi": "10.1167/iovs.18-26247",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Means without age breakdown."
  },
  {
    "id": "growth-references/mutti2007",
    "citation": "Mutti DO, Hayes JR, Mitchell GL, et al. Refractive error, axial length, and relative peripheral refractive error before and after the onset of myopia. Invest Ophthalmol Vis Sci 2007;48(6):2510-2519",
    "doi": "10.1167/iovs.06-0562",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Eyes that become myopic are already longer than matched emmetropes from 3 years before onset to 5 years after (SE differs from 4 years before). Per-year mm values and the emmetrope equation NOT obtained."
  },
  {
    "id": "growth-references/jones2005",
    "citation": "Jones LA, Mitchell GL, Mutti DO, Hayes JR, Moeschberger ML, Zadnik K. Comparison of ocular component growth curves among refractive error groups in children. Invest Ophthalmol Vis Sci 2005;46(7):2317-2327",
    "doi": "10.1167/iovs.04-0945",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Equations of AL by age NOT obtained; none is given here, because coefficients recalled from memory would be unsafe."
  },
  {
    "id": "growth-references/chamberlain2021",
    "citation": "Chamberlain P, Lazon de la Jara P, Arumugam B, Bullimore MA. Axial length targets for myopia control. Ophthalmic Physiol Opt 2021;41:523-531",
    "doi": "10.1111/opo.12812",
    "where": "start of abstract",
    "obtained": "opening of the paper only; a company press release quoting results was seen and deliberately not used",
    "caveats": "Result figures NOT obtained from the paper. The meta-regression curve (yii2023) covers the same need."
  },
  {
    "id": "growth-references/gusto2023",
    "citation": "Br J Ophthalmol, online 19 Sep 2023, PMID 37726156 (axial elongation 3 to 6 years, GUSTO birth cohort, Singapore; title not shown in the record read)",
    "doi": "10.1136/bjo-2023-323906",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Three-year totals; dividing by 3 hides the slowing with age."
  },
  {
    "id": "growth-references/hk2025",
    "citation": "Axial elongation among Hong Kong myopic children and adolescents wearing single vision spectacles from a clinical setting. Sci Rep 2025 (May)",
    "doi": "10.1038/s41598-025-99954-1",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Best untreated-myope yardstick found; retrospective, clinic-based."
  },
  {
    "id": "growth-references/chen2022",
    "citation": "Chen S, Guo Y, Han X, et al. Axial growth driven by physical development and myopia among children: a two year cohort study. J Clin Med 2022;11(13):3642",
    "doi": "10.3390/jcm11133642",
    "where": "baseline table",
    "obtained": "table read through a literature-index copy with blanked row labels; order taken from its footnote (G0,G1,G4,G7)",
    "caveats": "Rates: fairly constant from 3 to 11 y in non-myopes, then lower from 12 y (abstract, no numbers)."
  },
  {
    "id": "growth-references/saw2005",
    "citation": "Saw SM, Chua WH, Gazzard G, Koh D, Tan DTH, Stone RA. Eye growth changes in myopic children in Singapore. Br J Ophthalmol 2005;89(11):1489-1494",
    "doi": "10.1136/bjo.2005.071118",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "growth-references/tao2022",
    "citation": "Tao L, Wang C, Peng Y, et al. Correlation between increase of axial length and height growth in Chinese school-age children. Front Public Health 2022;9:817882",
    "doi": "10.3389/fpubh.2021.817882",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Also: SE -1.69 D and height +23.6 cm over 5 y. Non-cycloplegic subjective refraction."
  },
  {
    "id": "growth-references/preschool-shanghai2022",
    "citation": "One-year changes in refraction and refractive components, preschool children 3-5 y, Jiading, Shanghai (PMC9541634; title and authors not shown)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Zero SE change expected at baseline SE +1.05 D."
  },
  {
    "id": "growth-references/gopalakrishnan2022",
    "citation": "Gopalakrishnan A, Hussaindeen JR, Chaudhary R, et al. Results of the School Children Ocular Biometry and Refractive Error Study in South India. Turk J Ophthalmol 2022;52(6):412-420",
    "doi": "10.4274/tjo.galenos.2021.90008",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "By school grade, not age."
  },
  {
    "id": "growth-references/zhang2018",
    "citation": "Zhang L, He X, Qu X, et al. Refraction and ocular biometry of preschool children in Shanghai, China. J Ophthalmol 2018;5205946",
    "doi": "10.1155/2018/5205946",
    "where": "abstract",
    "obtained": "abstract (scanned copy)",
    "caveats": "Mean SE +1.20 (SD 1.05), cycloplegic."
  },
  {
    "id": "growth-references/bmc2023",
    "citation": "Investigation of ocular biometry in 4- to 9-year-old Chinese children. BMC Ophthalmol 2023",
    "doi": "10.1186/s12886-023-02975-5",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Ages pooled."
  },
  {
    "id": "growth-references/dezful2013",
    "citation": "Distribution of ocular biometric parameters during the eye growth. Acta Ophthalmol 2013 (meeting abstract)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "95% CI 22.93-23.33."
  },
  {
    "id": "growth-references/german-school2021",
    "citation": "Optometric eye screening in schools: first epidemiological data for children and adolescents in grades 5-7. 2021 (German; journal not shown)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Small; SD by sex given."
  },
  {
    "id": "growth-references/boston-first-decade",
    "citation": "Normative curves for axial length and corneal curvature in the first decade of life (Boston Children's Hospital; authors and journal not shown in the abstract read)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Small sample; two quantile anchor points."
  },
  {
    "id": "growth-references/twelker2009",
    "citation": "Twelker JD, Mitchell GL, Messer DH, et al. Children's ocular components and age, gender, and ethnicity. Optom Vis Sci 2009;86(8):918-935",
    "doi": "10.1097/OPX.0b013e3181b2f903",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "No mm in abstract; says ethnic differences in most components are small clinically, Native American eyes longest and White shortest vitreous chambers."
  },
  {
    "id": "growth-references/martinez2023",
    "citation": "Martinez-Perez C, Perez-Sanchez B, Villa-Collar C. Percentile curves of refractive errors in a Spanish paediatric population. J Optom 2023;16(3):175-181",
    "doi": "10.1016/j.optom.2022.08.005",
    "where": "start of abstract",
    "obtained": "opening of article only",
    "caveats": "Centiles 5-95 exist in figures; values not obtained."
  },
  {
    "id": "growth-references/penaloza2025",
    "citation": "Penaloza-Barbosa MI, Martinez-Perez C, Andreu-Vazquez C, Sanchez-Tena MA, Alvarez-Peregrina C. Spherical equivalent percentile curves in a Portuguese school-aged population. J Clin Med 2025;14(20):7262",
    "doi": "10.3390/jcm14207262",
    "where": "start of abstract",
    "obtained": "opening of article only",
    "caveats": "Values not obtained (supplement)."
  },
  {
    "id": "progression/naduvilath2023",
    "citation": "Naduvilath T, He X, Xu X, Sankaridurg P. Normative data for axial elongation in Asian children. Ophthalmic Physiol Opt 2023",
    "doi": null,
    "where": "abstract (model estimates)",
    "obtained": "abstract",
    "caveats": "Regression coefficients not reached. The three myope values (0.58 at 6 y, 0.34 at 10.5 y, 0.13 at 15 y) do not lie on one exponential: 6 and 15 y alone give 16.6 %/y log decline and 0.275 at 10.5 y. Meaning of the stated age (start or middle of the year) not given; see sensitivity in growth_model.json."
  },
  {
    "id": "progression/lamp1",
    "citation": "Yam JC et al. Low-Concentration Atropine for Myopia Progression (LAMP) Study. Ophthalmology 2019;126:113-124",
    "doi": "10.1016/j.ophtha.2018.05.029",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Mean age of the placebo arm (8.4 y) is from memory."
  },
  {
    "id": "progression/lamp2",
    "citation": "Yam JC et al. Two-year LAMP phase 2 report. Ophthalmology 2020;127:910-919",
    "doi": "10.1016/j.ophtha.2019.12.011",
    "where": "abstract / news summary",
    "obtained": "abstract; year-1 AL of the ex-placebo group via a news summary",
    "caveats": "Ex-placebo completers: 0.43 mm in year 1 on placebo, 0.15 mm in year 2 on 0.05 %."
  },
  {
    "id": "progression/atom1",
    "citation": "Chua WH et al. Atropine for the treatment of childhood myopia. Ophthalmology 2006;113:2285-2291",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "A-scan ultrasound; 0.38 mm against -1.20 D is 3.2 D/mm, out of line with every optical-biometry trial. Not used in the fit."
  },
  {
    "id": "progression/champ",
    "citation": "Zadnik K et al. Efficacy and safety of 0.01% and 0.02% atropine over 3 years (CHAMP). JAMA Ophthalmol 2023",
    "doi": null,
    "where": "full text table 2 (PMC10236322)",
    "obtained": "full text table 2",
    "caveats": "Mean age 8.9 y is from memory (and refers to the wider ITT set). SDs given are of AL, not of change."
  },
  {
    "id": "progression/waatom",
    "citation": "Lee SS-Y et al. Low-concentration atropine eyedrops in a multi-racial cohort of Australian children (WA-ATOM). Clin Exp Ophthalmol 2022;50:1001-1012",
    "doi": "10.1111/ceo.14148",
    "where": "abstract (PMC10086806)",
    "obtained": "abstract",
    "caveats": "Model-based CIs."
  },
  {
    "id": "progression/lam2020",
    "citation": "Lam CSY et al. Defocus incorporated multiple segments (DIMS) spectacle lenses slow myopia progression: 2-year RCT. Br J Ophthalmol 2020",
    "doi": null,
    "where": "abstract (PMC7041503) and a table markup of the same journal (n=79/81)",
    "obtained": "full text table 2 and abstract",
    "caveats": "Table gives 0.53 (SE 0.03) at 24 months, abstract 0.55 (0.02); mean age 10.0 y from memory."
  },
  {
    "id": "progression/bao2021",
    "citation": "Bao J et al. One-year myopia control efficacy of spectacle lenses with aspherical lenslets. Br J Ophthalmol 2022;106:1171",
    "doi": "10.1136/bjophthalmol-2020-318367",
    "where": "abstract (PMC9340037)",
    "obtained": "abstract",
    "caveats": "Mean age 10.4 y is taken from bao2022 (all arms, completers)."
  },
  {
    "id": "progression/bao2022",
    "citation": "Bao J et al. Spectacle lenses with aspherical lenslets vs single-vision: RCT. JAMA Ophthalmol 2022;140:472-478",
    "doi": "10.1001/jamaophthalmol.2022.0401",
    "where": "abstract (PMC8972151); ARVO 2021 abstract of the same trial",
    "obtained": "abstract",
    "caveats": "ARVO abstract prints 0.69 +/- 0.26 mm and -1.46 +/- 0.60 D as \"SEM\"; with n=50 and published SE 0.04/0.09 they are SDs."
  },
  {
    "id": "progression/li2023",
    "citation": "Li X et al. Spectacle lenses with aspherical lenslets: 3-year follow-up. Am J Ophthalmol 2023",
    "doi": "10.1016/j.ajo.2023.03.030",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Matched new control group, third year only."
  },
  {
    "id": "progression/annular2023",
    "citation": "Slowing myopia progression with cylindrical annular refractive elements (CARE) spectacle lenses: year 1 of a 2-year multi-centre trial",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Mean age not seen."
  },
  {
    "id": "progression/dfscl2024",
    "citation": "Impact of wearing dual-focus soft contact lenses on myopia progression: 1-year RCT in Chinese school-age children. BMC Ophthalmol 2024",
    "doi": "10.1186/s12886-024-03678-1",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Adjusted mean and SE."
  },
  {
    "id": "progression/atr005cn",
    "citation": "0.05% atropine on control of myopia progression in Chinese school children: 3-year RCT. Int J Ophthalmol 2023",
    "doi": "10.18240/ijo.2023.06.17",
    "where": "abstract (PMC10250955)",
    "obtained": "abstract",
    "caveats": "SD 0.62 mm is far above every other arm: treat as outlier."
  },
  {
    "id": "progression/anstice2011",
    "citation": "Anstice NS, Phillips JR. Effect of dual-focus soft contact lens wear on axial myopia progression in children. Ophthalmology 2011;118:1152-1161",
    "doi": "10.1016/j.ophtha.2010.10.035",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "10-month change in the eye wearing single-vision lens; fellow eye was treated."
  },
  {
    "id": "progression/blink",
    "citation": "Walline JJ et al. BLINK randomized clinical trial. JAMA 2020;324:571-580",
    "doi": "10.1001/jama.2020.10834",
    "where": "abstract; AAO summary for AL",
    "obtained": "abstract (SER); three secondary summaries agree (AL 0.66 mm)",
    "caveats": "Adjusted means, SD not seen. 68 % white at baseline (baseline paper, abstract); East Asian share assumed."
  },
  {
    "id": "progression/comet2003",
    "citation": "Gwiazda J et al. COMET: progressive addition vs single vision lenses. IOVS 2003;44:1492-1500",
    "doi": "10.1167/iovs.02-0816",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "A-scan ultrasound for AL. AL mean of the SV arm (0.75 mm) known only from memory; derived 0.74 from hyman2005 ratio."
  },
  {
    "id": "progression/hyman2005",
    "citation": "Hyman L et al. Relationship of age, sex, and ethnicity with myopia progression and axial elongation in COMET. Arch Ophthalmol 2005;123:977-987",
    "doi": "10.1001/archopht.123.7.977",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "The +/- values printed as SD are SE-sized."
  },
  {
    "id": "progression/comet5y",
    "citation": "COMET 5-year ARVO abstract (IOVS article 2390655)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/scorm_al",
    "citation": "Saw SM et al. Eye growth changes in myopic children in Singapore. Br J Ophthalmol 2005;89:1489-1494",
    "doi": "10.1136/bjo.2005.071118",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "A-scan ultrasound; era 1999-2002."
  },
  {
    "id": "progression/scorm_ser",
    "citation": "Saw SM et al. Incidence and progression of myopia in Singaporean school children. IOVS 2005;46:51-57",
    "doi": "10.1167/iovs.04-0565",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/matsumura2020",
    "citation": "Matsumura S et al. Annual myopia progression and subsequent 2-year myopia progression in Singaporean children. TVST 2020;9(13):12",
    "doi": "10.1167/tvst.9.13.12",
    "where": "abstract and results passage",
    "obtained": "full text passage",
    "caveats": ""
  },
  {
    "id": "progression/brennan_arvo2020",
    "citation": "Brennan NA et al. Annual myopia progression and subsequent year progression in Singaporean children. ARVO 2020",
    "doi": null,
    "where": "conference, reported by a news site",
    "obtained": "secondary citation (news report)",
    "caveats": ""
  },
  {
    "id": "progression/jonesjordan2021",
    "citation": "Jones-Jordan LA et al. Myopia progression as a function of sex, age, and ethnicity (CLEERE). IOVS 2021;62(10):36",
    "doi": "10.1167/iovs.62.10.36",
    "where": "abstract (PMC8411866)",
    "obtained": "abstract",
    "caveats": "Cubic-model coefficient table not reached."
  },
  {
    "id": "progression/sermeta2023",
    "citation": "Meta-analysis of refractive error change in myopic children by age and race. ARVO 2023 abstract (IOVS article 2790733), authors not shown in the text read",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Gives slopes only (no intercept)."
  },
  {
    "id": "progression/donovan2012",
    "citation": "Donovan L et al. Myopia progression rates in urban children wearing single-vision spectacles. Optom Vis Sci 2012;89:27-32",
    "doi": "10.1097/OPX.0b013e3182357f79",
    "where": "abstract (truncated)",
    "obtained": "abstract",
    "caveats": "Per-age values not reached; those marked \"from memory\" are unverified."
  },
  {
    "id": "progression/wong2025",
    "citation": "Wong KYQ, Chun RKM, Lam AKC. Axial elongation among Hong Kong myopic children wearing single vision spectacles from a clinical setting. Sci Rep 2025;15:15478",
    "doi": "10.1038/s41598-025-99954-1",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Routine clinic, not selected for progression; change annualised over 12-51 months; only lower bounds of age-group medians."
  },
  {
    "id": "progression/yii2023",
    "citation": "Yii FS. Emmetropic eye growth in East Asians and non-East Asians. Ophthalmic Physiol Opt 2023;43:1412-1418",
    "doi": null,
    "where": "abstract (PMC10947352)",
    "obtained": "abstract",
    "caveats": "Normal growth floor."
  },
  {
    "id": "progression/preschool_sh",
    "citation": "One-year changes in refraction and refractive components in preschool children, Shanghai (PMC9541634)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Mostly hyperopes."
  },
  {
    "id": "progression/gusto2023",
    "citation": "Axial length elongation profiles from 3 to 6 years in an Asian population. Br J Ophthalmol 2023",
    "doi": "10.1136/bjo-2023-323906",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/tricard2021",
    "citation": "Tricard D et al. Progression of myopia in children and teenagers: a nationwide longitudinal study. Br J Ophthalmol 2022;106:1104-1109",
    "doi": "10.1136/bjophthalmol-2020-318256",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Non-cycloplegic prescriptions."
  },
  {
    "id": "progression/dream",
    "citation": "The Drentse Refractive Error and Myopia (DREAM) study: myopia progression from first glasses to adult age",
    "doi": null,
    "where": "abstract (news copy)",
    "obtained": "abstract",
    "caveats": "Prescriptions; abstract does not say per-year in so many words (read as D/y)."
  },
  {
    "id": "progression/brennan2024",
    "citation": "Brennan NA, Shamp W, Maynes E, Cheng X, Bullimore MA. Influence of age and race on axial elongation in myopic children: a systematic review and meta-regression. Optom Vis Sci 2024",
    "doi": null,
    "where": "NOT REACHED",
    "obtained": "not found in the stored corpus",
    "caveats": "Only a secondary figure (about 15 % per year) is known; equation, race factor and prediction interval missing. Re-check: two more searches by title, authors and content; still nothing, and no later paper quoting its mm by age and race."
  },
  {
    "id": "progression/smotherman2023",
    "citation": "Smotherman C et al. Axial elongation in myopic children: generation of a virtual control group. IOVS 2023",
    "doi": null,
    "where": "NOT REACHED",
    "obtained": "not found",
    "caveats": ""
  },
  {
    "id": "progression/brennan2021",
    "citation": "Brennan NA et al. Efficacy in myopia control. Prog Retin Eye Res 2021;83:100923",
    "doi": "10.1016/j.preteyeres.2020.100923",
    "where": "NOT REACHED (reference list only)",
    "obtained": "not found",
    "caveats": ""
  },
  {
    "id": "progression/repka2023",
    "citation": "Repka MX et al. Low-dose 0.01% atropine vs placebo, US children (PMC10346510). JAMA Ophthalmol 2023",
    "doi": null,
    "where": "abstract (truncated)",
    "obtained": "abstract",
    "caveats": "Placebo-arm AL mean and SD not reached."
  },
  {
    "id": "progression/gwiazda2014",
    "citation": "Gwiazda J et al. Seasonal variations in the progression of myopia in COMET children. IOVS 2014;55:752-758",
    "doi": "10.1167/iovs.13-13029",
    "where": "abstract (PMC3915767)",
    "obtained": "abstract",
    "caveats": "Non-cycloplegic SER; season = month of mid-point (Oct-Mar / Apr-Sep). Latitudes 29.8-42.4 N are those of the cities, not printed in the abstract."
  },
  {
    "id": "progression/fujiwara2012",
    "citation": "Fujiwara M et al. Seasonal variation in myopia progression and axial elongation: Japanese children in a myopia control trial. Jpn J Ophthalmol 2012;56:401-406",
    "doi": "10.1007/s10384-012-0148-1",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Adjusted mean and SE; half the children wore progressive lenses."
  },
  {
    "id": "progression/donovan2012season",
    "citation": "Donovan L et al. Myopia progression in Chinese children is slower in summer than in winter. Optom Vis Sci 2012;89:1196-1202",
    "doi": "10.1097/OPX.0b013e3182640996",
    "where": "abstract methods only",
    "obtained": "methods from abstract; all seasonal numbers from memory, unverified",
    "caveats": "Re-check: the stored abstract stops before its results; seasonal numbers still unread."
  },
  {
    "id": "progression/cui2013",
    "citation": "Cui D et al. Effect of day length on eye growth, myopia progression, and change of corneal power in myopic children. Ophthalmology 2013",
    "doi": null,
    "where": "news report",
    "obtained": "secondary citation (news agency report on the paper)",
    "caveats": "Means per 6 months of least/most daylight; memory of the abstract gives 0.19 vs 0.12 mm (unverified). Re-check: only a digest without numbers was found, so 0.18/0.14 could not be seen a second time."
  },
  {
    "id": "progression/hecova2023",
    "citation": "Hecova L et al. Seasonal variations in ocular axial length increase among children in the Czech Republic. J Ophthalmol 2023",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Negative summer value suggests choroid/device effects; mostly non-myopes."
  },
  {
    "id": "progression/ulaganathan2019",
    "citation": "Ulaganathan S et al. Daily axial length and choroidal thickness variations in young adults. Exp Eye Res 2019",
    "doi": "10.1016/j.exer.2019.107850",
    "where": "NOT REACHED (title page only)",
    "obtained": "not found",
    "caveats": "The 2019 seasonal light paper was not found."
  },
  {
    "id": "progression/jjo2007",
    "citation": "Axial length measurement using partial coherence interferometry in myopic children. Jpn J Ophthalmol 2007;51:105-110 (authors not shown in the text read)",
    "doi": "10.1007/s10384-006-0410-5",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "5 min test-retest, mean of 3 readings."
  },
  {
    "id": "progression/scorm_biom",
    "citation": "Comparison of non-contact optical coherence and ultrasound axial length in children (SCORM). ARVO abstract (IOVS article 2415415)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Asymmetric limits; half-width used."
  },
  {
    "id": "progression/quinn2003",
    "citation": "Quinn GE et al. Highly precise eye length measurements in children aged 3 through 12 years. Arch Ophthalmol 2003;121:985-990",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Mean of 16 readings per series, single session."
  },
  {
    "id": "progression/biom_age2023",
    "citation": "Impact of age on measurement variability for axial length in myopic children. Clin Exp Optom 2023",
    "doi": "10.1080/08164622.2023.2236124",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "No effect of age on within-subject SD."
  },
  {
    "id": "progression/ssoct_ok",
    "citation": "Effect of orthokeratology on precision of a swept-source biometer. Eye Vis 2020",
    "doi": "10.1186/s40662-020-00177-4",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/olcr_pci",
    "citation": "Repeatability of optical low-coherence reflectometry and agreement with PCI in Chinese school-aged children. Int Eye Sci 2014",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Between-device agreement."
  },
  {
    "id": "progression/ssoct_pci",
    "citation": "SS-OCT versus PCI biometer (PMC7775111)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Mixed ages incl. cataract age."
  },
  {
    "id": "progression/cass2002",
    "citation": "Cass K et al. A-scan ultrasound biometry with a single use disposable cover. Br J Ophthalmol 2002;86:344-349",
    "doi": "10.1136/bjo.86.3.344",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Adults."
  },
  {
    "id": "progression/santodomingo2002",
    "citation": "Santodomingo-Rubido J et al. A new non-contact optical device for ocular biometry. Br J Ophthalmol 2002;86:458-462",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Between-method SD."
  },
  {
    "id": "progression/rauscher2019",
    "citation": "Rauscher FG et al. Agreement and repeatability of noncycloplegic and cycloplegic wavefront-based autorefraction in children. Optom Vis Sci 2019;96:879-889",
    "doi": "10.1097/OPX.0000000000001444",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Consecutive readings in one session; closed-field instrument."
  },
  {
    "id": "progression/xiong2017",
    "citation": "Xiong S et al. Comparison of refractive measures of three autorefractors in children and adolescents. Optom Vis Sci 2017",
    "doi": "10.1097/OPX.0000000000001113",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Between-instrument."
  },
  {
    "id": "progression/sheedy2004",
    "citation": "Sheedy J, Schanz P, Bullimore M. Evaluation of an automated subjective refractor. Optom Vis Sci 2004;81:334-340",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Adults, non-cycloplegic."
  },
  {
    "id": "progression/hvidhansen2023",
    "citation": "Hvid-Hansen A et al. Reproducibility of mesopic and photopic pupil sizes in myopic children. J Pers Med 2023;13:273",
    "doi": "10.3390/jpm13020273",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Dedicated pupillometer, no treatment."
  },
  {
    "id": "progression/tanpupil",
    "citation": "Tan Q et al. Repeatability of pupil size measurements in myopic children (wavefront/topography unit)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/diurnal_child",
    "citation": "Ocular and systemic diurnal rhythms in children (PMC7092716)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/chakraborty2011",
    "citation": "Chakraborty R et al. Diurnal variations in axial length. IOVS 2011;52:5121-5129",
    "doi": "10.1167/iovs.11-7364",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/imi2019",
    "citation": "Wolffsohn JS et al. IMI - Clinical myopia control trials and instrumentation report. IOVS 2019;60:M132-M160",
    "doi": "10.1167/iovs.18-25955",
    "where": "NOT REACHED (title page)",
    "obtained": "not found",
    "caveats": "No repeatability number read from it; no IMI minimum detectable change was found."
  },
  {
    "id": "progression/cruickshank2018",
    "citation": "Cruickshank FE, Logan NS. Optical dampening of the refractive error to axial length ratio. Ophthalmic Physiol Opt 2018",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Numeric ratios not in the abstract."
  },
  {
    "id": "progression/dfaao",
    "citation": "Chamberlain P. Efficacy of a dual focus contact lens and factors influencing progression in a 3-year trial (AAO abstract)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Both arms pooled for r; arm means not given."
  },
  {
    "id": "progression/mutti2022",
    "citation": "Mutti DO et al. The limited value of prior change in predicting future progression of juvenile-onset myopia. Optom Vis Sci 2022;99:424-433",
    "doi": "10.1097/OPX.0000000000001883",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "A-scan and cycloplegic autorefraction. The printed +/-0.14 mm is tighter than A-scan noise allows for raw change: treat as model quantity."
  },
  {
    "id": "progression/pedig2026",
    "citation": "Does past myopia progression predict future progression? IOVS 2026;67(1):38 (PMID 41543335)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "AL numbers not in the abstract (\"qualitatively similar\")."
  },
  {
    "id": "progression/gztwin",
    "citation": "Longitudinal relationship between axial length and height in Chinese children: Guangzhou Twin Eye Study",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "All refractions."
  },
  {
    "id": "progression/comet2013",
    "citation": "COMET Group. Myopia stabilization and associated factors. IOVS 2013;54:7871-7884",
    "doi": "10.1167/iovs.13-12403",
    "where": "full text passage (ethnicity); other numbers secondary (trade-magazine column by a co-author in the field)",
    "obtained": "full text passage + secondary citation",
    "caveats": "Stable = within 0.25/0.5 D of the Gompertz asymptote, SER not AL."
  },
  {
    "id": "progression/dong2007",
    "citation": "Dong L et al. Myopia stabilization in the COMET cohort. ARVO 2007 (IOVS article 2385031)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Within 0.25 D of fitted asymptote."
  },
  {
    "id": "progression/hou2018",
    "citation": "Hou W et al. Axial elongation in myopic children and its association with myopia progression in COMET. Eye Contact Lens 2018",
    "doi": "10.1097/ICL.0000000000000505",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Criterion: fitted elongation <= 0.06 mm/y."
  },
  {
    "id": "progression/chua2016",
    "citation": "Chua SYL et al. Age of onset of myopia predicts risk of high myopia in later childhood in myopic Singapore children. Ophthalmic Physiol Opt 2016;36:388-394",
    "doi": "10.1111/opo.12305",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/tong2006",
    "citation": "Tong L et al. Longitudinal study of anisometropia in Singaporean school children. IOVS 2006;47:3247-3252",
    "doi": "10.1167/iovs.05-0906",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/zadnik2015",
    "citation": "Zadnik K et al. Prediction of juvenile-onset myopia (CLEERE). JAMA Ophthalmol 2015;133:683-689",
    "doi": "10.1001/jamaophthalmol.2015.0471",
    "where": "abstract",
    "obtained": "abstract; age cut-offs second-hand (professional press); AUC from memory, unverified",
    "caveats": ""
  },
  {
    "id": "progression/zadnik1999",
    "citation": "Zadnik K et al. Ocular predictors of the onset of juvenile myopia. IOVS 1999;40:1936-1943",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/zadnik_aao2011",
    "citation": "Zadnik K, Sinnott L, Mutti D. Myopia onset prediction in schoolchildren. AAO 2011 abstract 110959",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/cleere_arvo2011",
    "citation": "Predictive model for the onset of myopia, CLEERE first-graders. ARVO 2011 (IOVS article 2354114)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/zhang2015",
    "citation": "Zhang X, Qu X, Zhou X. Association between parental myopia and the risk of myopia in a child. Exp Ther Med 2015;9:2420-2428",
    "doi": "10.3892/etm.2015.2415",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/zong2024",
    "citation": "Zong C et al. Meta-analysis of the effect of parental myopia on children. Ophthalmol China 2024;33:368-376",
    "doi": "10.13281/j.cnki.issn.1004-4469.2024.05.008",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/he2015",
    "citation": "He M et al. Effect of time spent outdoors at school on the development of myopia. JAMA 2015;314:1142-1148",
    "doi": null,
    "where": "abstract copies",
    "obtained": "abstract (summary page)",
    "caveats": ""
  },
  {
    "id": "progression/wu2018",
    "citation": "Wu PC et al. Myopia prevention and outdoor light intensity in a school-based cluster randomized trial. Ophthalmology 2018",
    "doi": "10.1016/j.ophtha.2017.12.011",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/he2022",
    "citation": "He X et al. Time outdoors in reducing myopia: cluster RCT with objective monitoring. Ophthalmology 2022",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/sherwin2012",
    "citation": "Sherwin JC et al. Association between time spent outdoors and myopia: review and meta-analysis. Ophthalmology 2012",
    "doi": null,
    "where": "news report",
    "obtained": "secondary citation (news report)",
    "caveats": ""
  },
  {
    "id": "progression/overview2022",
    "citation": "Overview of systematic reviews on outdoor time, near work, physical activity and myopia. Indian J Ophthalmol 2022;70:728-739",
    "doi": null,
    "where": "abstract and table 2b (PMC9114537)",
    "obtained": "full text table 2b and abstract",
    "caveats": "Near-work pooled OR 1.14 and 1.02/D-h originate in Huang 2015."
  },
  {
    "id": "progression/ho2019",
    "citation": "Ho CL et al. Dose-response relationship of outdoor exposure and myopia indicators. IJERPH 2019;16:2595",
    "doi": "10.3390/ijerph16142595",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/dutheil2023",
    "citation": "Dutheil F et al. Myopia and near work: systematic review and meta-analysis. IJERPH 2023;20:875",
    "doi": "10.3390/ijerph20010875",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "progression/mattern2023",
    "citation": "Mattern AI et al. A comparison of optical biometers used in children for myopia control. Klin Monbl Augenheilkd 2023;240:1306-1313",
    "doi": "10.1055/a-2117-9335",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Repeatability labelled intra-subject SD, but behaves like a 95 % limit."
  },
  {
    "id": "progression/zhao2020ok",
    "citation": "Zhao Y, Hu P, Chen D et al. Is it possible to predict progression of childhood myopia using short-term axial change after orthokeratology? Eye Contact Lens 2020",
    "doi": "10.1097/ICL.0000000000000665",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Treated children; half-year change includes the early lens effect on AL."
  },
  {
    "id": "treatments/chua2006",
    "citation": "Chua WH et al. Atropine for the treatment of childhood myopia. Ophthalmology 2006;113",
    "doi": "10.1016/j.ophtha.2006.05.062",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "ultrasound AL; one eye treated; 12-month values are memory"
  },
  {
    "id": "treatments/tong2009",
    "citation": "Tong L et al. Atropine for the treatment of childhood myopia: effect on myopia progression after cessation of atropine. Ophthalmology 2009;116:572-579",
    "doi": "10.1016/j.ophtha.2008.10.020",
    "where": "abstract (repository record, cut before AL)",
    "obtained": "abstract (D); from memory, unverified (3-year AL)",
    "caveats": "AL part not readable here"
  },
  {
    "id": "treatments/chia2012",
    "citation": "Chia A et al. ATOM2: safety and efficacy of 0.5%, 0.1% and 0.01% doses. Ophthalmology 2012;119:347-354",
    "doi": "10.1016/j.ophtha.2011.07.031",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "no placebo arm; 12-month values and arm sizes are memory"
  },
  {
    "id": "treatments/chia2014",
    "citation": "Chia A et al. Changes after stopping atropine 0.01%, 0.1% and 0.5%. Am J Ophthalmol 2014;157",
    "doi": "10.1016/j.ajo.2013.09.020",
    "where": "abstract, first half only",
    "obtained": "abstract (design, n=356); from memory, unverified (results)",
    "caveats": "verify washout D and mm before relying on them; second search failed"
  },
  {
    "id": "treatments/chia2016",
    "citation": "Chia A, Lu QS, Tan D. Five-year clinical trial on ATOM2. Ophthalmology 2016;123",
    "doi": "10.1016/j.ophtha.2015.07.004",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "retreated mixture"
  },
  {
    "id": "treatments/yam2019",
    "citation": "Yam JC et al. LAMP: randomized placebo-controlled trial of 0.05%, 0.025%, 0.01%. Ophthalmology 2019;126:113-124",
    "doi": "10.1016/j.ophtha.2018.05.029",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "arm n, pupil of 0.025/0.01/placebo and photophobia are memory; visits at 4 and 8 months not found"
  },
  {
    "id": "treatments/yam2020",
    "citation": "Yam JC et al. LAMP phase 2. Ophthalmology 2020;127:910-919",
    "doi": "10.1016/j.ophtha.2019.12.011",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "no placebo in year 2"
  },
  {
    "id": "treatments/yam2022",
    "citation": "Yam JC et al. LAMP phase 3: continued versus washout. Ophthalmology 2022;129:308-321",
    "doi": "10.1016/j.ophtha.2021.10.002",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "3-year AL taken from a digest of the abstract"
  },
  {
    "id": "treatments/zhang2024",
    "citation": "Zhang XJ et al. Five-year LAMP, phase 4 report. Ophthalmology 2024;131:1011-1020",
    "doi": "10.1016/j.ophtha.2024.03.013",
    "where": "abstract (cut off)",
    "obtained": "abstract",
    "caveats": "AL values not seen; 270 followed in the final abstract, 269 ahead of print"
  },
  {
    "id": "treatments/li2021",
    "citation": "Li FF et al. Age effect on treatment responses to 0.05%, 0.025% and 0.01% atropine. Ophthalmology 2021;128",
    "doi": "10.1016/j.ophtha.2020.12.036",
    "where": "not stated",
    "obtained": "abstract, via journal-news summaries",
    "caveats": "slopes mix natural ageing and drug effect"
  },
  {
    "id": "treatments/zadnik2023",
    "citation": "Zadnik K et al. Efficacy and safety of 0.01% and 0.02% atropine over 3 years (CHAMP). JAMA Ophthalmol 2023;141:990-999",
    "doi": "10.1001/jamaophthalmol.2023.2097",
    "where": "tables 2 and 3",
    "obtained": "full text tables 2, 3",
    "caveats": "primary endpoint missed; eye-level counts; LS means"
  },
  {
    "id": "treatments/repka2023",
    "citation": "Repka MX et al. (PEDIG). Low-dose 0.01% atropine vs placebo. JAMA Ophthalmol 2023;141:756-765",
    "doi": "10.1001/jamaophthalmol.2023.2855",
    "where": "abstract, first half",
    "obtained": "abstract (design, conclusion); registry results NCT03334253 (arm sizes, completers); from memory, unverified (SER, AL)",
    "caveats": "confirm numbers in PMC10346510; registry results page exists: outcome tables follow the participant flow"
  },
  {
    "id": "treatments/lee2022",
    "citation": "Lee SSY et al. WA-ATOM. Clin Exp Ophthalmol 2022;50:1001-1012",
    "doi": "10.1111/ceo.14148",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "arms differ by a year in age; older children"
  },
  {
    "id": "treatments/mosaic_arvo2023",
    "citation": "Flitcroft I et al. MOSAIC two-year results. ARVO abstract, IOVS 2023;64(8)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/chia_editorial2025",
    "citation": "Chia A. Efficacy and safety of different atropine regimens: MOSAIC2 (editorial)",
    "doi": null,
    "where": "table 1, first rows",
    "obtained": "secondary citation in an editorial, read on a mirror",
    "caveats": "states N=259; the trial reports 250; means only"
  },
  {
    "id": "treatments/loughman2025",
    "citation": "Loughman J et al. Three-year results of MOSAIC. JAMA Ophthalmol 2025;143:134-144",
    "doi": "10.1001/jamaophthalmol.2024.5703",
    "where": "abstract + summaries",
    "obtained": "abstract",
    "caveats": "no never-treated arm in year 3; arm means not read"
  },
  {
    "id": "treatments/hansen2023",
    "citation": "Hansen NC et al. One-year 0.01% and 0.1% loading, Danish children. BMC Ophthalmol 2023",
    "doi": "10.1186/s12886-023-03177-9",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/hansen2024",
    "citation": "Hansen NC et al. Two-year results, Danish children. J Pers Med 2024;14:175",
    "doi": "10.3390/jpm14020175",
    "where": "abstract (cut off)",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/hansen2025",
    "citation": "Three-year results including washout, Danish children. BMJ group journal 2025",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/hieda2021",
    "citation": "Hieda O et al. ATOM-J. Jpn J Ophthalmol 2021;65:315-325",
    "doi": "10.1007/s10384-021-00822-y",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "compounded source drop; LS means"
  },
  {
    "id": "treatments/atomj_washout2023",
    "citation": "Myopic rebound after 0.01% atropine in Japanese children. Jpn J Ophthalmol 2023 (PMID 37548816)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "only 51 seen at 12 months"
  },
  {
    "id": "treatments/ijo2023",
    "citation": "0.05% atropine in Chinese school children, 3-year RCT. Int J Ophthalmol 2023;16(6)",
    "doi": "10.18240/ijo.2023.06.17",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "n=142; control progression very fast; SDs very unequal"
  },
  {
    "id": "treatments/star2026",
    "citation": "STAR phase 3 trial of atropine 0.01% and 0.03% (primary report)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract on an index page; year not confirmed",
    "caveats": "sponsor trial; no AL in the abstract"
  },
  {
    "id": "treatments/star_topline2025",
    "citation": "Trade news of the STAR 36-month sponsor statement, Nov 2025",
    "doi": null,
    "where": "not stated",
    "obtained": "secondary citation",
    "caveats": "sponsor statement"
  },
  {
    "id": "treatments/star_news2025",
    "citation": "Trade news of the EU authorisation and Japanese launch, 2025",
    "doi": null,
    "where": "not stated",
    "obtained": "secondary citation",
    "caveats": ""
  },
  {
    "id": "treatments/champ_stage2_arvo2024",
    "citation": "Zadnik K. CHAMP stage 2, ARVO 2024, as reported in ophthalmology news",
    "doi": null,
    "where": "not stated",
    "obtained": "secondary citation",
    "caveats": "numbers not read"
  },
  {
    "id": "treatments/shih1999",
    "citation": "Shih YF et al. Effects of different concentrations of atropine. J Ocul Pharmacol Ther 1999",
    "doi": "10.1089/jop.1999.15.85",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "older, refraction only"
  },
  {
    "id": "treatments/ye2020",
    "citation": "Ye L et al. Atropine and choroidal thickness. IOVS 2020;61(14):15",
    "doi": "10.1167/iovs.61.14.15",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "6 months"
  },
  {
    "id": "treatments/polling2016",
    "citation": "Polling JR et al. Effectiveness study of atropine for progressive myopia in Europeans. Eye 2016;30:998-1004",
    "doi": "10.1038/eye.2016.78",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "uncontrolled"
  },
  {
    "id": "treatments/polling2020",
    "citation": "Polling JR et al. 3-year follow-up of high-dose atropine in Europe. Eye 2020",
    "doi": "10.1038/s41433-020-1122-7",
    "where": "table 2",
    "obtained": "full text table 2",
    "caveats": "medians; dose changed by response, so groups are not comparable"
  },
  {
    "id": "treatments/ocl_german",
    "citation": "Low-dose atropine in German practice (retrospective, 79 vs 100)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "retrospective"
  },
  {
    "id": "treatments/erdinest2025",
    "citation": "Erdinest N et al. Gradual versus prompt cessation of atropine 0.01%. Curr Eye Res 2025",
    "doi": "10.1080/02713683.2025.2567593",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "retrospective, 25 + 25"
  },
  {
    "id": "treatments/ha2022",
    "citation": "Ha A et al. 8 atropine concentrations: network meta-analysis. Ophthalmology 2022;129:322-333",
    "doi": "10.1016/j.ophtha.2021.10.016",
    "where": "abstract (cut off)",
    "obtained": "abstract",
    "caveats": "0.05% row is memory"
  },
  {
    "id": "treatments/bayes_nma2024",
    "citation": "Bayesian NMA of atropine concentrations. Eur J Ophthalmol 2024",
    "doi": "10.1177/11206721241229317",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "mixed durations"
  },
  {
    "id": "treatments/gan2022",
    "citation": "Gan J et al. Varying dose of atropine. Front Med 2022",
    "doi": "10.3389/fmed.2021.756398",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "includes cohorts"
  },
  {
    "id": "treatments/hou2023",
    "citation": "Hou P et al. Different doses of atropine. Front Pharmacol 2023",
    "doi": "10.3389/fphar.2023.1227787",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "includes cohorts"
  },
  {
    "id": "treatments/fphar2024",
    "citation": "Atropine concentrations in Asian children, NMA. Front Pharmacol 2024",
    "doi": "10.3389/fphar.2024.1503536",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/zhao2019",
    "citation": "Zhao Y et al. Atropine 0.01%: meta-analysis. Int J Ophthalmol 2019;12:1337-1343",
    "doi": "10.18240/ijo.2019.08.16",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "before the negative trials"
  },
  {
    "id": "treatments/asia_meta2023",
    "citation": "Atropine in Asian children, 15 RCTs (PMC10398521)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/prousali2019",
    "citation": "Prousali E et al. Overview of systematic reviews. BMC Ophthalmol 2019;19:106",
    "doi": "10.1186/s12886-019-1112-3",
    "where": "table 5",
    "obtained": "full text table 5",
    "caveats": ""
  },
  {
    "id": "treatments/fpubh2023",
    "citation": "Effectiveness of myopia control interventions, 12 RCTs (corrigendum). Front Public Health 2023",
    "doi": "10.3389/fpubh.2023.1125000",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "some CIs implausibly narrow"
  },
  {
    "id": "treatments/lawrenson2023",
    "citation": "Lawrenson JG et al. Interventions for myopia control in children. Cochrane 2023 (pub2), updated 2025 (pub3)",
    "doi": "10.1002/14651858.CD014758.pub2",
    "where": "abstract, methods part",
    "obtained": "abstract (scope); from memory, unverified (effects)",
    "caveats": "confirm in PMC9933422"
  },
  {
    "id": "treatments/gong2017",
    "citation": "Gong Q et al. Efficacy and adverse effects of atropine. JAMA Ophthalmol 2017",
    "doi": null,
    "where": "not stated",
    "obtained": "not found",
    "caveats": ""
  },
  {
    "id": "treatments/moon_shin",
    "citation": "Moon JS, Shin SY. Low-dose atropine, Korea",
    "doi": null,
    "where": "not stated",
    "obtained": "not found",
    "caveats": ""
  },
  {
    "id": "treatments/brennan2021",
    "citation": "Brennan NA, Toubouti YM, Cheng X, Bullimore MA. Efficacy in myopia control. Prog Retin Eye Res 2021",
    "doi": "10.1016/j.preteyeres.2020.100923",
    "where": "bibliographic record only",
    "obtained": "record; content from memory, unverified",
    "caveats": "funded by a lens maker (stated in the record)"
  },
  {
    "id": "treatments/brennan2025",
    "citation": "Brennan NA et al. Commonly held beliefs about myopia that lack a robust evidence base: 2025 update. Eye Contact Lens 2025;51(8):319-335",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/bullimore_eye2024",
    "citation": "Optical interventions for myopia control. Eye 2024;38:455-463",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "used for the COMET AL ceiling and ortho-k 2-year range 0.24-0.32 mm"
  },
  {
    "id": "treatments/lam2020",
    "citation": "Lam CSY et al. Defocus Incorporated Multiple Segments spectacle lenses: 2-year RCT. Br J Ophthalmol 2020;104:363",
    "doi": "10.1136/bjophthalmol-2018-313739",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "manufacturer co-authors; printed CI (0.22-0.37) is not centred on 0.34"
  },
  {
    "id": "treatments/bao2022_1y",
    "citation": "Bao J et al. One-year efficacy of spectacle lenses with aspherical lenslets. Br J Ophthalmol 2022;106:1171",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "manufacturer co-authors"
  },
  {
    "id": "treatments/bao2022_2y",
    "citation": "Bao J et al. Aspherical lenslets vs single vision. JAMA Ophthalmol 2022;140:472-478",
    "doi": "10.1001/jamaophthalmol.2022.0401",
    "where": "ARVO 2021 abstract of the same trial + journal news",
    "obtained": "abstract",
    "caveats": "manufacturer co-authors; wear-time analysis not randomised"
  },
  {
    "id": "treatments/chamberlain2019",
    "citation": "Chamberlain P et al. A 3-year Randomized Clinical Trial of MiSight Lenses for Myopia Control. Optom Vis Sci 2019;96:556-567",
    "doi": "10.1097/OPX.0000000000001410",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "manufacturer trial; 75.5% completed; brand name only because it is the title"
  },
  {
    "id": "treatments/chamberlain_aaopt",
    "citation": "Chamberlain P. Dual-focus lens, factors in a 3-year trial (meeting abstract)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/dfscl_china2024",
    "citation": "Dual-focus soft lenses in Chinese children, 1-year RCT. BMC Ophthalmol 2024",
    "doi": "10.1186/s12886-024-03678-1",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "SE or SD not stated"
  },
  {
    "id": "treatments/walline2020",
    "citation": "Walline JJ et al. BLINK. JAMA 2020;324:571-580",
    "doi": "10.1001/jama.2020.10834",
    "where": "abstract + journal digest",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/blink2_arvo2024",
    "citation": "BLINK2 rebound analysis, ARVO 2024",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "everyone wore the treatment; no untreated control"
  },
  {
    "id": "treatments/cho2012",
    "citation": "Cho P, Cheung SW. ROMIO. IOVS 2012;53:7077-7085",
    "doi": "10.1167/iovs.12-10565",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/chen2013",
    "citation": "Chen C, Cheung SW, Cho P. TO-SEE. IOVS 2013;54:6510-6517",
    "doi": "10.1167/iovs.13-12527",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "not randomised"
  },
  {
    "id": "treatments/cho2017",
    "citation": "Cho P, Cheung SW. Rapid elongation, reanalysis of ROMIO and TO-SEE. IOVS 2017;58:1411-1416",
    "doi": "10.1167/iovs.16-20594",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/wen2015",
    "citation": "Wen D et al. Orthokeratology meta-analysis. J Ophthalmol 2015",
    "doi": "10.1155/2015/360806",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/orthok_rcrp2018",
    "citation": "Relative corneal refractive power and axial growth in ortho-k (PMC6269134)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/cheng2010",
    "citation": "Cheng D et al. Bifocal and prismatic bifocal spectacles, 2-year. Arch Ophthalmol 2010;128:12-19",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/cheng2014",
    "citation": "Cheng D et al. 3-year results. JAMA Ophthalmol 2014;132:258-264",
    "doi": "10.1001/jamaophthalmol.2013.7623",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "private practice, fast progressors, ultrasound AL"
  },
  {
    "id": "treatments/gwiazda2003",
    "citation": "Gwiazda J et al. COMET. IOVS 2003",
    "doi": "10.1167/iovs.02-0816",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/comet5y_arvo",
    "citation": "COMET 5-year meeting abstract",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/comet2",
    "citation": "COMET2 / PEDIG. IOVS 2011;52:2749-2757",
    "doi": "10.1167/iovs.10-6631",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/rlrl_meta2024",
    "citation": "Repeated low-level red light, RCT meta-analysis. BMC Ophthalmol 2024 (PMC10877869)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "short; sham rarely used"
  },
  {
    "id": "treatments/chen_lrl2023",
    "citation": "Chen H et al. Low-intensity red light and its cessation. Graefes Arch 2023;261:575-584",
    "doi": "10.1007/s00417-022-05794-4",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/xiong2022",
    "citation": "Sustained and rebound effect of red light, 2-year follow-up (PMC10086781)",
    "doi": null,
    "where": "abstract (cut off)",
    "obtained": "abstract",
    "caveats": "57% analysed; self-selected groups"
  },
  {
    "id": "treatments/rlrl_case_cjeo",
    "citation": "Recovery of retinal damage after red light: case report",
    "doi": "10.3760/cma.j.cn115989-20221119-00539",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/ostrin2024",
    "citation": "Ostrin LA, Schill AW. Red light instruments exceed safety limits. Ophthalmic Physiol Opt 2024;44:241-248",
    "doi": null,
    "where": "abstract summary",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/rlrl_preprint2026",
    "citation": "Schulmeister K, Marshall J. Retinal safety analysis of one red-light device (preprint)",
    "doi": "10.64898/2026.05.05.26352503",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "not peer reviewed; device-specific"
  },
  {
    "id": "treatments/tan2023",
    "citation": "Tan Q et al. Combined 0.01% atropine with orthokeratology, 2-year RCT. Cont Lens Anterior Eye 2023;46",
    "doi": "10.1016/j.clae.2022.101723",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "no drop placebo evident"
  },
  {
    "id": "treatments/kinoshita2020",
    "citation": "Kinoshita N et al. Combined orthokeratology and 0.01% atropine. Sci Rep 2020;10:12750",
    "doi": "10.1038/s41598-020-69710-8",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/li_aok2024",
    "citation": "Li B et al. 0.01% atropine with ortho-k, crossover. Front Med 2024",
    "doi": "10.3389/fmed.2024.1358046",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/aok_meta2023",
    "citation": "Wang Z et al. 0.01% atropine alone or with ortho-k. PLoS One 2023",
    "doi": "10.1371/journal.pone.0282286",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "mixed designs; sub-analyses confusingly labelled"
  },
  {
    "id": "treatments/segment_atropine2023",
    "citation": "Spectacle lenses, 0.01% atropine and both in Europe (PMC9934319)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "not randomised"
  },
  {
    "id": "treatments/mei2024",
    "citation": "Mei Z et al. Outdoor interventions, RCT meta-analysis. Front Public Health 2024",
    "doi": "10.3389/fpubh.2024.1452567",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/cao2020",
    "citation": "Cao K et al. Outdoor time, RCT meta-analysis. Ophthalmic Res 2019/2020",
    "doi": "10.1159/000501937",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/ho2019",
    "citation": "Ho CL et al. Outdoor exposure dose-response. IJERPH 2019;16:2595",
    "doi": "10.3390/ijerph16142595",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "mixed designs"
  },
  {
    "id": "treatments/sanchez_tena2024",
    "citation": "Sanchez-Tena MA et al. Rebound in myopia control: systematic review. Ophthalmic Physiol Opt 2024;44:270-279",
    "doi": "10.1111/opo.13277",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "simple averages across doses"
  },
  {
    "id": "treatments/jcm_optical_cessation2024",
    "citation": "Progression after stopping optical treatments: systematic review. J Clin Med 2024;13:53",
    "doi": "10.3390/jcm13010053",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/rose2021",
    "citation": "Rose LVT et al. Baseline axial length to predict control with 0.01% (PLoS One)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "pre-post design, regression to the mean"
  },
  {
    "id": "treatments/wang_mems",
    "citation": "Wang J et al. Objectively measured compliance with atropine penalisation (pilot)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "amblyopia, n=7"
  },
  {
    "id": "treatments/photochromic_arvo2016",
    "citation": "Photochromic spectacles during low-concentration atropine, ARVO 2016",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "n=24, uncontrolled"
  },
  {
    "id": "treatments/saito2019",
    "citation": "Stability of diluted atropine eye drops. J Pharm Health Care Sci 2019",
    "doi": "10.1186/s40780-019-0154-2",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/berton2020",
    "citation": "Berton B et al. Stability of ophthalmic atropine for myopia. Pharmaceutics 2020;12:781",
    "doi": "10.3390/pharmaceutics12080781",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/sriin2022",
    "citation": "Sri-in J et al. 0.01% atropine in artificial tears and BSS. Siriraj Med J 2022;74:91-99",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/bmcresnotes2022",
    "citation": "Hospital-prepared low-dose atropine from injection. BMC Res Notes 2022;15",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/richdale2023",
    "citation": "Richdale K et al. Compounded 0.01% atropine: what is in the bottle? Eye Contact Lens 2023;49:219-223",
    "doi": "10.1097/ICL.0000000000000990",
    "where": "abstract + introduction",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/compounding_survey_arvo2022",
    "citation": "Survey of US compounding pharmacies, ARVO 2022",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/moore2017",
    "citation": "Moore DB et al. Drops per bottle of glaucoma medication. BMC Ophthalmol 2017;17:78",
    "doi": "10.1186/s12886-017-0473-8",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "treatments/german1999",
    "citation": "Reliability of drop size from multi-dose eye drop bottles: is it cause for concern? Eye 1999",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "authors and year from memory; 19 bottles; title and figures read again"
  },
  {
    "id": "treatments/fda_nda206289",
    "citation": "FDA review of atropine sulfate ophthalmic solution 1%, NDA 206289",
    "doi": null,
    "where": "CMC summary",
    "obtained": "regulator text (redacted)",
    "caveats": ""
  },
  {
    "id": "treatments/fda_crl2025",
    "citation": "Ophthalmology news of the FDA complete response letter, Oct-Nov 2025",
    "doi": null,
    "where": "not stated",
    "obtained": "secondary citation",
    "caveats": "letter itself not read"
  },
  {
    "id": "treatments/ema_authorised2025",
    "citation": "EMA page for the 0.1 mg/mL product: CHMP opinion 27 March 2025",
    "doi": null,
    "where": "not stated",
    "obtained": "regulator page",
    "caveats": "authorisation date from trade news"
  },
  {
    "id": "treatments/ema_refused2025",
    "citation": "EMA page for the refused paediatric application: 22 May and 18 September 2025",
    "doi": null,
    "where": "not stated",
    "obtained": "regulator page",
    "caveats": ""
  },
  {
    "id": "treatments/waatom_washout2024",
    "citation": "Myopia progression following 0.01% atropine cessation in Australian children (WA-ATOM). Clin Exp Ophthalmol 2024;52:507-515",
    "doi": "10.1111/ceo.14368",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "intervals misprinted in the abstract"
  },
  {
    "id": "treatments/wei2020",
    "citation": "0.01% atropine, Chinese children, RCT. JAMA Ophthalmol 2020 (PMC7530823)",
    "doi": null,
    "where": "table 3",
    "obtained": "full text table 3",
    "caveats": "one year; completers not read"
  },
  {
    "id": "treatments/usp_notice2018",
    "citation": "USP notice of intent to revise, Atropine Sulfate Ophthalmic Solution, 31 Aug 2018",
    "doi": null,
    "where": "not stated",
    "obtained": "standard body notice",
    "caveats": "proposal only"
  },
  {
    "id": "treatments/blink_comp2026",
    "citation": "Compensation for axial elongation during multifocal soft lens wear: BLINK. Optom Vis Sci 2026;103:e70029",
    "doi": "10.1002/ovs2.70029",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "used for the AL interval only"
  },
  {
    "id": "clinical/IMI-CMG-2019",
    "citation": "Gifford KL, Richdale K, Kang P, et al. IMI - Clinical Management Guidelines Report. Invest Ophthalmol Vis Sci 2019;60(3):M184-M203",
    "doi": "10.1167/iovs.18-25977",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "Only the abstract and front matter could be read. Details of its examination table and visit table were NOT seen."
  },
  {
    "id": "clinical/IMI-DEF-2019",
    "citation": "Flitcroft DI, He M, Jonas JB, et al. IMI - Defining and Classifying Myopia. Invest Ophthalmol Vis Sci 2019;60(3):M20-M30",
    "doi": "10.1167/iovs.18-25957",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "An erratum exists: Invest Ophthalmol Vis Sci 2024;65(13):19, doi 10.1167/iovs.65.13.19 (existence seen in the PubMed record; content not seen)."
  },
  {
    "id": "clinical/IMI-INT-2019",
    "citation": "Wildsoet CF, Chia A, Cho P, et al. IMI - Interventions for Controlling Myopia Onset and Progression Report. Invest Ophthalmol Vis Sci 2019;60(3):M106-M131",
    "doi": "10.1167/iovs.18-25958",
    "where": "not stated",
    "obtained": "from memory, unverified",
    "caveats": "DOI seen in a reference list; content not read."
  },
  {
    "id": "clinical/IMI-TRIALS-2019",
    "citation": "Wolffsohn JS, Kollbaum PS, Berntsen DA, et al. IMI - Clinical Myopia Control Trials and Instrumentation Report. Invest Ophthalmol Vis Sci 2019;60(3):M132-M160",
    "doi": "10.1167/iovs.18-25955",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/IMI-INSTR-2025",
    "citation": "Jones D, Chow A, Fadel D, et al. IMI - Instrumentation for Myopia Management. Invest Ophthalmol Vis Sci 2025;66(9):7",
    "doi": null,
    "where": "not stated",
    "obtained": "bibliographic record only",
    "caveats": "Existence, volume/issue/page from a citation index; content not read. Worth reading for instrument precision."
  },
  {
    "id": "clinical/IMI-ETHICS-2019",
    "citation": "Jones L, Drobe B, Gonzalez-Meijome JM, et al. IMI - Industry Guidelines and Ethical Considerations for Myopia Control Report. Invest Ophthalmol Vis Sci 2019;60(3):M161-M183",
    "doi": "10.1167/iovs.18-25963",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "Abstract plus first lines of the institute's own summary page."
  },
  {
    "id": "clinical/IMI-REFLECT-2021",
    "citation": "Wolffsohn JS, Jong M, Smith EL, et al. IMI 2021 Reports and Digest - Reflections on the Implications for Clinical Practice. Invest Ophthalmol Vis Sci 2021;62(5):1",
    "doi": "10.1167/iovs.62.5.1",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/IMI-PATHMYOPIA-2021",
    "citation": "Ohno-Matsui K, Wu PC, Yamashiro K, et al. IMI Pathologic Myopia. Invest Ophthalmol Vis Sci 2021;62(5):5",
    "doi": "10.1167/iovs.62.5.5",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/IMI-DIGEST-2021",
    "citation": "Jong M, Jonas JB, Wolffsohn JS, et al. IMI 2021 Yearly Digest. Invest Ophthalmol Vis Sci 2021;62(5):7 (PMC8088231), Table 2",
    "doi": "10.1167/iovs.62.5.7",
    "where": "not stated",
    "obtained": "full-text table",
    "caveats": "Only Table 2 (structural complications) was read; title and authors of 62(5):7 from memory."
  },
  {
    "id": "clinical/IMI-PEDHIGH-2023",
    "citation": "Flitcroft I, Ainsworth J, Chia A, et al. IMI - Management and Investigation of High Myopia in Infants and Young Children. Invest Ophthalmol Vis Sci 2023;64(6):3",
    "doi": "10.1167/iovs.64.6.3",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/IMI-DIGEST-2025",
    "citation": "International Myopia Institute. IMI 2025 Digest. Invest Ophthalmol Vis Sci 2025",
    "doi": null,
    "where": "not stated",
    "obtained": "secondary: two professional-press summaries",
    "caveats": "Paper itself not read."
  },
  {
    "id": "clinical/WCO-2021",
    "citation": "World Council of Optometry. Resolution: the standard of care for myopia management by optometrists. April 2021",
    "doi": null,
    "where": "not stated",
    "obtained": "secondary: text quoted in a professional press release (IAPB and AOP news pages)",
    "caveats": ""
  },
  {
    "id": "clinical/SOE-2021",
    "citation": "Nemeth J, Tapaszto B, Aclimandos WA, et al. Update and guidance on management of myopia. European Society of Ophthalmology in cooperation with International Myopia Institute. Eur J Ophthalmol 2021;31(3):853-883",
    "doi": "10.1177/1120672121998960",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/SOE-ALGO-2024",
    "citation": "Tapaszto B, Flitcroft DI, Aclimandos WA, et al. Myopia management algorithm. Annexe to the article titled Update and guidance on management of myopia. Eur J Ophthalmol 2024;34(4):952-966",
    "doi": "10.1177/11206721231219532",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "Flowcharts not seen. High-value paper to read next."
  },
  {
    "id": "clinical/UK-DELPHI-2024",
    "citation": "Dahlmann-Noor AH, Ghorbani-Mojarrad N, Williams KM, et al. 2024 UK and Ireland modified Delphi consensus on myopia management in children and young people. (Ophthalmic Physiol Opt, from memory)",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "34 panellists, 131 agreed statements; abstract only."
  },
  {
    "id": "clinical/COLLEGE-MYOPIA",
    "citation": "College of Optometrists (UK). Myopia management - guidance for optometrists (2022) and Guidance for Professional Practice: Assessing and managing children with myopia - key points",
    "doi": null,
    "where": "not stated",
    "obtained": "full-text excerpt",
    "caveats": ""
  },
  {
    "id": "clinical/COLLEGE-FLASHES",
    "citation": "College of Optometrists (UK). Guidance for Professional Practice: Examining patients who present with flashes and floaters, paragraphs A255-A263",
    "doi": null,
    "where": "not stated",
    "obtained": "full-text excerpt",
    "caveats": ""
  },
  {
    "id": "clinical/AOP-CONSENT-2020",
    "citation": "Association of Optometrists (UK). How do I use the AOP's consent form on myopia management (2020) and leaflet notice",
    "doi": null,
    "where": "not stated",
    "obtained": "full-text excerpt",
    "caveats": ""
  },
  {
    "id": "clinical/AAO-TASKFORCE-2021",
    "citation": "Modjtahedi BS, Abbott RL, Fong DS, et al. Reducing the Global Burden of Myopia by Delaying the Onset of Myopia and Reducing Myopic Progression in Children: The Academy's Task Force on Myopia. Ophthalmology 2021",
    "doi": "10.1016/j.ophtha.2020.10.040",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/MUMBAI-2019",
    "citation": "Kesarwani SS; Mumbai Group of Paediatric Ophthalmologists and Strabismologists. Consensus statement and guidelines for use of dilute atropine sulphate in myopia control. Indian J Ophthalmol 2019;67:461-463",
    "doi": "10.4103/ijo.IJO_1457_18",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "Recommendations themselves not seen."
  },
  {
    "id": "clinical/INDIA-CYCLO",
    "citation": "Guideline table on choice of cycloplegic by age (open-access journal page, article id 7-2020140)",
    "doi": null,
    "where": "not stated",
    "obtained": "full-text table",
    "caveats": "Citation details not shown on the stored page."
  },
  {
    "id": "clinical/EMA-2025-POS",
    "citation": "European Medicines Agency, CHMP positive opinion of 27 March 2025 on a 0.1 mg/ml atropine sulfate eye drop for slowing progression of myopia in children",
    "doi": null,
    "where": "not stated",
    "obtained": "regulator page excerpt",
    "caveats": ""
  },
  {
    "id": "clinical/EMA-2025-NEG",
    "citation": "European Medicines Agency, refusal (opinion 22 May 2025, confirmed on re-examination 18 September 2025) of a paediatric-use authorisation for another atropine sulfate eye drop for myopia, ages 6-10",
    "doi": null,
    "where": "not stated",
    "obtained": "regulator page excerpt",
    "caveats": ""
  },
  {
    "id": "clinical/UK-SMPC-1PCT",
    "citation": "UK Summary of Product Characteristics, atropine 1% w/v eye drops, solution (sections 4.1-4.8)",
    "doi": null,
    "where": "not stated",
    "obtained": "full-text excerpt",
    "caveats": "A 100-times stronger product than 0.01%; use as the conservative warning list."
  },
  {
    "id": "clinical/US-LABEL-1PCT",
    "citation": "US prescribing information for atropine sulfate ophthalmic solution 1% as reproduced on drug-information pages",
    "doi": null,
    "where": "not stated",
    "obtained": "secondary: label text reproduced by third parties",
    "caveats": ""
  },
  {
    "id": "clinical/ANSM-MYDRIATIC",
    "citation": "ANSM (France), information point on mydriatic eye drops in paediatrics",
    "doi": null,
    "where": "not stated",
    "obtained": "regulator page excerpt",
    "caveats": ""
  },
  {
    "id": "clinical/AAP-OFFLABEL-2014",
    "citation": "American Academy of Pediatrics Committee on Drugs. Off-label use of drugs in children. Pediatrics 2014;133(3):563",
    "doi": null,
    "where": "not stated",
    "obtained": "secondary: described in later Pediatrics articles",
    "caveats": ""
  },
  {
    "id": "clinical/AAP-CONSENT-2016",
    "citation": "American Academy of Pediatrics Committee on Bioethics. Informed Consent in Decision-Making in Pediatric Practice. Pediatrics 2016;138(2):e20161484 (reaffirmed January 2023) and technical report e20161485",
    "doi": "10.1542/peds.2016-1484",
    "where": "not stated",
    "obtained": "full-text excerpt",
    "caveats": "Includes the table of four practical elements of assent. DOI from memory."
  },
  {
    "id": "clinical/CHAMPUK-PROTOCOL",
    "citation": "CHAMP-UK trial protocol, Br J Ophthalmol, Table 2 (schedule of assessments)",
    "doi": null,
    "where": "not stated",
    "obtained": "full-text table",
    "caveats": "Row and column headings seen; tick marks not carried by the stored page."
  },
  {
    "id": "clinical/ATOM-CRITERIA",
    "citation": "Eligibility list of the ATOM trials as reproduced on a hospital web page",
    "doi": null,
    "where": "not stated",
    "obtained": "secondary",
    "caveats": ""
  },
  {
    "id": "clinical/CTRI-021193",
    "citation": "Clinical Trials Registry India CTRI/2019/09/021193, low-dose atropine for myopia control, exclusion list",
    "doi": null,
    "where": "not stated",
    "obtained": "registry record",
    "caveats": ""
  },
  {
    "id": "clinical/POLLING-2016",
    "citation": "Polling JR, Kok RGW, Tideman JWL, et al. Effectiveness study of atropine for progressive myopia in Europeans. Eye 2016 (PMC4941076)",
    "doi": "10.1038/eye.2016.78",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "Atropine 0.5%. DOI built from the article number in the stored address."
  },
  {
    "id": "clinical/TAPER-0.01",
    "citation": "Changes in Axial Length and Refraction After Gradual Versus Prompt Cessation of Atropine 0.01% Treatment for Myopia Management (Aston repository record 48239)",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "25 v 25 children, retrospective."
  },
  {
    "id": "clinical/EYEWORLD-AP-2014",
    "citation": "EyeWorld Asia-Pacific, December 2014, clinician column on atropine for myopia",
    "doi": null,
    "where": "not stated",
    "obtained": "full-text excerpt",
    "caveats": "Expert opinion, lowest weight."
  },
  {
    "id": "clinical/ROSE-2021",
    "citation": "Rose LVT, Schulz AM, Graham SL. Use baseline axial length measurements in myopic patients to predict the control of myopia with and without atropine 0.01%. PLoS One 2021",
    "doi": "10.1371/journal.pone.0254061",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "DOI from memory."
  },
  {
    "id": "clinical/HSIEH-2022",
    "citation": "Hsieh MW, Chang HC, Chen YH, Chien KH. Classification-Based Approaches to Myopia Control in a Taiwanese Cohort. Front Med 2022;9:879210",
    "doi": "10.3389/fmed.2022.879210",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/NICER-2012",
    "citation": "O'Donoghue L, Rudnicka AR, McClelland JF, Logan NS, Saunders KJ. Visual Acuity Measures Do Not Reliably Detect Childhood Refractive Error. PLoS One 2012;7(3):e34441",
    "doi": "10.1371/journal.pone.0034441",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/HUANG-2019",
    "citation": "Huang P, Hsiao Y, Tsai D, et al. Protective behaviours of near work and time outdoors in myopia prevalence and progression in myopic children. Br J Ophthalmol 2019",
    "doi": null,
    "where": "not stated",
    "obtained": "secondary: news summary",
    "caveats": "10,743 children, Taiwan."
  },
  {
    "id": "clinical/KLAVER-2022RULE",
    "citation": "Klaver CCW quoted in EyeWorld, August 2019: 20-20-2 rule of thumb",
    "doi": null,
    "where": "not stated",
    "obtained": "full-text excerpt",
    "caveats": ""
  },
  {
    "id": "clinical/HAARMAN-2020",
    "citation": "Haarman AEG, Enthoven CA, Tideman JWL, et al. The Complications of Myopia: A Review and Meta-Analysis. Invest Ophthalmol Vis Sci 2020;61(4):49",
    "doi": "10.1167/iovs.61.4.49",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/TIDEMAN-2016",
    "citation": "Tideman JWL, Snabel MCC, Tedja MS, et al. Association of Axial Length With Risk of Uncorrectable Visual Impairment for Europeans With Myopia. JAMA Ophthalmol 2016;134(12):1355-1363",
    "doi": "10.1001/jamaophthalmol.2016.4009",
    "where": "not stated",
    "obtained": "secondary: first part of the abstract (document host) and a professional news summary",
    "caveats": "Table 2 (odds ratios by category and age) NOT obtained. Re-check: three more searches, still no abstract results section and no figure for 26 mm or more."
  },
  {
    "id": "clinical/BULLIMORE-2019",
    "citation": "Bullimore MA, Brennan NA. Myopia Control: Why Each Diopter Matters. Optom Vis Sci 2019;96(6):463-465",
    "doi": "10.1097/OPX.0000000000001367",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/BULLIMORE-2021",
    "citation": "Bullimore MA, Ritchey ER, Shah S, et al. The Risks and Benefits of Myopia Control. Ophthalmology 2021;128(11):1561-1579",
    "doi": "10.1016/j.ophtha.2021.04.032",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "Accepted manuscript and final abstract differ: 57% v 58% (maculopathy) and 1.22 v 1.21 years (-8 D). Use the final values."
  },
  {
    "id": "clinical/LUDWIG-2023",
    "citation": "Ludwig CA, Vail D, Al-Moujahed A, et al. Epidemiology of rhegmatogenous retinal detachment in commercially insured myopes in the United States. Sci Rep 2023;13:9430",
    "doi": "10.1038/s41598-023-35520-x",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/EDCCS-1993",
    "citation": "Eye Disease Case-Control Study Group. Risk Factors for Idiopathic Rhegmatogenous Retinal Detachment. Am J Epidemiol 1993",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "Journal/year from memory."
  },
  {
    "id": "clinical/ARNAL-2025",
    "citation": "Arnal L, Mesfin Y, Xu C, et al. Beyond refractive error: myopia's exponential burden on retinal health with each diopter. 2025 (PMC12584467)",
    "doi": null,
    "where": "not stated",
    "obtained": "secondary: summary of the paper",
    "caveats": ""
  },
  {
    "id": "clinical/VANLEEUWEN-2021",
    "citation": "van Leeuwen R, Haarman AEG, van de Put MAJ, et al. Association of Rhegmatogenous Retinal Detachment Incidence With Myopia Prevalence in the Netherlands. JAMA Ophthalmol 2021",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "Abstract truncated before the rates."
  },
  {
    "id": "clinical/UKPEDHIGH-2024",
    "citation": "Abstract 282: Presenting features, assessment, progression rates and underlying aetiology in infants and young children presenting with high myopia. BMJ Open Ophthalmol 2024;9(Suppl 4):A3.2",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/WU-2019",
    "citation": "Wu PC, Chuang MN, Choi J, et al. Update in myopia and treatment strategy of atropine use in myopia control. Eye 2019;33:3-13",
    "doi": "10.1038/s41433-018-0139-7",
    "where": "not stated",
    "obtained": "full-text excerpt",
    "caveats": "Introduction read only; source for the WHO -5 D definition."
  },
  {
    "id": "clinical/HOFSTETTER-1950",
    "citation": "Hofstetter HW. Useful age-amplitude formula. Optom World 1950;38:42-45 (title and pages from memory)",
    "doi": null,
    "where": "not stated",
    "obtained": "secondary: formulas quoted on three independent pages",
    "caveats": ""
  },
  {
    "id": "clinical/HASHEMI-2018",
    "citation": "Hashemi H, Nabovati P, Khabazkhoob M, et al. Does Hofstetter's equation predict the real amplitude of accommodation in children? Clin Exp Optom (authors from memory)",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/LEON-2016",
    "citation": "Leon A, Estrada JM, Rosenfield M. Age and the amplitude of accommodation measured using dynamic retinoscopy. Ophthalmic Physiol Opt 2016;36(1):5-12",
    "doi": "10.1111/opo.12244",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "Authors from memory."
  },
  {
    "id": "clinical/ROSENFIELD-5-10Y",
    "citation": "Clinical amplitude of accommodation in children between 5 and 10 years of age (Benzoni JA, Rosenfield M, from memory)",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/MCCLELLAND-2004",
    "citation": "McClelland JF, Saunders KJ. Accommodative lag using dynamic retinoscopy: age norms for school-age children. Optom Vis Sci 2004;81:929-933",
    "doi": "10.1097/01.OPX.0000147681.94971.28",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/PARK-2019",
    "citation": "Park SM, Moon BY, Kim SY, Yu DS. Diurnal variations of amplitude of accommodation in different age groups. PLoS One 2019;14(11):e0225754",
    "doi": "10.1371/journal.pone.0225754",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/STERNER-THESIS",
    "citation": "Sterner B. Studies of amplitude, insufficiency, and facility training in young school children. Thesis, Goteborg University, ISBN 91-628-5989-7",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "Numbers not given in the summary that was readable."
  },
  {
    "id": "clinical/IKAUNIEKS-2017",
    "citation": "Ikaunieks G, Panke K, Seglina M, Svede A, Krumina G. Accommodative Amplitude in School-Age Children. Proc Latv Acad Sci B 2017;71:387-391",
    "doi": "10.1515/prolas-2017-0065",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/WATSON-2012",
    "citation": "Watson AB, Yellott JI. A unified formula for light-adapted pupil size. J Vis 2012;12(10):12",
    "doi": "10.1167/12.10.12",
    "where": "not stated",
    "obtained": "secondary: open-source transcriptions (spitschan/WatsonYellott2012_PupilSize and three others) plus a short excerpt of the article",
    "caveats": "Constants agree across four independent transcriptions."
  },
  {
    "id": "clinical/KOHNEN-2004",
    "citation": "Kohnen EM, Zubcov AA, Kohnen T. Scotopic pupil size in a normal pediatric population using infrared pupillometry. Graefes Arch Clin Exp Ophthalmol 2004;242:18-23",
    "doi": "10.1007/s00417-003-0735-4",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/SHAH-2020",
    "citation": "Shah SS, Ralay Ranaivo H, Mets-Halgrimson RB, et al. Establishing a normative database for quantitative pupillometry in the pediatric population. BMC Ophthalmol 2020",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/PUPILDEV-2015",
    "citation": "Developmental Changes of Normal Pupil Size and Reactivity in Children. J Pediatr Ophthalmol Strabismus 2015;52:147-151",
    "doi": "10.3928/01913913-20150317-11",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/HVIDHANSEN-2023",
    "citation": "Hvid-Hansen A, Baekgaard P, Jacobsen N, et al. Reproducibility of Mesopic and Photopic Pupil Sizes in Myopic Children Using a Dedicated Pupillometer with Human-Assisted or Automated Reading. J Pers Med 2023;13(2):273",
    "doi": "10.3390/jpm13020273",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/TAN-2020",
    "citation": "Tan Q, Ng ALK, Cheng GPM, Woo VCP, Cho P. Repeatability of pupil size measurements in myopic children (title shortened to omit the device)",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "PMID 33294971."
  },
  {
    "id": "clinical/BAYAT-2021",
    "citation": "Bayat AH, Kurt MM, Akpolat C. Comparison of pupillometry measurements in myopic, emmetropic, and hyperopic children. Med Sci 2021",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/YOUNGADULT-PUPIL",
    "citation": "Short-term effects of low-concentration atropine eye drops on pupil size and accommodation in young adult subjects (Graefes Arch Clin Exp Ophthalmol, from memory)",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/COOPER-2013",
    "citation": "Cooper J, Eisenberg N, Schulman E, Wang FM. Maximum atropine dose without clinical signs or symptoms. Optom Vis Sci 2013",
    "doi": null,
    "where": "not stated",
    "obtained": "secondary: professional news summary",
    "caveats": "Citation from memory; the news item gives a conflicting journal code."
  },
  {
    "id": "clinical/SIHOTA-2006",
    "citation": "Sihota R, et al. Distribution and determinants of intraocular pressure in a normal pediatric population. J Pediatr Ophthalmol Strabismus 2006;43:14-18",
    "doi": "10.3928/01913913-20060101-01",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/HEIDARY-2011",
    "citation": "Heidary F, Gharebaghi R, Wan Hitam WH, et al. Central Corneal Thickness and Intraocular Pressure in Malay Children. PLoS One 2011 (PMC3187772)",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/PALESTINE-2019",
    "citation": "Distribution of central corneal thickness and intraocular pressure in emmetropic eyes of healthy children of Palestine. Int J Ophthalmol 2019;12:496-503",
    "doi": "10.18240/ijo.2019.03.22",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/ULSTER-IOP",
    "citation": "Age variations in intraocular pressure in a cohort of healthy school children (Ulster University record; rebound tonometer, 211 children aged 6-15)",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/HOLLADAY-TABLE",
    "citation": "Visual acuity conversion chart, courtesy of JT Holladay (after Holladay JT. Proper method for calculating average visual acuity. J Refract Surg 1997;13:388-391; Visual acuity measurements. J Cataract Refract Surg 2004;30)",
    "doi": null,
    "where": "not stated",
    "obtained": "full-text table",
    "caveats": ""
  },
  {
    "id": "clinical/ISO-8596",
    "citation": "ISO 8596 Ophthalmic optics - Visual acuity testing - Standard and clinical optotypes and their presentation",
    "doi": null,
    "where": "not stated",
    "obtained": "from memory, unverified",
    "caveats": "Not read; see the standards folder."
  },
  {
    "id": "clinical/HUURNEMAN-2016",
    "citation": "Huurneman B, Boonstra FN. Assessment of near visual acuity in 0-13 year olds with normal and low vision: a systematic review. BMC Ophthalmol 2016;16:215",
    "doi": "10.1186/s12886-016-0386-y",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/THIBOS-1997",
    "citation": "Thibos LN, Wheeler W, Horner D. Power vectors: an application of Fourier analysis to the description and statistical analysis of refractive error. Optom Vis Sci 1997;74(6):367-375",
    "doi": "10.1097/00006324-199706000-00019",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "Abstract gives the idea; component formulas read on PV-TEACHING and cross-checked by round trip."
  },
  {
    "id": "clinical/VERTEX-EDU",
    "citation": "General optics teaching pages giving the vertex formula Fc = F/(1 - dF) with worked examples",
    "doi": null,
    "where": "not stated",
    "obtained": "secondary",
    "caveats": ""
  },
  {
    "id": "clinical/AL-REPEAT-2007",
    "citation": "Axial length measurement using partial coherence interferometry in myopic children: repeatability of the measurement and comparison with refractive components. Jpn J Ophthalmol 2007;51:105-110",
    "doi": "10.1007/s10384-006-0410-5",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/SCORM-BIOM",
    "citation": "ARVO meeting abstract, SCORM cohort: optical coherence versus ultrasound axial length in children (iovs article id 2415415)",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/MATTERN-2023",
    "citation": "Mattern AI, Neller K, Devenijn M, et al. A Comparison of Optical Biometers Used in Children for Myopia Control. Klin Monbl Augenheilkd 2023;240(11):1306-1313",
    "doi": "10.1055/a-2117-9335",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "Repeatability is labelled intra-subject SD in the abstract; see the caution in safety-norms.json."
  },
  {
    "id": "clinical/CYCLO-BROWN",
    "citation": "Cycloplegic refraction in myopic children with brown irises: time of maximum cycloplegia and difference between retinoscopy and autorefraction",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "68 children aged 5-14."
  },
  {
    "id": "clinical/CYCLO-20MIN",
    "citation": "Cycloplegia at 20 versus 30 minutes after proxymetacaine and cyclopentolate in 12-13-year-olds. Clin Exp Optom (TU Dublin record)",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": ""
  },
  {
    "id": "clinical/TIANJIN-SAFETY",
    "citation": "He M, Mi B, Zhu Y, et al. Effects of short-term use of atropine with different concentrations and frequencies on eye safety in children (Chin J Exp Ophthalmol)",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "Used for the list of safety measures only."
  },
  {
    "id": "clinical/COMMON",
    "citation": "Common practice, no source: baseline, 1-month safety check, 6-monthly to 2 years, stop, rebound check 6 months after",
    "doi": null,
    "where": "not stated",
    "obtained": "common practice, no source",
    "caveats": "Not a publication."
  },
  {
    "id": "clinical/EXPERT-GENERAL",
    "citation": "General clinical knowledge of the person writing this file",
    "doi": null,
    "where": "not stated",
    "obtained": "from memory, unverified",
    "caveats": "Every duty tagged with this source needs a clinician's confirmation before it becomes a rule."
  },
  {
    "id": "clinical/TOXINFO",
    "citation": "Toxicology information service (Munich), substance-class page giving atropine dose thresholds (page in German)",
    "doi": null,
    "where": "not stated",
    "obtained": "full-text excerpt",
    "caveats": "Adult: life-threatening from 50-100 mg. Child: severe poisoning possible from 5 mg. 0.5% eye drops: toxic from 4 drops."
  },
  {
    "id": "clinical/WESTJEM-2012",
    "citation": "Stellpflug SJ, Cole JB, Isaacson BA, Lintner CP, Bilden EF. Massive Atropine Eye Drop Ingestion Treated with High-Dose Physostigmine to Avoid Intubation. West J Emerg Med 2012;13(1):77-79",
    "doi": null,
    "where": "not stated",
    "obtained": "full-text excerpt",
    "caveats": ""
  },
  {
    "id": "clinical/PHOTOCHROMIC-2016",
    "citation": "ARVO 2016 abstract (iovs article id 2560920): photochromic spectacles in myopic schoolchildren on 0.05% or 0.1% atropine",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "24 children, uncontrolled."
  },
  {
    "id": "clinical/LAMP-2019",
    "citation": "Yam JC, Jiang Y, Tang SM, et al. Low-Concentration Atropine for Myopia Progression (LAMP) Study. Ophthalmology 2019;126:113-124 (volume and pages from memory)",
    "doi": null,
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "Abstract read on a document host. Visits: baseline, 2 weeks, 4, 8, 12 months."
  },
  {
    "id": "clinical/PREMYOPIA-SEC",
    "citation": "(a) Professional-press answer on pre-myopia quoting the 2019 definition and the 2015 age cut-offs; (b) preprint 10.21203/rs.3.rs-8199611/v1, retrospective cohort of pre-myopic Chinese children, inclusion > -0.50 to <= +0.75 D",
    "doi": "10.21203/rs.3.rs-8199611/v1",
    "where": "not stated",
    "obtained": "secondary: full-text excerpt of (a), abstract of (b)",
    "caveats": "Not peer reviewed; replace when the definitions paper is read."
  },
  {
    "id": "clinical/PV-TEACHING",
    "citation": "Teaching page of a refractive surgeon on adding two sphero-cylinders with J0/J45, with printed numbers",
    "doi": null,
    "where": "not stated",
    "obtained": "secondary: full-text excerpt",
    "caveats": "General optics, not a myopia product."
  },
  {
    "id": "clinical/CH-PI-ATROPINE",
    "citation": "Swiss professional product information of an atropine product (registration 52420), section on overdose (in German)",
    "doi": null,
    "where": "not stated",
    "obtained": "full-text excerpt",
    "caveats": "Says a few mg can be fatal in a child."
  }
]
