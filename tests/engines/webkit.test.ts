import { coreSet } from './core';

coreSet('WebKit');
