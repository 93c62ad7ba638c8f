import type { FeeSchedule } from "../practice-rules.js"

/**
 * Fees of the invented practice of the demo. Every amount is invented. That the short visit after a month is free of
 * charge, and that the length measurement, often the refraction, and the drug are not covered, is common practice
 * without a source.
 */
export const demoFees: FeeSchedule = {
  title: "Fees of the demo practice (invented)",
  currency: "EUR",
  from: "2023-01-01",
  fees: [
    {
      id: "baseline",
      title: "First examination",
      cents: 9500,
      coverage: "covered",
      charged: { kind: "examination", stages: ["baseline"] },
    },
    {
      id: "check",
      title: "Short check",
      cents: 0,
      coverage: "not-covered",
      charged: { kind: "examination", stages: ["safety-check"] },
    },
    {
      id: "review",
      title: "Review",
      cents: 5500,
      coverage: "covered",
      charged: { kind: "examination", stages: ["review", "washout", "discharge"] },
    },
    {
      id: "length",
      title: "Length measurement",
      cents: 4000,
      coverage: "not-covered",
      charged: { kind: "measure", measure: "axial-length" },
    },
    {
      id: "refraction",
      title: "Refraction",
      cents: 2000,
      coverage: "uncertain",
      charged: { kind: "measure", measure: "refraction" },
    },
    {
      id: "bottle",
      title: "Bottle of drops",
      cents: 3200,
      coverage: "not-covered",
      charged: { kind: "bottle" },
    },
    {
      id: "defocus-spectacles",
      title: "Defocus spectacles",
      cents: 36000,
      coverage: "uncertain",
      charged: { kind: "device", treatment: "defocus-spectacles", everyMonths: 12 },
    },
    {
      id: "orthokeratology",
      title: "Pair of night lenses",
      cents: 78000,
      coverage: "not-covered",
      charged: { kind: "device", treatment: "orthokeratology", everyMonths: 12 },
    },
  ],
}
