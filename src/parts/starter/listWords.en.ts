/** The lists of a new procedure, by kind of cockpit: in the words of any panel, to be made one's own. */

import type { KindWords, ListWords } from '../../core';

const anotherTry: ListWords = {
  title: 'Another try after a stop',
  steps: [
    ['Cause', 'found and put right'],
    ['Brakes', 'cool'],
    ['Tyres', 'round, no flat spot'],
    ['Numbers', 'new: {massKg} kg'],
  ],
};

const gearUnsafe: ListWords = {
  title: 'Gear not locked',
  steps: [
    ['Speed', 'below the gear limit'],
    ['Gear lever', 'up, count five, down'],
    ['Gear lights', 'three green'],
    ['Emergency gear', 'down, as the handbook says'],
    ['Radio', 'ask for a look from below'],
    ['Belts', 'locked, tight'],
  ],
};

const generator = (name: string): ListWords => ({
  title: `${name} light in flight`,
  steps: [
    [name, 'off, count three, on'],
    ['Its light', 'out'],
    [name, 'off, light still on'],
    ['Lights and radios', 'all but one radio off'],
    ['Landing', 'soon, at a field in reach'],
  ],
});

const pistonSmoke: ListWords = {
  title: 'Electrical smoke',
  steps: [
    ['Master switch', 'off'],
    ['Cabin heat', 'shut'],
    ['Extinguisher', 'at the flame, short bursts'],
    ['Windows and vents', 'open, fire out'],
    ['Switches', 'all off'],
    ['Master and one radio', 'on, to land only'],
    ['Radio', 'smoke, landing'],
  ],
};

const jetSmoke: ListWords = {
  title: 'Smoke in the cockpit',
  steps: [
    ['Oxygen', 'pure, mask tight'],
    ['Cabin air', 'shut, ram air open'],
    ['Generator', 'off line'],
    ['Smoke', 'thinner'],
    ['Radio', 'mayday, landing at once'],
  ],
};

const jetFireGround: ListWords = {
  title: 'Engine fire on the ground',
  steps: [
    ['Throttle', 'cut-off'],
    ['Fuel shut-off', 'shut'],
    ['Fire bottle', 'fired'],
    ['Parking brake', 'set'],
    ['Radio', 'fire, where you are'],
    ['Battery', 'off'],
    ['Leave', 'all out, upwind'],
  ],
};

