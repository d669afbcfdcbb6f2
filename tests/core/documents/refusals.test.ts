/** A broken document is refused, and the refusal says where. */

import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { aircraftSchema } from '../../../src/core/aircraft/aircraft.schema';
import { fieldSchema } from '../../../src/core/airfield/field.schema';
import { procedureSchema } from '../../../src/core/procedure/procedure.schema';
import { documentFaults } from '../../../src/core/readDocument.schema';
import { demoTexts } from './demo';

type Json = Record<string, unknown>;

/**
 * A change to a sound document: the value at a path replaced, or taken out where it is undefined.
 * The path must lead somewhere already, but for its last step.
 */
function changed(text: string | undefined, path: string, value: unknown): Json {
  const document: Json = JSON.parse(text ?? 'null');
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  let inside: Json = document;
  for (const key of keys) {
    const next = inside[key];
    if (typeof next !== 'object' || next === null) throw new Error(`${path} leads nowhere`);
    inside = next as Json;
  }
  if (value === undefined) delete inside[last];
  else inside[last] = value;
  return document;
}

/**
 * What is wrong with a document: path and message of each issue, or null where it is accepted. The
 * figures behind a fault's code are told apart in problems.test.ts.
 */
function refusal(schema: v.GenericSchema, document: unknown): string[] | null {
  const result = v.safeParse(schema, document);
  if (result.success) return null;
  const bare = (message: string) => message.replace(/(?<=^[a-z-]+)( -?[\d.]+)+$/, '');
  return result.issues.map((issue) => `${v.getDotPath(issue)}: ${bare(issue.message)}`);
}

describe('an airfield', () => {
  const sound = demoTexts('fields').get('XHAR.json');
  const first = '$schema';

  test('is accepted as it is committed', () => {
    expect(refusal(fieldSchema, changed(sound, first, undefined))).toBeNull();
  });

  test.each([
    ['runways.1.ends.0.designator', '10', 'designator-twice'],
    ['runways.0.ends.0.displacedM', 1461, 'threshold-beyond-runway'],
    ['runways.0.ends.1.todaM', 1399, 'toda-below-tora'],
    ['runways.0.ends.1.asdaM', 1399, 'asda-below-tora'],
    ['calmWindEnd', '28L', 'end-unknown'],
    ['taxi.nodes.5.ends.0', '11', 'end-unknown'],
    ['taxi.nodes.1.id', 'r10', 'node-twice'],
    ['taxi.edges.3.to', 'nowhere', 'node-unknown'],
    ['taxi.edges.3.from', 'nowhere', 'node-unknown'],
    ['taxi.edges.3.crosses', '02/20', 'runway-unknown'],
  ])('is refused at %s when that is %j', (path, value, code) => {
    expect(refusal(fieldSchema, changed(sound, path, value))).toContain(`${path}: ${code}`);
  });

  test.each([
    ['runways.0.surface', 'unknown'],
    ['runways.0.declared', false],
    ['runways.0.doubts', ['number']],
    ['runways.0.widthM', undefined],
    ['runways.0.edgeLights', undefined],
    ['runways.0.ends.1.elevationFt', undefined],
    ['taxi.nodes.5.assumed', true],
  ])('with %s as %j is one of version 2 only', (path, value) => {
    const unsaid = changed(sound, path, value);
    expect(refusal(fieldSchema, unsaid)).toContain('version: needs-version-2');
    const second = changed(JSON.stringify(unsaid), 'version', 2);
    expect(refusal(fieldSchema, second)).toBeNull();
  });

  test('may name the crossed runway from either end', () => {
    expect(refusal(fieldSchema, changed(sound, 'taxi.edges.3.crosses', '19/01'))).toBeNull();
  });

  test('is refused where a taxiway leads to where it starts', () => {
    const document = changed(sound, 'taxi.edges.0', {
      from: 's1',
      to: 's1',
      name: 'A',
      on: 'apron',
    });
    expect(refusal(fieldSchema, document)).toEqual(['taxi.edges.0.to: edge-to-itself']);
  });

  test('is refused where the two ends of a runway are not opposite', () => {
    const document = changed(sound, 'runways.0.ends.1.designator', '27');
    expect(refusal(fieldSchema, document)).toContain('runways.0.ends: ends-not-opposite');
  });

  test('is refused where a left end faces another left end', () => {
    const parallels = demoTexts('fields').get('XMAR.json');
    const document = changed(parallels, 'runways.0.ends.1.designator', '23C');
    expect(refusal(fieldSchema, document)).toContain('runways.0.ends: ends-not-opposite');
  });

  test('is refused where both ends of a runway lie at one point', () => {
    const { runways } = changed(sound, first, undefined) as {
      runways: { ends: { at: unknown }[] }[];
    };
    const document = changed(sound, 'runways.0.ends.1.at', runways[0]?.ends[0]?.at);
    expect(refusal(fieldSchema, document)).toEqual(['runways.0.ends: ends-at-one-point']);
  });

  test.each([
    ['version', 3],
    ['lapstrip', 'aircraft'],
    ['code', 'har'],
    ['runways', []],
    ['runways.0.ends.0.at.latDeg', 90.1],
    ['runways.0.ends.0.designator', '37'],
    ['runways.0.surface', 'ice'],
    ['radio.0.mhz', '118,7'],
    ['taxi.nodes.0.xM', '12'],
    ['surprise', true],
  ])('of the wrong shape is refused at %s', (path, value) => {
    const refused = refusal(fieldSchema, changed(sound, path, value));
    expect(refused?.map((line) => line.split(':')[0])).toEqual([path]);
  });
});

