import { expect, it } from 'vitest';
import type { Choice } from '@/lib/copies/arrival';
import { aStoredJob } from '@/tests/lib/stored/smallRegistry';
import { smallKinds } from './copyTools';
import { edited, emptyDevice, holding, leave, look, type ModelDevice, take } from './modelDevice';

/* Two devices that carry one job to and fro. What each holds is told by how many shirts it says. */

const ID = 'job-1';
const job = (quantity: number) =>
  aStoredJob({ id: ID, body: { name: 'Order', lines: [{ id: 'shirts', quantity }] } });
const bodyOf = (quantity: number) => () => job(quantity).body;

const laptopWith = (quantity: number) => holding(emptyDevice('laptop00', 'K'), { drafts: [job(quantity)] });
const phone = () => emptyDevice('phone000', 'M');
const carried = (from: ModelDevice) => leave(from, { kind: 'job', id: ID }, smallKinds);

async function meetingOf(device: ModelDevice, bytes: Uint8Array) {
  const { plan } = await look(device, bytes, smallKinds);
  const { state, choices } = plan.meetings.find(({ id }) => id === ID) ?? {};
  return { state, offered: choices?.[0] };
}

const takes = async (device: ModelDevice, bytes: Uint8Array, choice?: Choice): Promise<ModelDevice> =>
  (
    await take(
      device,
      bytes,
      { mode: 'beside', ...(choice === undefined ? {} : { choices: { [ID]: choice } }) },
      smallKinds,
    )
  ).device;

/** The laptop says 30 and the phone 31, both from 20; what the laptop sent stands here as bytes. */
async function bothChanged() {
  const first = await carried(laptopWith(20));
  const onPhone = edited(await takes(phone(), first.bytes), ID, bodyOf(31), 3000);
  const sent = await carried(edited(first.device, ID, bodyOf(30), 2000));
  return { laptop: sent.device, onPhone, sent: sent.bytes };
}

it('what was kept beside its other is no later version of it: the device it came from weighs the two as well', async () => {
  const { laptop, onPhone, sent } = await bothChanged();
  expect(await meetingOf(onPhone, sent)).toEqual({ state: 'clash', offered: 'both' });
  const back = await carried(await takes(onPhone, sent, 'both'));
  expect(await meetingOf(laptop, back.bytes)).toEqual({ state: 'clash', offered: 'both' });
});

it('what is kept beside already is offered in no other way again', async () => {
  const { onPhone, sent } = await bothChanged();
  const withBoth = await takes(onPhone, sent, 'both');
  expect(await meetingOf(withBoth, sent)).toEqual({ state: 'doubled', offered: 'mine' });
});

it('what was weighed and left is a version before the one that stayed', async () => {
  const { laptop, onPhone, sent } = await bothChanged();
  const back = await carried(await takes(onPhone, sent, 'mine'));
  expect(await meetingOf(laptop, back.bytes)).toEqual({ state: 'newerThere', offered: 'theirs' });
});

it('what was set back after it went out is a change of its own', async () => {
  // 20 and 30 went to the phone; the laptop takes the 30 back, the phone goes on to 31.
  const first = await carried(laptopWith(20));
  const second = await carried(edited(first.device, ID, bodyOf(30), 2000));
  const onPhone = edited(await takes(await takes(phone(), first.bytes), second.bytes), ID, bodyOf(31), 3000);
  const setBack = edited(second.device, ID, bodyOf(20), 4000);
  const sent = await carried(onPhone);
  expect(await meetingOf(setBack, sent.bytes)).toEqual({ state: 'clash', offered: 'both' });
  const other = await carried(setBack);
  expect(await meetingOf(onPhone, other.bytes)).toEqual({ state: 'clash', offered: 'both' });
});

it('an old copy that is looked at and left changes nothing of what comes from what', async () => {
  const first = await carried(laptopWith(20));
  const second = await carried(edited(first.device, ID, bodyOf(30), 2000));
  const onPhone = await takes(await takes(phone(), first.bytes), second.bytes);
  const later = await carried(edited(onPhone, ID, bodyOf(31), 3000));
  const looked = await takes(second.device, first.bytes, 'mine');
  expect(await meetingOf(looked, first.bytes)).toEqual({ state: 'newerHere', offered: 'mine' });
  expect(await meetingOf(looked, later.bytes)).toEqual({ state: 'newerThere', offered: 'theirs' });
});

it('what an old copy gives back is what goes on from there', async () => {
  const first = await carried(laptopWith(20));
  const second = await carried(edited(first.device, ID, bodyOf(30), 2000));
  const onPhone = await takes(await takes(phone(), first.bytes), second.bytes);
  const givenBack = await carried(await takes(second.device, first.bytes, 'theirs'));
  // The phone still says 30, from which 20 was set back.
  expect(await meetingOf(onPhone, givenBack.bytes)).toEqual({ state: 'newerThere', offered: 'theirs' });
});
