import { coreSet } from './core';

coreSet('Chromium');
