import { Component, type JSX } from 'preact';
import { isSame } from './memo.js';
import type { Turns } from './turns.js';

/** What is thrown to stop hydration at a part: it leaves the part as the server drew it. */
const NOT_YET: Promise<never> = new Promise(() => undefined);

type Props = {
  readonly turns: Turns;
  /** What the part is drawn from: it is drawn again when one of these has become another. */
  readonly of: readonly unknown[];
  readonly draw: () => JSX.Element;
};

/**
 * A part of the page that comes alive in its turn. Until then it stands as the server drew it.
 *
 * It comes alive as it first was, since that is what stands on the page, and is drawn again if it
 * has become another meanwhile. What is drawn after the page has come alive is alive at once.
 */
export class Gate extends Component<Props> {
  readonly first: Props;
  isOpen: boolean;
  /** It is still to be drawn as it first was. */
  isFirst: boolean;

  constructor(props: Props) {
    super(props);
    this.first = props;
    // While developing, the tools of the framework take what is thrown for a mistake.
    this.isOpen = props.turns.areOver() || import.meta.env.DEV;
    this.isFirst = !this.isOpen;
  }

  override shouldComponentUpdate(next: Props): boolean {
    return this.isOpen && !isSame(next.of, this.props.of);
  }

  override componentDidCatch(thrown: unknown): void {
    if (thrown !== NOT_YET) return;
    // Only a change of state tells the framework that what was thrown is dealt with.
    this.setState({});
    this.props.turns.wait({
      wake: () => {
        this.isOpen = true;
        this.forceUpdate();
      },
      place: () => this.base,
    });
  }

  override componentDidUpdate(): void {
    if (!this.isFirst) return;
    this.isFirst = false;
    if (!isSame(this.first.of, this.props.of)) this.forceUpdate();
  }

  override render(): JSX.Element {
    const { draw } = this.isFirst ? this.first : this.props;
    return <Held isOpen={this.isOpen} draw={draw} />;
  }
}

function Held(props: { readonly isOpen: boolean; readonly draw: () => JSX.Element }): JSX.Element {
  if (!props.isOpen) throw NOT_YET;
  return props.draw();
}
