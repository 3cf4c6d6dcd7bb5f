import { Component, type JSX } from 'preact';

/** Whether two lists hold the same things, one by one. */
export function isSame(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((one, at) => one === b[at]);
}

/** Draws its child again only when something it is drawn from has become another. */
export class Memo extends Component<{
  readonly of: readonly unknown[];
  readonly draw: () => JSX.Element | null;
}> {
  override shouldComponentUpdate(next: { readonly of: readonly unknown[] }): boolean {
    return !isSame(next.of, this.props.of);
  }

  override render(): JSX.Element | null {
    return this.props.draw();
  }
}
