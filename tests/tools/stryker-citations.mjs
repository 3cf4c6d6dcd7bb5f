// A source, a grade or a note beside a constant says where it comes from. No number depends on it,
// and the type checker, which mutation runs leave out, holds sources and grades to their lists.
const DOCUMENTATION = ['source', 'grade', 'compositionGrade', 'note', 'locator'];

const documents = ({ node }) => {
  const [name, text] =
    node.type === 'ObjectProperty'
      ? [node.key.name, node.value]
      : node.type === 'VariableDeclarator'
        ? [node.id.name, node.init]
        : [];
  return DOCUMENTATION.includes(name) && text?.type === 'StringLiteral';
};

export const strykerPlugins = [
  {
    kind: 'Ignore',
    name: 'citations',
    value: {
      shouldIgnore: (path) =>
        documents(path) ? 'Where a constant comes from, not what it is.' : undefined,
    },
  },
];
