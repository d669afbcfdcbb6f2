import { expect, test, vi } from 'vitest';
import { followDocuments } from '../../../src/record/followDocuments';
import { openWindow, useFreshDevice } from './device';
import { firstDocument } from './stores';

useFreshDevice();

const DOCUMENT = firstDocument('procedure');

test('what one window kept is there when the other hears of it, and the one hears nothing itself', async () => {
  const { record: here } = await openWindow();
  const { record: there } = await openWindow();
  const heard = vi.fn();
  const echo = vi.fn();
  const names: unknown[] = [];
  followDocuments(() => {
    heard();
    void there.documents().then((kept) => names.push(...kept.map(({ hash }) => hash)));
  });
  const followers = followDocuments(echo);
  await here.keepDocument(DOCUMENT);
  followers.tell();
  await vi.waitFor(() => expect(names).toEqual([DOCUMENT.hash]));
  expect(heard).toHaveBeenCalledTimes(1);
  expect(echo).not.toHaveBeenCalled();
});

test('without channels nothing is heard, and telling does no harm', () => {
  vi.stubGlobal('BroadcastChannel', undefined);
  const heard = vi.fn();
  followDocuments(heard);
  expect(() => followDocuments(() => undefined).tell()).not.toThrow();
  expect(heard).not.toHaveBeenCalled();
});
