import { didYouMean, orList } from '../../../kernel/spelling.ts';
import { printTraced, type Traced } from '../../../kernel/traced.ts';
import { pressRoom, strokeNeeded } from '../../../physics/finish.ts';
import type { TrimPressSpec } from '../../../spec/index.ts';
import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';
import { isFedBelow } from '../die/slides.ts';

/** Where the press comes from that no plant file has. */
export const SERIES = 'planning series';

/** The trim press: of the plant, where the plant file lists presses and one is used; else the next size of the planning series. */
export function press(ledger: Ledger): void {
  const force = ledger.value('finish.trim-force');
  const presses = ledger.plant.trimPresses;
  const own = presses !== undefined && isPressed(ledger);
  // That an invented plant has a large press says nothing of what a real one has.
  if (!own || ledger.plant.invented) {
    ledger.look('finish/force', 'press_least', {}, 'finish.press-least');
    ledger.look('finish/force', 'press_greatest', {}, 'finish.press-greatest');
  }
  if (own) ofPlant(ledger, presses);
  else ledger.look('finish/press', 'size', { force }, 'finish.press');
}

/** Whether the planned way of trimming uses a press at all. */
function isPressed(ledger: Ledger): boolean {
  const way = ledger.texts.get('finish.trimming');
  return way === 'trim press' || way === 'sawn, then trimmed';
}

/** The press of the plant on which the shot of this plan is trimmed; undefined where none is known. */
export function plannedPress(ledger: Ledger): TrimPressSpec | undefined {
  if ((ledger.texts.get('finish.press-from') ?? SERIES) === SERIES) return undefined;
  return ledger.plant.trimPresses?.find(({ id }) => id === ledger.texts.get('finish.press-model'));
}

function ofPlant(ledger: Ledger, presses: readonly TrimPressSpec[]): void {
  workNeed(ledger);
  const sorted = [...presses].sort((a, b) => a.force.value - b.force.value || area(a) - area(b));
  const fitting = sorted.find((one) => shortOf(ledger, one) === undefined);
  const named = pinned(ledger, presses);
  const chosen = named ?? fitting ?? nearest(ledger, sorted);
  ledger.setText('finish.press-from', ledger.plant.invented ? 'invented plant' : 'plant');
  ledger.setText('finish.plant-drive', chosen.drive ?? 'not known', { at: chosen.at });
  ledger.put(chosen.force.as('finish.press'));
  ledger.put(chosen.stroke.as('finish.press-stroke'));
  const turned = isTurned(ledger, chosen);
  ledger.put((turned ? chosen.platenY : chosen.platenX).as('finish.press-width', turned ? TURNED : undefined));
  ledger.put((turned ? chosen.platenX : chosen.platenY).as('finish.press-height', turned ? TURNED : undefined));
  recordPress(ledger, sorted, chosen, fitting, named !== undefined);
}

const TURNED = 'the trim die is turned on the platen';

/** What the shot asks of a press besides the force. */
function workNeed(ledger: Ledger): void {
  const rim = ledger.look('finish/press-room', 'rim', {}, 'finish.press-rim');
  const clearance = ledger.look('finish/press-room', 'clearance', {}, 'finish.press-clearance');
  const width = ledger.put(ledger.value('die.field-width').as('finish.shot-width'));
  const field = ledger.value('die.field-height');
  const height = ledger.put(
    isFedBelow(ledger)
      ? sumOf('finish.shot-height', 'Shot on the trim die, upright', 'mm', [field, ledger.value('die.feeder-strip')])
      : field.as('finish.shot-height'),
  );
  ledger.apply(pressRoom, { extent: width, rim }, { id: 'finish.room-width' });
  ledger.apply(pressRoom, { extent: height, rim }, { id: 'finish.room-height' });
  ledger.apply(strokeNeeded, { depth: ledger.value('part.depth'), clearance });
}

