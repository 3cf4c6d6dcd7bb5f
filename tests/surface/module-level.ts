import ts from 'typescript';
import type { CoreFile } from './core-files.js';

const literalKinds: ReadonlySet<ts.SyntaxKind> = new Set([
  ts.SyntaxKind.NumericLiteral,
  ts.SyntaxKind.BigIntLiteral,
  ts.SyntaxKind.StringLiteral,
  ts.SyntaxKind.NoSubstitutionTemplateLiteral,
  ts.SyntaxKind.RegularExpressionLiteral,
  ts.SyntaxKind.TrueKeyword,
  ts.SyntaxKind.FalseKeyword,
  ts.SyntaxKind.NullKeyword,
  ts.SyntaxKind.Identifier,
  ts.SyntaxKind.ArrowFunction,
  ts.SyntaxKind.FunctionExpression,
  ts.SyntaxKind.OmittedExpression,
]);

/**
 * Written down, not worked out: literals, functions, and what is made of them.
 *
 * A sum, a spread or a look at a property counts as worked out. A bundler cannot tell that they
 * do nothing, keeps them, and with them every table they touch, in an app that uses neither.
 */
function isWrittenDown(node: ts.Expression): boolean {
  if (literalKinds.has(node.kind)) return true;
  if (ts.isPrefixUnaryExpression(node)) return ts.isNumericLiteral(node.operand);
  if (ts.isArrayLiteralExpression(node)) return node.elements.every(isWrittenDown);
  if (ts.isObjectLiteralExpression(node)) return node.properties.every(isPlainProperty);
  if (
    ts.isAsExpression(node) ||
    ts.isSatisfiesExpression(node) ||
    ts.isParenthesizedExpression(node)
  ) {
    return isWrittenDown(node.expression);
  }
  return false;
}

function isPlainProperty(node: ts.ObjectLiteralElementLike): boolean {
  if (ts.isSpreadAssignment(node)) return false;
  if (ts.isShorthandPropertyAssignment(node)) return true;
  const named = !ts.isComputedPropertyName(node.name) || isWrittenDown(node.name.expression);
  if (ts.isPropertyAssignment(node)) return named && isWrittenDown(node.initializer);
  return named && ts.isMethodDeclaration(node);
}

/** The one class there is room for: an error, with nothing run when it is declared. */
function isPlainError(node: ts.ClassDeclaration): boolean {
  const parent = node.heritageClauses?.find(
    (clause) => clause.token === ts.SyntaxKind.ExtendsKeyword,
  )?.types[0]?.expression;
  if (parent === undefined || !ts.isIdentifier(parent) || !parent.text.endsWith('Error')) {
    return false;
  }
  const isStatic = (member: ts.ClassElement): boolean =>
    ts.isClassStaticBlockDeclaration(member) ||
    (ts.canHaveModifiers(member) &&
      (ts.getModifiers(member) ?? []).some((one) => one.kind === ts.SyntaxKind.StaticKeyword));
  return !node.members.some(isStatic) && (ts.getDecorators(node) ?? []).length === 0;
}

function isQuiet(node: ts.Statement): boolean {
  if (ts.isVariableStatement(node)) {
    const constant = (node.declarationList.flags & ts.NodeFlags.Const) !== 0;
    return (
      constant &&
      node.declarationList.declarations.every(
        ({ name, initializer }) =>
          ts.isIdentifier(name) && initializer !== undefined && isWrittenDown(initializer),
      )
    );
  }
  if (ts.isClassDeclaration(node)) return isPlainError(node);
  return (
    ts.isImportDeclaration(node) ||
    ts.isExportDeclaration(node) ||
    ts.isFunctionDeclaration(node) ||
    ts.isInterfaceDeclaration(node) ||
    ts.isTypeAliasDeclaration(node)
  );
}

/** Every statement that does something when the file is loaded, as `path:line first line`. */
export function doneOnLoad(file: CoreFile): readonly string[] {
  const source = ts.createSourceFile(file.path, file.text, ts.ScriptTarget.ES2022, true);
  return source.statements
    .filter((statement) => !isQuiet(statement))
    .map((statement) => {
      const { line } = source.getLineAndCharacterOfPosition(statement.getStart(source));
      return `${file.path}:${line + 1} ${statement.getText(source).split('\n')[0]}`;
    });
}