describe('an aircraft', () => {
  const sound = demoTexts('aircraft').get('sleet.json');

  test.each([
    ['masses.maxTakeoffKg', 9199, 'out-of-order'],
    ['masses.usualLandingKg', 6349, 'out-of-order'],
    ['taxi.maxKt', 10, 'out-of-order'],
    ['taxi.power.breakaway', 51, 'out-of-order'],
    ['takeoff.liftOffKt', 137, 'out-of-order'],
    ['climb.pitchDeg.1', 11, 'out-of-order'],
    ['limits.crosswindKt.wet', 25, 'limit-grows'],
    ['limits.tailwindKt.contaminated', 9, 'limit-grows'],
    ['climb.flapsUpByKt', 286, 'gate-above-limit'],
    ['climb.gearUpByKt', 256, 'gate-above-limit'],
    ['climb.gearUpByKt', undefined, 'gate-without-limit'],
    ['climb.reheatOffKt', undefined, 'reheat-without-engine'],
  ])('is refused at %s when that is %j', (path, value, code) => {
    expect(refusal(aircraftSchema, changed(sound, path, value))).toEqual([`${path}: ${code}`]);
  });

  test('that is being written is told of all that is wrong, and nothing is worked out beyond its bounds', () => {
    const nothing = { ...changed(sound, 'masses.usualTakeoffKg', 0), lapstrip: 'aircraft' };
    expect(documentFaults(nothing)).toContainEqual({
      path: ['masses', 'usualTakeoffKg'],
      code: 'number-out-of-range',
    });
    const codes = documentFaults(nothing).map(({ code }) => code);
    // What adds up to it, and what physics makes of it, is asked once it is a mass.
    expect(codes).not.toContain('not-usual');
    expect(codes).not.toContain('run-not-of-book');
    const usual = { ...changed(sound, 'masses.usualTakeoffKg', 9000), lapstrip: 'aircraft' };
    expect(documentFaults(usual).map(({ code }) => code)).toContain('not-usual');
  });

  test('with reheat off at a speed is refused when its engine has none', () => {
    const refused = refusal(aircraftSchema, changed(sound, 'engine', 'jet'));
    expect(refused).toEqual(['climb.reheatOffKt: reheat-without-engine']);
  });
});

