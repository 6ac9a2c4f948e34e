import { type Say, saying } from './sayings';

/** Words of the findings about quantities and sizes. */
export const quantityWords = {
  'QTY-01': ({ name, figure, formatter }) =>
    saying(
      `${name('line')}: the sizes add up to ${formatter.number(figure('total'))}, the order says ${formatter.number(figure('ordered'))}.`,
      'Somebody will get no piece, or one nobody asked for. Ask the customer which is right, and change the sizes or the sum.',
    ),
  'QTY-02': ({ finding, name, figure, formatter }) => {
    switch (finding.variant) {
      case 'fraction':
        return saying(
          `${name('line')}: size ${name('size')} asks for ${formatter.number(figure('quantity'), 6)} pieces.`,
          'Only whole pieces can be pressed, and all sums count them. Enter a whole number.',
        );
      case 'none':
        return saying(
          `${name('line')} has no pieces.`,
          'With nothing to make there is nothing to cost. Enter how many of each size, or take the line out.',
        );
      default:
        return saying(
          `${name('line')} has ${formatter.number(figure('total'))} pieces.`,
          `That is more than ${formatter.number(figure('most'))}, weeks of pressing on one machine. Check the figure; if it is meant, go on.`,
        );
    }
  },
  'QTY-04': ({ finding, name }) => {
    switch (finding.variant) {
      case 'noBlank':
        return saying(
          `${name('blank')} does not come in size ${name('size')}.`,
          `It cannot be bought or costed. It comes in ${name('sizes')}: move the pieces to one of these, or add the size to the blank.`,
        );
      case 'strayCharge':
        return saying(
          `${name('line')} has an up-charge for size ${name('size')}, which ${name('blank')} does not come in.`,
          'It is added to no price. Take it out, or name the size it was meant for.',
        );
      case 'noPrice':
        return saying(
          `There is no price for ${name('blank')} in size ${name('size')}.`,
          'These pieces cannot be costed, and nothing is taken for free. Enter what you pay for one.',
        );
      default:
        return saying(
          `${name('placement')} has no print size for size ${name('size')}.`,
          'Sheets and ink of these pieces cannot be counted. Give the size a print, or let one print serve all sizes.',
        );
    }
  },
  'QTY-08': ({ name, figure, formatter }) =>
    saying(
      `${name('blank')} in size ${name('size')} comes in packs of ${formatter.number(figure('pack'), 0)}.`,
      `For ${formatter.number(figure('needed'), 0)} you buy ${formatter.number(figure('buy'), 0)}; ${formatter.number(figure('left'), 0)} worth ${formatter.money(figure('worth'))} stay on the shelf. They are not in this job's cost.`,
    ),
} satisfies Record<string, Say>;
