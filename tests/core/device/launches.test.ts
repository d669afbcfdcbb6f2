/** Launches, as the Web App Launch Handler API tells of them. W3C draft, LaunchParams and LaunchQueue. */

import { afterEach, expect, test, vi } from 'vitest';
import { followLaunches } from '../../../src/device/launches';

const PAGE = 'https://example.org/app/#/wind?report=27012KT';

class Navigation {
  readonly name: string;
  readonly type: string;
  constructor(name: string, type: string) {
    this.name = name;
    this.type = type;
  }
}

/** Listens on a page that was opened in some way, and lets it be launched. */
function open(type: 'navigate' | 'reload') {
  let consume: (params: object) => void = () => undefined;
  vi.stubGlobal('launchQueue', {
    setConsumer: (consumer: typeof consume) => {
      consume = consumer;
    },
  });
  vi.stubGlobal('PerformanceNavigationTiming', Navigation);
  vi.stubGlobal('performance', { getEntriesByType: () => [new Navigation(PAGE, type)] });
  const told: string[] = [];
  followLaunches({
    onFile: ({ name }) => told.push(name),
    onAddress: ({ href }) => told.push(href),
  });
  return { told, launch: (params: object) => consume(params) };
}

const file = (name: string) => ({ getFile: async () => new File([], name) });

afterEach(() => vi.unstubAllGlobals());

test('the address a page was opened at is not taken a second time', () => {
  const { told, launch } = open('navigate');
  launch({ targetURL: PAGE, files: [] });
  expect(told).toEqual([]);
  // The same link opened again is another launch.
  launch({ targetURL: PAGE, files: [] });
  expect(told).toEqual([PAGE]);
});

test('a file is told, also as the first thing', async () => {
  const { told, launch } = open('navigate');
  launch({ targetURL: 'https://example.org/app/', files: [file('own.json')] });
  await vi.waitFor(() => expect(told).toEqual(['own.json']));
});

test('what a page was opened with is not taken again after a reload, what comes then is', async () => {
  const { told, launch } = open('reload');
  launch({ targetURL: 'https://example.org/app/', files: [file('own.json')] });
  launch({ targetURL: PAGE, files: [] });
  launch({ files: [file('next.json')] });
  await vi.waitFor(() => expect(told).toEqual([PAGE, 'next.json']));
});

test('a browser without launches, and a file that cannot be had, do no harm', async () => {
  followLaunches({ onFile: () => expect.fail(), onAddress: () => expect.fail() });
  const { told, launch } = open('navigate');
  launch({ files: [{ getFile: () => Promise.reject(new Error('gone')) }] });
  await Promise.resolve();
  expect(told).toEqual([]);
});