export const lists: KindWords = {
  piston: {
    'engine-low': {
      title: 'Engine fails below 500 ft',
      steps: [
        ['Nose', 'down, {approachKt} kt'],
        ['Land', 'ahead, small turns only'],
        ['Mixture', 'cut-off'],
        ['Fuel selector', 'off'],
        ['Magnetos', 'off'],
        ['Flaps', 'as needed'],
        ['Master switch', 'off, doors unlatched'],
      ],
    },
    'engine-high': {
      title: 'Engine fails higher up',
      steps: [
        ['Glide', 'best glide, trimmed'],
        ['Field', 'chosen, into wind'],
        ['Carburettor heat', 'hot'],
        ['Fuel selector', 'other tank'],
        ['Fuel pump', 'on'],
        ['Mixture', 'rich'],
        ['Magnetos', 'left, right, the better one'],
        ['Radio', 'mayday, 7700, where'],
      ],
    },
    'fire-ground': {
      title: 'Engine fire on the ground',
      steps: [
        ['Mixture', 'cut-off'],
        ['Fuel selector', 'off'],
        ['Starter', 'keep it turning'],
        ['Magnetos', 'off'],
        ['Radio', 'fire, where you are'],
        ['Leave', 'all out, upwind'],
      ],
    },
    'fire-flight': {
      title: 'Engine fire in flight',
      steps: [
        ['Mixture', 'cut-off'],
        ['Fuel selector', 'off'],
        ['Cabin heat', 'shut'],
        ['Nose', 'down, flaps up'],
        ['Magnetos', 'off, no restart'],
        ['Radio', 'mayday, 7700, where'],
        ['Field', 'nearest, into wind'],
      ],
    },
    smoke: pistonSmoke,
    'another-try': anotherTry,
    'gear-unsafe': gearUnsafe,
    generator: generator('Alternator'),
    'go-around': {
      title: 'Going around',
      steps: [
        ['Throttle', 'full'],
        ['Carburettor heat', 'cold'],
        ['Nose', 'on the horizon, {approachKt} kt'],
        ['Flaps', 'take-off, then up in steps'],
        ['Climb', '{climbKt} kt'],
        ['Radio', 'going around'],
      ],
    },
  },
  'piston-twin': {
    'engine-out': {
      title: 'Engine fails after lift-off',
      steps: [
        ['Hold it straight', 'pedals, five degrees of bank'],
        ['Power', 'both full'],
        ['Gear and flaps', 'up'],
        ['Which one', 'dead foot, dead engine'],
        ['Its throttle', 'closed, to make sure'],
        ['Its propeller', 'feathered'],
        ['Its mixture', 'cut-off'],
        ['Radio', 'coming back on one'],
      ],
    },
    'one-engine-landing': {
      title: 'Landing on one engine',
      steps: [
        ['Field', 'long, into wind'],
        ['Gear', 'down late, all green'],
        ['Speed', 'not below {approachKt} kt'],
        ['Landing assured', 'land, no go-around now'],
        ['Live throttle', 'idle at the flare'],
      ],
    },
    'fire-ground': {
      title: 'Engine fire on the ground',
      steps: [
        ['Mixtures', 'both cut-off'],
        ['Fuel selectors', 'both off'],
        ['Parking brake', 'set'],
        ['Magnetos', 'all off'],
        ['Radio', 'fire, where you are'],
        ['Master switch', 'off'],
        ['Leave', 'all out, upwind'],
      ],
    },
    'fire-flight': {
      title: 'Engine fire in flight',
      steps: [
        ['Which one', 'seen, and named aloud'],
        ['Its throttle', 'closed'],
        ['Its propeller', 'feathered'],
        ['Its mixture', 'cut-off'],
        ['Its fuel', 'off'],
        ['Cabin heat', 'shut'],
        ['Radio', 'mayday, coming back on one'],
      ],
    },
    smoke: pistonSmoke,
    'another-try': anotherTry,
    'gear-unsafe': gearUnsafe,
    generator: generator('Alternator'),
    'go-around': {
      title: 'Going around',
      steps: [
        ['Power', 'both full'],
        ['Nose', 'up, {approachKt} kt'],
        ['Flaps', 'take-off'],
        ['Gear', 'up'],
        ['Flaps', 'up'],
        ['Climb', '{climbKt} kt'],
        ['Radio', 'going around'],
      ],
    },
  },
  turboprop: {
    'engine-low': {
      title: 'Engine fails below 500 ft',
      steps: [
        ['Nose', 'down, {approachKt} kt'],
        ['Land', 'ahead, small turns only'],
        ['Propeller', 'feathered'],
        ['Condition lever', 'cut-off'],
        ['Fuel', 'off'],
        ['Flaps', 'as needed'],
        ['Battery', 'off'],
      ],
    },
    'engine-high': {
      title: 'Engine fails higher up',
      steps: [
        ['Glide', 'best glide, trimmed'],
        ['Propeller', 'feathered'],
        ['Field', 'chosen, into wind'],
        ['Condition lever', 'cut-off'],
        ['Fuel pump', 'on'],
        ['Restart', 'once, within its limits'],
        ['Radio', 'mayday, 7700, where'],
      ],
    },
    'fire-ground': {
      title: 'Engine fire on the ground',
      steps: [
        ['Condition lever', 'cut-off'],
        ['Fuel', 'off'],
        ['Starter', 'motoring, if fire is inside'],
        ['Radio', 'fire, where you are'],
        ['Battery', 'off'],
        ['Leave', 'all out, upwind'],
      ],
    },
    'fire-flight': {
      title: 'Engine fire in flight',
      steps: [
        ['Power lever', 'idle'],
        ['Propeller', 'feathered'],
        ['Condition lever', 'cut-off'],
        ['Fuel', 'off'],
        ['Cabin air', 'shut'],
        ['Radio', 'mayday, 7700, where'],
        ['Field', 'nearest, into wind'],
      ],
    },
    smoke: pistonSmoke,
    'another-try': anotherTry,
    'gear-unsafe': gearUnsafe,
    generator: generator('Generator'),
    'go-around': {
      title: 'Going around',
      steps: [
        ['Power lever', 'take-off, within limits'],
        ['Nose', 'up, {approachKt} kt'],
        ['Flaps', 'take-off, then up'],
        ['Climb', '{climbKt} kt'],
        ['Radio', 'going around'],
      ],
    },
  },
  jet: {
    'engine-low': {
      title: 'Engine fails after lift-off',
      steps: [
        ['Nose', 'up, speed into height'],
        ['Throttle', 'idle'],
        ['Relight', 'once'],
        ['Revs', 'rising'],
        ['No light', 'eject, or land ahead'],
      ],
    },
    'engine-high': {
      title: 'Flame-out and relight',
      steps: [
        ['Throttle', 'idle'],
        ['Nose', 'down, relight speed'],
        ['Generator', 'off line'],
        ['Relight', 'pressed'],
        ['Temperature', 'rising, then the revs'],
        ['Generator', 'on line'],
        ['Radio', 'mayday, where you go'],
      ],
    },
    'fire-ground': jetFireGround,
    'fire-flight': {
      title: 'Engine fire in flight',
      steps: [
        ['Throttle', 'idle'],
        ['Fire light', 'out at idle'],
        ['Fuel shut-off', 'shut, if still lit'],
        ['Fire bottle', 'fired'],
        ['Fire light', 'out'],
        ['Radio', 'mayday, where you go'],
      ],
    },
    smoke: jetSmoke,
    'another-try': anotherTry,
    'gear-unsafe': gearUnsafe,
    generator: generator('Generator'),
    'go-around': {
      title: 'Going around',
      steps: [
        ['Throttle', 'full'],
        ['Speed brake', 'in'],
        ['Nose', 'up, wings level'],
        ['Gear', 'up'],
        ['Flaps', 'take-off'],
        ['Radio', 'going around'],
      ],
    },
  },
  'twin-jet': {
    'engine-out': {
      title: 'Engine fails from rotation on',
      steps: [
        ['Hold it straight', 'pedals'],
        ['Throttles', 'both full'],
        ['Gear', 'up'],
        ['Which one', 'seen, and named aloud'],
        ['Dead throttle', 'idle, above 400 ft cut-off'],
        ['Flaps', 'up'],
        ['Radio', 'coming back on one'],
      ],
    },
    'engine-high': {
      title: 'Relight in flight',
      steps: [
        ['Dead engine', 'no fire, it turns freely'],
        ['Height and speed', 'within its relight limits'],
        ['Fuel shut-off', 'open'],
        ['Relight', 'pressed, throttle to idle'],
        ['Temperature', 'rising, then the revs'],
        ['Generator', 'on line'],
      ],
    },
    'one-engine-landing': {
      title: 'Landing on one engine',
      steps: [
        ['Flaps', 'as the handbook says'],
        ['Gear', 'down, three green'],
        ['Speed', 'not below {approachKt} kt'],
        ['Landing assured', 'land, no go-around now'],
        ['Live throttle', 'idle at the flare'],
      ],
    },
    'fire-ground': jetFireGround,
    'fire-flight': {
      title: 'Engine fire in flight',
      steps: [
        ['Speed', 'safe, wings level'],
        ['Which one', 'seen, and named aloud'],
        ['That throttle', 'idle, then cut-off'],
        ['Its fuel shut-off', 'shut'],
        ['Fire bottle', 'fired'],
        ['Fire light', 'out'],
        ['Radio', 'mayday, coming back on one'],
      ],
    },
    smoke: jetSmoke,
    'another-try': anotherTry,
    'gear-unsafe': gearUnsafe,
    generator: generator('Generator'),
    'go-around': {
      title: 'Going around',
      steps: [
        ['Throttles', 'both full'],
        ['Speed brake', 'in'],
        ['Nose', 'up, wings level'],
        ['Gear', 'up'],
        ['Flaps', 'take-off'],
        ['Radio', 'going around'],
      ],
    },
  },
};
