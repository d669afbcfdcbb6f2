/** Keeps a part that can't be drawn from taking the rest of the screen with it. */

import { Component, type ComponentChildren } from 'preact';

interface BoundaryProps {
  /** What replaces it; `again` tries to draw it once more. */
  readonly fallback: (again: () => void) => ComponentChildren;
  readonly children: ComponentChildren;
}

interface BoundaryState {
  readonly isBroken: boolean;
}

/**
 * A part of the screen that is replaced if drawing it fails. A new `key` starts over with another
 * part.
 */
export class Boundary extends Component<BoundaryProps, BoundaryState> {
  override state: BoundaryState = { isBroken: false };

  static override getDerivedStateFromError = (): BoundaryState => ({ isBroken: true });

  override render({ fallback, children }: BoundaryProps): ComponentChildren {
    return this.state.isBroken ? fallback(() => this.setState({ isBroken: false })) : children;
  }
}
