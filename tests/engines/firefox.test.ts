import { coreSet } from './core';

coreSet('Firefox');
