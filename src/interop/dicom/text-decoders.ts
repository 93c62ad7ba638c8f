/** Defined terms (PS3.3 C.12.1.1.2) and the name the platform's decoder has for them. */
const DECODERS: Readonly<Record<string, string>> = {
  "ISO_IR 100": "iso-8859-1",
  "ISO_IR 101": "iso-8859-2",
  "ISO_IR 109": "iso-8859-3",
  "ISO_IR 110": "iso-8859-4",
  "ISO_IR 144": "iso-8859-5",
  "ISO_IR 127": "iso-8859-6",
  "ISO_IR 126": "iso-8859-7",
  "ISO_IR 138": "iso-8859-8",
  "ISO_IR 148": "iso-8859-9",
  "ISO_IR 203": "iso-8859-15",
  "ISO_IR 166": "windows-874",
  "ISO_IR 13": "shift_jis",
  "ISO_IR 192": "utf-8",
  GB18030: "gb18030",
  GBK: "gbk",
  // These two are reached by an escape sequence only.
  "ISO_IR 149": "euc-kr",
  "ISO_IR 58": "gbk",
  // Both two-byte sets of Japanese, as the decoder has them.
  "EUC-JP": "euc-jp",
}

/** Null for a set that is not known, and for bytes that it does not have: a wrong letter in a name is not read. */
export function decodedBy(term: string, bytes: Uint8Array): string | null {
  const label = Object.hasOwn(DECODERS, term) ? DECODERS[term] : undefined
  if (label === undefined) return bytes.every((byte) => byte < 0x80) ? String.fromCharCode(...bytes) : null
  try {
    return new TextDecoder(label, { fatal: true }).decode(bytes)
  } catch {
    return null
  }
}

/** Stands for letters that cannot be read; it is the Unicode character for just that. */
export const UNREADABLE = "\uFFFD"
