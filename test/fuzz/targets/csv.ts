import { readTable } from "../../../src/interop/table/read-table.js"

const HEADINGS =
  "Patient ID;Name;DOB;Sex;Date;AL OD;AL OS;Sph OD;Cyl OD;Axis OD;K1 OD (D);K2 OD (D);Treatment;Treatment start"
const ROW =
  '17;"Luna, Ana";14/03/2017;F;28/01/2025;24,12;24,05;-2,25;-0,50;180;43,50;44,25;atropine 0,05 %;28/01/2025'
const TEXTS = [
  `${HEADINGS}\r\n${ROW}\r\n${ROW.replace("24,12", "241")}\r\n`,
  "id,date,eye,al,sph,cyl,axis\n1,2025-01-10,OD,24.12,-2.25,-0.50,180\n1,2025-01-10,OS,24.05,plano,,\n",
  'id\tfecha\tOD\tOS\n1\t10 de enero de 2025\t"-2.25 -0.50 x 180"\t-2,25/-0,50x180\n',
  "1|2025-01-10|24.12\n2|2025-02-10|24.13\n",
  "sep=;\nid;date;al od\n1;03/04/2025;24,1\n",
]

/** Tables of text; what a mutation makes of them must be read or refused, and never thrown. */
export const target = {
  name: "csv",
  share: 3,
  seeds: async (): Promise<Uint8Array[]> => [
    ...TEXTS.map((text) => Buffer.from(text)),
    Buffer.from(`\uFEFF${TEXTS[0]}`, "utf16le"),
    Buffer.from(`Nombre;Fecha;AL OD\nNúñez;28/01/2025;24,1\n`, "latin1"),
  ],
  async read(bytes: Uint8Array): Promise<unknown> {
    const read = await readTable({ file: "fuzz.csv", bytes, dateOrder: "day-month-year", decimalSign: "," })
    if (read.fragments.length + read.skipped.length === 0)
      throw new Error("nothing was read and nothing said")
    if (read.skipped.some(({ why }) => why.trim() === "")) throw new Error("skipped without a reason")
    return read
  },
}
