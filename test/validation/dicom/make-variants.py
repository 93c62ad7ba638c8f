"""Objects that dumps cannot hold: names in many letters, and figures stored in unusual but allowed ways. By pydicom.

All names are invented; the Japanese and Korean ones are those of the examples of PS3.5 (annexes H and I).
"""
import copy
import sys
from pathlib import Path

from pydicom import dcmread
from pydicom.dataset import Dataset
from pydicom.sequence import Sequence
from pydicom.valuerep import PersonName

folder = Path(sys.argv[1])
serial = 200


def base(name):
    return dcmread(folder / f"{name}.dcm")


def save(data, name):
    global serial
    serial += 1
    uid = f"2.25.3141592653589793238462643383{serial}"
    data.SOPInstanceUID = uid
    data.file_meta.MediaStorageSOPInstanceUID = uid
    data.save_as(folder / f"{name}.dcm", write_like_original=False)


def named(name, charsets, file):
    data = base("keratometry-both")
    data.SpecificCharacterSet = charsets
    data.PatientName = name
    save(data, file)


named("Yamada^Tarou=山田^太郎=やまだ^たろう", ["", "ISO 2022 IR 87"], "name-japanese")
named("ﾔﾏﾀﾞ^ﾀﾛｳ=山田^太郎=やまだ^たろう", ["ISO 2022 IR 13", "ISO 2022 IR 87"], "name-japanese-katakana")
named("=山田^太郎=", ["", "ISO 2022 IR 87"], "name-japanese-only")
named("Hong^Gildong=洪^吉洞=홍^길동", ["", "ISO 2022 IR 149"], "name-korean")
named("홍^길동", ["", "ISO 2022 IR 149"], "name-korean-only")
named("王^小东", "GB18030", "name-chinese")
# pydicom leaves the escape sequences out here: Latin letters that can be read, then ideographs that cannot.
named("Zhang^XiaoDong=张^小东=", ["", "ISO 2022 IR 58"], "name-chinese-unescaped")
named(PersonName(b"=\x1b$)A\xd5\xc5^\x1b$)A\xd0\xa1\xb6\xab="), ["", "ISO 2022 IR 58"], "name-chinese-2022")
named("Müller^Jörg", "ISO_IR 100", "name-german")
named("Διονυσιος", "ISO_IR 126", "name-greek")
named("Люкceмбypг^Анна", "ISO_IR 144", "name-russian")
named("קבני^סשל", "ISO_IR 138", "name-hebrew")
named("قباني^لنزار", "ISO_IR 127", "name-arabic")
named("สมชาย^ใจดี", "ISO_IR 166", "name-thai")
named("Nuñez^José=王^小东", "ISO_IR 192", "name-unicode")
named("Sample^Child^Marie^Dr^Jr", "ISO_IR 100", "name-five-parts")

# The declared set does not hold the letters: the name cannot be known.
data = base("keratometry-both")
data.SpecificCharacterSet = "ISO_IR 100"
data.PatientName = "Müller^Jörg"
save(data, "name-undeclared")
raw = (folder / "name-undeclared.dcm").read_bytes()
(folder / "name-undeclared.dcm").write_bytes(raw.replace(b"ISO_IR 100", b"ISO_IR 6  "))

# Nothing chosen: the mean of the readings that nobody changed by hand.
data = base("axial-optical-both")
for eye in (data[0x0022, 0x1007].value[0], data[0x0022, 0x1008].value[0]):
    del eye[0x0022, 0x1255]
right = data[0x0022, 0x1007].value[0]
right[0x0022, 0x1050].value[2][0x0022, 0x1210].value[0][0x0022, 0x1140].value = "YES"
save(data, "axial-nothing-chosen")

# The chosen length stands in the chosen item itself.
data = base("axial-optical-both")
for eye in (data[0x0022, 0x1007].value[0], data[0x0022, 0x1008].value[0]):
    eye[0x0022, 0x1255].value = eye[0x0022, 0x1255].value[0][0x0022, 0x1260].value
save(data, "axial-selected-without-total")

# Two chosen lengths that differ, and a length that no eye has.
data = base("axial-optical-both")
right = data[0x0022, 0x1007].value[0]
other = copy.deepcopy(right[0x0022, 0x1255].value[0][0x0022, 0x1260].value[0])
other[0x0022, 0x1019].value = 25.12
right.add_new(0x00221260, "SQ", Sequence([other]))
left = data[0x0022, 0x1008].value[0]
left[0x0022, 0x1255].value[0][0x0022, 0x1260].value[0][0x0022, 0x1019].value = 240.4
save(data, "axial-contradicting")

