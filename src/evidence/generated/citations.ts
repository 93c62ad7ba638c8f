// Written by scripts/evidence.mjs from src/evidence/tables. Do not edit.
import type { Source } from "../types.js"

export const citations: readonly Source[] = [
  {
    "id": "clinical/IMI-DEF-2019",
    "citation": "Flitcroft DI, He M, Jonas JB, et al. IMI - Defining and Classifying Myopia. Invest Ophthalmol Vis Sci 2019;60(3):M20-M30",
    "doi": "10.1167/iovs.18-25957",
    "where": "not stated",
    "obtained": "abstract",
    "caveats": "An erratum exists: Invest Ophthalmol Vis Sci 2024;65(13):19, doi 10.1167/iovs.65.13.19 (existence seen in the PubMed record; content not seen)."
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
    "id": "progression/anstice2011",
    "citation": "Anstice NS, Phillips JR. Effect of dual-focus soft contact lens wear on axial myopia progression in children. Ophthalmology 2011;118:1152-1161",
    "doi": "10.1016/j.ophtha.2010.10.035",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "10-month change in the eye wearing single-vision lens; fellow eye was treated."
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
    "id": "progression/blink",
    "citation": "Walline JJ et al. BLINK randomized clinical trial. JAMA 2020;324:571-580",
    "doi": "10.1001/jama.2020.10834",
    "where": "abstract; AAO summary for AL",
    "obtained": "abstract (SER); three secondary summaries agree (AL 0.66 mm)",
    "caveats": "Adjusted means, SD not seen. 68 % white at baseline (baseline paper, abstract); East Asian share assumed."
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
    "id": "progression/champ",
    "citation": "Zadnik K et al. Efficacy and safety of 0.01% and 0.02% atropine over 3 years (CHAMP). JAMA Ophthalmol 2023",
    "doi": null,
    "where": "full text table 2 (PMC10236322)",
    "obtained": "full text table 2",
    "caveats": "Mean age 8.9 y is from memory (and refers to the wider ITT set). SDs given are of AL, not of change."
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
    "id": "progression/dfscl2024",
    "citation": "Impact of wearing dual-focus soft contact lenses on myopia progression: 1-year RCT in Chinese school-age children. BMC Ophthalmol 2024",
    "doi": "10.1186/s12886-024-03678-1",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Adjusted mean and SE."
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
    "id": "progression/fujiwara2012",
    "citation": "Fujiwara M et al. Seasonal variation in myopia progression and axial elongation: Japanese children in a myopia control trial. Jpn J Ophthalmol 2012;56:401-406",
    "doi": "10.1007/s10384-012-0148-1",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Adjusted mean and SE; half the children wore progressive lenses."
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
    "id": "progression/hyman2005",
    "citation": "Hyman L et al. Relationship of age, sex, and ethnicity with myopia progression and axial elongation in COMET. Arch Ophthalmol 2005;123:977-987",
    "doi": "10.1001/archopht.123.7.977",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "The +/- values printed as SD are SE-sized."
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
    "id": "progression/jonesjordan2021",
    "citation": "Jones-Jordan LA et al. Myopia progression as a function of sex, age, and ethnicity (CLEERE). IOVS 2021;62(10):36",
    "doi": "10.1167/iovs.62.10.36",
    "where": "abstract (PMC8411866)",
    "obtained": "abstract",
    "caveats": "Cubic-model coefficient table not reached."
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
    "id": "progression/lamp1",
    "citation": "Yam JC et al. Low-Concentration Atropine for Myopia Progression (LAMP) Study. Ophthalmology 2019;126:113-124",
    "doi": "10.1016/j.ophtha.2018.05.029",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Mean age of the placebo arm (8.4 y) is from memory."
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
    "id": "progression/naduvilath2023",
    "citation": "Naduvilath T, He X, Xu X, Sankaridurg P. Normative data for axial elongation in Asian children. Ophthalmic Physiol Opt 2023",
    "doi": null,
    "where": "abstract (model estimates)",
    "obtained": "abstract",
    "caveats": "Regression coefficients not reached. The three myope values (0.58 at 6 y, 0.34 at 10.5 y, 0.13 at 15 y) do not lie on one exponential: 6 and 15 y alone give 16.6 %/y log decline and 0.275 at 10.5 y. Meaning of the stated age (start or middle of the year) not given; see sensitivity in growth_model.json."
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
    "id": "progression/rauscher2019",
    "citation": "Rauscher FG et al. Agreement and repeatability of noncycloplegic and cycloplegic wavefront-based autorefraction in children. Optom Vis Sci 2019;96:879-889",
    "doi": "10.1097/OPX.0000000000001444",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Consecutive readings in one session; closed-field instrument."
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
    "id": "progression/scorm_biom",
    "citation": "Comparison of non-contact optical coherence and ultrasound axial length in children (SCORM). ARVO abstract (IOVS article 2415415)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Asymmetric limits; half-width used."
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
    "id": "progression/ssoct_pci",
    "citation": "SS-OCT versus PCI biometer (PMC7775111)",
    "doi": null,
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Mixed ages incl. cataract age."
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
    "id": "progression/waatom",
    "citation": "Lee SS-Y et al. Low-concentration atropine eyedrops in a multi-racial cohort of Australian children (WA-ATOM). Clin Exp Ophthalmol 2022;50:1001-1012",
    "doi": "10.1111/ceo.14148",
    "where": "abstract (PMC10086806)",
    "obtained": "abstract",
    "caveats": "Model-based CIs."
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
    "id": "progression/xiong2017",
    "citation": "Xiong S et al. Comparison of refractive measures of three autorefractors in children and adolescents. Optom Vis Sci 2017",
    "doi": "10.1097/OPX.0000000000001113",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "Between-instrument."
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
    "id": "treatments/bayes_nma2024",
    "citation": "Bayesian NMA of atropine concentrations. Eur J Ophthalmol 2024",
    "doi": "10.1177/11206721241229317",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "mixed durations"
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
    "id": "treatments/chen2013",
    "citation": "Chen C, Cheung SW, Cho P. TO-SEE. IOVS 2013;54:6510-6517",
    "doi": "10.1167/iovs.13-12527",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "not randomised"
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
    "id": "treatments/chia_editorial2025",
    "citation": "Chia A. Efficacy and safety of different atropine regimens: MOSAIC2 (editorial)",
    "doi": null,
    "where": "table 1, first rows",
    "obtained": "secondary citation in an editorial, read on a mirror",
    "caveats": "states N=259; the trial reports 250; means only"
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
    "id": "treatments/chua2006",
    "citation": "Chua WH et al. Atropine for the treatment of childhood myopia. Ophthalmology 2006;113",
    "doi": "10.1016/j.ophtha.2006.05.062",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "ultrasound AL; one eye treated; 12-month values are memory"
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
    "id": "treatments/ha2022",
    "citation": "Ha A et al. 8 atropine concentrations: network meta-analysis. Ophthalmology 2022;129:322-333",
    "doi": "10.1016/j.ophtha.2021.10.016",
    "where": "abstract (cut off)",
    "obtained": "abstract",
    "caveats": "0.05% row is memory"
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
    "id": "treatments/hieda2021",
    "citation": "Hieda O et al. ATOM-J. Jpn J Ophthalmol 2021;65:315-325",
    "doi": "10.1007/s10384-021-00822-y",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "compounded source drop; LS means"
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
    "id": "treatments/kinoshita2020",
    "citation": "Kinoshita N et al. Combined orthokeratology and 0.01% atropine. Sci Rep 2020;10:12750",
    "doi": "10.1038/s41598-020-69710-8",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": ""
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
    "id": "treatments/lee2022",
    "citation": "Lee SSY et al. WA-ATOM. Clin Exp Ophthalmol 2022;50:1001-1012",
    "doi": "10.1111/ceo.14148",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "arms differ by a year in age; older children"
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
    "id": "treatments/loughman2025",
    "citation": "Loughman J et al. Three-year results of MOSAIC. JAMA Ophthalmol 2025;143:134-144",
    "doi": "10.1001/jamaophthalmol.2024.5703",
    "where": "abstract + summaries",
    "obtained": "abstract",
    "caveats": "no never-treated arm in year 3; arm means not read"
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
    "id": "treatments/tan2023",
    "citation": "Tan Q et al. Combined 0.01% atropine with orthokeratology, 2-year RCT. Cont Lens Anterior Eye 2023;46",
    "doi": "10.1016/j.clae.2022.101723",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "no drop placebo evident"
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
    "id": "treatments/wei2020",
    "citation": "0.01% atropine, Chinese children, RCT. JAMA Ophthalmol 2020 (PMC7530823)",
    "doi": null,
    "where": "table 3",
    "obtained": "full text table 3",
    "caveats": "one year; completers not read"
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
    "id": "treatments/yam2019",
    "citation": "Yam JC et al. LAMP: randomized placebo-controlled trial of 0.05%, 0.025%, 0.01%. Ophthalmology 2019;126:113-124",
    "doi": "10.1016/j.ophtha.2018.05.029",
    "where": "abstract",
    "obtained": "abstract",
    "caveats": "arm n, pupil of 0.025/0.01/placebo and photophobia are memory; visits at 4 and 8 months not found"
  },
  {
    "id": "treatments/zadnik2023",
    "citation": "Zadnik K et al. Efficacy and safety of 0.01% and 0.02% atropine over 3 years (CHAMP). JAMA Ophthalmol 2023;141:990-999",
    "doi": "10.1001/jamaophthalmol.2023.2097",
    "where": "tables 2 and 3",
    "obtained": "full text tables 2, 3",
    "caveats": "primary endpoint missed; eye-level counts; LS means"
  }
]
