import { tearLine } from '@/lib/papers/flowPages';
import type { Block } from '@/lib/papers/paper';
import { drawCards } from './drawCards';
import { drawChoices } from './drawChoices';
import { drawGoods } from './drawGoods';
import { drawHead, drawTitle } from './drawHead';
import { drawBoxed, drawNotes } from './drawNotes';
import { drawPresses } from './drawPresses';
import { drawPriceCards } from './drawPriceCards';
import { drawPrices } from './drawPrices';
import { drawAmount, drawList, drawRuleBlock, drawSign, drawText, signHigh } from './drawSmall';
import { drawStep } from './drawStep';
import { drawTable } from './drawTable';
import { drawTicks } from './drawTicks';
import { gapHigh, type Setting } from './setting';

/**
 * Draws a part of a paper below the last.
 *
 * @param after what follows it: lines to sign on stand with what is signed
 */
export function drawBlock(setting: Setting, block: Block, after: Block | undefined): void {
  const keep = after?.kind === 'sign' ? signHigh(setting, after) : 0;
  switch (block.kind) {
    case 'head':
      drawHead(setting, block);
      break;
    case 'title':
      drawTitle(setting, block);
      break;
    case 'goods':
      tear(setting);
      drawGoods(setting, block);
      tear(setting);
      break;
    case 'table':
      drawTable(setting, block);
      break;
    case 'choices':
      drawChoices(setting, block);
      break;
    case 'notes':
      if (block.isBoxed !== true || !drawBoxed(setting, block.notes)) drawNotes(setting, block.notes, keep);
      break;
    case 'text':
      drawText(setting, block);
      break;
    case 'amount':
      drawAmount(setting, block);
      break;
    case 'ticks':
      drawTicks(setting, block, keep);
      break;
    case 'step':
      drawStep(setting, block, keep);
      break;
    case 'presses':
      drawPresses(setting, block);
      break;
    case 'rule':
      drawRuleBlock(setting, block);
      break;
    case 'sign':
      drawSign(setting, block);
      break;
    case 'cards':
      drawCards(setting, block);
      break;
    case 'prices':
      drawPrices(setting, block);
      break;
    case 'priceCards':
      drawPriceCards(setting, block);
      break;
    case 'list':
      drawList(setting, block);
      break;
    default:
      block satisfies never;
  }
}

function tear(setting: Setting): void {
  const { flow } = setting;
  if (flow.room < 12) return;
  tearLine(flow);
  flow.goTo(flow.y - gapHigh(setting, 7));
}
