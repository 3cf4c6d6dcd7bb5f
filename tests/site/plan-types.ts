import { fileURLToPath } from 'node:url';
import ts from 'typescript';

/** A key of the plan: its group, and the names below it down to the leaf. */
export type PlanKey = readonly [group: string, ...below: string[]];

/**
 * Every key of `PlanDocument` as its types have it. A figure is a leaf: `value`, `band` and `model`
 * are told once for all of them. So is a record whose keys are ids.
 */
export function planKeys(): readonly PlanKey[] {
  const path = fileURLToPath(new URL('../../packages/core/src/job/plan/types.ts', import.meta.url));
  const program = ts.createProgram([path], {
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    target: ts.ScriptTarget.ES2022,
    strict: true,
    types: [],
  });
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(path);
  const module = source && checker.getSymbolAtLocation(source);
  const plan = module?.exports?.get(ts.escapeLeadingUnderscores('PlanDocument'));
  if (plan === undefined) throw new Error('types.ts exports no PlanDocument');
  const keys: PlanKey[] = [];
  const walk = (type: ts.Type, trail: readonly string[]): void => {
    for (const property of objectsIn(type).flatMap((one) => checker.getPropertiesOfType(one))) {
      const [group = property.name, ...below] = [...trail, property.name];
      keys.push([group, ...below]);
      walk(checker.getTypeOfSymbol(property), [group, ...below]);
    }
  };
  walk(checker.getDeclaredTypeOfSymbol(plan), []);
  return keys;

  /** The objects a type may be, lists opened; none for a plain value, a figure, a record of ids. */
  function objectsIn(type: ts.Type): readonly ts.Type[] {
    if (type.isUnion()) return type.types.flatMap(objectsIn);
    if (checker.isTupleType(type)) return [];
    if (checker.isArrayType(type)) {
      const [element] = checker.getTypeArguments(type as ts.TypeReference);
      return element === undefined ? [] : objectsIn(element);
    }
    if ((type.flags & (ts.TypeFlags.Object | ts.TypeFlags.Intersection)) === 0) return [];
    if (['Figure', 'PlanModel'].includes(type.aliasSymbol?.name ?? '')) return [];
    return checker.getIndexInfosOfType(type).length > 0 ? [] : [type];
  }
}
