import type { Colours, EmbeddedPicture } from './embeddedPicture';
import { type PdfObjects, pdfBytes, pdfNumber } from './pdfFile';

/**
 * Writes a picture into a file, once, whatever number of pieces use it.
 *
 * @returns the number of its object
 * @throws where its data are damaged; what is written of it then is used by nothing
 */
export async function writePicture(
  pdf: PdfObjects,
  picture: EmbeddedPicture,
  goOn: (share: number) => void,
): Promise<number> {
  const colours = writeColours(pdf, picture.colours);
  const number = pdf.reserve();
  const mask = picture.hasMask ? pdf.reserve() : null;
  const stream = pdf.begin(
    number,
    [
      imageWords(picture, picture.bits, colours),
      ...(mask === null ? [] : [`/SMask ${mask} 0 R`]),
      ...(picture.clearColour === null ? [] : [`/Mask [${picture.clearColour.join(' ')}]`]),
      packingWords(picture),
    ].join(' '),
  );
  let data: Awaited<ReturnType<EmbeddedPicture['write']>> = null;
  try {
    data = await picture.write(stream.write, goOn);
  } finally {
    // What was begun is ended, so that the file stays sound where the picture is not.
    stream.end();
    if (mask !== null) {
      const bits = data?.bits ?? picture.bits;
      const masks = pdf.begin(
        mask,
        `${imageWords(picture, bits, '/DeviceGray')} ${rowWords(picture.stored.width, 1, bits)}`,
      );
      for (const piece of data?.data ?? []) masks.write(piece);
      masks.end();
    }
  }
  return number;
}

const imageWords = ({ stored }: EmbeddedPicture, bits: number, colours: string): string =>
  `/Type /XObject /Subtype /Image /Width ${stored.width} /Height ${stored.height} /BitsPerComponent ${bits} /ColorSpace ${colours}`;

function packingWords({ packing, stored }: EmbeddedPicture): string {
  switch (packing.kind) {
    case 'jpeg':
      return packing.isPlainRgb
        ? '/Filter /DCTDecode /DecodeParms << /ColorTransform 0 >>'
        : '/Filter /DCTDecode';
    case 'rows':
      return rowWords(stored.width, packing.channels, packing.bits);
    default:
      return packing satisfies never;
  }
}

/** Predictor 15 means the filters of a PNG, a number before each row. */
const rowWords = (columns: number, channels: number, bits: number): string =>
  `/Filter /FlateDecode /DecodeParms << /Predictor 15 /Colors ${channels} /BitsPerComponent ${bits} /Columns ${columns} >>`;

/** @returns the name of the colour space, after writing what it needs. */
function writeColours(pdf: PdfObjects, colours: Colours): string {
  switch (colours.kind) {
    case 'device':
      return device(colours.channels);
    case 'profile': {
      const { channels, profile, isPacked } = colours;
      const number = pdf.reserve();
      const packing = isPacked ? ' /Filter /FlateDecode' : '';
      const stream = pdf.begin(number, `/N ${channels} /Alternate ${device(channels)}${packing}`);
      stream.write(profile);
      stream.end();
      return `[/ICCBased ${number} 0 R]`;
    }
    case 'calibrated': {
      const { channels, gamma, white, matrix } = colours;
      const point = `/WhitePoint [${white.map(pdfNumber).join(' ')}]`;
      const power = pdfNumber(gamma);
      return channels === 1
        ? `[/CalGray << ${point} /Gamma ${power} >>]`
        : `[/CalRGB << ${point} /Gamma [${power} ${power} ${power}] /Matrix [${matrix.map(pdfNumber).join(' ')}] >>]`;
    }
    case 'palette': {
      const { base, entries } = colours;
      const count = Math.floor(entries.length / 3);
      return `[/Indexed ${writeColours(pdf, base)} ${count - 1} ${pdfBytes(entries.subarray(0, count * 3))}]`;
    }
    default:
      return colours satisfies never;
  }
}

const device = (channels: 1 | 3): string => (channels === 1 ? '/DeviceGray' : '/DeviceRGB');
