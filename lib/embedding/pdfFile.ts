/** Takes the objects of a file as the format writes them. */
export interface PdfObjects {
  /** @returns the number of an object that is written later; each has to be. */
  readonly reserve: () => number;
  /** @param body as the format writes it */
  readonly object: (number: number, body: string) => void;
  /** Begins a stream whose length is known once it ends; nothing else may be written before. */
  readonly begin: (number: number, dictionary: string) => PdfStream;
}

/** Writes a PDF object by object, so that no more than one has to be in memory (ISO 32000-1, section 7.5). */
export interface PdfFile extends PdfObjects {
  readonly end: (root: number, info: number) => void;
}

interface PdfStream {
  readonly write: (bytes: Uint8Array) => void;
  readonly end: () => void;
}

const encoder = new TextEncoder();

/** @param sink takes the file from its first byte to its last */
export function pdfFile(sink: (bytes: Uint8Array) => void): PdfFile {
  /** Where each object begins; objects are counted from 1. */
  const places: number[] = [];
  let written = 0;
  const put = (bytes: Uint8Array) => {
    written += bytes.length;
    sink(bytes);
  };
  const say = (text: string) => put(encoder.encode(text));
  // Four bytes above 127 in a comment tell programs that the file is no text.
  say('%PDF-1.7\n');
  put(new Uint8Array([0x25, 0xe2, 0xe3, 0xcf, 0xd3, 0x0a]));

  const reserve = () => places.push(0);
  const open = (number: number) => {
    places[number - 1] = written;
    say(`${number} 0 obj\n`);
  };
  const object = (number: number, body: string) => {
    open(number);
    say(`${body}\nendobj\n`);
  };

  return {
    reserve,
    object,
    begin(number, dictionary) {
      const length = reserve();
      open(number);
      say(`<< ${dictionary} /Length ${length} 0 R >>\nstream\n`);
      const from = written;
      return {
        write: put,
        end() {
          const bytes = written - from;
          say('\nendstream\nendobj\n');
          object(length, String(bytes));
        },
      };
    },
    end(root, info) {
      const from = written;
      const rows = places.map((place) => `${String(place).padStart(10, '0')} 00000 n \n`).join('');
      say(`xref\n0 ${places.length + 1}\n0000000000 65535 f \n${rows}`);
      say(`trailer\n<< /Size ${places.length + 1} /Root ${root} 0 R /Info ${info} 0 R >>\n`);
      say(`startxref\n${from}\n%%EOF\n`);
    },
  };
}

/** A number as the format has it: never with an exponent, six digits behind the point. */
export const pdfNumber = (value: number): string =>
  Number.isInteger(value) ? String(value) : value.toFixed(6).replace(/\.?0+$/, '');

/** A text in any script: UTF-16 in hexadecimal, which nothing in it can end. */
export function pdfText(text: string): string {
  let digits = 'FEFF';
  for (let at = 0; at < text.length; at += 1) digits += hex(text.charCodeAt(at), 4);
  return `<${digits}>`;
}

/** Bytes in hexadecimal. */
export const pdfBytes = (bytes: Uint8Array): string =>
  `<${Array.from(bytes, (byte) => hex(byte, 2)).join('')}>`;

const hex = (value: number, digits: number): string => value.toString(16).toUpperCase().padStart(digits, '0');
