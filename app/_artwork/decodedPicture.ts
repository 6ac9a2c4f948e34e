import type { RasterHeader } from '@/lib/picture/pictureHeader';
import type { PictureProblem } from '@/lib/picture/pictureProblem';
import type { PictureSource } from '@/lib/picture/pictureSource';
import type { PixelGrid } from '@/lib/picture/pixelGrid';
import type { Result } from '@/shared/result';

/** The whole picture, small. */
export interface Thumbnail {
  readonly pixels: PixelGrid;
  /** The same, for showing; whoever takes it closes it. */
  readonly bitmap: ImageBitmap | null;
}

/** A picture unpacked, upright, and held until closed. */
export interface DecodedPicture {
  readonly source: PictureSource;
  readonly thumbnail: () => Thumbnail;
  readonly close: () => void;
}

/** How a surrounding unpacks pictures: the browser by its own decoders. */
export interface PictureDecoder {
  readonly decode: (
    bytes: Uint8Array<ArrayBuffer>,
    header: RasterHeader,
  ) => Promise<Result<DecodedPicture, PictureProblem>>;
  /** A drawing that was turned into pixels already. */
  readonly hold: (bitmap: ImageBitmap) => DecodedPicture;
}
