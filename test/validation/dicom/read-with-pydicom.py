"""What pydicom reads in each object, by the import rule and in the units of the course file: an independent second reader.

Prints one JSON object by file name. Figures are rounded as the import rounds them; nothing is shared with our reader.
"""
import json
import math
import struct
import sys
from pathlib import Path

import pydicom

pydicom.config.settings.reading_validation_mode = pydicom.config.IGNORE
CLASSES = "1.2.840.10008.5.1.4.1.1.78."


def first(data, *tags):
    for group, element in tags:
        if (group, element) not in data or not data[group, element].value:
            return None
        data = data[group, element].value[0]
    return data


def value(data, group, element):
    if data is None or (group, element) not in data:
        return None
    found = data[group, element].value
    # In implicit encoding pydicom hands out what its dictionary does not know as bytes; the vertex distance is a double.
    if isinstance(found, bytes):
        return struct.unpack("<d", found)[0]
    return None if found in ("", None) else found


def powers(eye):
    if eye is None:
        return None
    lens = {"sphere": value(eye, 0x46, 0x146)}
    cylinder = first(eye, (0x46, 0x18))
    if cylinder is not None:
        lens["cylinder"] = value(cylinder, 0x46, 0x147)
        lens["axis"] = value(cylinder, 0x22, 0x09)
    if value(eye, 0x22, 0x0F) is not None:
        lens["vertex"] = value(eye, 0x22, 0x0F)
    return lens


def axial(eye):
    if eye is None:
        return None
    readings = []
    for item in eye[0x22, 0x1050].value:
        total = first(item, (0x22, 0x1210))
        optical = first(total, (0x22, 0x1225))
        ratio = value(optical, 0x22, 0x1155)
        readings.append(
            {
                "mm": round(value(total, 0x22, 0x1019), 2),
                "ratio": None if ratio is None else round(ratio, 1),
                "byHand": value(total, 0x22, 0x1140) == "YES",
            }
        )
    chosen = []
    for tag in ((0x22, 0x1255), (0x22, 0x1230)):
        selected = first(eye, tag)
        if selected is not None:
            total = first(selected, (0x22, 0x1260))
            length = value(total if total is not None else selected, 0x22, 0x1019)
            chosen.append(round(length, 2))
    return {"chosen": chosen[0] if chosen else None, "readings": readings}


def meridian(eye, tag):
    found = first(eye, tag)
    return [value(found, 0x46, element) for element in (0x75, 0x76, 0x77)]


def cornea(eye):
    if eye is None:
        return None
    return {"flat": meridian(eye, (0x46, 0x80)), "steep": meridian(eye, (0x46, 0x74))}


def acuity(eye):
    decimal = value(eye, 0x46, 0x137)
    return None if decimal is None else {"logMAR": round(-math.log10(decimal), 2)}


KINDS = {
    "1": (powers, (0x46, 0x14), (0x46, 0x15)),
    "2": (powers, (0x46, 0x50), (0x46, 0x52)),
    "3": (cornea, (0x46, 0x70), (0x46, 0x71)),
    "4": (powers, (0x46, 0x97), (0x46, 0x98)),
    "5": (acuity, (0x46, 0x122), (0x46, 0x123)),
    "7": (axial, (0x22, 0x1007), (0x22, 0x1008)),
}


def read(path):
    data = pydicom.dcmread(path)
    name = data.PatientName
    spelling = next((part for part in str(name).split("=") if part.strip("^ ")), "")
    # pydicom 2.3.1 leaves the escape sequences of ISO 2022 IR 58 in the text.
    spelling = spelling.replace("\x1b$)A", "")
    family, given, middle = (spelling.split("^") + ["", "", ""])[:3]
    found = {
        "id": str(data.SOPInstanceUID),
        "number": data.PatientID,
        "name": " ".join(part.strip() for part in (given, middle, family) if part.strip()),
        "date": data.get("ContentDate") or data.get("StudyDate") or None,
        "device": " ".join(
            part for part in (data.get("ManufacturerModelName"), data.get("DeviceSerialNumber")) if part
        ),
    }
    kind = str(data.SOPClassUID).removeprefix(CLASSES)
    if kind in KINDS:
        of_eye, right, left = KINDS[kind]
        found["right"] = of_eye(first(data, right))
        found["left"] = of_eye(first(data, left))
    return found


print(json.dumps({Path(file).name: read(file) for file in sys.argv[1:]}, indent=1, ensure_ascii=False))
