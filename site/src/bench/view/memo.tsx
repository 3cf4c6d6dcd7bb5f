import { Component, type ComponentChildren, type JSX } from 'preact';

/** Draws its child again only when what it is drawn for has become another. */
export class Memo extends Component<{
  readonly of: unknown;
  readonly draw: () => JSX.Element | null;
}> {
  override shouldComponentUpdate(next: { readonly of: unknown }): boolean {
    return next.of !== this.props.of;
  }

  override render(): ComponentChildren {
    return this.props.draw();
  }
}
