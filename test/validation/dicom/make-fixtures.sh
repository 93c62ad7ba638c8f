#!/usr/bin/env bash
# Builds the DICOM fixtures from the dumps beside this script. All values, names and numbers are invented.
# Needs dcmtk (dump2dcm, dcmconv, pdf2dcm) and python3-pydicom. Run it only to change a fixture: its output is committed.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"
mkdir -p objects fixtures
# Explicit little endian, and the same objects in implicit little endian.
for dump in dumps/*.dump; do
  name="$(basename "$dump" .dump)"
  dump2dcm +te "$dump" "objects/$name.dcm"
  dcmconv +ti "objects/$name.dcm" "objects/$name.implicit.dcm"
done
# Encodings that are refused.
dump2dcm +tb dumps/keratometry-both.dump objects/keratometry-both.big-endian.dcm
dump2dcm +td dumps/keratometry-both.dump objects/keratometry-both.deflated.dcm
# A paper in an object; the paper itself is invented too.
/usr/bin/python3 make-paper.py parent-report.pdf
pdf2dcm +t "Parent report" +pn "Sample^Child" +pi LW-DEMO-0001 +pb 20170905 +ps F parent-report.pdf objects/parent-report.dcm
/usr/bin/python3 make-variants.py objects
# What pydicom reads in every object, for the comparison.
/usr/bin/python3 read-with-pydicom.py objects/*.dcm >fixtures/read-with-pydicom.json