const area = ({ platenX, platenY }: TrimPressSpec): number => platenX.value * platenY.value;

/** The shot is turned only where it does not lie on the platen as it comes. */
function isTurned(ledger: Ledger, { platenX, platenY }: TrimPressSpec): boolean {
  const [width, height] = [ledger.value('finish.room-width').value, ledger.value('finish.room-height').value];
  return !(width <= platenX.value && height <= platenY.value) && width <= platenY.value && height <= platenX.value;
}

interface Short {
  readonly what: string;
  readonly needed: Traced;
  readonly has: Traced;
}

/** The first thing that a press has too little of; undefined when it takes the shot. */
function shortOf(ledger: Ledger, one: TrimPressSpec): Short | undefined {
  const turned = isTurned(ledger, one);
  const checks: readonly Short[] = [
    { what: 'closing force', needed: ledger.value('finish.trim-force'), has: one.force },
    { what: 'platen, across', needed: ledger.value('finish.room-width'), has: turned ? one.platenY : one.platenX },
    { what: 'platen, upright', needed: ledger.value('finish.room-height'), has: turned ? one.platenX : one.platenY },
    { what: 'stroke', needed: ledger.value('finish.stroke-needed'), has: one.stroke },
  ];
  return checks.find(({ needed, has }) => needed.value > has.value);
}

/** Where none takes the shot: the strongest, which comes nearest in most cases; its rules say what is missing. */
function nearest(ledger: Ledger, sorted: readonly TrimPressSpec[]): TrimPressSpec {
  const strong = sorted.find(({ force }) => force.value >= ledger.value('finish.trim-force').value);
  const largest = sorted[sorted.length - 1] as TrimPressSpec;
  return strong === undefined
    ? largest
    : ([...sorted].filter(({ force }) => force.value >= strong.force.value).sort((a, b) => area(b) - area(a))[0] ?? largest);
}

function pinned(ledger: Ledger, presses: readonly TrimPressSpec[]): TrimPressSpec | undefined {
  const pin = ledger.pinnedWord('finish.press-model');
  if (pin === undefined) return undefined;
  const found = presses.find(({ id }) => id === pin.text);
  if (found === undefined) {
    const ids = presses.map(({ id }) => id);
    ledger.findings.push({
      code: 'spec/unknown-word',
      severity: 'error',
      message: `the plant has no trim press "${pin.text}"${didYouMean(pin.text, ids)}`,
      at: pin.at,
      fix: `write ${orList(ids.slice(0, 12))}`,
    });
  }
  return found;
}

function recordPress(ledger: Ledger, sorted: readonly TrimPressSpec[], chosen: TrimPressSpec, fitting: TrimPressSpec | undefined, isPinned: boolean): void {
  const because = isPinned
    ? `pinned by the engineer; ${fitting === undefined ? 'no press of the plant takes the shot' : fitting === chosen ? 'it is the smallest that takes the shot' : `the smallest that takes the shot is ${fitting.id}`}`
    : fitting === undefined
      ? 'no press of the plant takes the shot; this one comes nearest'
      : 'the smallest press of the plant that gives the force and takes the shot';
  ledger.record({
    id: 'finish.press-model',
    title: 'Trim press',
    value: chosen.id,
    because,
    kind: isPinned ? 'pinned' : 'search',
    status: 'derived',
    source: ['PLANT'],
    parents: ['finish.trim-force', 'finish.room-width', 'finish.room-height', 'finish.stroke-needed'],
    alternatives: ledger.explains ? sorted.filter((one) => one !== chosen).map((one) => ({ value: one.id, because: whyNot(ledger, one) })) : [],
  });
}

function whyNot(ledger: Ledger, one: TrimPressSpec): string {
  const short = shortOf(ledger, one);
  return short === undefined
    ? `takes the shot, with ${printTraced(one.force)}`
    : `${short.what}: ${printTraced(short.has)}, and the shot asks for ${printTraced(short.needed)}`;
}
