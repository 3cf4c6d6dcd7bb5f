import ts from 'typescript';
import type { CoreFile } from './core-files.js';

/** One import, re-export, dynamic import or `import('…')` type. */
export type Import = {
  readonly specifier: string;
  /** Erased by the compiler: `import type`, `export type … from`, `import('…').T`. */
  readonly typeOnly: boolean;
  /** `export * from`, which names nothing. */
  readonly star: boolean;
};

/** Every import of a file, wherever it stands. */
export function importsOf(file: CoreFile): readonly Import[] {
  const found: Import[] = [];
  const add = (specifier: ts.Node | undefined, typeOnly: boolean, star = false): void => {
    if (specifier === undefined) return;
    const text = ts.isStringLiteralLike(specifier) ? specifier.text : specifier.getText(source);
    found.push({ specifier: text, typeOnly, star });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) {
      // `import { type A }` leaves `import {}` behind, so only `import type` is erased.
      add(node.moduleSpecifier, node.importClause?.isTypeOnly ?? false);
    } else if (ts.isExportDeclaration(node)) {
      add(node.moduleSpecifier, node.isTypeOnly, node.exportClause === undefined);
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
      add(node.argument.literal, true);
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      add(node.arguments[0], false);
    }
    ts.forEachChild(node, visit);
  };
  const source = ts.createSourceFile(file.path, file.text, ts.ScriptTarget.ES2022, true);
  visit(source);
  return found;
}