# Plus cylinder, axis 0, additions, a power of 0 with an axis, a cylinder without one.
data = base("subjective-refraction-both")
right, left = data[0x0046, 0x0097].value[0], data[0x0046, 0x0098].value[0]
right[0x0046, 0x0146].value = -3.0
right[0x0046, 0x0018].value[0][0x0046, 0x0147].value = 0.5
right[0x0046, 0x0018].value[0][0x0022, 0x0009].value = 90
near = Dataset()
near.add_new(0x00460104, "FD", 1.0)
right.add_new(0x00460100, "SQ", Sequence([near]))
left[0x0046, 0x0018].value[0][0x0022, 0x0009].value = 0
save(data, "subjective-plus-cylinder")
data = base("subjective-refraction-both")
right, left = data[0x0046, 0x0097].value[0], data[0x0046, 0x0098].value[0]
right[0x0046, 0x0018].value[0][0x0046, 0x0147].value = 0.0
del left[0x0046, 0x0018].value[0][0x0022, 0x0009]
save(data, "subjective-half-cylinder")

# Acuity: best corrected for near; a kind that is not taken; none said.
for file, code, distance in (
    ("acuity-near-best", ("419775003", "SCT", "Best Corrected Visual Acuity"), "NEAR"),
    ("acuity-pinhole", ("419475002", "SCT", "Pinhole Visual Acuity"), "DISTANCE"),
    ("acuity-old-code", ("F-04D53", "SRT", "Uncorrected Visual Acuity"), "DISTANCE"),
    ("acuity-near-uncorrected", ("420050001", "SCT", "Uncorrected Visual Acuity"), "NEAR"),
):
    data = base("visual-acuity-both")
    item = data[0x0046, 0x0121].value[0]
    item.CodeValue, item.CodingSchemeDesignator, item.CodeMeaning = code
    data[0x0046, 0x0125].value = distance
    save(data, file)

# Glasses with addition and prism, and a lens of no known side.
data = base("lensometry-both")
right = data[0x0046, 0x0014].value[0]
add, prism = Dataset(), Dataset()
add.add_new(0x00460104, "FD", 1.5)
prism.add_new(0x00460030, "FD", 1.5)
prism.add_new(0x00460032, "CS", "IN")
prism.add_new(0x00460034, "FD", 0.5)
prism.add_new(0x00460036, "CS", "UP")
right.add_new(0x00460100, "SQ", Sequence([add]))
right.add_new(0x00460028, "SQ", Sequence([prism]))
data.add_new(0x00460016, "SQ", Sequence([copy.deepcopy(data[0x0046, 0x0015].value[0])]))
save(data, "lensometry-addition-prism")

# Drops by their old codes and in mg/ml.
data = base("axial-optical-right-only-low-quality")
agent = data[0x0022, 0x1007].value[0][0x0022, 0x0058].value[0]
code = agent[0x0022, 0x001C].value[0]
code.CodeValue, code.CodingSchemeDesignator, code.CodeMeaning = "C-677B9", "SRT", "Atropine"
unit = agent[0x0022, 0x0042].value[0]
unit.CodeValue, unit.CodingSchemeDesignator, unit.CodeMeaning = "mg/ml", "UCUM", "mg/ml"
agent[0x0022, 0x004E].value = "5"
save(data, "axial-atropine-mg")

# Days that cannot be: before birth, none, and one that only the study gives.
data = base("keratometry-both")
data.ContentDate = "20160316"
save(data, "date-before-birth")
data = base("keratometry-both")
data.ContentDate = ""
data.StudyDate = ""
save(data, "date-missing")
data = base("keratometry-both")
data.ContentDate = ""
save(data, "date-of-study")

# Classes that are not read.
for file, uid in (
    ("class-lens-calculation", "1.2.840.10008.5.1.4.1.1.78.8"),
    ("class-prescription-report", "1.2.840.10008.5.1.4.1.1.78.6"),
    ("class-photograph", "1.2.840.10008.5.1.4.1.1.77.1.5.1"),
):
    data = base("keratometry-both")
    data.SOPClassUID = uid
    data.file_meta.MediaStorageSOPClassUID = uid
    save(data, file)

# pdf2dcm stamps the moment it ran: fixed, so that the same script gives the same bytes.
data = dcmread(folder / "parent-report.dcm")
data.StudyInstanceUID = "2.25.3141592653589793238462643383001"
data.SeriesInstanceUID = "2.25.3141592653589793238462643383040"
data.ContentDate = data.AcquisitionDateTime = data.StudyDate = data.InstanceCreationDate = "20260316"
data.InstanceCreationTime = "161530"
save(data, "parent-report")
