import ts from "typescript";

export type Source = Readonly<{ path: string; text: string }>;
export type GuardedAction = Readonly<{ path: string; name: string }>;

const isDirective = (statement: ts.Statement | undefined) =>
  statement !== undefined &&
  ts.isExpressionStatement(statement) &&
  ts.isStringLiteral(statement.expression) &&
  statement.expression.text === "use server";

const parsed = ({ path, text }: Source) => ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
const isExported = (node: ts.Statement) =>
  ts.canHaveModifiers(node) &&
  ts.getModifiers(node)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);

/** The server actions a file exports. */
export function guardedActions(source: Source): GuardedAction[] {
  const file = parsed(source);
  if (!isDirective(file.statements[0])) return [];
  return file.statements
    .filter(isExported)
    .filter((one) => !ts.isInterfaceDeclaration(one) && !ts.isTypeAliasDeclaration(one))
    .map((one) => ({
      path: source.path,
      name: ts.isFunctionDeclaration(one)
        ? (one.name?.text ?? "default")
        : `not a function: ${one.getText()}`,
    }));
}

// await allowed("x");  or  const held = await heldBack("x", …); if (held !== null) return held;  or  return held ?? …
function isGuarded({ body, name }: ts.FunctionDeclaration): boolean {
  const [first, second] = (body?.statements ?? []).map((statement) =>
    statement.getText().replaceAll(/\s+/g, " "),
  );
  if (name === undefined || first === undefined) return false;
  if (first === `await allowed("${name.text}");`) return true;
  return (
    first === `const held = await heldBack("${name.text}", previous, form);` &&
    (second === "if (held !== null) return held;" || second?.startsWith("return held ?? ") === true)
  );
}

function inlineActions(node: ts.Node): number {
  let count = ts.isBlock(node) && isDirective(node.statements[0]) ? 1 : 0;
  ts.forEachChild(node, (child) => {
    count += inlineActions(child);
  });
  return count;
}

/** Actions that do not begin by asking the table for the line of their own name; those inside a function never can. */
export function actionsWithoutGuard(source: Source): string[] {
  const file = parsed(source);
  const inline = inlineActions(file) > 0 ? [`${source.path} inline`] : [];
  if (!isDirective(file.statements[0])) return inline;
  const open = file.statements
    .filter(isExported)
    .filter((one) => !ts.isInterfaceDeclaration(one) && !ts.isTypeAliasDeclaration(one))
    .filter((one) => !ts.isFunctionDeclaration(one) || !isGuarded(one));
  return [
    ...inline,
    ...open.map((one) => `${source.path} ${ts.isFunctionDeclaration(one) ? one.name?.text : one.getText()}`),
  ];
}
