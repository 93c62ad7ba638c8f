// Written by scripts/evidence.mjs from src/evidence/tables. Do not edit.
// What the document marks as coming from memory is left out: scripts/read-part.mjs.
import type { Provenance } from "../types.js"

export const duties = {
  "meta": {
    "title": "Duties of a childhood myopia-control service, drawn from readable guidance",
    "count": 120,
    "evidence_status_meaning": {
      "verified": "text that was read (abstract, table, excerpt, regulator page or a press/secondary quotation; see how_obtained) supports the duty itself",
      "unverified": "general clinical knowledge only; needs a clinician's confirmation and a source"
    },
    "by_stage": {
      "find": 5,
      "assess": 29,
      "decide": 10,
      "consent": 11,
      "prescribe": 11,
      "supply": 6,
      "review": 9,
      "adjust": 6,
      "stop": 6,
      "after-stop": 4,
      "communicate": 8,
      "audit": 6,
      "refer": 9
    },
    "by_status": {
      "verified": 70,
      "partly": 39,
      "unverified": 11
    },
    "warning": "Not medical advice and not a guideline. The central guideline (IMI-CMG-2019) was readable only as an abstract; its tables must be read before clinical sign-off."
  },
  "duties": [
    {
      "id": "CD-001",
      "stage": "find",
      "duty": "Ask every child's family about myopia risk before the child is myopic, and give advice aimed at preventing or delaying onset.",
      "data_needed": [
        {
          "field": "parental myopia (each parent)",
          "unit": "none/low/high/unknown"
        },
        {
          "field": "age",
          "unit": "years"
        },
        {
          "field": "outdoor time",
          "unit": "h/day"
        },
        {
          "field": "near work",
          "unit": "h/day"
        }
      ],
      "computation_needed": "risk-factor summary",
      "interval": "every routine eye examination",
      "source_ids": [
        "WCO-2021"
      ],
      "how_obtained": "secondary (press text of the resolution)",
      "evidence_status": "verified"
    },
    {
      "id": "CD-002",
      "stage": "find",
      "duty": "Flag a pre-myopic child: refraction between the pre-myopia bounds together with risk factors, and follow more closely.",
      "data_needed": [
        {
          "field": "SER right/left, cycloplegic",
          "unit": "D"
        },
        {
          "field": "age",
          "unit": "years"
        }
      ],
      "source_ids": [
        "IMI-DEF-2019",
        "IMI-DIGEST-2025"
      ],
      "how_obtained": "abstract + secondary; numeric bounds from memory",
      "evidence_status": "partly"
    },
    {
      "id": "CD-003",
      "stage": "find",
      "duty": "Use distance acuity as a screening trigger: worse than 0.20 logMAR unaided at 12-13 years finds most myopes but misses hyperopia and astigmatism.",
      "data_needed": [
        {
          "field": "unaided VA each eye",
          "unit": "logMAR"
        }
      ],
      "computation_needed": "VA > 0.20 logMAR -> refract",
      "interval": "school or practice screening",
      "source_ids": [
        "NICER-2012"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified",
      "note": "Sensitivity 92%, specificity 91% for myopia at 12-13 y."
    },
    {
      "id": "CD-004",
      "stage": "find",
      "duty": "Discuss treatment options with the parents of every child whose myopia starts before the 13th birthday.",
      "data_needed": [
        {
          "field": "age at myopia onset",
          "unit": "years"
        }
      ],
      "computation_needed": "age at onset < 13 -> prompt",
      "interval": "at first diagnosis",
      "source_ids": [
        "UK-DELPHI-2024"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified"
    },
    {
      "id": "CD-005",
      "stage": "find",
      "duty": "If the practice does not offer myopia control, tell the family and direct them to a service that does.",
      "data_needed": [
        {
          "field": "service offered",
          "unit": "yes/no"
        },
        {
          "field": "referral destination",
          "unit": "text"
        }
      ],
      "computation_needed": "none",
      "interval": "at diagnosis",
      "source_ids": [
        "COLLEGE-MYOPIA",
        "AOP-CONSENT-2020"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-006",
      "stage": "assess",
      "duty": "Take a history that covers age at onset, past refractions with dates, and previous treatment, so that prior progression can be worked out.",
      "data_needed": [
        {
          "field": "age at onset",
          "unit": "years"
        },
        {
          "field": "dated prior SER",
          "unit": "D"
        },
        {
          "field": "dated prior AL",
          "unit": "mm"
        },
        {
          "field": "previous treatment",
          "unit": "text"
        }
      ],
      "computation_needed": "pre-treatment rate in D/year and mm/year from dated pairs",
      "interval": "baseline",
      "source_ids": [
        "IMI-CMG-2019",
        "ROSE-2021"
      ],
      "how_obtained": "abstract (risk factors and examination are listed topics); detail inferred",
      "evidence_status": "partly"
    },
    {
      "id": "CD-007",
      "stage": "assess",
      "duty": "Record parental myopia for both parents as a risk factor.",
      "data_needed": [
        {
          "field": "parent 1 SER or category",
          "unit": "D/category"
        },
        {
          "field": "parent 2 SER or category",
          "unit": "D/category"
        }
      ],
      "source_ids": [
        "IMI-CMG-2019"
      ],
      "how_obtained": "abstract (risk factor identification); detail from memory",
      "evidence_status": "partly"
    },
    {
      "id": "CD-008",
      "stage": "assess",
      "duty": "Record outdoor time, near-work time, working distance and break habit in a repeatable form.",
      "data_needed": [
        {
          "field": "outdoor time weekday/weekend",
          "unit": "h/day"
        },
        {
          "field": "near work outside school",
          "unit": "h/day"
        },
        {
          "field": "working distance",
          "unit": "cm"
        },
        {
          "field": "break interval",
          "unit": "min"
        }
      ],
      "computation_needed": "weekly average",
      "interval": "baseline and every 6 months",
      "source_ids": [
        "IMI-TRIALS-2019",
        "HUANG-2019"
      ],
      "how_obtained": "abstract (outdoor activity is an exploratory outcome) + secondary",
      "evidence_status": "partly"
    },
    {
      "id": "CD-009",
      "stage": "assess",
      "duty": "Screen the medical history for conditions linked with secondary or syndromic myopia: prematurity, connective-tissue, skeletal, hearing, cleft, developmental problems.",
      "data_needed": [
        {
          "field": "gestational age",
          "unit": "weeks"
        },
        {
          "field": "syndromic checklist",
          "unit": "yes/no each"
        }
      ],
      "computation_needed": "any yes -> medical referral prompt",
      "interval": "baseline",
      "source_ids": [
        "IMI-PEDHIGH-2023"
      ],
      "how_obtained": "abstract",
      "evidence_status": "partly",
      "note": "Abstract names prematurity and genetic causes and a search for common syndromic features; the item list is from general knowledge."
    },
    {
      "id": "CD-010",
      "stage": "assess",
      "duty": "Ask about heart disease, fast-rhythm conditions, significant respiratory disease and current medicines before atropine is considered.",
      "data_needed": [
        {
          "field": "cardiac history",
          "unit": "coded list"
        },
        {
          "field": "respiratory history",
          "unit": "coded list"
        },
        {
          "field": "medicines",
          "unit": "coded list"
        }
      ],
      "computation_needed": "rule check for cautions and antimuscarinic combinations",
      "interval": "baseline and every visit",
      "source_ids": [
        "ATOM-CRITERIA",
        "UK-SMPC-1PCT",
        "CTRI-021193"
      ],
      "how_obtained": "secondary list + full-text excerpt + registry record",
      "evidence_status": "verified"
    },
    {
      "id": "CD-011",
      "stage": "assess",
      "duty": "Ask about allergy to atropine, other cycloplegics, local anaesthetic drops and benzalkonium chloride.",
      "data_needed": [
        {
          "field": "allergies",
          "unit": "coded list, reaction, date"
        }
      ],
      "computation_needed": "block if allergy to any ingredient of the ordered product",
      "interval": "baseline and each reorder",
      "source_ids": [
        "ATOM-CRITERIA",
        "UK-SMPC-1PCT"
      ],
      "how_obtained": "secondary + full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-012",
      "stage": "assess",
      "duty": "Ask about Down syndrome, spastic paralysis and brain injury, which raise sensitivity to atropine.",
      "data_needed": [
        {
          "field": "condition flags",
          "unit": "yes/no each"
        }
      ],
      "computation_needed": "any yes -> specialist decision required",
      "interval": "baseline",
      "source_ids": [
        "US-LABEL-1PCT",
        "CTRI-021193"
      ],
      "how_obtained": "secondary (label text) + registry exclusion list",
      "evidence_status": "verified"
    },
    {
      "id": "CD-013",
      "stage": "assess",
      "duty": "Measure best-corrected distance acuity in each eye on a logMAR chart.",
      "data_needed": [
        {
          "field": "BCVA distance R/L",
          "unit": "logMAR"
        },
        {
          "field": "chart type",
          "unit": "text"
        },
        {
          "field": "distance",
          "unit": "m"
        }
      ],
      "computation_needed": "letters to logMAR; change from baseline",
      "interval": "baseline and every visit",
      "source_ids": [
        "CHAMPUK-PROTOCOL",
        "IMI-TRIALS-2019"
      ],
      "how_obtained": "full-text table",
      "evidence_status": "verified",
      "note": "A trial schedule of baseline, 6, 12, 18, 24 months lists this item; per-visit ticks not readable."
    },
    {
      "id": "CD-014",
      "stage": "assess",
      "duty": "Measure best-corrected near acuity in each eye, with symbols for 4-7 year-olds and letters for 8-13 year-olds, at a stated distance.",
      "data_needed": [
        {
          "field": "near VA R/L",
          "unit": "logMAR"
        },
        {
          "field": "distance",
          "unit": "cm"
        },
        {
          "field": "chart",
          "unit": "symbols/letters"
        }
      ],
      "computation_needed": "compare only like with like; letters read 0.1-0.2 logMAR poorer than symbols",
      "interval": "baseline, 1 month, every visit on atropine",
      "source_ids": [
        "HUURNEMAN-2016",
        "CHAMPUK-PROTOCOL"
      ],
      "how_obtained": "abstract + full-text table",
      "evidence_status": "verified"
    },
    {
      "id": "CD-015",
      "stage": "assess",
      "duty": "Refract under cycloplegia at the first visit of any child under 12 with refractive error or squint.",
      "data_needed": [
        {
          "field": "agent",
          "unit": "code"
        },
        {
          "field": "concentration",
          "unit": "%"
        },
        {
          "field": "drops and times",
          "unit": "count, hh:mm"
        },
        {
          "field": "iris colour",
          "unit": "light/intermediate/dark"
        }
      ],
      "computation_needed": "SER = sphere + cylinder/2; power vectors M, J0, J45",
      "source_ids": [
        "INDIA-CYCLO"
      ],
      "how_obtained": "full-text table",
      "evidence_status": "partly"
    },
    {
      "id": "CD-016",
      "stage": "assess",
      "duty": "Record agent, strength, drops, times and time of reading with every cycloplegic refraction; do not read before the agent has worked.",
      "data_needed": [
        {
          "field": "instillation times",
          "unit": "hh:mm"
        },
        {
          "field": "reading time",
          "unit": "hh:mm"
        },
        {
          "field": "residual accommodation, if measured",
          "unit": "D"
        }
      ],
      "computation_needed": "minutes from first drop; warn if below minimum for the agent",
      "interval": "each cycloplegic refraction",
      "source_ids": [
        "CYCLO-BROWN",
        "CYCLO-20MIN",
        "INDIA-CYCLO"
      ],
      "how_obtained": "abstract + full-text table",
      "evidence_status": "verified",
      "note": "Cyclopentolate 1%: 30 min after the first of three drops reached the plateau in brown-eyed myopes; 20 v 30 min differed by 0.05 D after one drop in 12-13-year-olds. Tropicamide 1% x3 at 10 min: read at 30-45 min."
    },
    {
      "id": "CD-017",
      "stage": "assess",
      "duty": "Use the same refraction method at each visit, because cycloplegic autorefraction read about 0.26 D more myopic than retinoscopy.",
      "data_needed": [
        {
          "field": "method",
          "unit": "autorefraction/retinoscopy/subjective"
        },
        {
          "field": "instrument id",
          "unit": "text"
        }
      ],
      "computation_needed": "block trend across methods or label it",
      "interval": "every visit",
      "source_ids": [
        "CYCLO-BROWN"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified"
    },
    {
      "id": "CD-018",
      "stage": "assess",
      "duty": "Measure axial length in both eyes by non-contact optical biometry whenever it is available; it is the preferred outcome measure.",
      "data_needed": [
        {
          "field": "AL R/L",
          "unit": "mm"
        },
        {
          "field": "number of readings",
          "unit": "count"
        },
        {
          "field": "SD of readings",
          "unit": "mm"
        },
        {
          "field": "instrument id",
          "unit": "text"
        },
        {
          "field": "quality flag",
          "unit": "text"
        }
      ],
      "computation_needed": "mean, SD, change since last and since baseline, mm/year",
      "interval": "baseline and every 6 months",
      "source_ids": [
        "COLLEGE-MYOPIA",
        "UK-DELPHI-2024",
        "WCO-2021"
      ],
      "how_obtained": "full-text excerpt + abstract",
      "evidence_status": "verified"
    },
    {
      "id": "CD-019",
      "stage": "assess",
      "duty": "Accept only biometry with a repeatability of about 0.05 mm; ultrasound is not precise enough for growth tracking.",
      "data_needed": [
        {
          "field": "within-session SD",
          "unit": "mm"
        },
        {
          "field": "device class",
          "unit": "optical/ultrasound"
        }
      ],
      "computation_needed": "reject or flag if SD of repeats > 0.05 mm; minimum detectable change",
      "interval": "every AL visit",
      "source_ids": [
        "AL-REPEAT-2007",
        "SCORM-BIOM",
        "MATTERN-2023"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified",
      "note": "Optical: +/-0.05 mm, 95% limits +0.038/-0.050 mm; ultrasound +0.65/-0.83 mm; four optical devices 0.04-0.06 mm."
    },
    {
      "id": "CD-020",
      "stage": "assess",
      "duty": "Keep one biometer per child; if it changes, measure on both or start a new baseline.",
      "data_needed": [
        {
          "field": "instrument id",
          "unit": "text"
        },
        {
          "field": "date of change",
          "unit": "date"
        }
      ],
      "computation_needed": "do not compute a rate across instruments without a paired offset",
      "interval": "at any device change",
      "source_ids": [
        "MATTERN-2023"
      ],
      "how_obtained": "abstract",
      "evidence_status": "partly"
    },
    {
      "id": "CD-021",
      "stage": "assess",
      "duty": "Measure axial length without cycloplegia in routine follow-up.",
      "data_needed": [
        {
          "field": "cycloplegia at time of AL",
          "unit": "yes/no"
        }
      ],
      "computation_needed": "tag; avoid mixing states",
      "interval": "every 6 months",
      "source_ids": [
        "UK-DELPHI-2024"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified"
    },
    {
      "id": "CD-022",
      "stage": "assess",
      "duty": "Where axial length is not available, take cycloplegic autorefraction plus keratometry as the fallback outcome.",
      "data_needed": [
        {
          "field": "SER cyclo",
          "unit": "D"
        },
        {
          "field": "corneal radius R1/R2",
          "unit": "mm"
        }
      ],
      "computation_needed": "estimate of AL from SER and corneal radius, labelled as estimate",
      "interval": "baseline and each review",
      "source_ids": [
        "COLLEGE-MYOPIA"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-023",
      "stage": "assess",
      "duty": "Measure corneal curvature to separate axial from refractive myopia.",
      "data_needed": [
        {
          "field": "K1/K2",
          "unit": "D or mm"
        },
        {
          "field": "axis",
          "unit": "degrees"
        }
      ],
      "computation_needed": "AL/CR ratio",
      "interval": "baseline; repeat if AL and SER disagree",
      "source_ids": [
        "IMI-PEDHIGH-2023",
        "AL-REPEAT-2007"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified"
    },
    {
      "id": "CD-024",
      "stage": "assess",
      "duty": "Look for keratoconus or other corneal ectasia when astigmatism is rising, irregular or the reflex is distorted; treat as not simple myopia.",
      "data_needed": [
        {
          "field": "cylinder change",
          "unit": "D/year"
        },
        {
          "field": "topography result",
          "unit": "text"
        },
        {
          "field": "reflex quality",
          "unit": "text"
        }
      ],
      "source_ids": [
        "CTRI-021193",
        "EXPERT-GENERAL"
      ],
      "how_obtained": "registry exclusion list (keratoconus); thresholds from memory",
      "evidence_status": "partly"
    },
    {
      "id": "CD-025",
      "stage": "assess",
      "duty": "Measure amplitude of accommodation with a stated method before atropine and at each visit on it.",
      "data_needed": [
        {
          "field": "AA R/L",
          "unit": "D"
        },
        {
          "field": "method",
          "unit": "push-up/minus lens/dynamic retinoscopy"
        },
        {
          "field": "time of day",
          "unit": "hh:mm"
        }
      ],
      "computation_needed": "compare with age norm for the same method; flag residual < 5 D",
      "interval": "baseline, 1 month, every visit on atropine",
      "source_ids": [
        "COOPER-2013",
        "LEON-2016",
        "PARK-2019",
        "CHAMPUK-PROTOCOL"
      ],
      "how_obtained": "secondary + abstracts + full-text table",
      "evidence_status": "verified"
    },
    {
      "id": "CD-026",
      "stage": "assess",
      "duty": "Measure pupil diameter under stated photopic and mesopic light before any drops.",
      "data_needed": [
        {
          "field": "pupil photopic R/L",
          "unit": "mm"
        },
        {
          "field": "pupil mesopic R/L",
          "unit": "mm"
        },
        {
          "field": "illuminance or luminance",
          "unit": "lx or cd/m2"
        },
        {
          "field": "time since last atropine drop",
          "unit": "h"
        }
      ],
      "computation_needed": "change from baseline; ignore photopic change under 0.25 mm and mesopic under 0.9 mm",
      "interval": "baseline, 1 month, every visit on atropine",
      "source_ids": [
        "CHAMPUK-PROTOCOL",
        "HVIDHANSEN-2023",
        "YOUNGADULT-PUPIL"
      ],
      "how_obtained": "full-text table + abstracts",
      "evidence_status": "verified"
    },
    {
      "id": "CD-027",
      "stage": "assess",
      "duty": "Judge anterior chamber depth and angle before any atropine or cycloplegic.",
      "data_needed": [
        {
          "field": "ACD",
          "unit": "mm"
        },
        {
          "field": "van Herick grade",
          "unit": "%/grade"
        }
      ],
      "computation_needed": "narrow -> do not give, refer",
      "interval": "baseline",
      "source_ids": [
        "UK-SMPC-1PCT"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-028",
      "stage": "assess",
      "duty": "Measure intraocular pressure before atropine and repeat it on treatment.",
      "data_needed": [
        {
          "field": "IOP R/L",
          "unit": "mmHg"
        },
        {
          "field": "tonometer",
          "unit": "type"
        },
        {
          "field": "time",
          "unit": "hh:mm"
        }
      ],
      "computation_needed": "flag >= 21 mmHg or asymmetry > 5 mmHg",
      "source_ids": [
        "ATOM-CRITERIA",
        "PALESTINE-2019",
        "TIANJIN-SAFETY"
      ],
      "how_obtained": "secondary + abstracts",
      "evidence_status": "partly"
    },
    {
      "id": "CD-029",
      "stage": "assess",
      "duty": "Examine the anterior segment, lids and ocular surface for allergy, conjunctivitis and keratitis.",
      "data_needed": [
        {
          "field": "findings",
          "unit": "coded list"
        },
        {
          "field": "grade",
          "unit": "0-4"
        }
      ],
      "computation_needed": "change from baseline",
      "interval": "baseline and every visit",
      "source_ids": [
        "US-LABEL-1PCT",
        "EYEWORLD-AP-2014"
      ],
      "how_obtained": "secondary + expert opinion",
      "evidence_status": "partly"
    },
    {
      "id": "CD-030",
      "stage": "assess",
      "duty": "Examine the fundus through a dilated pupil at baseline and classify any myopic change by category 0-4 with plus signs.",
      "data_needed": [
        {
          "field": "category R/L",
          "unit": "0-4"
        },
        {
          "field": "plus signs",
          "unit": "lacquer crack/CNV/Fuchs spot"
        },
        {
          "field": "staphyloma",
          "unit": "yes/no"
        },
        {
          "field": "peripheral lesion",
          "unit": "coded"
        }
      ],
      "computation_needed": "category >= 2 or staphyloma -> pathologic myopia",
      "interval": "baseline",
      "source_ids": [
        "IMI-PATHMYOPIA-2021",
        "IMI-DIGEST-2021"
      ],
      "how_obtained": "abstract + full-text table",
      "evidence_status": "verified"
    },
    {
      "id": "CD-032",
      "stage": "assess",
      "duty": "Check ocular alignment, binocular vision and accommodation response at baseline and when near symptoms appear.",
      "data_needed": [
        {
          "field": "cover test far/near",
          "unit": "prism dioptre"
        },
        {
          "field": "stereo",
          "unit": "arcsec"
        },
        {
          "field": "lag",
          "unit": "D"
        }
      ],
      "computation_needed": "compare with norms",
      "interval": "baseline; when symptoms",
      "source_ids": [
        "IMI-CMG-2019",
        "IMI-TRIALS-2019",
        "MCCLELLAND-2004"
      ],
      "how_obtained": "abstract",
      "evidence_status": "partly"
    },
    {
      "id": "CD-033",
      "stage": "assess",
      "duty": "Record baseline symptoms (glare, near blur, headache, dry or irritated eyes) so that later effects can be told from pre-existing ones.",
      "data_needed": [
        {
          "field": "symptom grade each",
          "unit": "0-3"
        }
      ],
      "computation_needed": "change from baseline",
      "interval": "baseline and every visit",
      "source_ids": [
        "POLLING-2016",
        "EMA-2025-POS"
      ],
      "how_obtained": "abstract + regulator page",
      "evidence_status": "verified"
    },
    {
      "id": "CD-034",
      "stage": "assess",
      "duty": "In a young child with high myopia, look first for an associated medical condition before thinking of myopia control.",
      "data_needed": [
        {
          "field": "SER",
          "unit": "D"
        },
        {
          "field": "age",
          "unit": "years"
        },
        {
          "field": "general health findings",
          "unit": "text"
        }
      ],
      "computation_needed": "SER <= -6.00 D and age < 6 -> investigation pathway",
      "interval": "at detection",
      "source_ids": [
        "IMI-PEDHIGH-2023",
        "UKPEDHIGH-2024"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified"
    },
    {
      "id": "CD-035",
      "stage": "decide",
      "duty": "Class the child as pre-myopic, myopic or highly myopic from cycloplegic SER and state the source of the cut-off.",
      "data_needed": [
        {
          "field": "SER",
          "unit": "D"
        },
        {
          "field": "definition set",
          "unit": "IMI/WHO"
        }
      ],
      "computation_needed": "threshold comparison with tolerance note",
      "interval": "at each refraction",
      "source_ids": [
        "IMI-DEF-2019",
        "WU-2019"
      ],
      "how_obtained": "abstract + full-text excerpt",
      "evidence_status": "verified",
      "note": "IMI -6.00 D, WHO -5.00 D for high myopia."
    },
    {
      "id": "CD-036",
      "stage": "decide",
      "duty": "Define progression before treating: regulator's start criterion is at least 0.50 D per year, myopia from -0.5 to -6.0 D, age 3-14 years.",
      "data_needed": [
        {
          "field": "SER change per year",
          "unit": "D/year"
        },
        {
          "field": "SER",
          "unit": "D"
        },
        {
          "field": "age",
          "unit": "years"
        }
      ],
      "computation_needed": "rate >= 0.50 D/y AND -6.0 <= SER <= -0.5 AND 3 <= age <= 14",
      "interval": "at decision",
      "source_ids": [
        "EMA-2025-POS"
      ],
      "how_obtained": "regulator page excerpt",
      "evidence_status": "verified",
      "note": "Applies to the authorised 0.1 mg/ml product; compounded drops outside it are off label."
    },
    {
      "id": "CD-037",
      "stage": "decide",
      "duty": "An axial growth over 0.1 mm in 6 months is one published definition of a fast progressor.",
      "data_needed": [
        {
          "field": "AL two dates",
          "unit": "mm"
        }
      ],
      "computation_needed": "mm per 6 months = change/days x 182.625",
      "interval": "6 months",
      "source_ids": [
        "ROSE-2021"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified"
    },
    {
      "id": "CD-038",
      "stage": "decide",
      "duty": "Do not call growth from two readings closer than about 5 to 7 months when the expected growth is 0.1 mm/year.",
      "data_needed": [
        {
          "field": "interval",
          "unit": "days"
        },
        {
          "field": "device repeatability",
          "unit": "mm"
        }
      ],
      "computation_needed": "minimum months = 12 x repeatability / rate",
      "interval": "per pair of readings",
      "source_ids": [
        "MATTERN-2023"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified",
      "note": "5.0 to 6.7 months for 0.04-0.06 mm repeatability. The paper labels the figure an SD; if so the interval covers one SD, not 95 %. Keep it a setting."
    },
    {
      "id": "CD-039",
      "stage": "decide",
      "duty": "Weigh age at onset, present rate, parental myopia and lifestyle when estimating risk of high myopia; show the uncertainty.",
      "data_needed": [
        {
          "field": "risk factors",
          "unit": "mixed"
        }
      ],
      "computation_needed": "risk summary; no false precision",
      "interval": "baseline and yearly",
      "source_ids": [
        "IMI-CMG-2019",
        "IMI-REFLECT-2021"
      ],
      "how_obtained": "abstract",
      "evidence_status": "partly"
    },
    {
      "id": "CD-040",
      "stage": "decide",
      "duty": "Offer all options fairly: drops, optical treatments, ordinary correction, waiting, and no treatment.",
      "data_needed": [
        {
          "field": "options discussed",
          "unit": "checklist"
        },
        {
          "field": "option chosen",
          "unit": "code"
        },
        {
          "field": "reason",
          "unit": "text"
        }
      ],
      "computation_needed": "none",
      "interval": "at decision and at each change",
      "source_ids": [
        "COLLEGE-MYOPIA"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-041",
      "stage": "decide",
      "duty": "Consider optical treatment as first line where atropine is not authorised or funded, and match the choice to hobbies and lifestyle.",
      "data_needed": [
        {
          "field": "lifestyle notes",
          "unit": "text"
        },
        {
          "field": "spectacle/contact lens suitability",
          "unit": "yes/no"
        }
      ],
      "computation_needed": "none",
      "interval": "at decision",
      "source_ids": [
        "UK-DELPHI-2024"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified"
    },
    {
      "id": "CD-042",
      "stage": "decide",
      "duty": "Check exclusion conditions for a standard atropine pathway: other eye disease, keratoconus, retinal dystrophy, retinopathy of prematurity, glaucoma or ocular hypertension, previous eye surgery, syndromic myopia.",
      "data_needed": [
        {
          "field": "exclusion checklist",
          "unit": "yes/no each"
        }
      ],
      "computation_needed": "any yes -> specialist decision",
      "interval": "at decision",
      "source_ids": [
        "CTRI-021193",
        "ATOM-CRITERIA"
      ],
      "how_obtained": "registry record + secondary",
      "evidence_status": "verified"
    },
    {
      "id": "CD-043",
      "stage": "decide",
      "duty": "Treat anisometropia above the trial limits (1.0 to 1.5 D) as a case needing separate thought and check for amblyopia or unilateral disease.",
      "data_needed": [
        {
          "field": "SER R-L",
          "unit": "D"
        },
        {
          "field": "AL R-L",
          "unit": "mm"
        },
        {
          "field": "BCVA R/L",
          "unit": "logMAR"
        }
      ],
      "computation_needed": "|SER R - SER L| > 1.5 D -> prompt",
      "interval": "every refraction",
      "source_ids": [
        "ATOM-CRITERIA",
        "CTRI-021193"
      ],
      "how_obtained": "secondary; pan-Indian study used 1.0 D (abstract)",
      "evidence_status": "partly"
    },
    {
      "id": "CD-044",
      "stage": "decide",
      "duty": "In infants and young children with high myopia decide case by case; evidence for control treatment is lacking.",
      "data_needed": [
        {
          "field": "age",
          "unit": "years"
        },
        {
          "field": "SER",
          "unit": "D"
        }
      ],
      "computation_needed": "no automatic start",
      "interval": "at decision",
      "source_ids": [
        "IMI-PEDHIGH-2023"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified"
    },
    {
      "id": "CD-045",
      "stage": "consent",
      "duty": "Obtain and record explicit consent before treatment, with what was explained and when.",
      "data_needed": [
        {
          "field": "consent date/time",
          "unit": "ISO 8601"
        },
        {
          "field": "person consenting",
          "unit": "name, relation, authority"
        },
        {
          "field": "document version",
          "unit": "text"
        },
        {
          "field": "signature",
          "unit": "reference"
        }
      ],
      "computation_needed": "block prescribing without valid consent",
      "interval": "before first prescription",
      "source_ids": [
        "COLLEGE-MYOPIA",
        "AOP-CONSENT-2020"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-046",
      "stage": "consent",
      "duty": "Give written information first, let the family read it, then take consent, and keep a copy in the record.",
      "data_needed": [
        {
          "field": "leaflet version",
          "unit": "text"
        },
        {
          "field": "date given",
          "unit": "date"
        },
        {
          "field": "copy filed",
          "unit": "yes/no"
        }
      ],
      "computation_needed": "consent date >= leaflet date",
      "interval": "before treatment",
      "source_ids": [
        "AOP-CONSENT-2020"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-047",
      "stage": "consent",
      "duty": "Explain that treatment may slow but is unlikely to stop myopia, that the size of effect in this child is unknown, and that growth without treatment cannot be known.",
      "data_needed": [
        {
          "field": "statement acknowledged",
          "unit": "yes/no"
        }
      ],
      "computation_needed": "none",
      "interval": "consent talk and each yearly review",
      "source_ids": [
        "AOP-CONSENT-2020"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-048",
      "stage": "consent",
      "duty": "Explain short- and long-term benefits and risks of every option in balanced terms.",
      "data_needed": [
        {
          "field": "benefit/risk items",
          "unit": "checklist"
        }
      ],
      "computation_needed": "absolute and relative risks from risk data",
      "interval": "consent talk",
      "source_ids": [
        "COLLEGE-MYOPIA",
        "IMI-ETHICS-2019"
      ],
      "how_obtained": "full-text excerpt + abstract",
      "evidence_status": "verified"
    },
    {
      "id": "CD-049",
      "stage": "consent",
      "duty": "State whether the product is authorised for this use, off label, or compounded and unlicensed, and what that means for evidence and quality.",
      "data_needed": [
        {
          "field": "regulatory status",
          "unit": "authorised/off-label/unlicensed compounded"
        },
        {
          "field": "country",
          "unit": "ISO 3166"
        }
      ],
      "computation_needed": "rule by country, strength and age",
      "interval": "before first prescription and when status changes",
      "source_ids": [
        "IMI-CMG-2019",
        "IMI-ETHICS-2019",
        "AAP-OFFLABEL-2014"
      ],
      "how_obtained": "abstract + secondary",
      "evidence_status": "verified",
      "note": "Off-label is not the same as improper or experimental (AAP). Status moved in 2025: one EU authorisation, one EU refusal."
    },
    {
      "id": "CD-050",
      "stage": "consent",
      "duty": "Tell families that regulators have disagreed on benefit: in the EU in 2025 one 0.1 mg/ml product was authorised and a different atropine product was refused.",
      "data_needed": [
        {
          "field": "evidence note version",
          "unit": "text"
        }
      ],
      "computation_needed": "none",
      "interval": "consent talk",
      "source_ids": [
        "EMA-2025-POS",
        "EMA-2025-NEG"
      ],
      "how_obtained": "regulator page excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-051",
      "stage": "consent",
      "duty": "Seek the child's assent in four steps: help the child understand, say what to expect, check understanding and pressure, and ask for willingness.",
      "data_needed": [
        {
          "field": "assent step 1-4",
          "unit": "done/not done"
        },
        {
          "field": "child's words",
          "unit": "text"
        },
        {
          "field": "age",
          "unit": "years"
        }
      ],
      "computation_needed": "prompt when developmentally able",
      "interval": "before start and at each change",
      "source_ids": [
        "AAP-CONSENT-2016"
      ],
      "how_obtained": "full-text table",
      "evidence_status": "verified"
    },
    {
      "id": "CD-052",
      "stage": "consent",
      "duty": "Respect refusal or withdrawal at any time and record it.",
      "data_needed": [
        {
          "field": "withdrawal date",
          "unit": "date"
        },
        {
          "field": "reason",
          "unit": "text"
        }
      ],
      "computation_needed": "stop supply; start after-stop checks",
      "interval": "any time",
      "source_ids": [
        "AAP-CONSENT-2016"
      ],
      "how_obtained": "full-text excerpt; withdrawal detail from general practice",
      "evidence_status": "partly"
    },
    {
      "id": "CD-054",
      "stage": "consent",
      "duty": "Disclose the full expected cost, visits and length of commitment before start.",
      "data_needed": [
        {
          "field": "cost per year",
          "unit": "currency"
        },
        {
          "field": "visits per year",
          "unit": "count"
        }
      ],
      "source_ids": [
        "IMI-ETHICS-2019",
        "EXPERT-GENERAL"
      ],
      "how_obtained": "abstract keywords (cost) + from memory",
      "evidence_status": "partly"
    },
    {
      "id": "CD-055",
      "stage": "consent",
      "duty": "Declare commercial interests and avoid over-promising in advertising or talk.",
      "data_needed": [
        {
          "field": "declared interests",
          "unit": "text"
        }
      ],
      "computation_needed": "none",
      "interval": "ongoing",
      "source_ids": [
        "IMI-ETHICS-2019",
        "AOP-CONSENT-2020"
      ],
      "how_obtained": "abstract + full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-056",
      "stage": "prescribe",
      "duty": "Let treatment be started only by an ophthalmologist or a professional qualified in eye care with the legal right to do so.",
      "data_needed": [
        {
          "field": "prescriber id",
          "unit": "register number"
        },
        {
          "field": "prescribing right",
          "unit": "jurisdiction rule"
        }
      ],
      "computation_needed": "authority check",
      "interval": "each prescription",
      "source_ids": [
        "EMA-2025-POS"
      ],
      "how_obtained": "regulator page excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-058",
      "stage": "prescribe",
      "duty": "Do not give atropine with closed-angle glaucoma or a narrow angle, or with hypersensitivity to any ingredient.",
      "data_needed": [
        {
          "field": "angle status",
          "unit": "open/narrow/closed"
        },
        {
          "field": "allergy list",
          "unit": "coded"
        }
      ],
      "computation_needed": "hard stop",
      "interval": "each prescription",
      "source_ids": [
        "UK-SMPC-1PCT"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-059",
      "stage": "prescribe",
      "duty": "Use caution with raised IOP, fast-heart-rate conditions, fever or hot weather, and Down syndrome, spastic paralysis or brain injury.",
      "data_needed": [
        {
          "field": "caution flags",
          "unit": "yes/no each"
        }
      ],
      "computation_needed": "soft stop with reason required",
      "interval": "each prescription",
      "source_ids": [
        "UK-SMPC-1PCT",
        "US-LABEL-1PCT"
      ],
      "how_obtained": "full-text excerpt + secondary",
      "evidence_status": "verified"
    },
    {
      "id": "CD-060",
      "stage": "prescribe",
      "duty": "Check for other antimuscarinic medicines, whose effects add up.",
      "data_needed": [
        {
          "field": "medicines",
          "unit": "coded list"
        }
      ],
      "computation_needed": "interaction class match (antimuscarinic)",
      "interval": "each prescription",
      "source_ids": [
        "UK-SMPC-1PCT"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-061",
      "stage": "prescribe",
      "duty": "Avoid stacking several mydriatics in a child; severe and even fatal reactions have been reported, mostly with combinations.",
      "data_needed": [
        {
          "field": "mydriatics in last 24 h",
          "unit": "list"
        }
      ],
      "computation_needed": "count > 1 -> warn",
      "interval": "each cycloplegic visit",
      "source_ids": [
        "ANSM-MYDRIATIC"
      ],
      "how_obtained": "regulator page excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-062",
      "stage": "prescribe",
      "duty": "Use the lowest dose that achieves the aim in a child, and justify the starting strength.",
      "data_needed": [
        {
          "field": "strength",
          "unit": "%"
        },
        {
          "field": "reason",
          "unit": "text"
        }
      ],
      "computation_needed": "none",
      "interval": "each prescription",
      "source_ids": [
        "UK-SMPC-1PCT"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-063",
      "stage": "prescribe",
      "duty": "Scale the starting strength to risk if local protocol does so; one cohort used 0.02%, 0.03% and 0.05% for low, moderate and high risk.",
      "data_needed": [
        {
          "field": "risk level",
          "unit": "low/moderate/high"
        },
        {
          "field": "strength",
          "unit": "%"
        }
      ],
      "computation_needed": "lookup",
      "interval": "at start",
      "source_ids": [
        "HSIEH-2022"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified",
      "note": "A single-centre approach, not a guideline."
    },
    {
      "id": "CD-064",
      "stage": "prescribe",
      "duty": "Do not use in infants under 3 months, and limit strong atropine to one drop per eye per day under 3 years.",
      "data_needed": [
        {
          "field": "age",
          "unit": "months"
        }
      ],
      "computation_needed": "hard stop by age",
      "interval": "each prescription",
      "source_ids": [
        "US-LABEL-1PCT"
      ],
      "how_obtained": "secondary (label text)",
      "evidence_status": "verified",
      "note": "Label concerns 1%."
    },
    {
      "id": "CD-065",
      "stage": "prescribe",
      "duty": "Advise one drop at bedtime with the lids closed and pressure over the tear sac for about a minute, then wipe away excess.",
      "data_needed": [
        {
          "field": "instruction version",
          "unit": "text"
        }
      ],
      "computation_needed": "none",
      "interval": "at start, re-check technique at 1 month",
      "source_ids": [
        "UK-SMPC-1PCT",
        "US-LABEL-1PCT"
      ],
      "how_obtained": "full-text excerpt + secondary",
      "evidence_status": "verified"
    },
    {
      "id": "CD-066",
      "stage": "prescribe",
      "duty": "Tell contact lens wearers not to instil preserved drops over soft lenses; wait at least 15 minutes before insertion, or use preservative-free.",
      "data_needed": [
        {
          "field": "lens wear",
          "unit": "type"
        },
        {
          "field": "preservative",
          "unit": "text"
        }
      ],
      "computation_needed": "benzalkonium AND soft lens -> warn",
      "interval": "each prescription",
      "source_ids": [
        "UK-SMPC-1PCT",
        "US-LABEL-1PCT"
      ],
      "how_obtained": "full-text excerpt + secondary",
      "evidence_status": "verified",
      "note": "The UK text says no soft lenses during treatment; the US-derived text says wait 15 min. Show the stricter one first."
    },
    {
      "id": "CD-068",
      "stage": "supply",
      "duty": "Tell the family to discard an opened bottle at the stated time; the UK 1% product says 4 weeks after opening.",
      "data_needed": [
        {
          "field": "date opened",
          "unit": "date"
        },
        {
          "field": "in-use days",
          "unit": "days"
        }
      ],
      "computation_needed": "discard date = opened + in-use days; reorder date",
      "interval": "each bottle",
      "source_ids": [
        "UK-SMPC-1PCT"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "verified",
      "note": "Use the compounding pharmacy's figure when it differs."
    },
    {
      "id": "CD-069",
      "stage": "supply",
      "duty": "Warn to keep bottles out of sight and reach of children, wash hands after use and keep the drops from the mouth.",
      "data_needed": [
        {
          "field": "warning given",
          "unit": "yes/no"
        }
      ],
      "computation_needed": "none",
      "interval": "at start and each supply",
      "source_ids": [
        "UK-SMPC-1PCT"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-070",
      "stage": "supply",
      "duty": "Give a poison-centre number and what to do if a child swallows drops; include siblings.",
      "data_needed": [
        {
          "field": "poison centre number",
          "unit": "tel by country"
        },
        {
          "field": "bottle content of atropine",
          "unit": "mg"
        }
      ],
      "computation_needed": "mg in bottle = % x 10 x ml; warn when >= 1 mg, strong warning when >= 5 mg",
      "interval": "at start and each supply",
      "source_ids": [
        "TOXINFO",
        "WESTJEM-2012",
        "US-LABEL-1PCT"
      ],
      "how_obtained": "full-text excerpts + secondary",
      "evidence_status": "verified",
      "note": "Severe poisoning of a child possible from 5 mg; a 10 ml bottle of 0.05% holds 5 mg, of 0.01% 1 mg, of 1% 100 mg."
    },
    {
      "id": "CD-071",
      "stage": "supply",
      "duty": "Track refills against expected use to judge adherence; below 80% counts as poor in one trial's rules.",
      "data_needed": [
        {
          "field": "bottles supplied",
          "unit": "count"
        },
        {
          "field": "days of supply",
          "unit": "days"
        },
        {
          "field": "reported missed doses",
          "unit": "per week"
        }
      ],
      "computation_needed": "doses taken / doses due",
      "interval": "every visit",
      "source_ids": [
        "CTRI-021193"
      ],
      "how_obtained": "registry record",
      "evidence_status": "verified"
    },
    {
      "id": "CD-073",
      "stage": "review",
      "duty": "See or contact the child about 1 month after starting atropine; most early drop-outs happen within that month.",
      "data_needed": [
        {
          "field": "visit date",
          "unit": "date"
        },
        {
          "field": "symptoms",
          "unit": "0-3"
        },
        {
          "field": "adherence",
          "unit": "%"
        }
      ],
      "computation_needed": "due window = start + 30 days +/- 7",
      "interval": "1 month (window: practice setting)",
      "source_ids": [
        "POLLING-2016",
        "LAMP-2019",
        "COMMON"
      ],
      "how_obtained": "abstracts + common practice",
      "evidence_status": "verified",
      "note": "At 0.5%: 11 of 17 who stopped did so within 1 month; that study reviewed at 1, 4 and 12 months. A large low-dose trial looked at 2 weeks, then 4, 8, 12 months."
    },
    {
      "id": "CD-074",
      "stage": "review",
      "duty": "Review every 6 months with axial length.",
      "data_needed": [
        {
          "field": "AL R/L",
          "unit": "mm"
        },
        {
          "field": "visit date",
          "unit": "date"
        }
      ],
      "computation_needed": "due window; change and rate",
      "interval": "6, 12, 18, 24 months",
      "source_ids": [
        "UK-DELPHI-2024",
        "CHAMPUK-PROTOCOL"
      ],
      "how_obtained": "abstract + full-text table",
      "evidence_status": "verified"
    },
    {
      "id": "CD-075",
      "stage": "review",
      "duty": "At each visit ask specifically about glare, reading difficulty, headache, eye irritation and allergy, and grade them.",
      "data_needed": [
        {
          "field": "symptom grades",
          "unit": "0-3"
        },
        {
          "field": "reading problem",
          "unit": "yes/no"
        }
      ],
      "computation_needed": "worse than baseline -> action list",
      "interval": "every visit",
      "source_ids": [
        "POLLING-2016",
        "EMA-2025-POS",
        "EYEWORLD-AP-2014"
      ],
      "how_obtained": "abstracts + regulator page + opinion",
      "evidence_status": "verified",
      "note": "At 0.5%: photophobia 72%, reading problems 38%, headache 22%."
    },
    {
      "id": "CD-076",
      "stage": "review",
      "duty": "Ask about systemic effects: flushing, fever, fast pulse, dry mouth, constipation, urinary difficulty, behaviour or sleep change.",
      "data_needed": [
        {
          "field": "systemic symptom list",
          "unit": "yes/no"
        }
      ],
      "computation_needed": "any yes -> stop and assess",
      "interval": "every visit",
      "source_ids": [
        "UK-SMPC-1PCT",
        "US-LABEL-1PCT"
      ],
      "how_obtained": "full-text excerpt + secondary",
      "evidence_status": "verified"
    },
    {
      "id": "CD-077",
      "stage": "review",
      "duty": "Repeat near acuity, accommodation and pupil size and compare with comfort limits (residual amplitude at least 5 D, pupil gain no more than 3 mm).",
      "data_needed": [
        {
          "field": "near VA",
          "unit": "logMAR"
        },
        {
          "field": "AA",
          "unit": "D"
        },
        {
          "field": "pupil",
          "unit": "mm"
        }
      ],
      "computation_needed": "AA < 5 D or pupil gain > 3 mm -> discuss tint, reading add or lower strength",
      "interval": "every visit on atropine",
      "source_ids": [
        "COOPER-2013"
      ],
      "how_obtained": "secondary (news summary)",
      "evidence_status": "verified",
      "note": "Cooper's 3 mm is a between-eye difference after one-eye dosing."
    },
    {
      "id": "CD-078",
      "stage": "review",
      "duty": "Update spectacles when vision or refraction changes; do not leave a myopic child undercorrected.",
      "data_needed": [
        {
          "field": "SER",
          "unit": "D"
        },
        {
          "field": "VA with present correction",
          "unit": "logMAR"
        }
      ],
      "source_ids": [
        "WCO-2021",
        "EXPERT-GENERAL"
      ],
      "how_obtained": "secondary (management includes correction); threshold from memory",
      "evidence_status": "partly"
    },
    {
      "id": "CD-079",
      "stage": "review",
      "duty": "Report effect in millimetres and dioptres against age-expected growth, with the measurement error shown.",
      "data_needed": [
        {
          "field": "AL series",
          "unit": "mm"
        },
        {
          "field": "SER series",
          "unit": "D"
        },
        {
          "field": "reference",
          "unit": "table id"
        }
      ],
      "computation_needed": "rate with confidence band; percentile change; treated versus pre-treatment rate",
      "interval": "every 6 months",
      "source_ids": [
        "UK-DELPHI-2024",
        "ROSE-2021",
        "AL-REPEAT-2007"
      ],
      "how_obtained": "abstracts",
      "evidence_status": "partly"
    },
    {
      "id": "CD-080",
      "stage": "review",
      "duty": "Ask about quality of life and adherence in a standard way.",
      "data_needed": [
        {
          "field": "PROM score",
          "unit": "score"
        },
        {
          "field": "adherence",
          "unit": "%"
        }
      ],
      "computation_needed": "change",
      "interval": "yearly",
      "source_ids": [
        "IMI-TRIALS-2019",
        "CHAMPUK-PROTOCOL"
      ],
      "how_obtained": "abstract + full-text table (child health questionnaire)",
      "evidence_status": "verified"
    },
    {
      "id": "CD-081",
      "stage": "review",
      "duty": "Look for early change of the optic disc and macula; myopia raises glaucoma and maculopathy risk even when low.",
      "data_needed": [
        {
          "field": "disc note",
          "unit": "text"
        },
        {
          "field": "macula note",
          "unit": "text"
        }
      ],
      "source_ids": [
        "HAARMAN-2020"
      ],
      "how_obtained": "abstract for risk; interval from memory",
      "evidence_status": "partly"
    },
    {
      "id": "CD-083",
      "stage": "adjust",
      "duty": "If growth stays fast after 6-12 months of good use, raise strength, add an optical treatment or switch; record the reason.",
      "data_needed": [
        {
          "field": "rate on treatment",
          "unit": "mm/year"
        },
        {
          "field": "expected rate",
          "unit": "mm/year"
        },
        {
          "field": "action",
          "unit": "code"
        }
      ],
      "computation_needed": "rate above target for age -> options",
      "interval": "6-12 months after start",
      "source_ids": [
        "UK-DELPHI-2024",
        "SOE-ALGO-2024"
      ],
      "how_obtained": "abstract (combination may add effect); thresholds not seen",
      "evidence_status": "partly"
    },
    {
      "id": "CD-084",
      "stage": "adjust",
      "duty": "Say that evidence for combining drops with optical treatment is promising but still limited.",
      "data_needed": [
        {
          "field": "combination",
          "unit": "code"
        }
      ],
      "computation_needed": "none",
      "interval": "at change",
      "source_ids": [
        "UK-DELPHI-2024"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified"
    },
    {
      "id": "CD-085",
      "stage": "adjust",
      "duty": "For troublesome glare offer tinted or photochromic lenses, a hat and sunglasses; for near blur offer a reading add; otherwise lower the strength.",
      "data_needed": [
        {
          "field": "symptom",
          "unit": "code"
        },
        {
          "field": "measure",
          "unit": "code"
        }
      ],
      "computation_needed": "none",
      "interval": "at symptom",
      "source_ids": [
        "PHOTOCHROMIC-2016",
        "EYEWORLD-AP-2014",
        "US-LABEL-1PCT"
      ],
      "how_obtained": "abstract + expert opinion + secondary",
      "evidence_status": "verified",
      "note": "Photochromic lenses: photophobia in 75% on 0.05-0.1%; overall symptoms better in 63% after 2 months; 24 children, no control group."
    },
    {
      "id": "CD-086",
      "stage": "adjust",
      "duty": "Stop and assess for lid or eye allergy, raised IOP, angle closure, systemic effects or loss of best-corrected acuity.",
      "data_needed": [
        {
          "field": "event",
          "unit": "coded"
        },
        {
          "field": "severity",
          "unit": "1-5"
        },
        {
          "field": "relatedness",
          "unit": "coded"
        }
      ],
      "source_ids": [
        "UK-SMPC-1PCT"
      ],
      "how_obtained": "full-text excerpt (reaction list); actions from memory",
      "evidence_status": "partly"
    },
    {
      "id": "CD-088",
      "stage": "stop",
      "duty": "Plan the end of treatment at the start; guidance does not agree on when to stop and this is an open research question.",
      "data_needed": [
        {
          "field": "planned stop rule",
          "unit": "text"
        }
      ],
      "computation_needed": "none",
      "interval": "at consent and yearly",
      "source_ids": [
        "UK-DELPHI-2024",
        "IMI-REFLECT-2021"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified"
    },
    {
      "id": "CD-089",
      "stage": "stop",
      "duty": "Base stopping on age and proven stability of axial length as well as refraction, not on refraction alone.",
      "data_needed": [
        {
          "field": "age",
          "unit": "years"
        },
        {
          "field": "AL rate, last 12-24 months",
          "unit": "mm/year"
        },
        {
          "field": "SER rate",
          "unit": "D/year"
        }
      ],
      "source_ids": [
        "IMI-REFLECT-2021",
        "COMMON",
        "EXPERT-GENERAL"
      ],
      "how_obtained": "abstract + common practice + from memory",
      "evidence_status": "partly"
    },
    {
      "id": "CD-090",
      "stage": "stop",
      "duty": "Remember that some young adults, above all high myopes, still progress; plan later checks.",
      "data_needed": [
        {
          "field": "age",
          "unit": "years"
        },
        {
          "field": "SER",
          "unit": "D"
        }
      ],
      "computation_needed": "none",
      "interval": "after 18 years",
      "source_ids": [
        "IMI-DIGEST-2025"
      ],
      "how_obtained": "secondary",
      "evidence_status": "verified"
    },
    {
      "id": "CD-091",
      "stage": "stop",
      "duty": "Choose a plain stop or a taper and record it; one small study of 0.01% found no significant difference (cut one day a week each month).",
      "data_needed": [
        {
          "field": "taper schedule",
          "unit": "days/week by month"
        }
      ],
      "computation_needed": "taper calendar; bottle count",
      "interval": "at stop",
      "source_ids": [
        "TAPER-0.01"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified",
      "note": "0.25 v 0.15 mm and 0.43 v 0.21 D over 12 months looked larger but p = 0.68 and 0.54; 25 per group."
    },
    {
      "id": "CD-092",
      "stage": "stop",
      "duty": "Prefer tapering after stronger drops or in younger children, where rebound is feared more.",
      "data_needed": [
        {
          "field": "strength",
          "unit": "%"
        },
        {
          "field": "age",
          "unit": "years"
        }
      ],
      "computation_needed": "none",
      "interval": "at stop",
      "source_ids": [
        "EYEWORLD-AP-2014"
      ],
      "how_obtained": "expert opinion",
      "evidence_status": "partly"
    },
    {
      "id": "CD-093",
      "stage": "stop",
      "duty": "Stop for safety at once when a hard contraindication appears.",
      "data_needed": [
        {
          "field": "reason",
          "unit": "code"
        }
      ],
      "computation_needed": "cancel refills",
      "interval": "same day",
      "source_ids": [
        "UK-SMPC-1PCT"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "partly"
    },
    {
      "id": "CD-094",
      "stage": "after-stop",
      "duty": "Measure axial length and cycloplegic refraction 6 months after stopping to look for rebound.",
      "data_needed": [
        {
          "field": "AL R/L",
          "unit": "mm"
        },
        {
          "field": "SER R/L cyclo",
          "unit": "D"
        },
        {
          "field": "stop date",
          "unit": "date"
        }
      ],
      "computation_needed": "after-stop rate versus on-treatment rate and versus age-expected",
      "interval": "6 months after stop",
      "source_ids": [
        "COMMON",
        "TAPER-0.01"
      ],
      "how_obtained": "common practice; 12-month study follow-up (abstract)",
      "evidence_status": "partly"
    },
    {
      "id": "CD-095",
      "stage": "after-stop",
      "duty": "Check again at 12 months, since the published follow-up after stopping ran 12 months.",
      "data_needed": [
        {
          "field": "AL",
          "unit": "mm"
        },
        {
          "field": "SER",
          "unit": "D"
        }
      ],
      "computation_needed": "12-month rate",
      "interval": "12 months after stop",
      "source_ids": [
        "TAPER-0.01"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified"
    },
    {
      "id": "CD-098",
      "stage": "communicate",
      "duty": "Give parents a plain report after each visit: what was measured, what it means, what to do, when to return.",
      "data_needed": [
        {
          "field": "report date",
          "unit": "date"
        },
        {
          "field": "language",
          "unit": "BCP 47"
        }
      ],
      "computation_needed": "reading-age and unit check",
      "interval": "every visit",
      "source_ids": [
        "IMI-CMG-2019",
        "COLLEGE-MYOPIA"
      ],
      "how_obtained": "abstract + full-text excerpt",
      "evidence_status": "partly"
    },
    {
      "id": "CD-099",
      "stage": "communicate",
      "duty": "Explain long-term risk honestly: each dioptre less lowers it, and low and moderate myopia carry some risk too; give absolute figures where there are any.",
      "data_needed": [
        {
          "field": "SER",
          "unit": "D"
        },
        {
          "field": "risk figure shown",
          "unit": "text"
        }
      ],
      "computation_needed": "risk lookup with source and population",
      "interval": "consent and yearly",
      "source_ids": [
        "BULLIMORE-2019",
        "HAARMAN-2020"
      ],
      "how_obtained": "abstract",
      "evidence_status": "verified"
    },
    {
      "id": "CD-100",
      "stage": "communicate",
      "duty": "Advise about 2 hours outdoors a day, breaks from near work every 20-30 minutes, and a reading distance over 30 cm.",
      "data_needed": [
        {
          "field": "advice given",
          "unit": "yes/no"
        },
        {
          "field": "outdoor time",
          "unit": "h/day"
        }
      ],
      "computation_needed": "none",
      "interval": "baseline and every visit",
      "source_ids": [
        "KLAVER-2022RULE",
        "HUANG-2019"
      ],
      "how_obtained": "full-text excerpt + secondary",
      "evidence_status": "verified"
    },
    {
      "id": "CD-101",
      "stage": "communicate",
      "duty": "Advise sun protection (hat, sunglasses) while pupils are larger, without cutting outdoor time.",
      "data_needed": [
        {
          "field": "advice given",
          "unit": "yes/no"
        }
      ],
      "source_ids": [
        "US-LABEL-1PCT",
        "EXPERT-GENERAL"
      ],
      "how_obtained": "secondary + from memory",
      "evidence_status": "partly"
    },
    {
      "id": "CD-102",
      "stage": "communicate",
      "duty": "Warn about blurred near vision and glare for sport, cycling and school until the child has adapted.",
      "data_needed": [
        {
          "field": "advice given",
          "unit": "yes/no"
        }
      ],
      "computation_needed": "none",
      "interval": "at start",
      "source_ids": [
        "UK-SMPC-1PCT"
      ],
      "how_obtained": "full-text excerpt (temporary impairment of vision)",
      "evidence_status": "verified"
    },
    {
      "id": "CD-103",
      "stage": "communicate",
      "duty": "Tell the family the retinal warning signs (flashes, floaters, curtain, sudden loss) and to seek help the same day; give it in writing.",
      "data_needed": [
        {
          "field": "leaflet given",
          "unit": "date"
        }
      ],
      "computation_needed": "none",
      "interval": "baseline, yearly, and to every high myope",
      "source_ids": [
        "COLLEGE-FLASHES"
      ],
      "how_obtained": "full-text excerpt (emergency list, written advice); same-day wording from general practice",
      "evidence_status": "partly"
    },
    {
      "id": "CD-104",
      "stage": "communicate",
      "duty": "Tell the family what to do in fever or very hot weather while on drops (pause and ask).",
      "data_needed": [
        {
          "field": "advice given",
          "unit": "yes/no"
        }
      ],
      "computation_needed": "none",
      "interval": "at start and each summer",
      "source_ids": [
        "UK-SMPC-1PCT"
      ],
      "how_obtained": "full-text excerpt (hyperpyrexia caution); pause advice inferred",
      "evidence_status": "partly"
    },
    {
      "id": "CD-105",
      "stage": "communicate",
      "duty": "Tell the family how to report an unwanted effect and to whom.",
      "data_needed": [
        {
          "field": "contact",
          "unit": "tel/email"
        }
      ],
      "computation_needed": "none",
      "interval": "at start and every report",
      "source_ids": [
        "US-LABEL-1PCT"
      ],
      "how_obtained": "secondary",
      "evidence_status": "partly"
    },
    {
      "id": "CD-106",
      "stage": "audit",
      "duty": "Keep full, dated and attributable records of examinations, talks, consent and every contact.",
      "data_needed": [
        {
          "field": "author",
          "unit": "id"
        },
        {
          "field": "timestamp",
          "unit": "ISO 8601"
        }
      ],
      "computation_needed": "audit trail",
      "interval": "every contact",
      "source_ids": [
        "COLLEGE-FLASHES",
        "COLLEGE-MYOPIA"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-107",
      "stage": "audit",
      "duty": "Keep up to date with the evidence and review the protocol on a set date.",
      "data_needed": [
        {
          "field": "protocol version",
          "unit": "text"
        },
        {
          "field": "review date",
          "unit": "date"
        }
      ],
      "source_ids": [
        "COLLEGE-MYOPIA"
      ],
      "how_obtained": "full-text excerpt; interval from memory",
      "evidence_status": "partly"
    },
    {
      "id": "CD-108",
      "stage": "audit",
      "duty": "Train staff, including from non-commercial sources, and record it.",
      "data_needed": [
        {
          "field": "training item",
          "unit": "text"
        },
        {
          "field": "date",
          "unit": "date"
        }
      ],
      "computation_needed": "expiry reminder",
      "source_ids": [
        "UK-DELPHI-2024",
        "COLLEGE-MYOPIA"
      ],
      "how_obtained": "abstract + full-text excerpt",
      "evidence_status": "partly"
    },
    {
      "id": "CD-111",
      "stage": "audit",
      "duty": "Audit biometer repeatability with regular repeat measurements and device checks.",
      "data_needed": [
        {
          "field": "paired AL",
          "unit": "mm"
        },
        {
          "field": "device id",
          "unit": "text"
        }
      ],
      "source_ids": [
        "MATTERN-2023",
        "AL-REPEAT-2007"
      ],
      "how_obtained": "abstracts; interval from memory",
      "evidence_status": "partly"
    },
    {
      "id": "CD-112",
      "stage": "refer",
      "duty": "Treat retinal detachment, pigment in the front vitreous, vitreous or retinal bleeding, or a break or lattice with symptoms as an emergency.",
      "data_needed": [
        {
          "field": "sign",
          "unit": "coded"
        },
        {
          "field": "time seen",
          "unit": "ISO 8601"
        }
      ],
      "computation_needed": "emergency pathway; timestamps",
      "interval": "immediately",
      "source_ids": [
        "COLLEGE-FLASHES"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-113",
      "stage": "refer",
      "duty": "For new flashes or floaters take history, check the front vitreous for pigment, examine the dilated retina with an indirect view, or refer to someone who can.",
      "data_needed": [
        {
          "field": "onset",
          "unit": "date"
        },
        {
          "field": "pigment cells",
          "unit": "yes/no"
        },
        {
          "field": "dilated indirect view",
          "unit": "yes/no"
        }
      ],
      "computation_needed": "incomplete examination -> refer",
      "interval": "same day",
      "source_ids": [
        "COLLEGE-FLASHES"
      ],
      "how_obtained": "full-text excerpt; same-day wording from general practice",
      "evidence_status": "partly"
    },
    {
      "id": "CD-114",
      "stage": "refer",
      "duty": "Train reception staff to recognise such calls and never to reassure without an examination.",
      "data_needed": [
        {
          "field": "triage script version",
          "unit": "text"
        }
      ],
      "computation_needed": "phone triage rule",
      "interval": "every call",
      "source_ids": [
        "COLLEGE-FLASHES"
      ],
      "how_obtained": "full-text excerpt",
      "evidence_status": "verified"
    },
    {
      "id": "CD-115",
      "stage": "refer",
      "duty": "Refer a child of 5 or younger with myopia of -6 D or more for medical, imaging, electrodiagnostic or genetic work-up as needed.",
      "data_needed": [
        {
          "field": "age",
          "unit": "years"
        },
        {
          "field": "SER",
          "unit": "D"
        },
        {
          "field": "AL",
          "unit": "mm"
        },
        {
          "field": "K",
          "unit": "D"
        }
      ],
      "computation_needed": "age <= 5 AND SER <= -6 -> refer",
      "interval": "at detection",
      "source_ids": [
        "IMI-PEDHIGH-2023",
        "UKPEDHIGH-2024"
      ],
      "how_obtained": "abstracts; the age-5 line is the entry limit of the UK series, not a guideline rule",
      "evidence_status": "partly",
      "note": "About a quarter of one UK hospital series had mendelian or secondary myopia."
    },
    {
      "id": "CD-116",
      "stage": "refer",
      "duty": "Refer when findings suggest syndromic or secondary myopia: night blindness, nystagmus, lens shift, joint, hearing or facial features, unilateral high myopia.",
      "data_needed": [
        {
          "field": "red-flag list",
          "unit": "yes/no each"
        }
      ],
      "source_ids": [
        "IMI-PEDHIGH-2023",
        "EXPERT-GENERAL"
      ],
      "how_obtained": "abstract for the principle; list from memory",
      "evidence_status": "partly"
    },
    {
      "id": "CD-117",
      "stage": "refer",
      "duty": "Refer suspected pathologic myopia: category 2 or worse, lacquer cracks, new vessels, staphyloma, or distortion of central vision.",
      "data_needed": [
        {
          "field": "category",
          "unit": "0-4"
        },
        {
          "field": "plus signs",
          "unit": "list"
        },
        {
          "field": "distortion",
          "unit": "yes/no"
        }
      ],
      "source_ids": [
        "IMI-PATHMYOPIA-2021",
        "IMI-DIGEST-2021"
      ],
      "how_obtained": "abstract + full-text table; urgency from memory",
      "evidence_status": "partly"
    },
    {
      "id": "CD-118",
      "stage": "refer",
      "duty": "Refer suspected keratoconus, glaucoma, or IOP that is high or unequal (over 5 mmHg between eyes).",
      "data_needed": [
        {
          "field": "IOP R/L",
          "unit": "mmHg"
        },
        {
          "field": "topography",
          "unit": "text"
        },
        {
          "field": "disc",
          "unit": "text"
        }
      ],
      "computation_needed": "threshold flags",
      "interval": "any visit",
      "source_ids": [
        "PALESTINE-2019",
        "ATOM-CRITERIA"
      ],
      "how_obtained": "abstract + secondary",
      "evidence_status": "partly"
    },
    {
      "id": "CD-119",
      "stage": "refer",
      "duty": "Refer unexplained loss of corrected acuity, or acuity in either eye worse than 0.20 logMAR with best correction.",
      "data_needed": [
        {
          "field": "BCVA R/L",
          "unit": "logMAR"
        }
      ],
      "source_ids": [
        "ATOM-CRITERIA",
        "EXPERT-GENERAL"
      ],
      "how_obtained": "secondary (trial entry limit 0.2) + from memory",
      "evidence_status": "partly"
    },
    {
      "id": "CD-120",
      "stage": "refer",
      "duty": "Send to emergency care for signs of atropine poisoning or acute angle closure: confusion, fever, flushing, fast pulse, seizures, painful red eye with haloes.",
      "data_needed": [
        {
          "field": "sign",
          "unit": "coded"
        }
      ],
      "computation_needed": "emergency pathway",
      "interval": "immediately",
      "source_ids": [
        "UK-SMPC-1PCT",
        "US-LABEL-1PCT"
      ],
      "how_obtained": "full-text excerpt + secondary for the signs; the action is inferred",
      "evidence_status": "partly"
    }
  ]
}

export const dutiesProvenance: Provenance = {
  "id": "clinical/duties",
  "title": "Duties of a childhood myopia-control service",
  "authors": "several sources: clinical/WCO-2021, clinical/IMI-DEF-2019, clinical/IMI-DIGEST-2025, clinical/NICER-2012, clinical/UK-DELPHI-2024, clinical/COLLEGE-MYOPIA, clinical/AOP-CONSENT-2020, clinical/IMI-CMG-2019, clinical/ROSE-2021, clinical/IMI-TRIALS-2019, clinical/HUANG-2019, clinical/IMI-PEDHIGH-2023, clinical/ATOM-CRITERIA, clinical/UK-SMPC-1PCT, clinical/CTRI-021193, clinical/US-LABEL-1PCT, clinical/CHAMPUK-PROTOCOL, clinical/HUURNEMAN-2016, clinical/INDIA-CYCLO, clinical/CYCLO-BROWN, clinical/CYCLO-20MIN, clinical/AL-REPEAT-2007, clinical/SCORM-BIOM, clinical/MATTERN-2023, clinical/EXPERT-GENERAL, clinical/COOPER-2013, clinical/LEON-2016, clinical/PARK-2019, clinical/HVIDHANSEN-2023, clinical/YOUNGADULT-PUPIL, clinical/PALESTINE-2019, clinical/TIANJIN-SAFETY, clinical/EYEWORLD-AP-2014, clinical/IMI-PATHMYOPIA-2021, clinical/IMI-DIGEST-2021, clinical/MCCLELLAND-2004, clinical/POLLING-2016, clinical/EMA-2025-POS, clinical/UKPEDHIGH-2024, clinical/WU-2019, clinical/IMI-REFLECT-2021, clinical/IMI-ETHICS-2019, clinical/AAP-OFFLABEL-2014, clinical/EMA-2025-NEG, clinical/AAP-CONSENT-2016, clinical/ANSM-MYDRIATIC, clinical/HSIEH-2022, clinical/TOXINFO, clinical/WESTJEM-2012, clinical/LAMP-2019, clinical/COMMON, clinical/HAARMAN-2020, clinical/SOE-ALGO-2024, clinical/PHOTOCHROMIC-2016, clinical/TAPER-0.01, clinical/BULLIMORE-2019, clinical/KLAVER-2022RULE, clinical/COLLEGE-FLASHES",
  "year": null,
  "doi": null,
  "where": "one source id per row or statement, in the register of the folder",
  "obtained": "stated per row",
  "population": "several; see the rows",
  "n": "several; see the rows",
  "ageRange": "several; see the rows",
  "device": "several; see the rows",
  "units": "given in the row",
  "licence": "facts and figures only; the licences of the articles were not read",
  "transcribedBy": "this project",
  "checkedBy": null,
  "checkedOn": null,
  "sha256": "5ba09adce6cbbc185e4872ff53806d32f6a2472dd350e34185ef90e878d12b3c",
  "supersedes": null,
  "notes": ""
}
