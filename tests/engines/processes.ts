/** Programs that are ended together with all that they started. */

import { type ChildProcess, type SpawnOptions, spawn } from 'node:child_process';
import { readdir, readFile } from 'node:fs/promises';

const groups = new Set<number>();

function signal(group: number): void {
  try {
    process.kill(-group, 'SIGKILL');
  } catch {
    // All of them are gone already.
  }
}

// Whatever ends the tests, no browser outlives them.
process.once('exit', () => {
  for (const group of groups) signal(group);
});

/** Sees to it that the group which a process leads is ended with the tests. */
export function guard(leader: ChildProcess): number {
  const { pid } = leader;
  if (pid === undefined) throw new Error(`${leader.spawnfile} could not be started`);
  groups.add(pid);
  return pid;
}

/** Starts a program as the leader of a group of its own, and gives the group's number. */
export function startGroup(
  program: string,
  args: readonly string[],
  options: SpawnOptions = {},
): { readonly leader: ChildProcess; readonly group: number } {
  const leader = spawn(program, args, { stdio: 'ignore', ...options, detached: true });
  return { leader, group: guard(leader) };
}

/** How many processes of a group run. Where the system does not tell, none is taken to. */
async function running(group: number): Promise<number> {
  const names = await readdir('/proc').catch(() => []);
  const states = await Promise.all(
    names
      .filter((name) => /^\d+$/.test(name))
      .map((name) => readFile(`/proc/${name}/stat`, 'utf8').catch(() => '')),
  );
  // After the program's name in brackets: its state, its parent and its group.
  return states.filter((stat) => {
    const [state, , itsGroup] = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    return Number(itsGroup) === group && state !== 'Z' && state !== 'X';
  }).length;
}

/** Waits for what `look` finds; null where it finds nothing in time. */
export async function within<Found>(
  ms: number,
  look: () => Promise<Found | null>,
): Promise<Found | null> {
  const until = performance.now() + ms;
  for (;;) {
    const found = await look();
    if (found !== null || performance.now() > until) return found;
    await new Promise((next) => setTimeout(next, 20));
  }
}

const GONE_MS = 20_000;

/** Ends every process of a group at once, and waits until none runs. */
export async function killGroup(group: number): Promise<void> {
  signal(group);
  await ended(group, GONE_MS);
}

/** Waits until no process of a group runs, or only its leader does, and ends all that do not end by themselves. */
export async function ended(group: number, patienceMs: number, remaining = 0): Promise<void> {
  await within(patienceMs, async () => ((await running(group)) <= remaining ? true : null));
  signal(group);
  groups.delete(group);
}
