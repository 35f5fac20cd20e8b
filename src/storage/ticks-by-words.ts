/**
 * Ticks of shopping and packing lists as version 2 kept them: by list, shelf, English words of the part and unit, as in
 * `shop:wire-and-rope window line metre`. Since version 3 they are kept by list and the part's id, as in `shop:line window-line`, which no
 * change of wording loses. The words here are those of version 2 and never change.
 */

interface Mark {
  readonly at: number;
}

type Rule = readonly [words: RegExp, id: string];

const conductors: readonly Rule[] = [
  [/[\d.]+ mm (?:foam |PTFE |75 Ω )?coax \(RG-(\w+) size\)/, 'rg-$1'],
  [/([\d.]+) mm flexible low-loss coax/, 'foam-$1mm-flexible'],
  [/([\d.]+) mm low-loss coax/, 'foam-$1mm'],
  [/window line/, 'window-line'],
  [/300 Ω twin lead/, 'twin-lead'],
  [/open-wire line/, 'open-wire'],
  [/bare copper wire, ([\d.]+) mm/, 'copper-$1mm-bare'],
  [/PVC wire, ([\d.]+) mm²/, 'pvc-$1mm2'],
  [/PVC wire, (\d+) AWG/, 'pvc-awg$1'],
  [/(?:thin )?copper-clad steel wire in PE, (\d+) AWG/, 'pe-awg$1-copper-clad'],
  [/PTFE wire, (\d+) AWG/, 'ptfe-awg$1'],
];

const items: readonly Rule[] = [
  [/^coax plug for (\S+)$/, 'coax-plug $1'],
  [/^thin coax to wind: (\S+)$/, 'winding-coax $1'],
  [/^wire to wind: (\S+)$/, 'winding-wire $1'],
  [/^wire: (\S+)$/, 'wire $1'],
  [/^((?:rg|foam|window|twin|open)-\S+)$/, 'line $1'],
  [/^\d+ mm ring, mix \d+ \(FT(\d+)-(\d+)\)$/, 'ring ft$1-$2'],
  [/^capacitor ([\d.]+) pF, .* (\d+) kV or more$/, 'capacitor $1 $2'],
  [/^end insulator, .* (\d+) kV or more$/, 'end-insulator $1'],
  [/^centre insulator .*$/, 'centre-insulator'],
  [/^spacer .*$/, 'spacer'],
  [/^coax socket .*$/, 'coax-socket'],
  [/^wire post .*$/, 'wire-post'],
  [/^weatherproof box .*$/, 'box'],
  [/^(\S+):1 transformer, ready made$/, 'device-transformer $1'],
  [/^1:1 choke, ready made$/, 'device-choke'],
  [/^tuner$/, 'device-tuner'],
  [/^coax lightning arrester$/, 'arrester-coax'],
  [/^arrester for two wires.*$/, 'arrester-open-wire'],
  [/^bonding wire, .*$/, 'bond-wire'],
  [/^clamp to .*$/, 'earth-clamp'],
  [/^resistor 330 .*$/, 'drain-resistor'],
  [/^braided polyester rope, ([\d.]+) mm .*$/, 'rope $1'],
  [/^throw line, .*$/, 'throw-line'],
  [/^throw weight, .*$/, 'throw-weight'],
  [/^weight .*$/, 'end-weight'],
  [/^glass-fibre pole .*$/, 'pole'],
  [/^stake$/, 'stake'],
  [/^bright streamers .*$/, 'streamers'],
  [/^bright tape .*$/, 'marking-tape'],
  [/^self-amalgamating tape$/, 'sealing-tape'],
];

const key = /^(shop|pack):(?:wire-and-rope|electrical|radio|hardware|made) (.*) (?:piece|metre|set|pair|roll)$/;

function keyById(old: string): string {
  const [, list, words] = key.exec(old) ?? [];
  if (list === undefined || words === undefined) return old;
  const text = conductors.reduce((rest, [pattern, id]) => rest.replace(pattern, id), words);
  const rule = items.find(([pattern]) => pattern.test(text));
  return rule === undefined ? old : `${list}:${text.replace(...rule).toLowerCase()}`;
}

/** The same ticks by ids. Of two that meet, the later stands; what nobody knows stays as it is. */
export function ticksById<M extends Mark>(ticks: Readonly<Record<string, M>>): Record<string, M> {
  const marks = new Map<string, M>();
  for (const [old, mark] of Object.entries(ticks)) {
    const by = keyById(old);
    const known = marks.get(by);
    if (known === undefined || known.at < mark.at) marks.set(by, mark);
  }
  return Object.fromEntries(marks);
}
