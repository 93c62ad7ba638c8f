"""Makes the tables that the tests read, and what Python's own csv module makes of them.

    python3 test/validation/tables/make-fixtures.py

Only the standard library: csv is the outside check of the reading, zipfile writes the workbooks part by part.
All children and figures are invented.
"""
import csv
import io
import json
import os
import zipfile

HERE = os.path.join(os.path.dirname(os.path.abspath(__file__)), "fixtures")
STAMP = (2026, 1, 1, 0, 0, 0)

TRICKY = {
    "quotes": 'a,b\r\n"1","x,y"\r\n"the ""left"" eye",2\r\n',
    "line-ends-inside": 'a,b\r\n"line one\r\nline two",2\r\n"lone\nfeed",3\r\n',
    "no-last-line-end": "a;b\n1;2\n3;4",
    "empty-cells": "a,b,c\r\n,,\r\n1,,\r\n,,3\r\n",
    "quote-inside-plain": 'a,b\r\n5" lens,2\r\nx"y"z,3\r\n',
    "tabs": 'a\tb\r\n"one\ttwo"\tthree\r\n',
    "bars": "a|b\n1|2\n",
    "only-quoted-empty": 'a,b\r\n"",""\r\n',
    "carriage-returns": "a,b\r1,2\r3,4\r",
    "doubled-at-ends": 'a,b\r\n"""x""",""""\r\n',
    "blanks": 'a, b \r\n 1,2 \r\n',
    "letters": 'nombre,ciudad\r\n"Núñez, Zoë",東京\r\n',
    "long-row": ",".join(f"c{i}" for i in range(500)) + "\r\n",
}
DELIMITER = {"no-last-line-end": ";", "tabs": "\t", "bars": "|"}


def write_csv_answers():
    answers = []
    for name, text in TRICKY.items():
        delimiter = DELIMITER.get(name, ",")
        rows = list(csv.reader(io.StringIO(text, newline=""), delimiter=delimiter, strict=True))
        answers.append({"name": name, "delimiter": delimiter, "text": text, "rows": rows})
    with open(os.path.join(HERE, "python-csv.json"), "w", encoding="utf-8") as out:
        json.dump(answers, out, ensure_ascii=False, indent=1)
        out.write("\n")


VISITS = [
    ["Patient ID", "Nombre", "Fecha de nacimiento", "Sexo", "Fecha", "AL OD (mm)", "AL OS (mm)", "Sph OD", "Cyl OD",
     "Axis OD", "Sph OS", "Cyl OS", "Axis OS", "Notas"],
    ["0017", "Núñez Peña, Zoë", "14/03/2017", "F", "28/01/2025", "24,12", "24,05", "−2,25", "-0,50", "180", "-2,00",
     "", "", "viene con su madre; €"],
    ["0017", "Núñez Peña, Zoë", "14/03/2017", "F", "10/07/2025 09:30", "24,25", "n/d", "-2,50", "-0,50", "175",
     "-2,25", "0", "", ""],
    ["0018", "Gil Ríos, Íñigo", "02/12/2015", "M", "31/02/2025", "23,80", "23,90", "-1,00", "", "", "-1,25", "", "", ""],
    ["0018", "Gil Ríos, Íñigo", "02/12/2015", "M", "03/03/2025", "238", "23,95", "-1,00", "", "", "-1,25 D", "", "", ""],
]


def write_encodings():
    text = "".join(";".join(f'"{c}"' if ";" in c else c for c in row) + "\r\n" for row in VISITS)
    # windows-1252 has no minus of its own.
    plain = text.replace("−", "-")
    forms = {
        "visits-utf-8.csv": text.encode("utf-8"),
        "visits-utf-8-bom.csv": text.encode("utf-8-sig"),
        "visits-utf-16le.csv": b"\xff\xfe" + text.encode("utf-16-le"),
        "visits-utf-16be.csv": b"\xfe\xff" + text.encode("utf-16-be"),
        "visits-utf-16le-no-mark.csv": text.encode("utf-16-le"),
        "visits-windows-1252.csv": plain.encode("cp1252"),
        "chinese-gb18030.csv": "姓名,出生日期,眼轴\r\n张小明,2017-03-14,24.12\r\n李小红,2016-05-02,23.90\r\n".encode("gb18030"),
        "japanese-shift-jis.csv": "氏名,生年月日,眼軸長\r\nテスト太郎,2017-03-14,24.12\r\n".encode("shift_jis"),
    }
    for name, held in forms.items():
        with open(os.path.join(HERE, name), "wb") as out:
            out.write(held)


HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'
MAIN = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"'
REL = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"


def workbook(sheet, shared="", *, date1904=False, extra=()):
    pr = '<workbookPr date1904="1"/>' if date1904 else "<workbookPr/>"
    return [
        ("[Content_Types].xml", HEAD + '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>'),
        ("xl/workbook.xml", HEAD + f'<workbook {MAIN} xmlns:r="{REL}">{pr}<sheets>'
         '<sheet name="Hidden" sheetId="1" state="hidden" r:id="rId9"/>'
         '<sheet name="Visits" sheetId="2" r:id="rId1"/></sheets></workbook>'),
        ("xl/_rels/workbook.xml.rels", HEAD + '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">'
         f'<Relationship Id="rId1" Type="{REL}/worksheet" Target="worksheets/sheet1.xml"/>'
         f'<Relationship Id="rId9" Type="{REL}/worksheet" Target="worksheets/sheet2.xml"/></Relationships>'),
        ("xl/styles.xml", HEAD + f'<styleSheet {MAIN}><numFmts count="1"><numFmt numFmtId="164" formatCode="dd/mm/yyyy;@"/>'
         '</numFmts><cellXfs count="4"><xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="164"/><xf numFmtId="10"/></cellXfs></styleSheet>'),
        ("xl/sharedStrings.xml", HEAD + f"<sst {MAIN}>{shared}</sst>"),
        ("xl/worksheets/sheet1.xml", HEAD + f"<worksheet {MAIN}><sheetData>{sheet}</sheetData></worksheet>"),
        ("xl/worksheets/sheet2.xml", HEAD + f'<worksheet {MAIN}><sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData></worksheet>'),
        *extra,
    ]


