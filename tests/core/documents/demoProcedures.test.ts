/** What the demo procedures promise, and how their words follow the published guidance. */

import { describe, expect, test } from 'vitest';
import { languageOf } from '../../../src/core/language';
import { factsIn } from '../../../src/core/procedure/condition';
import { CONDITION_FACTS } from '../../../src/core/procedure/conditionFacts';
import { groupOf, type ListGroup } from '../../../src/core/procedure/listGroup';
import { PHASES } from '../../../src/core/procedure/phases';
import type { Procedure, Step } from '../../../src/core/procedure/procedure';
import { allSteps, demoAircraft, demoProcedures, stepsOf } from './demo';

const each = demoProcedures.map((procedure) => [procedure.code, procedure] as const);
const inEnglish = each.filter(([, procedure]) => languageOf(procedure) === 'en');

/** The longest that live numbers get in the demo's story. */
const LONGEST: Readonly<Record<string, string>> = {
  runway: '23R',
  runwayMagnetic: '280',
  wind: '270° 12 gust 20',
  callsign: 'Tallow one two',
  field: 'Harrow Sound',
  ground: 'Marram ground',
  tower: 'Marram tower',
  crossing: '05R/23L',
  keepRolling: '850–1000',
  breakaway: '1300',
  climbKt: '345–375',
  climbPitch: '13–17',
};
const filled = (text: string) => text.replace(/\{(\w+)\}/g, (_, name) => LONGEST[name] ?? '165');

const aircraftOf = ({ aircraft }: Procedure) => {
  const found = demoAircraft.find(({ code }) => code === aircraft);
  if (found === undefined) throw new Error(`there is no demo aircraft ${aircraft}`);
  return found;
};

const ids = (steps: readonly Step[]) => steps.map(({ id }) => id);

/** What an aircraft is, as far as its lists depend on it. */
function classOf(procedure: Procedure): keyof typeof OF_ITS_CLASS {
  const { engine, performance } = aircraftOf(procedure);
  if (engine === 'piston') return 'piston';
  return performance?.oneEngineOut === undefined ? 'single jet' : 'twin jet';
}

/**
 * The lists of each class of aircraft, and the order of what they must say; common practice, no
 * published source.
 */
const OF_ITS_CLASS: Readonly<
  Record<
    'single jet' | 'twin jet' | 'piston',
    {
      readonly emergencies: readonly string[];
      readonly malfunctions: readonly string[];
      readonly inOrder: Readonly<Record<string, readonly string[]>>;
    }
  >
> = {
  'single jet': {
    emergencies: ['engine-fails', 'flame-out'],
    malfunctions: ['hydraulics-fail', 'generator-fails'],
    inOrder: {
      'rejected-takeoff': ['stop-throttle', 'stop-chute', 'stop-brakes', 'stop-hook'],
      'engine-fails': [
        'fails-nose',
        'fails-stores',
        'fails-throttle',
        'fails-relight',
        'fails-eject',
      ],
    },
  },
  'twin jet': {
    emergencies: ['engine-out', 'relight', 'one-engine-landing'],
    malfunctions: ['hydraulics-fail', 'generator-fails'],
    inOrder: {
      'engine-fire-flight': [
        'aloft-speed',
        'aloft-which',
        'aloft-throttle',
        'aloft-cock',
        'aloft-bottle',
      ],
    },
  },
  piston: {
    emergencies: ['engine-low', 'engine-high'],
    malfunctions: ['engine-rough', 'alternator-fails', 'icing'],
    inOrder: {
      'engine-low': [
        'low-nose',
        'low-ahead',
        'low-mixture',
        'low-tap',
        'low-magnetos',
        'low-flaps',
        'low-master',
      ],
      'engine-high': [
        'high-glide',
        'high-field',
        'high-air',
        'high-tap',
        'high-pump',
        'high-mixture',
        'high-magnetos',
        'high-call',
      ],
    },
  },
};

