import type { EyeSizesInput } from "../../src/chart/family/eye-sizes.js"
import type { GrowthBarsInput } from "../../src/chart/family/growth-bars.js"
import type { LengthPathInput } from "../../src/chart/family/length-path.js"

/** Invented eyes and figures, and texts as long as the languages make them. */

export const eyeSizes: EyeSizesInput = {
  eyes: [
    {
      lengthMm: 23.4,
      title: "A usual eye at 10",
      note: "short enough to see far without glasses",
      isMeasured: true,
    },
    {
      lengthMm: 24.04,
      title: "Your child’s right eye now",
      note: "sees near, needs glasses for far",
      isMeasured: true,
    },
    {
      lengthMm: 25.1,
      low: 24.5,
      high: 25.8,
      title: "Where it may go without treatment",
      note: "expected at 18, never certain",
      isMeasured: false,
    },
  ],
  caption: "Drawn to scale. The dotted line is the back of the first eye.",
  title: "The length of the eye",
  description: "A usual eye at 10 is 23.4 mm long, your child’s right eye 24.0 mm.",
}

export const eyeSizesInSpanish: EyeSizesInput = {
  eyes: eyeSizes.eyes.map((eye, i) => ({
    ...eye,
    title: [
      "El ojo de un niño de 10 años que no necesita gafas",
      "El ojo derecho de su hijo, medido el 12 de septiembre de 2026",
      "Hacia dónde podría ir el ojo sin tratamiento a los 18 años",
    ][i] as string,
    note: [
      "bastante corto para ver bien de lejos",
      "ve bien de cerca y necesita gafas para ver de lejos",
      "es lo que esperamos y nunca es seguro; la zona sombreada muestra hasta dónde podría llegar",
    ][i] as string,
  })),
  caption:
    "Dibujado a escala a partir de la longitud. La línea de puntos pasa por el fondo del primer ojo, para que se vea la diferencia.",
  title: "La longitud del ojo",
  description: "El ojo derecho de su hijo mide 24,0 mm.",
}

export const eyeSizesInChinese: EyeSizesInput = {
  eyes: eyeSizes.eyes.map((eye, i) => ({
    ...eye,
    title: ["十岁儿童通常的眼球", "您孩子的右眼（二〇二六年九月测量）", "如果不治疗，十八岁时可能达到的长度"][
      i
    ] as string,
    note: [
      "长度合适，不戴眼镜也能看清远处",
      "看近清楚，看远需要戴眼镜；眼轴越长，眼底越薄",
      "这是预计的结果，并不确定，阴影表示可能的范围",
    ][i] as string,
  })),
  caption: "按测得的长度等比例绘制。虚线标出第一只眼球后部的位置，方便比较差别。",
  title: "眼球的长度",
  description: "您孩子的右眼长 24.0 毫米。",
}

export const growthBars: GrowthBarsInput = {
  bars: [
    { label: "Your child’s eyes, last 12 months", mm: 0.14, low: 0.05, high: 0.23, isChild: true },
    { label: "Usual at this age without treatment", mm: 0.27, isChild: false },
    { label: "Usual for children who need no glasses", mm: 0.08, isChild: false },
  ],
  unitLabel: "mm",
  title: "Growth of the eyes in the last 12 months",
  description: "Your child’s eyes grew 0.14 mm.",
}

const SPANISH_BARS = [
  "Los ojos de su hijo en los últimos 12 meses",
  "Lo habitual a esta edad en niños con miopía que no reciben ningún tratamiento para frenarla",
  "Lo habitual en niños que no necesitan gafas",
]
const CHINESE_BARS = [
  "您孩子的眼睛，最近十二个月",
  "同龄近视儿童在没有接受任何控制近视治疗的情况下通常的增长（供比较使用，并不是针对您孩子的预计）",
  "不需要戴眼镜的同龄儿童",
]
const named = (names: readonly string[]) =>
  growthBars.bars.map((bar, i) => ({ ...bar, label: names[i] as string }))

export const growthBarsInSpanish = { ...growthBars, bars: named(SPANISH_BARS) }
export const growthBarsInChinese = { ...growthBars, bars: named(CHINESE_BARS), unitLabel: "毫米" }

const years = [10.5, 11, 12, 13, 14, 15, 16, 17, 18]
const fan = (slope: number, width: number) =>
  years.map((ageYears, i) => {
    const middle = 24.04 + slope * (1 - Math.exp(-(ageYears - 10.5) / 3))
    const half = i === 0 ? 0.04 : width * (1 - Math.exp(-(ageYears - 10.5) / 3))
    return { ageYears, low: middle - half, middle, high: middle + half }
  })

export const lengthPath: LengthPathInput = {
  measured: [
    { ageYears: 8.4, mm: 23.31 },
    { ageYears: 9, mm: 23.62 },
    { ageYears: 9.5, mm: 23.84 },
    { ageYears: 10, mm: 23.97 },
    { ageYears: 10.5, mm: 24.04 },
  ],
  usual: [7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18].map((ageYears) => ({
    ageYears,
    mm: 23.5 - 0.9 * Math.exp(-(ageYears - 6) / 4),
  })),
  ahead: { untreated: fan(1.3, 0.7), treated: fan(0.8, 0.45) },
  labels: {
    axisAge: "age in years",
    axisMm: "length of the eye, mm",
    measured: "Measured here",
    usual: "Children who need no glasses",
    untreated: "Expected without treatment",
    treated: "Expected with treatment",
  },
  title: "The length of the eye over the years",
  description: "The right eye was 24.0 mm long at 10 and a half.",
}

export const lengthPathInSpanish: LengthPathInput = {
  ...lengthPath,
  labels: {
    axisAge: "edad en años cumplidos",
    axisMm: "longitud del ojo desde la córnea hasta la retina, en milímetros (mm)",
    measured: "Lo que hemos medido en la consulta en el ojo derecho de su hijo",
    usual: "Lo habitual en niños de la misma edad que no necesitan gafas",
    untreated: "Lo que esperaríamos a los 18 años sin ningún tratamiento",
    treated: "Lo que esperaríamos a los 18 años con el tratamiento actual",
  },
}

export const lengthPathInChinese: LengthPathInput = {
  ...lengthPath,
  labels: {
    axisAge: "年龄（岁）",
    axisMm: "眼轴长度（毫米）",
    measured: "我们在本诊所为您孩子的右眼测得的长度",
    usual: "不需要戴眼镜的同龄儿童通常的眼轴长度",
    untreated: "如果不治疗，十八岁时预计的长度及可能的范围",
    treated: "如果继续目前的治疗，十八岁时预计的长度及可能的范围",
  },
}