describe('a procedure', () => {
  const NIGHT = { fact: 'night' };
  const sound = demoTexts('procedures').get('sleet-usual.json');

  test.each([
    ['phases.1.phase', 'ramp', 'phase-twice'],
    ['phases.2.phase', 'roll', 'phase-twice', 3],
    ['phases.0.phase', 'climb', 'phase-out-of-order', 1],
    ['phases.2.steps.1.id', 'seat-pins-out', 'step-twice'],
    ['lists.0.steps.1.id', 'seat-pins-out', 'step-twice'],
    ['phases.0.steps.0.item', 'Seat {pins}', 'live-name-unknown'],
    ['phases.0.steps.0.response', 'for {runway', 'live-name-unknown'],
    ['phases.0.steps.0.note', '{ runway }', 'live-name-unknown'],
    ['phases.4.steps.0.gate', undefined, 'gate-without-speed'],
    ['phases.0.steps.0.gate', 'gearKt', 'speed-without-gate'],
    ['phases.0.steps.0.expectS', 5, 'time-without-wait'],
    ['phases.0.steps.0.gateFt', 200, 'speed-without-gate'],
    ['phases.4.steps.0.gateFt', 200, 'gate-twice'],
    ['phases.0.steps.0.call', 'Ready', 'call-without-say'],
    ['phases.0.steps.0.tiedTo', 'brakes released', 'tied-off-roll'],
    ['phases.2.steps.0.until', 'ramp', 'until-before'],
    ['phases.0.steps.0.needs', 'hook-up', 'needs-in-phase'],
    ['lists.0.steps.0.needs', 'stop-brakes', 'needs-unknown'],
    ['phases.0.steps.0.when', { option: 'tail-wheel' }, 'option-unknown'],
    ['phases.0.steps.0.when', { not: { any: [{ option: 'tail-wheel' }] } }, 'option-unknown'],
    ['lists.1.id', 'rejected-takeoff', 'list-twice'],
    // Where nobody can wait, where nothing is held back, and where nothing stands before it.
    ['phases.4.steps.3.kind', 'barrier', 'barrier-in-motion'],
    ['phases.3.steps.0.kind', 'barrier', 'barrier-in-motion'],
    ['lists.0.steps.0.kind', 'barrier', 'barrier-in-list'],
    ['phases.0.steps.0.kind', 'barrier', 'barrier-first'],
  ])('is refused at %s when that is %j', (path, value, code, elsewhere?: number) => {
    const place = elsewhere === undefined ? path : path.replace(/\d/, String(elsewhere));
    const refused = refusal(procedureSchema, changed(sound, path, value));
    expect(refused).toContain(`${place}: ${code}`);
  });

  test.each(['de', 'gsw', 'pt-BR', 'es-419'])('may be in the language %s', (language) => {
    expect(refusal(procedureSchema, changed(sound, 'language', language))).toBeNull();
  });

  // BCP 47 (RFC 5646), 2.1: a language is of two or three letters, a region of two letters or three
  // digits; 2.1.1 gives the case they are written in.
  test.each(['', 'd', 'deutsch', 'de-', 'de_AT', 'de-at', 'DE', 'de-Latn-AT', 'de-AT ', 7, null])(
    'is refused in a language that no short tag names: %j',
    (language) => {
      const refused = refusal(procedureSchema, changed(sound, 'language', language));
      expect(refused?.map((line) => line.split(':')[0])).toEqual(['language']);
    },
  );

  test('with two options of one name is refused', () => {
    const { options } = changed(sound, '$schema', undefined) as { options: unknown[] };
    const refused = refusal(procedureSchema, changed(sound, 'options.1', options[0]));
    expect(refused).toEqual(['options.1.id: option-twice']);
  });

  // What is chosen is kept by the option's name, and a file with such a name in it is refused.
  test.each(['constructor', 'prototype'])(
    'with an option that nothing can be kept under is refused, in the editor too: %s',
    (id) => {
      const document = changed(sound, 'options.0.id', id);
      const code = 'name-reserved';
      expect(refusal(procedureSchema, document)).toContain(`options.0.id: ${code}`);
      expect(documentFaults({ ...document, lapstrip: 'procedure' })).toContainEqual({
        path: ['options', 0, 'id'],
        code,
      });
    },
  );

  test('with the same abnormal list twice is refused', () => {
    const { lists } = changed(sound, '$schema', undefined) as { lists: unknown[] };
    const refused = refusal(procedureSchema, changed(sound, 'lists.1', lists[0]));
    expect(refused).toContain('lists.1.id: list-twice');
  });

  test.each([
    ['phases.0.steps.0.kind', 'tick'],
    ['phases.0.steps.0.when.fact', { fact: 'raining' }],
    ['phases.0.steps.0.when.all.1.not.fact', { all: [NIGHT, { not: { fact: 'dark' } }] }],
    ['phases.0.steps.0.when.windAboveKt', { windAboveKt: '20' }],
    ['phases.0.steps.0.when', { wind: 20 }],
    ['phases.0.steps.0.when', 'night'],
    ['lists.0.then', 'home'],
    ['lists.0.then.reopen', { phase: 'taxi' }],
    ['phases.0.steps.0.until', 'later'],
    ['phases.4.steps.0.gate', 'runway'],
    ['phases.0.steps.0.id', 'Seat pins'],
    ['phases.0.steps.0.item', '   '],
    ['lists.0.then.phase', 'parking'],
  ])('of the wrong shape is refused at %s', (path, value) => {
    // What stands at the end of the path comes in with the whole condition, or the whole of `then`.
    const given = path.replace(/(?<=\.(when|then))\..*/, (rest) =>
      typeof value === 'object' ? '' : rest,
    );
    const refused = refusal(procedureSchema, changed(sound, given, value));
    expect(refused?.map((line) => line.split(':')[0])).toEqual([path]);
  });

  test('a condition that is none says so, and a fact that is none', () => {
    const when = (value: unknown) =>
      refusal(procedureSchema, changed(sound, 'phases.0.steps.0.when', value));
    expect(when({ fact: 'raining' })).toEqual(['phases.0.steps.0.when.fact: fact-unknown']);
    expect(when({ wind: 20 })).toEqual(['phases.0.steps.0.when: condition-unknown']);
  });

  test('with conditions nested without end is refused, and does not exhaust the reader', () => {
    let when: unknown = NIGHT;
    for (let depth = 0; depth < 20_000; depth++) when = { not: when };
    const refused = refusal(procedureSchema, changed(sound, 'phases.0.steps.0.when', when));
    expect(refused).toHaveLength(1);
    expect(refused?.[0]).toMatch(/when(\.not)+: condition-too-deep/);
  });

  test('with a condition inside a condition is refused where the inner one is wrong', () => {
    const when = { all: [{ fact: 'night' }, { not: { fact: 'dark' } }] };
    const refused = refusal(procedureSchema, changed(sound, 'phases.0.steps.0.when', when));
    expect(refused?.[0]).toContain('phases.0.steps.0.when');
  });
});