def write_zip(name, parts, compression=zipfile.ZIP_DEFLATED):
    with zipfile.ZipFile(os.path.join(HERE, name), "w") as out:
        for part, text in parts:
            info = zipfile.ZipInfo(part, STAMP)
            info.compress_type = compression
            out.writestr(info, text)


SHARED = "".join(f"<si><t>{t}</t></si>" for t in ["No", "Name", "Date", "AL OD", "AL OS", "Zoë Núñez"]) + \
    "<si><r><t>Íñigo </t></r><r><t xml:space=\"preserve\">Gil</t></r><rPh><t>aid</t></rPh></si>"
SHEET = (
    '<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="s"><v>1</v></c><c r="C1" t="s"><v>2</v></c>'
    '<c r="D1" t="s"><v>3</v></c><c r="E1" t="s"><v>4</v></c><c r="F1" t="inlineStr"><is><t>Atropine %</t></is></c></row>'
    '<row r="3"><c r="A3"><v>17</v></c><c r="B3" t="s"><v>5</v></c><c r="C3" s="1"><v>45667</v></c>'
    '<c r="D3"><v>24.120000000000001</v></c><c r="E3" t="e"><v>#N/A</v></c><c r="F3" s="3"><v>5.0000000000000001E-4</v></c></row>'
    '<row r="4"><c r="A4"><v>18</v></c><c r="B4" t="s"><v>6</v></c><c r="C4" s="2"><v>45667.75</v></c>'
    '<c r="D4"><f>C4*2</f><v>23.8</v></c><c r="E4" t="str"><f>"a"</f><v>23.9</v></c><c r="G4" t="b"><v>1</v></c></row>'
)


def write_workbooks():
    write_zip("visits.xlsx", workbook(SHEET, SHARED))
    write_zip("visits-1904.xlsx", workbook(SHEET, SHARED, date1904=True))
    write_zip("stored.xlsx", workbook(SHEET, SHARED), zipfile.ZIP_STORED)
    laughs = '<!DOCTYPE x [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>'
    parts = dict(workbook(SHEET, SHARED))
    write_zip("hostile-entities.xlsx", list({**parts, "xl/sharedStrings.xml": laughs + f"<sst {MAIN}><si><t>&b;</t></si></sst>"}.items()))
    write_zip("hostile-outside.xlsx", list({**parts, "xl/worksheets/sheet1.xml":
              f'<!DOCTYPE x SYSTEM "file:///etc/passwd"><worksheet {MAIN}/>'}.items()))
    write_zip("hostile-deep.xlsx", list({**parts, "xl/worksheets/sheet1.xml": "<a>" * 100_000 + "</a>" * 100_000}.items()))
    write_zip("hostile-columns.xlsx", workbook('<row r="1">' + "<c><v>1</v></c>" * 1_000_000 + "</row>"))
    write_zip("hostile-far-column.xlsx", workbook('<row r="1"><c r="XFD1"><v>1</v></c></row>'))
    write_zip("hostile-bomb.xlsx", list({**parts, "xl/sharedStrings.xml":
              f"<sst {MAIN}><si><t>" + " " * 140_000_000 + "</t></si></sst>"}.items()))
    write_zip("hostile-text.xlsx", list({**parts, "xl/sharedStrings.xml":
              f"<sst {MAIN}><si><t>" + "x" * 1_000_000 + "</t></si></sst>"}.items()))
    write_zip("hostile-path.xlsx", workbook(SHEET, SHARED, extra=[("../../etc/cron.d/x", "x")]))
    write_zip("hostile-many.xlsx", workbook(SHEET, SHARED, extra=[(f"xl/x{i}", "") for i in range(2100)]))
    write_zip("document.ods", [("mimetype", "application/vnd.oasis.opendocument.spreadsheet"), ("content.xml", "<x/>")])
    whole = open(os.path.join(HERE, "visits.xlsx"), "rb").read()
    # The central directory says that two parts stand on the same bytes.
    overlapping = bytearray(whole)
    places = [at for at in range(len(whole) - 4) if whole[at:at + 4] == b"PK\x01\x02"]
    overlapping[places[2] + 42:places[2] + 46] = whole[places[1] + 42:places[1] + 46]
    # A part that says it is small and is not.
    lying = bytearray(whole)
    lying[places[5] + 24:places[5] + 28] = (10).to_bytes(4, "little")
    locked = bytearray(whole)
    locked[places[5] + 8] |= 1
    for name, held in {
        "hostile-overlapping.xlsx": overlapping,
        "hostile-size.xlsx": lying,
        "locked-part.xlsx": locked,
        "locked.xlsx": b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(504),
    }.items():
        with open(os.path.join(HERE, name), "wb") as out:
            out.write(bytes(held))


os.makedirs(HERE, exist_ok=True)
write_csv_answers()
write_encodings()
write_workbooks()
