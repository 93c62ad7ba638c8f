"""Writes a one-page PDF with invented words, the same bytes every time."""
import sys

objects = [
    b"<< /Type /Catalog /Pages 2 0 R >>",
    b"<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
    b"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 420 595] /Contents 4 0 R "
    b"/Resources << /Font << /F 5 0 R >> >> >>",
]
content = b"BT /F 14 Tf 40 520 Td (Parent report, Sample Child, 16 March 2026) Tj ET"
objects.append(b"<< /Length %d >>\nstream\n%s\nendstream" % (len(content), content))
objects.append(b"<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>")
out = b"%PDF-1.4\n"
places = []
for number, body in enumerate(objects, start=1):
    places.append(len(out))
    out += b"%d 0 obj\n%s\nendobj\n" % (number, body)
start = len(out)
out += b"xref\n0 %d\n0000000000 65535 f \n" % (len(objects) + 1)
out += b"".join(b"%010d 00000 n \n" % place for place in places)
out += b"trailer << /Size %d /Root 1 0 R >>\nstartxref\n%d\n%%%%EOF\n" % (len(objects) + 1, start)
with open(sys.argv[1], "wb") as paper:
    paper.write(out)