describe.each(each)('%s', (_, procedure) => {
  const steps = allSteps(procedure);

  test('has every phase', () => {
    expect(procedure.phases.map(({ phase }) => phase)).toEqual([...PHASES]);
  });

  // Common practice, no published source: whoever says "ready" has nothing left to do.
  test('briefs the take-off, sets the transponder, checks for the runway, and only then calls ready', () => {
    expect(ids(stepsOf(procedure, 'taxi').slice(-5))).toEqual([
      'take-off-brief',
      'transponder',
      'before-runway',
      'ready-call-tower',
      'ready-call-traffic',
    ]);
    expect(steps.filter(({ kind }) => kind === 'barrier').map(({ id }) => id)).toEqual([
      'before-runway',
    ]);
  });

  // Common practice, no published source: a controller's words are heard and read back; without one,
  // the pilot looks and tells the traffic.
  test('lines up and takes off on what was heard and read back, or on a clear approach and a call', () => {
    const lineUp = stepsOf(procedure, 'line-up');
    expect(ids(lineUp.slice(0, 2))).toEqual(['line-up-heard', 'line-up-traffic']);
    const power = lineUp.findIndex(({ id }) => id === 'power-up');
    expect(ids(lineUp.slice(power - 2, power))).toEqual(['take-off-heard', 'take-off-traffic']);
    const calls = lineUp.filter(({ id }) => /^(line-up|take-off)-(heard|traffic)$/.test(id));
    const controlled = { fact: 'controlled' };
    expect(calls.map(({ when }) => when)).toEqual([
      controlled,
      { not: controlled },
      controlled,
      { not: controlled },
    ]);
    expect(calls.filter(({ critical }) => !critical)).toEqual([]);
    const isGerman = languageOf(procedure) === 'de';
    const [heard, made] = isGerman
      ? ['gehört, zurückgelesen', 'Anflug leer, gemeldet']
      : ['heard, read back', 'approach clear, call made'];
    expect(calls.map(({ response }) => response)).toEqual([heard, made, heard, made]);
  });

  test('crosses a runway on a word read back, or without one after a look both ways and a call', () => {
    const crossings = stepsOf(procedure, 'taxi').filter(
      ({ when }) => when !== undefined && factsIn(when).includes('crossesRunway'),
    );
    expect(ids(crossings)).toEqual(['crossing', 'crossing-traffic']);
    expect(crossings.filter(({ critical }) => !critical)).toEqual([]);
    // Named, so that each crossing of a route is due by itself, as it comes.
    for (const { item, response, note = '' } of crossings) {
      expect(item).toContain('{crossing}');
      const words = `${response} ${note}`.toLowerCase();
      expect(words).toMatch(/both ways|one looks left|davor halten|beidseits|einer .*links/);
      expect(words).toMatch(/lights on|lichter an/);
    }
  });

  test('waits for two indications in turn, last of all before the roll', () => {
    const kinds = stepsOf(procedure, 'line-up').map(({ kind }) => kind);
    expect(kinds.slice(-3)).toEqual(['do', 'wait', 'wait']);
    expect(steps.filter((step) => step.kind === 'wait' && !step.expectS)).toEqual([]);
  });

  test('ties one step to brake release, and asks for nothing else on the roll', () => {
    expect(stepsOf(procedure, 'roll').map(({ tiedTo }) => tiedTo)).toEqual(['brakes released']);
  });

  test('has a climb gate for each speed that its aircraft has, in the order they come', () => {
    const { climb, limits } = aircraftOf(procedure);
    const speeds = [
      climb.gearUpByKt === undefined ? [] : ['gearKt'],
      ['flapsKt'],
      climb.reheatOffKt === undefined ? [] : ['reheatOffKt'],
      ['climbKt'],
    ].flat();
    const gates = stepsOf(procedure, 'climb').flatMap(({ gate }) => gate ?? []);
    expect(gates).toEqual(speeds);
    const named = new Set(steps.flatMap(({ item, response, note = '' }) => item + response + note));
    if (limits.gearKt === undefined) expect([...named].join()).not.toContain('{gearKt}');
  });

  test('is due again before the line-up is over where it depends on the runway', () => {
    const told = [...stepsOf(procedure, 'ramp'), ...stepsOf(procedure, 'taxi')].filter(
      ({ response, note = '' }) => /\{runway/.test(response + note),
    );
    expect(told.length).toBeGreaterThanOrEqual(5);
    expect(told.filter(({ until }) => until !== 'line-up')).toEqual([]);
  });

  test('compares the heading with the runway before anything else on it', () => {
    const first = stepsOf(procedure, 'line-up').find(({ id }) => !id.startsWith('line-up-'));
    expect(first?.response).toContain('{runwayMagnetic}');
    expect(first?.critical).toBe(true);
  });

  test('says every call either to someone who controls or to the traffic', () => {
    const calls = steps.filter(({ kind, when }) => kind === 'say' && when !== undefined);
    const half = (negated: boolean) =>
      calls.filter(({ when }) => when !== undefined && 'not' in when === negated);
    expect(half(true).length).toBe(half(false).length);
    expect(calls.every(({ when }) => when && factsIn(when).join() === 'controlled')).toBe(true);
  });

  // Common practice, no published source: the stand by default, and no parking brake on hot brakes.
  test('goes to the stand after a rejected take-off, on chocks', () => {
    const [list] = procedure.lists;
    expect(list?.id).toBe('rejected-takeoff');
    expect(list?.then).toEqual({ phase: 'after', reopen: [] });
    const { response, note = '' } = list?.steps.at(-1) ?? { response: '' };
    expect(response).toMatch(/chocks in|Klötze liegen/);
    expect(note).toMatch(/never park on hot brakes|heiße Bremsen nie parken/);
  });

  test('tries again only with the cause, cool brakes, tyres and new numbers, from the ramp', () => {
    const list = procedure.lists.find(({ id }) => id === 'another-try');
    const asked = ids(list?.steps ?? []);
    expect(asked).toEqual(
      expect.arrayContaining(['stop-cause', 'stop-brake-heat', 'stop-tyres', 'try-numbers']),
    );
    expect(list?.steps.find(({ id }) => id === 'stop-brake-heat')?.kind).toBe('wait');
    expect(list?.then).toEqual({
      phase: 'ramp',
      reopen: ['ramp', 'taxi', 'line-up', 'roll', 'after'],
    });
  });

  // Common practice, no published source: on the roll a reheat that fails is a reason to stop.
  test('offers no list on the roll but the one for stopping', () => {
    const rolling = procedure.lists.filter(({ phases = [] }) => phases.includes('roll'));
    expect(rolling.map(({ id }) => id)).toEqual(['rejected-takeoff']);
  });

  // Common practice, no published source: nobody holds a key down while stopping on a runway.
  test('holds no key down while the aircraft is being stopped', () => {
    const { stop } = aircraftOf(procedure);
    const list = procedure.lists[0]?.steps ?? [];
    expect(list.slice(0, stop.length).filter(({ critical }) => critical)).toEqual([]);
  });

  // A. Degani and E. L. Wiener, The Normal Checklist, NASA CR-177549 (1990): the response is the
  // state or value, and "set", "check" or "completed" say nothing.
  test('answers with a state, never with a bare "checked", "set" or "completed"', () => {
    const bare = steps.filter(({ response }) =>
      /checked|completed|^(set|check|ok|gesetzt|gestellt)$|geprüft|kontrolliert|erledigt/i.test(
        response,
      ),
    );
    expect(ids(bare)).toEqual([]);
  });

  // The same report: the most critical items first, as far as the order of things allows it.
  test('puts the critical items of the ramp and the line-up first', () => {
    for (const phase of ['ramp', 'line-up']) {
      // The take-off clearance comes when it comes.
      const set = stepsOf(procedure, phase).filter(
        ({ id, kind }) => kind !== 'wait' && !id.startsWith('take-off-'),
      );
      const firstOther = set.findIndex(({ critical }) => !critical);
      expect(ids(set.slice(firstOther).filter(({ critical }) => critical))).toEqual([]);
    }
  });

  // UK CAA CAP 676, Guidelines for the Design and Presentation of Emergency and Abnormal Checklists:
  // every list has a title, is short enough to be found through, and says where it ends (value from
  // memory). The number of steps is common practice, no published source.
  test('has a list for what can go wrong with its aircraft, each short and with an end', () => {
    const { engine, limits } = aircraftOf(procedure);
    const emergencies = [
      'rejected-takeoff',
      'engine-fire-ground',
      'engine-fire-flight',
      'smoke',
      ...OF_ITS_CLASS[classOf(procedure)].emergencies,
    ];
    const malfunctions = [
      'another-try',
      ...(engine === 'jet with reheat' ? ['reheat-fails'] : []),
      ...(limits.gearKt === undefined ? [] : ['gear-unsafe']),
      'limit-light',
      ...OF_ITS_CLASS[classOf(procedure)].malfunctions,
    ];
    const inGroup = (group: ListGroup) =>
      procedure.lists.filter((list) => groupOf(list) === group).map(({ id }) => id);
    expect(inGroup('emergency').sort()).toEqual(emergencies.sort());
    expect(inGroup('malfunction').sort()).toEqual(malfunctions.sort());
    expect(inGroup('go-around')).toEqual(['go-around']);
    for (const { steps: inList, title } of procedure.lists) {
      expect(title.length).toBeLessThanOrEqual(32);
      expect(inList.length).toBeGreaterThanOrEqual(4);
      expect(inList.length).toBeLessThanOrEqual(8);
    }
  });

  test('says in each list what it is for', () => {
    const said = Object.fromEntries(
      procedure.lists.map(({ id, steps: inList }) => [id, ids(inList)]),
    );
    for (const [list, asked] of Object.entries(OF_ITS_CLASS[classOf(procedure)].inOrder)) {
      const there = (said[list] ?? []).filter((id) => asked.includes(id));
      expect(there, list).toEqual(asked);
    }
  });

  // Common practice, no published source: one pulls a lever back only after both have named it.
  if (classOf(procedure) === 'twin jet') {
    test('shuts nothing down below 400 ft, or before both agree', () => {
      for (const [id, shut] of [
        ['engine-out', 'out-shut'],
        ['engine-fire-flight', 'aloft-throttle'],
      ]) {
        const inList = procedure.lists.find((list) => list.id === id)?.steps ?? [];
        const place = inList.findIndex((step) => step.id === shut);
        const before = inList.slice(0, place);
        expect(before.map(({ gateFt }) => gateFt)).toContain(400);
        expect(before.at(-1)).toMatchObject({ kind: 'check', critical: true });
        expect(before.at(-1)?.response).toMatch(/both say the same|beide sagen dasselbe/);
      }
    });
  }

  // Lycoming Flyer, Key Reprints (value from memory): lean starves an engine slowly or not at all,
  // cut-off stops it.
  if (classOf(procedure) === 'piston') {
    test('stops the engine by cut-off, never by a lean mixture', () => {
      const mixtures = steps.filter(({ item }) => /^(Mixture|Gemisch)$/.test(item));
      expect(mixtures.length).toBeGreaterThanOrEqual(6);
      for (const { response } of mixtures) {
        expect(response).toMatch(/^(rich|cut-off|reich|Schnellstopp)/);
      }
    });
  }

  test('asks for the fuel again until the line-up, whenever the load changes', () => {
    const shown = procedure.phases
      .filter(({ phase }) => phase === 'ramp')
      .flatMap((part) => part.steps)
      .filter(({ response }) => response.includes('{fuelKg}'));
    for (const { until } of shown) expect(until).toBe('line-up');
    expect(shown.length).toBe(classOf(procedure) === 'piston' ? 0 : 1);
  });

  test('names panel items as panels do', () => {
    const texts = [
      ...procedure.lists.map(({ title }) => title),
      ...steps.flatMap(({ item, response, note = '', call = '' }) => [item, response, note, call]),
    ];
    const others = /\blamps?\b|skid guard|wheel slip|held back|gleitschutz|zurückgestellt/i;
    expect(texts.filter((text) => others.test(text))).toEqual([]);
  });

  test('ends a fire on the ground for good, and leads from a go-around to the next approach', () => {
    const then = (id: string) => procedure.lists.find((list) => list.id === id)?.then;
    expect(then('engine-fire-ground')).toBe('end');
    expect(then('go-around')).toEqual({ phase: 'recovery', reopen: ['recovery'] });
  });

  // CAP 676: what must be done at once comes first (value from memory).
  test('begins each list with something to be done, not with something to be read', () => {
    const first = procedure.lists.map(({ steps: inList }) => inList[0]?.kind);
    expect(first.filter((kind) => kind === 'say' || kind === 'note')).toEqual([]);
  });

  // The app's own rule: nothing here may sound like a clearance or a promise.
  test('never says "safe", "cleared" or "any traffic", in either language', () => {
    const words = JSON.stringify(procedure).toLowerCase();
    // The one that is waited for has the trade's name.
    const others = words.replace(/"item":"(take-off clearance|startfreigabe)"/g, '');
    expect(others).not.toMatch(/\bsafe|\bcleared|\bclearance|any traffic/);
    expect(others).not.toMatch(/\bsicher|freigabe|freigegeben|piste frei/);
  });

  test('fits a phone in large type, live numbers filled in', () => {
    const long = steps.flatMap(({ id, item, response, note = '', call = '' }) => [
      ...(filled(item).length > 24 ? [`${id}: ${filled(item)}`] : []),
      ...(filled(response).length > 28 ? [`${id}: ${filled(response)}`] : []),
      ...(filled(note).length > 70 ? [`${id}: ${filled(note)}`] : []),
      ...(filled(call).length > 90 ? [`${id}: ${filled(call)}`] : []),
    ]);
    expect(long).toEqual([]);
  });
});

// What the aircraft says to do to stop is English in every language.
describe.each(inEnglish)('%s', (_, procedure) => {
  test('begins the stopping list with what the aircraft says to do to stop, in that order', () => {
    const { stop } = aircraftOf(procedure);
    const list = procedure.lists[0]?.steps ?? [];
    const firstWords = (text: string) => text.toLowerCase().split(' ')[0];
    expect(list.slice(0, stop.length).map(({ item }) => firstWords(item))).toEqual(
      stop.map(firstWords),
    );
  });
});

describe('the demo procedures together', () => {
  test.each(['en', 'de'])('are one for each aircraft in the language %s', (language) => {
    const flown = demoProcedures
      .filter((procedure) => languageOf(procedure) === language)
      .map(({ aircraft }) => aircraft);
    expect(flown.sort()).toEqual(demoAircraft.map(({ code }) => code).sort());
  });

  test('ask for every fact that a condition can ask for', () => {
    const asked = demoProcedures
      .flatMap(allSteps)
      .flatMap(({ when }) => (when === undefined ? [] : factsIn(when)));
    expect([...new Set(asked)].sort()).toEqual([...CONDITION_FACTS, 'options', 'windKt'].sort());
  });

  test('hold every kind of step', () => {
    const kinds = new Set(demoProcedures.flatMap(allSteps).map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual(['barrier', 'check', 'do', 'gate', 'note', 'say', 'wait']);
  });
});
