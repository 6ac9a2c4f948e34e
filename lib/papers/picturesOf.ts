import type { Paper } from './paper';

/** @returns the pictures of a paper, each once, in the order they are met. */
export const picturesOf = ({ blocks }: Paper): readonly string[] => [
  ...new Set(
    blocks.flatMap((block) => {
      switch (block.kind) {
        case 'head':
          return block.logo ?? [];
        case 'goods':
          return block.goods.flatMap(({ drawings }) =>
            drawings.flatMap(({ prints }) => prints.flatMap(({ picture }) => picture ?? [])),
          );
        case 'presses':
          return block.presses.flatMap(({ drawings, pair }) => [
            ...(pair?.picture == null ? [] : [pair.picture]),
            ...drawings.flatMap(({ prints }) => prints.flatMap(({ picture }) => picture ?? [])),
          ]);
        default:
          return [];
      }
    }),
  ),
];
