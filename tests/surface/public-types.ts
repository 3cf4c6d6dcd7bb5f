import ts from 'typescript';
import { builtFile, ENTRIES, type Entry } from './entries.js';

const printer = ts.createPrinter({ removeComments: true });

/** A declaration as one would write it in a `.d.ts`, comments left out. */
function printed(declaration: ts.Declaration): string {
  const variable = ts.isVariableDeclaration(declaration);
  const text = printer.printNode(ts.EmitHint.Unspecified, declaration, declaration.getSourceFile());
  return (variable ? `const ${text};` : text).replace(/^(export )?(declare )?/, '');
}

/** Each entry's exported names with their signatures, as the package ships them. */
export function publicTypes(): ReadonlyMap<Entry, string> {
  const paths = ENTRIES.map((entry) => builtFile(`${entry}.d.ts`));
  const program = ts.createProgram(paths, {
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    target: ts.ScriptTarget.ES2022,
    strict: true,
    types: [],
  });
  const checker = program.getTypeChecker();

  const listing = (path: string): string => {
    const source = program.getSourceFile(path);
    const module = source && checker.getSymbolAtLocation(source);
    if (module === undefined) throw new Error(`${path} exports nothing`);
    return checker
      .getExportsOfModule(module)
      .map((symbol) => {
        const alias = (symbol.flags & ts.SymbolFlags.Alias) !== 0;
        const target = alias ? checker.getAliasedSymbol(symbol) : symbol;
        const declarations = (target.declarations ?? []).map(printed);
        if (declarations.length === 0) throw new Error(`${symbol.name} is declared nowhere`);
        return { name: symbol.name, text: declarations.join('\n') };
      })
      .sort((a, b) => (a.name < b.name ? -1 : 1))
      .map(({ text }) => `${text}\n`)
      .join('\n');
  };
  return new Map(ENTRIES.map((entry, at) => [entry, listing(paths[at] ?? '')]));
}

/** The code of a declaration file without its comments. */
export function withoutComments(path: string, text: string): string {
  return printer.printFile(ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true));
}
